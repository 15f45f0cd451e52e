import { getLocale, getTranslations } from "next-intl/server";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { totalsText } from "../../lib/show/exposure-totals-text.ts";
import { jobsStillBuying, type Pressing, pressing } from "../../lib/show/today.ts";
import { said } from "../_ui/said.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";

/** The one question of the screen, answered in words: how much live jobs still have to buy, and what presses most. */
export async function Answer({ live, names }: Readonly<{ live: WorkspaceExposure; names: Names }>) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const totals = totalsText(live.totals, locale);
  const jobs = jobsStillBuying(live);
  if (live.projects.length === 0) return t("noLive");
  if (live.projects.every((project) => project.lines.length === 0)) return t("noNeeds");
  if (jobs === 0) return t("nothingOpen");
  return (
    <>
      {t.rich("answer", {
        complete: totals.complete ? "yes" : "no",
        amount: totals.aboutToFinish,
        currency: totals.currency,
        jobs,
        b: said,
      })}{" "}
      <Presses fact={pressing(live, locale)} names={names} locale={locale} />
    </>
  );
}

async function Presses({ fact, names, locale }: Readonly<{ fact: Pressing; names: Names; locale: string }>) {
  const t = await getTranslations("today");
  const units = await unitWords();
  if (fact.kind === "none") return t("calm");
  if (fact.kind === "stale") return t.rich("stale", { money: fact.money, prices: fact.prices, b: said });
  if (fact.kind === "unpriced") return t("unpriced", { lines: fact.lines });
  if (fact.kind === "lapsing")
    return t.rich("lapsing", {
      money: fact.money,
      material: names.material(fact.materialId),
      store: names.store(fact.storeId),
      daysLeft: fact.daysLeft,
      day: dayText(fact.on, locale),
      b: said,
    });
  const { need } = fact;
  return t.rich(need.daysLeft < 0 ? "overdue" : "needed", {
    material: names.material(need.materialId),
    project: names.project(need.projectId),
    open: need.open,
    unit: units.of(need.unit, need.openExact),
    daysLeft: need.daysLeft,
    day: dayText(need.neededBy, locale),
    b: said,
  });
}
