import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { changesOf } from "../../../lib/data/changes.ts";
import { fieldChanges, nameOfChanged } from "../../../lib/show/change-rows.ts";
import { momentText } from "../../../lib/show/day-text.ts";
import { Below } from "../../_ui/money-text.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import type en from "../../_words/en.json";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { FieldChanges } from "./field-changes.tsx";

export const dynamic = "force-dynamic";
const EACH = 50;
type Noun = keyof typeof en.settings.changes.nouns;
type Action = keyof typeof en.settings.changes.actions;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.changes"))("title") };
}

/** The change log: who changed what, when, and what it said before. */
export default async function ChangesPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("settings.changes");
  const s = await getTranslations("settings");
  const locale = await getLocale();
  const { timeZone } = await workspaceSeen();
  const before = await asked(searchParams, "before");
  const cursor = before !== undefined && /^\d{1,18}$/.test(before) ? before : null;
  const { items, next } = await changesOf(await scopeSeen(), { limit: EACH, cursor });
  const noun = (word: string) => (t.has(`nouns.${word as Noun}`) ? t(`nouns.${word as Noun}`) : word);
  const action = (word: string) =>
    t.has(`actions.${word as Action}`) ? t(`actions.${word as Action}`) : word;
  return (
    <>
      <PageHead
        title={t("title")}
        answer={t("answer", { count: items.length })}
        up={<Link href="/settings">{s("back")}</Link>}
      />
      {items.length === 0 ? null : (
        <Table
          caption={t("title")}
          captionHidden
          cards
          columns={[
            { key: "when", label: t("when") },
            { key: "what", label: t("what") },
            { key: "fields", label: t("details") },
          ]}
          rows={items.map((change) => ({
            key: change.id,
            cells: [
              <span key="when">
                {momentText(change.at, locale, timeZone)}
                <Below>{change.actor}</Below>
              </span>,
              <span key="what">
                {noun(change.noun)} {action(change.action)}
                <Below>{nameOfChanged(change)}</Below>
              </span>,
              <FieldChanges key="fields" changes={fieldChanges(change)} />,
            ],
          }))}
        />
      )}
      {next === null ? null : (
        <p>
          <Link href={`/settings/changes?before=${next}`}>{t("older")}</Link>
        </p>
      )}
    </>
  );
}
