import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { offerFacts } from "../../../../lib/data/facts.ts";
import { storeLevels } from "../../../../lib/exposure/store-levels.ts";
import { comparisonBasis } from "../../../../lib/show/comparison-basis.ts";
import { levelText } from "../../../../lib/show/index-text.ts";
import { Below, NotKnown } from "../../../_ui/money-text.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { basisWords } from "../../../_words/basis-words.ts";
import { namesOf } from "../../../_workspace/names-of.ts";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";

/** How dear a store is beside each other one, by two index formulas, each named. */
export async function Levels({ storeId }: Readonly<{ storeId: string }>) {
  const t = await getTranslations("levels");
  const locale = await getLocale();
  const day = await today();
  const facts = await offerFacts(await scopeSeen(), day);
  const levels = storeLevels(storeId, day, facts);
  const names = namesOf(facts);
  const basis = (await basisWords())(comparisonBasis("required", facts.valuation, day, locale));
  return (
    <Part title={t("title")} note={`${t("note")} ${basis}`}>
      {levels.length === 0 ? (
        <p>{t("none")}</p>
      ) : (
        <Table
          caption={t("title")}
          captionHidden
          cards
          least="34rem"
          columns={[
            { key: "store", label: t("store") },
            { key: "fisher", label: t("fisher"), figures: true },
            { key: "jevons", label: t("jevons"), figures: true },
            { key: "materials", label: t("materials"), figures: true },
          ]}
          rows={levels.map((level) => ({
            key: level.againstStoreId,
            cells: [
              <Link key="s" href={`/settings/stores/${level.againstStoreId}`}>
                {names.store(level.againstStoreId)}
              </Link>,
              level.fisher === null ? (
                <NotKnown key="f">{t("noneRequired")}</NotKnown>
              ) : (
                levelText(level.fisher, locale)
              ),
              level.jevons === null ? "" : levelText(level.jevons, locale),
              <>
                {level.materials}
                <Below>{t("required", { count: level.required })}</Below>
              </>,
            ],
          }))}
        />
      )}
    </Part>
  );
}
