const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

function many(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}

/** How long a while is, in the largest unit that says it: "12 minutes". A clock put back makes no age below nothing. */
export function ageWords(milliseconds: number): string {
  if (milliseconds >= 2 * DAY) return many(Math.floor(milliseconds / DAY), "day");
  if (milliseconds >= HOUR) return many(Math.floor(milliseconds / HOUR), "hour");
  return milliseconds < MINUTE ? "less than a minute" : many(Math.floor(milliseconds / MINUTE), "minute");
}
