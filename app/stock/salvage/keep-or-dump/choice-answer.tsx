import { getTranslations } from "next-intl/server";
import type { ChoiceText } from "../../../../lib/show/choice-text.ts";
import { NotKnown } from "../../../_ui/money-text.tsx";
import { Notice } from "../../../_ui/notice.tsx";
import { said } from "../../../_ui/said.tsx";
import { Table } from "../../../_ui/table.tsx";

/** Which way is better by how much, and every line of each; what is not known says what would make it known. */
export async function ChoiceAnswer({ text, currency }: Readonly<{ text: ChoiceText; currency: string }>) {
  const t = await getTranslations("salvage");
  const { better } = text;
  const total = (way: ChoiceText["ways"][number]) => ({
    key: "total",
    cells: [t("choiceLines.total"), way.total ?? <NotKnown key="t">–</NotKnown>],
  });
  return (
    <>
      <Notice>
        <p>
          {better === null
            ? t("choiceUnknown")
            : better.tie
              ? t("choiceTie", { choice: better.choice, over: better.over })
              : t.rich("choiceBetter", {
                  choice: better.choice,
                  over: better.over,
                  by: better.by,
                  currency,
                  b: said,
                })}{" "}
          {t("choiceNotPromise")}
        </p>
      </Notice>
      {text.ways.map((way) => (
        <Table
          key={way.choice}
          caption={t(`choices.${way.choice}`)}
          least="16rem"
          columns={[
            { key: "line", label: t("line") },
            { key: "amount", label: currency, figures: true },
          ]}
          rows={[
            ...way.lines.map(({ key, amount }) => ({
              key,
              cells: [
                t(`choiceLines.${key}`),
                amount ?? <NotKnown key="n">{t(`choiceMissing.${key}`)}</NotKnown>,
              ],
            })),
            total(way),
          ]}
        />
      ))}
    </>
  );
}
