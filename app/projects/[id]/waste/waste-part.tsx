import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import { disposalsOf } from "../../../../lib/data/disposals.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import type { ProjectExposure } from "../../../../lib/exposure/exposure-figures.ts";
import type { Valuation } from "../../../../lib/prices/valuation.ts";
import { wasteRows, wasteTotalText } from "../../../../lib/show/waste-text.ts";
import { LinkButton } from "../../../_ui/link-button.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { KeyFigures, Part } from "../../../_ui/page-head.tsx";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { WasteTable } from "./waste-table.tsx";

type Props = Readonly<{
  projectId: string;
  project: ProjectExposure | undefined;
  valuation: Valuation;
  day: LocalDate;
}>;

/** On a project's page: what it spent on being rid of waste, beside the estimate and never in it. */
export async function WastePart({ projectId, project, valuation, day }: Props) {
  const t = await getTranslations("waste");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const [disposals, materials, archived] = await Promise.all([
    disposalsOf(scope, projectId),
    materialsOf(scope),
    materialsOf(scope, { archived: true }),
  ]);
  const known = new Map([...materials, ...archived].map((one) => [one.id, one]));
  const totals = project?.totals;
  const estimate = totals && { amount: totals.estimateAtCompletion, complete: totals.complete };
  const total = wasteTotalText(disposals, known, valuation, day, estimate ?? null, locale);
  const currency = valuation.homeCurrency;
  const record = <LinkButton href={`/projects/${projectId}/waste`}>{t("record")}</LinkButton>;
  if (total.count === 0)
    return (
      <Part id="waste" title={t("title")} note={t("none")}>
        {record}
      </Part>
    );
  const least = total.atLeast ? t("atLeast") : null;
  return (
    <Part id="waste" title={t("title")} note={t("note")}>
      <KeyFigures
        figures={[
          {
            key: "spent",
            label: t("spent"),
            value: total.spent,
            note: [
              total.unknown > 0 ? t("atLeast") : null,
              t("spentNote", { count: total.count, currency }),
              total.cash && t("spentCash", { cash: total.cash }),
            ]
              .filter(Boolean)
              .join(", "),
          },
          ...(total.estimate === null || total.together === null
            ? []
            : [
                { key: "estimate", label: t("estimate"), value: total.estimate },
                { key: "with", label: t("withDisposal"), value: total.together, note: least },
              ]),
        ]}
      />
      {total.unknown > 0 ? <p>{t("unknownCount", { count: total.unknown })}</p> : null}
      <WasteTable
        rows={wasteRows(disposals, known, valuation, day, locale)}
        projectId={projectId}
        currency={currency}
      />
      {record}
      <Caution>{t("caution")}</Caution>
    </Part>
  );
}
