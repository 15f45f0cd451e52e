import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../lib/show/day-text.ts";
import type { NeedText } from "../../lib/show/needs-of.ts";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";
import type { LotNeed } from "./lot-field-props.ts";

/** Needs as choices of a field: the project, how much is open, by when. */
export async function needChoices(needs: readonly NeedText[], names: Names): Promise<LotNeed[]> {
  const t = await getTranslations("stock");
  const units = await unitWords();
  const locale = await getLocale();
  return needs.map((need) => ({
    value: need.requirementId,
    materialIds: need.materialIds,
    open: need.open.exact,
    label: t("requirementLine", {
      project: names.project(need.projectId),
      open: need.open.text,
      unit: units.of(need.unit, need.open.exact),
      day: dayText(need.neededBy, locale),
    }),
  }));
}
