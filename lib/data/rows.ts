import "server-only";
import { type LocalDate, localDate } from "../calendar/local-date.ts";
import { type Decimal, decimal } from "../decimal.ts";
import { type CurrencyCode, isCurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";

/**
 * The rows of a query as plain JSON: one value over the wire, many times faster than row by row. The query writes every
 * number as text (`amount::text`), so nothing passes through floating point. R says what the query selects.
 */
export async function rows<R>(tx: Tx, query: Prisma.Sql): Promise<R[]> {
  const [answer] = await tx.$queryRaw<{ rows: string }[]>(
    Prisma.sql`SELECT coalesce(json_agg(r), '[]'::json)::text AS rows FROM (${query}) r`,
  );
  return JSON.parse(answer?.rows ?? "[]") as R[];
}

/** What a query selects, by the names of R: every column, as SQL that is a constant of the program. */
export type Columns<R> = Readonly<Record<keyof R & string, string>>;

/** The columns as a select list. */
export function selected<R>(columns: Columns<R>): Prisma.Sql {
  return Prisma.raw(
    Object.entries(columns)
      .map(([name, from]) => `${from} AS ${name}`)
      .join(", "),
  );
}

/**
 * The rows of `SELECT columns <rest>` for what comes in thousands: the same as `rows`, but a list per column over the wire,
 * which takes the database half the time and half the text.
 */
export async function manyRows<R>(tx: Tx, columns: Columns<R>, rest: Prisma.Sql): Promise<R[]> {
  const names = Object.keys(columns);
  const lists = names.map((name) => `coalesce(json_agg(r.${name}), '[]'::json)`).join(", ");
  const [answer] = await tx.$queryRaw<{ lists: string }[]>(
    Prisma.sql`SELECT json_build_array(${Prisma.raw(lists)})::text AS lists FROM (SELECT ${selected(columns)} ${rest}) r`,
  );
  const found = JSON.parse(answer?.lists ?? "[]") as unknown[][];
  return (found[0] ?? []).map(
    (_, at) => Object.fromEntries(names.map((name, column) => [name, found[column]?.[at]])) as R,
  );
}

/** The first row of such a query, or null. */
export async function row<R>(tx: Tx, query: Prisma.Sql): Promise<R | null> {
  return (await rows<R>(tx, query))[0] ?? null;
}

/** A day for Prisma: UTC midnight of it. */
export function dateOf(day: LocalDate): Date {
  return new Date(`${day}T00:00:00Z`);
}

/** A day, or none, as the client takes it. */
export function dateOrNull(day: LocalDate | null): Date | null {
  return day === null ? null : dateOf(day);
}

/** Answers kept by their text: a few days and quantities stand in thousands of rows. Kept up to a limit, then begun anew. */
function keptByText<T>(read: (text: string) => T): (text: string) => T {
  const kept = new Map<string, T>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    if (kept.size >= KEPT) kept.clear();
    const value = read(text);
    kept.set(text, value);
    return value;
  };
}
const KEPT = 10_000;

/** A stored day. Throws: {RangeError} when the text is none. */
export const storedDay: (text: string) => LocalDate = keptByText(localDate);

/** A stored number. */
export const storedDecimal: (text: string) => Decimal = keptByText(decimal);

/** A column of a day, or none, as our value. */
export function dayOrNull(text: string | null): LocalDate | null {
  return text === null ? null : storedDay(text);
}

/** A numeric column, or none, as our Decimal, every digit kept. */
export function decimalOrNull(text: string | null): Decimal | null {
  return text === null ? null : storedDecimal(text);
}

/** A decimal for Prisma and for SQL: its digits, never an exponent. */
export function digits(value: Decimal): string {
  return value.toFixed();
}

/** A Decimal, or none, as the digits a numeric column takes; never rounded. */
export function digitsOrNull(value: Decimal | null): string | null {
  return value === null ? null : value.toFixed();
}

/** Throws: {RangeError} for a stored code that ISO 4217 does not have. */
export function currencyOf(text: string): CurrencyCode {
  if (!isCurrencyCode(text)) throw new RangeError(`the database holds the unknown currency "${text}"`);
  return text;
}

/** Two columns, amount and currency, as money; null when either is missing. */
export function moneyOrNull(amount: string | null, currency: string | null): Money | null {
  return amount === null || currency === null
    ? null
    : { amount: storedDecimal(amount), currency: currencyOf(currency) };
}
