import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { PROJECT_STATUSES, type Project } from "../../lib/projects/project.ts";
import { statusOn } from "../../lib/projects/revisions.ts";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { DayField, Field } from "../_ui/field.client.tsx";
import { amountWords } from "../_words/amount-words.ts";

/** The fields of a project, for a new one (null) and for a change. */
export async function ProjectFields({
  project,
  currency,
  today,
}: Readonly<{ project: Project | null; currency: string; today: LocalDate }>) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const status = (project === null ? null : statusOn(project, today)) ?? "live";
  return (
    <>
      <Field name="name" label={t("name")} hint={t("nameHint")} start={project?.name} required />
      <ChoiceField
        name="status"
        label={t("status")}
        start={status}
        choices={PROJECT_STATUSES.map((value) => ({ value, label: t(`statuses.${value}`) }))}
      />
      <input type="hidden" name="statusBefore" value={project === null ? "" : status} />
      <DayField name="statusFrom" label={t("statusFrom")} hint={t("statusFromHint")} />
      <AmountField
        name="budget"
        label={t("budget")}
        hint={t("budgetHint", { currency })}
        start={project?.budget?.amount.toFixed()}
        beside={currency}
        locale={locale}
        words={await amountWords()}
      />
      <Field name="note" label={t("note")} rows={3} start={project?.note ?? ""} />
    </>
  );
}
