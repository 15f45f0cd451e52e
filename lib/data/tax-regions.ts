import "server-only";
import { type LocalDate, localDate } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import type { Written } from "../fault.ts";
import type { TaxComponent, TaxRegion } from "../tax/region.ts";
import { CANADA } from "../tax/regions-ca.ts";
import type { TaxRegionEntry } from "../tax/tax-region-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { dateOf, dateOrNull, dayOrNull, digits, row, rows } from "./rows.ts";
import { accepted, conflict, fault, refused, repeated } from "./written.ts";

type ComponentRow = Readonly<{
  name: string;
  rate: string;
  from: string;
  until: string | null;
  base: TaxComponent["base"];
  recoverable: boolean;
  evidence: string;
}>;
type RegionRow = Readonly<{
  code: string;
  name: string;
  country: string | null;
  complete_from: string;
  components: readonly ComponentRow[];
}>;
type Confirmation = Readonly<{ region: string; component: string; from_day: string }>;

const OWN = Prisma.sql`SELECT t.code, t.name, t.country, t.complete_from,
  (SELECT coalesce(json_agg(json_build_object('name', c.name, 'rate', c.rate_percent::text, 'from', c.from_day,
    'until', c.until_day, 'base', c.base, 'recoverable', c.recoverable, 'evidence', c.evidence)
    ORDER BY c.name, c.from_day), '[]')
    FROM tax_component c WHERE c.workspace_id = t.workspace_id AND c.region_id = t.id) AS components
  FROM tax_region t ORDER BY t.code`;

function regionOfRow(stored: RegionRow): TaxRegion {
  return {
    code: stored.code,
    name: stored.name,
    country: stored.country,
    completeFrom: localDate(stored.complete_from),
    components: stored.components.map(({ rate, from, until, ...component }) => ({
      ...component,
      ratePercent: decimal(rate),
      from: localDate(from),
      until: dayOrNull(until),
      fromMemory: false,
    })),
  };
}

const keyOf = (region: string, component: string, from: string) => `${region}|${component}|${from}`;

/** Shipped regions with the user's confirmations, then the workspace's own, which win over a shipped one of their code. */
export async function regionsWithin(tx: Tx): Promise<Map<string, TaxRegion>> {
  const own = await rows<RegionRow>(tx, OWN);
  const confirmed = new Set(
    (await rows<Confirmation>(tx, Prisma.sql`SELECT region, component, from_day FROM tax_confirmation`)).map(
      ({ region, component, from_day }) => keyOf(region, component, from_day),
    ),
  );
  const shipped = CANADA.map((region) => ({
    ...region,
    components: region.components.map((component) => ({
      ...component,
      fromMemory: component.fromMemory && !confirmed.has(keyOf(region.code, component.name, component.from)),
    })),
  }));
  return new Map([...shipped, ...own.map(regionOfRow)].map((region) => [region.code, region]));
}

/** Whether a code names a shipped region or one of the workspace's own. */
export async function isRegionKnown(tx: Tx, code: string): Promise<boolean> {
  if (CANADA.some((region) => region.code === code)) return true;
  return (await row(tx, Prisma.sql`SELECT 1 AS one FROM tax_region WHERE code = ${code}`)) !== null;
}

/** Every region prices of this workspace can be taxed in, by code. */
export function taxRegions(scope: Scope): Promise<TaxRegion[]> {
  return inWorkspace(scope, async (tx) => [...(await regionsWithin(tx)).values()]);
}

async function saveWithin(tx: Tx, entry: TaxRegionEntry): Promise<Written<TaxRegion>> {
  const data = { name: entry.name, country: entry.country, completeFrom: dateOf(entry.completeFrom) };
  const there = await tx.taxRegion.findFirst({ where: { code: entry.code }, select: { id: true } });
  const { id } =
    there ?? (await tx.taxRegion.create({ data: { code: entry.code, ...data }, select: { id: true } }));
  if (there !== null) {
    await tx.taxRegion.updateMany({ where: { id }, data });
    await tx.taxComponent.deleteMany({ where: { regionId: id } });
  }
  await tx.taxComponent.createMany({
    data: entry.components.map(({ name, ratePercent, from, until, base, recoverable, evidence }) => ({
      regionId: id,
      name,
      ratePercent: digits(ratePercent),
      fromDay: dateOf(from),
      untilDay: dateOrNull(until),
      base,
      recoverable,
      evidence,
    })),
  });
  return accepted(entry);
}

/** Writes a region of the workspace's own: new, or its components replaced as a whole (the change log keeps the earlier). */
export function saveTaxRegion(scope: Scope, entry: TaxRegionEntry): Promise<Written<TaxRegion>> {
  return inWorkspace(scope, (tx) => saveWithin(tx, entry));
}

/** The same content in another order of its components is the same. */
function contentOf(region: TaxRegion): string {
  const keyed = region.components.map((one) => [`${one.name} ${one.from}`, one] as const);
  return entryHash({ ...region, components: keyed.sort(([a], [b]) => (a < b ? -1 : 1)) });
}

/** A new region of the workspace's own. Its code is its id: one that is there with other content is a conflict. */
export function addTaxRegion(scope: Scope, entry: TaxRegionEntry): Promise<Written<TaxRegion>> {
  return inWorkspace(scope, async (tx) => {
    const there = (await rows<RegionRow>(tx, OWN)).map(regionOfRow).find(({ code }) => code === entry.code);
    if (there === undefined) return saveWithin(tx, entry);
    return contentOf(there) === contentOf(entry) ? repeated(there) : conflict(there);
  });
}

/** The user looked up a shipped component marked "from memory" and found it right. Faults: unknown-region, not-there (no such component). */
export function confirmTax(
  scope: Scope,
  code: string,
  component: string,
  from: LocalDate,
): Promise<Written<TaxRegion>> {
  return inWorkspace(scope, async (tx) => {
    const region = (await regionsWithin(tx)).get(code);
    if (region === undefined) return refused([fault("code", "unknown-region")]);
    const named = region.components.find(({ name, from: first }) => name === component && first === from);
    if (named === undefined) return refused([fault("component", "not-there")]);
    if (!named.fromMemory) return repeated(region);
    await tx.taxConfirmation.create({
      data: { region: code, component, fromDay: dateOf(from) },
      select: { id: true },
    });
    return accepted((await regionsWithin(tx)).get(code) ?? region);
  });
}
