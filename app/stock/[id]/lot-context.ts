import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { StoredEvent } from "../../../lib/data/stock-events.ts";
import type { Material } from "../../../lib/materials/material.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import type { LotMoreText } from "../../../lib/show/lot-more.ts";
import type { LotOnDay } from "../../../lib/show/lot-text.ts";
import type { NeedText } from "../../../lib/show/needs-of.ts";
import type { Names } from "../../_workspace/names-of.ts";
import type { Places } from "../place-choices.ts";

/** What the forms of a lot's page are drawn from. events: live ones. needs: those the material serves. projectOf: by requirement. */
export type LotContext = Readonly<{
  lot: LotOnDay;
  events: readonly StoredEvent[];
  material: Material;
  valuation: Valuation;
  more: LotMoreText;
  needs: readonly NeedText[];
  names: Names;
  projectOf: ReadonlyMap<string, string>;
  places: Places;
  day: LocalDate;
}>;
