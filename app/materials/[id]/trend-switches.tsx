import { getTranslations } from "next-intl/server";
import { SwitchLinks } from "../../_ui/switch-links.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { PERIODS, type View } from "./view.ts";

const PERIOD_WORDS = { year: "year", "three-years": "threeYears", all: "all" } as const;

/** Per what, in which currency, for how long. */
export async function TrendSwitches({ view }: Readonly<{ view: View }>) {
  const t = await getTranslations("materials.page");
  const units = await unitWords();
  const { asked, href } = view;
  return (
    <div>
      <SwitchLinks
        label={t("unit")}
        choices={view.units.map((unit) => ({
          href: href({ per: unit }),
          label: units.one(unit),
          current: unit === asked.unit,
        }))}
      />
      <SwitchLinks
        label={t("currency")}
        choices={view.currencies.map((currency) => ({
          href: href({ in: currency }),
          label: currency === "home" ? view.home : currency === "as-seen" ? t("asSeen") : currency,
          current: currency === asked.currency,
        }))}
      />
      <SwitchLinks
        label={t("period")}
        choices={PERIODS.map(({ word, days }) => ({
          href: href({ period: word }),
          label: t(PERIOD_WORDS[word]),
          current: days === asked.days,
        }))}
      />
    </div>
  );
}
