import { getLocale, getTranslations } from "next-intl/server";
import { isCurrencyCode } from "../../../../../lib/money/currencies.ts";
import { money } from "../../../../../lib/money/money.ts";
import type { ChangedSince } from "../../../../../lib/savings/changed-since.ts";
import type { SavedFigures } from "../../../../../lib/savings/saved-figures.ts";
import type { SavingRow } from "../../../../../lib/savings/savings-figures.ts";
import { moneyText } from "../../../../../lib/show/money-text.ts";
import { Part } from "../../../../_ui/page-head.tsx";
import { Table } from "../../../../_ui/table.tsx";

type SinceProps = Readonly<{ since: ChangedSince; names: Readonly<Record<string, string>> }>;

/** What is other now than when a report was kept: the headline then and now, and the rows that differ. */
export async function Since({ since, names }: SinceProps) {
  const t = await getTranslations("savingsReport");
  const s = await getTranslations("savings");
  const locale = await getLocale();
  const { before, after, rows } = since;
  const figure = (figures: SavedFigures, of: "realised" | "strict" | "unrealised") =>
    isCurrencyCode(figures.currency)
      ? `${moneyText(money(figures[of], figures.currency), locale, { signed: true })} ${figures.currency}`
      : figures[of];
  const saving = (row: SavingRow | null, none: string) =>
    row === null
      ? none
      : row.saving === null
        ? s("notKnown")
        : moneyText(row.saving, locale, { signed: true });
  const same =
    rows.length === 0 &&
    (["realised", "strict", "unrealised"] as const).every((of) => before[of] === after[of]);
  if (same)
    return (
      <Part title={t("since")} note={t("sinceSame")}>
        {null}
      </Part>
    );
  const named = ({ before: old, after: fresh }: ChangedSince["rows"][number]) =>
    names[old?.materialId ?? fresh?.materialId ?? ""] ?? "–";
  return (
    <Part title={t("since")} note={t("sinceChanged")}>
      <Table
        caption={t("since")}
        captionHidden
        least="24rem"
        columns={[
          { key: "what", label: t("summaryWhat") },
          { key: "then", label: t("then"), figures: true },
          { key: "now", label: t("now"), figures: true },
        ]}
        rows={[
          ...(
            [
              ["realised", t("keyRealised")],
              ["strict", t("keyStrict")],
              ["unrealised", t("keyHeld")],
            ] as const
          ).map(([of, label]) => ({
            key: of,
            cells: [<strong key="label">{label}</strong>, figure(before, of), figure(after, of)],
          })),
          ...rows.map((change) => ({
            key: change.key,
            cells: [
              named(change),
              saving(change.before, t("sinceNew")),
              saving(change.after, t("sinceGone")),
            ],
          })),
        ]}
      />
    </Part>
  );
}
