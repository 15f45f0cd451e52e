import { getLocale, getTranslations } from "next-intl/server";
import { changesOf } from "../../../lib/data/changes.ts";
import { changedFields } from "../../../lib/show/changed-fields.ts";
import { momentText } from "../../../lib/show/moment-text.ts";
import { Table } from "../../_ui/table.tsx";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";

/** Everything that was ever written about a lot: who, when, what, before and after, as it is stored. */
export async function Changes({ lotId }: Readonly<{ lotId: string }>) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const { timeZone } = await workspaceSeen();
  const { items } = await changesOf(await scopeSeen(), { of: lotId });
  if (items.length === 0) return null;
  const list = (fields: readonly (readonly [string, string | null])[]) => (
    <ul>
      {fields
        .filter(([, value]) => value !== null)
        .map(([field, value]) => (
          <li key={field}>
            {field.replaceAll("_", " ")}: {value}
          </li>
        ))}
    </ul>
  );
  return (
    <details>
      <summary>{t("changes")}</summary>
      <Table
        caption={t("changes")}
        captionHidden
        cards
        least="44rem"
        columns={[
          { key: "when", label: t("when") },
          { key: "who", label: t("who") },
          { key: "what", label: t("what") },
          { key: "before", label: t("before") },
          { key: "after", label: t("after") },
        ]}
        rows={items.map((change) => {
          const fields = changedFields(change.before, change.after);
          return {
            key: change.id,
            cells: [
              momentText(change.at, locale, timeZone),
              change.actor,
              `${change.noun.replaceAll("_", " ")}: ${change.action}`,
              list(fields.map(({ field, before }) => [field, before])),
              list(fields.map(({ field, after }) => [field, after])),
            ],
          };
        })}
      />
    </details>
  );
}
