import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, decimal, ONE } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { Fee, Observation, Terms } from "../prices/observation.ts";

/** A fee as text; what is left out is none. */
type PlainFee = Readonly<{
  name: string;
  amount?: string;
  percent?: string;
  basis: Fee["basis"];
  freeFrom?: string;
  taxable?: true;
}>;

/**
 * A price seen as text and numbers, without its material, which it stands under. What is left out: none; of `per` one, of
 * `taxIncluded` no. A note is nothing a figure needs and stays behind.
 */
export type PlainSeen = Readonly<{
  id: string;
  storeId: string;
  on: LocalDate;
  terms: Terms;
  amount?: string;
  currency?: CurrencyCode;
  per?: string;
  unit: PurchaseUnit;
  taxIncluded?: true;
  taxRegion?: string;
  exemptFrom?: readonly string[];
  min?: string;
  max?: string;
  pack?: string;
  from?: LocalDate;
  until?: LocalDate;
  fees?: readonly PlainFee[];
}>;

const text = (value: Decimal | null): string | undefined => value?.toFixed();
const number = (value: string | undefined): Decimal | null => (value === undefined ? null : decimal(value));

function plainFee({ name, amount, percent, basis, freeFrom, taxable }: Fee): PlainFee {
  return {
    name,
    amount: text(amount),
    percent: text(percent),
    basis,
    freeFrom: text(freeFrom),
    taxable: taxable || undefined,
  };
}

/** A price seen, without its note, as text and numbers. Rounds: never. */
export function plainSeen(seen: Observation): PlainSeen {
  return {
    id: seen.id,
    storeId: seen.storeId,
    on: seen.seenOn,
    terms: seen.terms,
    amount: seen.amount?.amount.toFixed(),
    currency: seen.amount?.currency,
    per: seen.per.quantity.equals(ONE) ? undefined : seen.per.quantity.toFixed(),
    unit: seen.per.unit,
    taxIncluded: seen.taxIncluded || undefined,
    taxRegion: seen.taxRegion ?? undefined,
    exemptFrom: seen.exemptFrom.length === 0 ? undefined : seen.exemptFrom,
    min: text(seen.minQuantity),
    max: text(seen.maxQuantity),
    pack: text(seen.packSize),
    from: seen.from ?? undefined,
    until: seen.until ?? undefined,
    fees: seen.fees.length === 0 ? undefined : seen.fees.map(plainFee),
  };
}

/** A plain price seen back as it was, but for its note. Units, rounds: as stored; never. */
export function seenOfPlain(plain: PlainSeen, materialId: string): Observation {
  const { amount, currency } = plain;
  return {
    id: plain.id,
    materialId,
    storeId: plain.storeId,
    seenOn: plain.on,
    terms: plain.terms,
    amount: amount === undefined || currency === undefined ? null : money(amount, currency),
    per: { quantity: number(plain.per) ?? ONE, unit: plain.unit },
    taxIncluded: plain.taxIncluded ?? false,
    taxRegion: plain.taxRegion ?? null,
    exemptFrom: plain.exemptFrom ?? [],
    minQuantity: number(plain.min),
    maxQuantity: number(plain.max),
    packSize: number(plain.pack),
    from: plain.from ?? null,
    until: plain.until ?? null,
    fees: (plain.fees ?? []).map((fee) => ({
      name: fee.name,
      amount: number(fee.amount),
      percent: number(fee.percent),
      basis: fee.basis,
      freeFrom: number(fee.freeFrom),
      taxable: fee.taxable ?? false,
    })),
    note: null,
  };
}
