import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { materialFacts } from "../../../lib/data/facts.ts";
import { project } from "../../../lib/data/projects.ts";
import { salvage } from "../../../lib/data/salvage.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import type { LotOnDay } from "../../../lib/show/lot-text.ts";
import { quantityText } from "../../../lib/show/money-text.ts";
import { salvageLines, salvageRow } from "../../../lib/show/salvage-text.ts";
import { Caution } from "../../_ui/notice.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import style from "../[id]/lot.module.css";
import { Replacement } from "./salvage-table.tsx";

/** On a salvaged lot's page: where it came from, what it took, its replacement value, and that it serves only who accepts it. */
export async function SalvagePart({ lot, day }: Readonly<{ lot: LotOnDay; day: LocalDate }>) {
  if (lot.lot.origin !== "salvaged") return null;
  const t = await getTranslations("salvage");
  const locale = await getLocale();
  const units = await unitWords();
  const scope = await scopeSeen();
  const [counted, facts] = await Promise.all([
    salvage(scope, lot.lot.id),
    materialFacts(scope, lot.lot.materialId, day),
  ]);
  const material = facts?.materials.get(lot.lot.materialId);
  if (facts === null || material === undefined) return null;
  const going = goingPriceOn(day, facts.observations, material, facts.valuation);
  const worth = salvageRow(lot, going, locale);
  const from = counted?.detail.projectId ? await project(scope, counted.detail.projectId) : null;
  const lines = counted === null ? null : salvageLines(counted.detail, locale);
  const quantity = quantityText(lot.lot.quantity, locale);
  const unit = units.of(lot.unit, lot.lot.quantity.toFixed());
  const rows: readonly (readonly [string, React.ReactNode])[] = [
    ...(lines === null || counted === null
      ? []
      : ([
          [t("from"), [counted.detail.reclaimedFrom, from?.name].filter(Boolean).join(", ")],
          ...(lines.tally === ""
            ? []
            : [
                [
                  t("tally"),
                  t("tallySum", { tally: lines.tally, pieces: lines.pieces, quantity, unit }),
                ] as const,
              ]),
          [t("labour", { hours: lines.hours, rate: lines.rate }), lines.labour],
          [t("hauling"), lines.hauling],
          [t("purchasePrice"), lines.purchasePrice],
          [t("whole"), `${lines.currency} ${lines.whole}`],
        ] as const)),
    [t("condition"), worth.condition],
    [t("replacement", { currency: facts.valuation.homeCurrency }), <Replacement key="r" row={worth} />],
  ];
  return (
    <Part id="salvaged" title={t("part")} note={t("usedOnly")}>
      <dl className={style.facts}>
        {rows.map(([line, value]) => (
          <div key={line}>
            <dt>{line}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p>
        {counted === null ? null : (
          <>
            <Link href={`/stock/salvage/${lot.lot.id}`}>{t("correct")}</Link>
            {" · "}
          </>
        )}
        <Link href={`/stock/salvage/keep-or-dump?lot=${lot.lot.id}`}>{t("choiceLink")}</Link>
      </p>
      <Caution>{t("cautionOld")}</Caution>
    </Part>
  );
}
