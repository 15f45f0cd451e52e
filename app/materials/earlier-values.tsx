import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { EarlierObservation } from "../../lib/data/observations.ts";
import { momentText } from "../../lib/show/day-text.ts";
import { seenPrice } from "../../lib/show/seen-price.ts";
import { Below } from "../_ui/money-text.tsx";
import { Part } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { workspaceSeen } from "../_workspace/workspace-seen.ts";
import { seenWords } from "./seen-words.ts";

type EarlierValuesProps = Readonly<{ earlier: readonly EarlierObservation[]; day: LocalDate }>;

/** What a price said before each correction, the latest correction first. Nothing when it was never corrected. */
export async function EarlierValues({ earlier, day }: EarlierValuesProps) {
  const t = await getTranslations("materials.correct");
  const page = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  const { timeZone } = await workspaceSeen();
  const words = await seenWords();
  if (earlier.length === 0) return null;
  return (
    <Part title={t("earlier")}>
      <Table
        caption={t("earlier")}
        captionHidden
        cards
        least="36rem"
        columns={[
          { key: "when", label: t("when") },
          { key: "day", label: t("seenOn") },
          { key: "terms", label: t("terms") },
          { key: "tag", label: page("asOnTag") },
        ]}
        rows={earlier.toReversed().map(({ at, actor, reason, earlier: said }) => {
          const row = seenPrice(said, day, locale);
          return {
            key: at,
            cells: [
              <span key="when">
                {momentText(at, locale, timeZone)}
                <Below>{t("by", { who: actor, reason })}</Below>
              </span>,
              row.day,
              terms(row.terms),
              <span key="tag">
                {words.price(row)}
                <Below>{[...words.more(row), row.note].filter(Boolean).join(", ")}</Below>
              </span>,
            ],
          };
        })}
      />
    </Part>
  );
}
