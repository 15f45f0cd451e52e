import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate } from "../../../lib/calendar/local-date.ts";
import type { WhySaving } from "../../../lib/savings/why-saving.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { moneyText } from "../../../lib/show/money-text.ts";
import { type WhyStep, whySteps } from "../../../lib/show/savings-why.ts";
import { Below, NotKnown } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";

/** The sum behind a saving, line by line, each with how it came about. */
export async function Steps({ why, currency }: Readonly<{ why: WhySaving; currency: string }>) {
  const t = await getTranslations("savingWhy");
  const locale = await getLocale();
  const { row, cost } = why;
  const isUsed = row.kind === "drawn" || row.kind === "held";
  const came = row.received;
  const how = ({ step, values }: WhyStep): string | null => {
    if (step === "valueUse" || step === "valueBought")
      return t("timesHow", {
        price: values.price ?? "",
        quantity: values.quantity ?? "",
        condition: values.condition ?? "one",
      });
    if (step === "received")
      return came === null
        ? null
        : t("receivedHow", {
            amount: moneyText(came, locale),
            currency: came.currency,
            day: row.on === null ? "" : dayText(row.on, locale),
          });
    if (step === "cost")
      return t("costHow", {
        charged: values.charged ?? "",
        quantity: values.quantity ?? "",
        cost: values.cost ?? "",
      });
    if (step === "carrying")
      return t("carryingHow", {
        charged: values.charged ?? "",
        quantity: values.quantity ?? "",
        whole: values.whole ?? "",
      });
    if (step === "strict")
      return t("strictHow", {
        cost: values.cost ?? "",
        need: values.need ?? "",
        quantity: values.quantity ?? "",
        condition: values.condition ?? "one",
      });
    return step === "storage" || step === "discount" || step === "timing" ? t(`${step}How`) : null;
  };
  const name = ({ step, values }: WhyStep) =>
    step === "valueUse" || step === "valueBought"
      ? t(step, { day: isLocalDate(values.day) ? dayText(values.day, locale) : "" })
      : t(step);
  const unknown = <NotKnown>{t("goingNone")}</NotKnown>;
  return (
    <Part title={t("formula")} note={isUsed ? t("formulaUsed") : t("formulaLeft")}>
      <Table
        caption={t("formula")}
        captionHidden
        least="20rem"
        columns={[
          { key: "step", label: t("step") },
          { key: "amount", label: t("amount", { currency }), figures: true },
        ]}
        rows={whySteps(why, locale).map((one) => ({
          key: one.step,
          faint: one.part,
          cells: [
            <>
              {one.step === "saving" ? <strong>{name(one)}</strong> : name(one)}
              {how(one) === null ? null : <Below>{how(one)}</Below>}
            </>,
            one.amount ?? (one.step === "carrying" && cost.known ? "–" : unknown),
          ],
        }))}
      />
    </Part>
  );
}
