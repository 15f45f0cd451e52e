/** One page of a list. number and `of` count pages from 1; from and until count things from 1. */
export type PageOf<T> = Readonly<{
  items: readonly T[];
  number: number;
  of: number;
  from: number;
  until: number;
}>;

/** The page asked for, of so many things each; what is no page of the list is answered with the nearest one. */
export function pageOf<T>(all: readonly T[], wanted: string | undefined, each: number): PageOf<T> {
  const of = Math.max(1, Math.ceil(all.length / each));
  const number = wanted !== undefined && /^\d{1,6}$/.test(wanted) ? Number(wanted) : 1;
  const shown = Math.min(Math.max(number, 1), of);
  const start = (shown - 1) * each;
  const items = all.slice(start, start + each);
  return { items, number: shown, of, from: items.length === 0 ? 0 : start + 1, until: start + items.length };
}
