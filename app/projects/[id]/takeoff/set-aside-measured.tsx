import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import { lotsOf } from "../../../../lib/data/lots.ts";
import { liveEventsOfLots } from "../../../../lib/data/stock-events.ts";
import { takeoff } from "../../../../lib/data/takeoffs.ts";
import type { RequirementExposure } from "../../../../lib/exposure/exposure-figures.ts";
import { freeForNeeds } from "../../../../lib/show/free-for-needs.ts";
import { freeLots } from "../../../../lib/show/free-lots.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { PickField } from "../../../_ui/choice-field.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { isId } from "../../../_workspace/id-asked.ts";
import type { Names } from "../../../_workspace/names-of.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { setAsideMeasured } from "./set-aside-action.ts";

type SetAsideMeasuredProps = Readonly<{
  query: Query;
  lines: readonly RequirementExposure[];
  names: Names;
  day: LocalDate;
}>;

/** After a takeoff: free stock of what it came to, to be set aside at once. Nothing where there is none. */
export async function SetAsideMeasured({ query, lines, names, day }: SetAsideMeasuredProps) {
  const id = await asked(query, "takeoff");
  const scope = await scopeSeen();
  const found = isId(id) ? await takeoff(scope, id) : null;
  if (found === null) return null;
  const t = await getTranslations("takeoff");
  const locale = await getLocale();
  const units = await unitWords();
  const made = new Set(found.needs.map(({ requirementId }) => requirementId));
  const own = lines.filter((line) => made.has(line.requirementId));
  const lots = (
    await Promise.all(
      [...new Set(own.map(({ materialId }) => materialId))].map((materialId) =>
        lotsOf(scope, { materialId }),
      ),
    )
  ).flat();
  const events = await liveEventsOfLots(
    scope,
    lots.map((lot) => lot.id),
  );
  const offered = freeForNeeds(
    own,
    // A need that was just measured accepts no used material until it is turned on for it.
    freeLots(lots, events, day, locale).filter(({ used }) => !used),
    locale,
  );
  const [first] = offered;
  if (first === undefined) return null;
  const choices = offered.map(({ requirementId, lotId, materialId, unit, quantity }) => ({
    value: [requirementId, lotId, newId(), quantity.exact].join(" "),
    label: t("asideOne", {
      quantity: quantity.text,
      unit: units.of(unit, quantity.exact),
      name: names.material(materialId),
    }),
  }));
  return (
    <Part title={t("asideTitle")} note={t("asideNote")}>
      <Form action={setAsideMeasured} id={newId()} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="projectId" value={found.projectId} />
        <input type="hidden" name="on" value={day} />
        <PickField
          name="asides"
          label={t("asideLabel")}
          many
          starts={choices.map(({ value }) => value)}
          choices={choices}
        />
        <Button kind="plain" pending={t("saving")}>
          {t("asideDo")}
        </Button>
      </Form>
    </Part>
  );
}
