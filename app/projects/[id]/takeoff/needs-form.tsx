import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import { lotsOf } from "../../../../lib/data/lots.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import { liveEventsOfLots } from "../../../../lib/data/stock-events.ts";
import type { Quantity } from "../../../../lib/measure/units.ts";
import { linesBought } from "../../../../lib/show/lines-bought.ts";
import type { Takeoff } from "../../../../lib/takeoff/takeoff-entry.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { DayField } from "../../../_ui/field.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { keepTakeoffForm } from "./actions.ts";
import type { NeedBefore } from "./asked-takeoff.ts";
import { NeedLine } from "./need-line.tsx";

type NeedsFormProps = Readonly<{
  projectId: string;
  takeoff: Takeoff;
  /** The takeoff that is reckoned again; null for a new one. */
  reopen: string | null;
  before: ReadonlyMap<string, NeedBefore>;
  /** What was typed that one gives, of a takeoff opened again. */
  yields: ReadonlyMap<string, Quantity>;
  day: LocalDate;
}>;

/** Each line with the material it is bought as, its waste, and free stock beside; all of it becomes requirements in one step. */
export async function NeedsForm({ projectId, takeoff, reopen, before, yields, day }: NeedsFormProps) {
  const t = await getTranslations("takeoff");
  const scope = await scopeSeen();
  const [materials, lots] = await Promise.all([materialsOf(scope), lotsOf(scope)]);
  const events = await liveEventsOfLots(
    scope,
    lots.map(({ id }) => id),
  );
  const kept = new Set([...before.values()].map(({ materialId }) => materialId));
  const usable = materials.filter((one) => one.archivedOn === null || kept.has(one.id));
  const lines = linesBought(takeoff.result.lines, usable, { lots, events, day, yields }, await getLocale());
  const [first] = before.values();
  return (
    <Part title={t("needs")} note={t("needsNote")}>
      <Form action={keepTakeoffForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="projectId" value={projectId} />
        <input type="hidden" name="takeoff" value={takeoff.stored} />
        {reopen === null ? null : <input type="hidden" name="reopen" value={reopen} />}
        {lines.map((line, at) => (
          <NeedLine
            key={line.line.key}
            bought={line}
            at={at}
            before={before.get(line.line.key) ?? null}
            holds={yields.get(line.line.key) ?? null}
            system={takeoff.system}
          />
        ))}
        <DayField name="neededBy" label={t("neededBy")} start={first?.neededBy ?? ""} />
        <Button pending={t("saving")}>{reopen === null ? t("turn") : t("turnAgain")}</Button>
      </Form>
      <p>{reopen === null ? t("freeNote") : `${t("reopenNote")} ${t("freeNote")}`}</p>
      <Caution>{t("caution")}</Caution>
    </Part>
  );
}
