import "server-only";
import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import { isForeign } from "../prices/foreign-store.ts";
import type { Valuation } from "../prices/valuation.ts";
import { Prisma } from "./generated/client.ts";

/** A question: what was a material to be had for on a day? */
export type Ask = Readonly<{ materialId: string; day: LocalDate }>;

/** knownOn: the day it is looked at from (a past day's price may lie between sightings). every: stale offers too, also where fresh ones cover any quantity. */
export type AskedOf = Readonly<{ valuation: Valuation; knownOn: LocalDate; every: boolean }>;

const days = (some: readonly LocalDate[]) => Prisma.sql`${[...some]}::text[]::date[]`;
const ids = (some: readonly string[]) => Prisma.sql`${[...some]}::text[]::uuid[]`;

/**
 * What is asked, with the days it is answered from. last: a day ahead of today counts as today (R11). The days are columns
 * because the row policy lets only plain comparisons reach an index.
 */
function askedTable(asks: readonly Ask[], { valuation, knownOn }: AskedOf): Prisma.Sql {
  const { today, recheckDays } = valuation;
  const last = asks.map(({ day }) => (day >= today ? plusDays(day, 1) : day));
  return Prisma.sql`SELECT g.material_id, g.day, g.last, m.purchase_unit AS unit, g.day - i.recheck AS fresh_from,
      g.day - greatest(i.recheck, ${DAY_LIMITS.undatedSpecial}::int) AS near_from,
      least(g.day + i.recheck * ${DAY_LIMITS.recheckIntervals}::int, ${knownOn}::date) AS soon_after
    FROM unnest(${ids(asks.map(({ materialId }) => materialId))}, ${days(asks.map(({ day }) => day))}, ${days(last)})
      AS g(material_id, day, last)
    JOIN material m ON m.workspace_id = current_workspace() AND m.id = g.material_id
    CROSS JOIN LATERAL (SELECT coalesce(m.recheck_days, ${recheckDays}::int) AS recheck) i`;
}

/** Stores whose plain prices in home currency are valued without fail: at home, their tax known from a day on. */
function sureTable({ valuation }: AskedOf): Prisma.Sql {
  const sure = [...valuation.stores.values()].flatMap((store) => {
    const region = valuation.regions.get(store.taxRegion);
    if (region === undefined || isForeign(store, valuation)) return [];
    return [{ id: store.id, from: region.completeFrom, before: store.archivedOn }];
  });
  return Prisma.sql`SELECT * FROM unnest(${ids(sure.map(({ id }) => id))}, ${days(sure.map(({ from }) => from))},
    ${sure.map(({ before }) => before)}::text[]::date[]) AS s(store_id, from_day, before_day)`;
}

/** A price that holds until the next one of its tier is seen, and what ends a store's offers: only the newest counts. */
const NEWEST_COUNTS = Prisma.sql`('shelf', 'quantity-break', 'none-left')`;

/** The newest of each kind and tier up to a day, those that have begun and those that have not, at one store or at all. */
function newestOf(asks: string, atStore: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`SELECT n.id FROM ${Prisma.raw(asks)} a CROSS JOIN LATERAL (
      SELECT DISTINCT ON (o.store_id, o.terms, o.tier, coalesce(o.from_day > a.day, false)) o.id
      FROM observation o
      WHERE o.workspace_id = current_workspace() AND o.material_id = a.material_id ${atStore} AND o.deleted_at IS NULL
        AND o.terms IN ${NEWEST_COUNTS} AND o.seen_on <= a.last
      ORDER BY o.store_id, o.terms, o.tier, coalesce(o.from_day > a.day, false), o.seen_on DESC, o.id DESC
    ) n`;
}

/**
 * Ids of the sightings that answer the asks: from them alone exposure, best offers and going prices come out as from the
 * whole history (R5-R7).
 * near: all seen within the recheck interval (and the days an undated special holds), of what only the newest counts that.
 * dated: older ones whose stated end has not come; pair: their stores, and stores with a fresh price only for more than one,
 * where older sightings decide too. anchored: some store at home sells any quantity at a fresh price that is sure to be
 * valued; then no stale price is ever used (R5, R7). bare: asks without one, for which every store's newest counts however
 * old, and for a past day the shelf prices seen soon after it (R7).
 */
export function candidateIds(asks: readonly Ask[], asked: AskedOf): Prisma.Sql {
  const { valuation, every } = asked;
  return Prisma.sql`WITH ask AS MATERIALIZED (${askedTable(asks, asked)}),
    sure AS MATERIALIZED (${sureTable(asked)}),
    near AS MATERIALIZED (
      SELECT a.*, o.* FROM ask a CROSS JOIN LATERAL (
        SELECT o.id, o.store_id, o.terms, o.tier, o.seen_on, o.from_day,
          o.terms = 'shelf' AND o.max_quantity IS NULL AND o.from_day IS NULL AND o.until_day IS NULL
            AND o.per_unit = a.unit AND o.currency = ${valuation.homeCurrency} AND o.tax_region IS NULL AS plain
        FROM observation o
        WHERE o.workspace_id = current_workspace() AND o.material_id = a.material_id AND o.deleted_at IS NULL
          AND o.seen_on BETWEEN a.near_from AND a.last
      ) o
    ),
    place AS MATERIALIZED (
      SELECT n.material_id, n.day, n.store_id, bool_or(n.terms = 'shelf') AS shelf,
        bool_or(n.terms = 'shelf' AND n.tier = 0) AS single,
        bool_and(n.plain) FILTER (WHERE n.terms IN ('shelf', 'none-left'))
          AND bool_or(n.plain AND n.tier = 0 AND n.seen_on >= n.fresh_from)
          AND bool_or(s.from_day <= n.near_from AND (s.before_day IS NULL OR s.before_day > n.day)) AS anchor
      FROM near n LEFT JOIN sure s ON s.store_id = n.store_id
      GROUP BY n.material_id, n.day, n.store_id
    ),
    anchored AS (SELECT DISTINCT material_id, day FROM place WHERE anchor),
    bare AS MATERIALIZED (
      SELECT * FROM ask a
      WHERE ${every} OR NOT EXISTS (SELECT 1 FROM anchored x WHERE x.material_id = a.material_id AND x.day = a.day)
    ),
    dated AS MATERIALIZED (
      SELECT a.*, o.id, o.store_id FROM ask a CROSS JOIN LATERAL (
        SELECT o.id, o.store_id FROM observation o
        WHERE o.workspace_id = current_workspace() AND o.material_id = a.material_id AND o.deleted_at IS NULL
          AND o.until_day >= a.day AND o.seen_on < a.near_from
      ) o
    ),
    pair AS MATERIALIZED (
      SELECT a.material_id, a.day, a.last, p.store_id FROM place p JOIN ask a USING (material_id, day)
      WHERE p.shelf AND NOT p.single
      UNION SELECT material_id, day, last, store_id FROM dated
    )
    SELECT id FROM (
      SELECT DISTINCT ON (material_id, day, store_id, terms, tier, coalesce(from_day > day, false)) id
      FROM near WHERE terms IN ${NEWEST_COUNTS}
      ORDER BY material_id, day, store_id, terms, tier, coalesce(from_day > day, false), seen_on DESC, id DESC
    ) n
    UNION SELECT id FROM near WHERE terms NOT IN ${NEWEST_COUNTS} AND terms <> 'paid'
    UNION SELECT id FROM dated
    UNION ${newestOf("bare", Prisma.empty)}
    UNION ${newestOf("pair", Prisma.sql`AND o.store_id = a.store_id`)}
    UNION SELECT o.id FROM bare a CROSS JOIN LATERAL (
      SELECT o.id FROM observation o
      WHERE o.workspace_id = current_workspace() AND o.material_id = a.material_id AND o.deleted_at IS NULL
        AND o.terms = 'shelf' AND o.seen_on > a.day AND o.seen_on <= a.soon_after
    ) o`;
}
