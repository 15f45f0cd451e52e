import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { dayText, shortDayText } from "../../../lib/show/day-text.ts";
import type { RequirementRow } from "../../../lib/show/requirement-row.ts";
import type { StandInsOfNeed } from "../../../lib/show/stand-ins.ts";
import { Age } from "../../_ui/age.tsx";
import { Below, NotKnown } from "../../_ui/money-text.tsx";
import { TapeGauge } from "../../_ui/tape-gauge.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";
import { StandsIn } from "./stands-in.tsx";

/** A line under a figure when there is something to say. */
function under(text: string | null) {
  return text === null ? null : <Below>{text}</Below>;
}

/** What the best offers in force ask, from whom, how old, and until when. */
async function Now({ row, names }: Readonly<{ row: RequirementRow; names: Names }>) {
  const t = await getTranslations("projects");
  if (row.now === null) return row.isOpen ? <NotKnown>{t("noPrice")}</NotKnown> : null;
  const { each, ageDays, stale, storeIds, lapsesOn } = row.now;
  return (
    <>
      {each}
      <Below>{storeIds.map(names.store).join(", ")}</Below>
      <Below>
        <Age days={ageDays} stale={stale} />
        {lapsesOn === null ? null : `, ${t("lapses", { day: shortDayText(lapsesOn, await getLocale()) })}`}
      </Below>
    </>
  );
}

/** The cells of one requirement: the gauge under its name, figures with what must be said about them below. */
export async function needCells(
  row: RequirementRow,
  names: Names,
  closed: boolean,
  standIns: StandInsOfNeed = { now: [], lockedIn: [] },
) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const units = await unitWords();
  const quantity = (text: string | null) => (text === null ? null : { quantity: text });
  const onOrder = quantity(row.onOrder);
  const surplus = quantity(row.surplus);
  const uncovered = quantity(row.uncovered);
  const lacksPrice = row.uncovered !== null && row.toFinish === null;
  return [
    <>
      <Link href={`/projects/${row.projectId}/needs/${row.requirementId}`}>
        {names.material(row.materialId)}
      </Link>
      {closed ? <Below>{t("closed")}</Below> : null}
      {row.remarks.map((remark) => (
        <Below key={remark}>{t(`remarkTexts.${remark}`)}</Below>
      ))}
      <TapeGauge share={row.lockedPercent / 100} label={t("gauge", { percent: row.lockedPercent })} />
    </>,
    <>
      {row.needed} {units.of(row.unit, row.neededExact)}
      <Below>{t("byDay", { day: dayText(row.neededBy, locale) })}</Below>
    </>,
    <>
      {row.lockedIn}
      <StandsIn standIns={standIns.lockedIn} names={names} />
      {under(onOrder && t("onOrder", onOrder))}
      {under(surplus && t("surplus", surplus))}
    </>,
    <>
      {row.open}
      {under(uncovered && !lacksPrice ? t("uncovered", uncovered) : null)}
    </>,
    row.paidEach ?? <NotKnown>{t("nothingPaid")}</NotKnown>,
    <>
      <Now row={row} names={names} />
      <StandsIn standIns={standIns.now} names={names} />
    </>,
    row.toFinish ??
      (row.isOpen ? <NotKnown>{t("noPrice")}</NotKnown> : <NotKnown>{closed ? "" : t("covered")}</NotKnown>),
  ];
}
