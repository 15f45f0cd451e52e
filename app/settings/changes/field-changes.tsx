import { useTranslations } from "next-intl";
import type { FieldChange } from "../../../lib/show/change-rows.ts";

/** The fields a change touched, folded away: before and after, as stored. */
export function FieldChanges({ changes }: Readonly<{ changes: readonly FieldChange[] }>) {
  const t = useTranslations("settings.changes");
  if (changes.length === 0) return null;
  return (
    <details>
      <summary>{t("fields", { count: changes.length })}</summary>
      <ul>
        {changes.map(({ field, before, after }) => (
          <li key={field}>
            {t("field", { field, before: before ?? t("nothing"), after: after ?? t("nothing") })}
          </li>
        ))}
      </ul>
    </details>
  );
}
