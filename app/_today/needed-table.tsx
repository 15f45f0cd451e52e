import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { LISTED_DAYS, type NeededSoon, neededWithin } from "../../lib/show/today.ts";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Part } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";

/** So many stand in sight; the later ones are folded away. */
const IN_SIGHT = 6;

async function Needs({
  needs,
  names,
  caption,
}: Readonly<{ needs: readonly NeededSoon[]; names: Names; caption: string }>) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const units = await unitWords();
  return (
    <Table
      caption={caption}
      captionHidden
      cards
      least="34rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "project", label: t("project") },
        { key: "open", label: t("open"), figures: true },
        { key: "by", label: t("neededBy"), figures: true },
        { key: "finish", label: t("toFinish"), figures: true },
      ]}
      rows={needs.map((need) => ({
        key: need.requirementId,
        cells: [
          <Link key="m" href={`/materials/${need.materialId}`}>
            {names.material(need.materialId)}
          </Link>,
          <Link key="p" href={`/projects/${need.projectId}`}>
            {names.project(need.projectId)}
          </Link>,
          `${need.open} ${units.of(need.unit, need.openExact)}`,
          <>
            {dayText(need.neededBy, locale)}
            <Below>
              {need.daysLeft < 0
                ? t("daysOver", { days: Math.abs(need.daysLeft) })
                : t("daysLeft", { days: need.daysLeft })}
            </Below>
          </>,
          need.toFinish ?? <NotKnown key="n">{t("noPrice")}</NotKnown>,
        ],
      }))}
    />
  );
}

/** Open requirements whose day is near or past, the earliest first. Nothing when there are none. */
export async function NeededTable({
  exposure,
  names,
}: Readonly<{ exposure: WorkspaceExposure; names: Names }>) {
  const t = await getTranslations("today");
  const needs = neededWithin(exposure, await getLocale());
  if (needs.length === 0) return null;
  const [first, later] = [needs.slice(0, IN_SIGHT), needs.slice(IN_SIGHT)];
  return (
    <Part title={t("neededTitle")} note={t("neededNote", { days: LISTED_DAYS })}>
      <Needs needs={first} names={names} caption={t("neededTitle")} />
      {later.length > 0 ? (
        <details>
          <summary>{t("neededLater", { count: later.length })}</summary>
          <Needs needs={later} names={names} caption={t("neededLaterTitle")} />
        </details>
      ) : null}
    </Part>
  );
}
