import { getLocale } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { dayText } from "../../lib/show/day-text.ts";
import type { LoggedPrice } from "../../lib/show/logged-price.ts";
import { quantityText } from "../../lib/show/money-text.ts";
import { newId } from "../_forms/new-id.ts";
import type { Names } from "../_workspace/names-of.ts";
import { boughtOfIt } from "./actions.ts";
import { BoughtFields } from "./bought-fields.client.tsx";
import { logWords, unitWord } from "./words.ts";

/** "Bought n of it": offered for a price that is an offer; the first need to come is chosen to begin with. */
export async function BoughtForm(
  props: Readonly<{ observation: Observation; logged: LoggedPrice; material: Material; names: Names }>,
) {
  const { observation, logged, material, names } = props;
  const locale = await getLocale();
  const words = logWords(locale);
  const unit = material.purchaseUnit;
  const first = logged.needs[0];
  const limit = logged.offer?.maxQuantity;
  const start = first ? (limit?.lessThan(first.open) ? limit : first.open).toFixed() : "";
  const choices = [
    ...logged.needs.map((need) => ({
      value: need.requirementId,
      label: words.needLine(
        names.project(need.projectId),
        quantityText(need.open, locale),
        unitWord(unit, need.open.toFixed()),
        dayText(need.neededBy, locale),
      ),
    })),
    { value: "", label: words.forNone },
  ];
  return (
    <BoughtFields
      action={boughtOfIt}
      id={newId()}
      locale={locale}
      start={start}
      unit={unitWord(unit, "2")}
      choices={choices}
      hidden={{
        observationId: observation.id,
        materialId: material.id,
        storeId: observation.storeId,
        terms: observation.terms,
        orderedOn: observation.seenOn,
      }}
    />
  );
}
