import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import type { Load } from "../stock/load-weight.ts";
import { lyingIn, lyingOn } from "../stock/lying.ts";
import type { Place } from "../stock/place.ts";
import { inSnapshot, type Scope } from "./client.ts";
import { byId, stockWithin } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { everIn, placesWithin, placeWithin } from "./place-rows.ts";

/** A place and what lies in it on a day, lot by lot. */
export type PlaceContents = Readonly<{ place: Place; loads: readonly (Load & { lotId: string })[] }>;

/**
 * Every place, archived ones too where something lies there, with what lies in it at the end of a day; `materials`: those of the
 * stock. `roomOf`, `fitsIn` and `loadWeight` (lib/stock) say how full it is, what fits, and what it weighs.
 */
export function placeContents(
  scope: Scope,
  day: LocalDate,
): Promise<Readonly<{ places: readonly PlaceContents[]; materials: ReadonlyMap<string, Material> }>> {
  return inSnapshot(scope, async (tx) => {
    const { lots, events } = await stockWithin(tx, Prisma.sql`true`);
    const materials = byId(
      await materialsWithin(
        tx,
        lots.map(({ materialId }) => materialId),
      ),
    );
    const own = groupedBy(events, ({ lotId }) => lotId);
    const lying = lots.flatMap((lot) => {
      const material = materials.get(lot.materialId);
      if (material === undefined) return [];
      return lyingOn(lot, own.get(lot.id) ?? [], day).map((one) => ({ ...one, lotId: lot.id, material }));
    });
    const inPlace = groupedBy(lying, ({ placeId }) => placeId ?? "");
    const places = (await placesWithin(tx)).map(
      (place): PlaceContents => ({
        place,
        loads: (inPlace.get(place.id) ?? []).map(({ lotId, material, quantity }) => ({
          lotId,
          material,
          quantity,
        })),
      }),
    );
    const shown = places.filter(({ place, loads }) => place.archivedOn === null || loads.length > 0);
    return { places: shown, materials };
  });
}

/** One place, an archived one too, with what lies in it at the end of a day; null: not there. */
export async function contentsOfPlace(
  scope: Scope,
  id: string,
  day: LocalDate,
): Promise<PlaceContents | null> {
  return inSnapshot(scope, async (tx) => {
    const place = await placeWithin(tx, id);
    if (place === null) return null;
    const { lots, events } = await stockWithin(tx, everIn(id));
    const materials = byId(
      await materialsWithin(
        tx,
        lots.map(({ materialId }) => materialId),
      ),
    );
    const own = groupedBy(events, ({ lotId }) => lotId);
    const loads = lots.flatMap((lot) => {
      const material = materials.get(lot.materialId);
      const quantity = lyingIn(lot, own.get(lot.id) ?? [], day, id);
      return material === undefined || quantity.isZero() ? [] : [{ lotId: lot.id, material, quantity }];
    });
    return { place, loads };
  });
}
