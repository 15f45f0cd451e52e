import { getLocale, getTranslations } from "next-intl/server";
import { changesOf } from "../../../lib/data/changes.ts";
import { fieldChanges } from "../../../lib/show/change-rows.ts";
import { momentText } from "../../../lib/show/day-text.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Table } from "../../_ui/table.tsx";
import type en from "../../_words/en.json";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { FieldChanges } from "../../settings/changes/field-changes.tsx";

type Noun = keyof typeof en.settings.changes.nouns;
type Action = keyof typeof en.settings.changes.actions;

/** Everything that was ever written about a lot: who, when, what, before and after, as it is stored. */
export async function Changes({ lotId }: Readonly<{ lotId: string }>) {
  const t = await getTranslations("stock");
  const c = await getTranslations("settings.changes");
  const locale = await getLocale();
  const { timeZone } = await workspaceSeen();
  const { items } = await changesOf(await scopeSeen(), { of: lotId });
  const noun = (word: string) => (c.has(`nouns.${word as Noun}`) ? c(`nouns.${word as Noun}`) : word);
  const action = (word: string) =>
    c.has(`actions.${word as Action}`) ? c(`actions.${word as Action}`) : word;
  if (items.length === 0) return null;
  return (
    <details>
      <summary>{t("changes")}</summary>
      <Table
        caption={t("changes")}
        captionHidden
        cards
        columns={[
          { key: "when", label: c("when") },
          { key: "what", label: c("what") },
          { key: "fields", label: c("details") },
        ]}
        rows={items.map((change) => ({
          key: change.id,
          cells: [
            <>
              {momentText(change.at, locale, timeZone)}
              <Below>{change.actor}</Below>
            </>,
            `${noun(change.noun)} ${action(change.action)}`,
            <FieldChanges key="fields" changes={fieldChanges(change)} />,
          ],
        }))}
      />
    </details>
  );
}
