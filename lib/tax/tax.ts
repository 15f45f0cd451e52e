import type { LocalDate } from "../calendar/local-date.ts";
import { within } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import { add, type Money, money, roundToMinorUnit, times } from "../money/money.ts";
import type { Registration, TaxComponent, TaxRegion } from "./region.ts";

/** The tax of a place on a day, or that it is not known (R3). No components: no tax there. */
export type TaxOnDay =
  | Readonly<{ known: true; components: readonly TaxComponent[] }>
  | Readonly<{ known: false; reason: "tax-unknown" }>;

/** One component's amount on a base. */
export type TaxAmount = Readonly<{ component: TaxComponent; amount: Money }>;

/** One line of a bill before tax; exempt: names of components that do not apply to it. */
export type BillLine = Readonly<{ base: Money; exempt: readonly string[] }>;

/** The components in force in a region on a day, both ends counted. Before `completeFrom` the tax is not known (R3). */
export function taxOn(region: TaxRegion, day: LocalDate): TaxOnDay {
  if (day < region.completeFrom) return { known: false, reason: "tax-unknown" };
  return {
    known: true,
    components: region.components.filter((component) => within(day, component.from, component.until)),
  };
}

function applying(components: readonly TaxComponent[], exempt: readonly string[]): readonly TaxComponent[] {
  return components.filter((component) => !exempt.includes(component.name));
}

/** What one unit of money bears of a component: its rate, on the price or on the price plus the taxes on the price. */
function share(component: TaxComponent, among: readonly TaxComponent[]): Decimal {
  const rate = component.ratePercent.dividedBy(HUNDRED);
  if (component.base === "price") return rate;
  const others = among.filter((other) => other.base === "price");
  return rate.times(others.reduce((total, other) => total.plus(other.ratePercent.dividedBy(HUNDRED)), ONE));
}

/**
 * Each component's tax on an amount before tax.
 *     base x rate / 100; for "price-plus-other-tax": (base + the taxes on the price) x rate / 100 (the QST before 2013)
 * Units: the base's currency. Rounds: never. exempt: names of components left out.
 * Source: Revenu Quebec, "Calculating the Taxes": GST and QST are both computed on the price.
 */
export function taxes(
  base: Money,
  components: readonly TaxComponent[],
  exempt: readonly string[] = [],
): TaxAmount[] {
  const used = applying(components, exempt);
  return used.map((component) => ({ component, amount: times(base, share(component, used)) }));
}

/**
 * The amount before tax inside an amount with tax.
 *     amount / (1 + sum of the components' shares)
 * Rounds: the one division, to 40 digits, so that base + taxes(base) is the amount again to any cent.
 */
export function baseOfInclusive(
  amount: Money,
  components: readonly TaxComponent[],
  exempt: readonly string[] = [],
): Money {
  const used = applying(components, exempt);
  const total = used.reduce((sum, component) => sum.plus(share(component, used)), ONE);
  return money(amount.amount.dividedBy(total), amount.currency);
}

/** GST and HST are one tax under one registration (Excise Tax Act, Canada); any other tax is known by its own name. */
function registrationName(tax: string): string {
  return tax === "GST" || tax === "HST" ? "GST/HST" : tax;
}

/** True when a buyer gets a component back: it is recoverable and they are registered for it on the day (R3). */
export function isRecovered(
  component: TaxComponent,
  registrations: readonly Registration[],
  day: LocalDate,
): boolean {
  const name = registrationName(component.name);
  return (
    component.recoverable &&
    registrations.some(({ tax, from, until }) => registrationName(tax) === name && within(day, from, until))
  );
}

/**
 * The taxes a bill shows, each component rounded half up to the minor unit: once on the whole bill, or on each line.
 * A component no line bears is left out. @throws {CurrencyMismatch} when lines differ in currency.
 * Source: CRA GST/HST interpretation 125136 (2011): either way is accepted when used consistently.
 */
export function billTaxes(
  lines: readonly BillLine[],
  components: readonly TaxComponent[],
  rounding: "per-bill" | "per-line",
): TaxAmount[] {
  const shown: TaxAmount[] = [];
  for (const component of components) {
    const parts = lines.flatMap(({ base, exempt }) =>
      taxes(base, components, exempt).filter((part) => part.component === component),
    );
    const [first] = parts;
    if (first === undefined) continue;
    const total = parts
      .map((part) => (rounding === "per-line" ? roundToMinorUnit(part.amount) : part.amount))
      .reduce(add, money(ZERO, first.amount.currency));
    shown.push({ component, amount: roundToMinorUnit(total) });
  }
  return shown;
}
