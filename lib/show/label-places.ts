/**
 * Where labels stand along an axis so that none covers another: each as near to its own place as the order allows, at least
 * `gap` apart, within 0 and 1 where there is room for all. Units: shares of the axis. Method: pushed up from the lowest, then
 * down from the end, so that a crowd at one end moves inwards.
 */
export function labelPlaces(wanted: readonly number[], gap: number): number[] {
  const order = wanted.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  let floor = Number.NEGATIVE_INFINITY;
  for (const label of order) {
    label.place = Math.max(label.place, floor);
    floor = label.place + gap;
  }
  let ceiling = 1;
  for (const label of order.toReversed()) {
    label.place = Math.min(label.place, ceiling);
    ceiling = label.place - gap;
  }
  const places = wanted.slice();
  for (const { place, index } of order) places[index] = place;
  return places;
}
