import { getLocale, getTranslations } from "next-intl/server";
import type { DepositsText } from "../../../lib/show/deposits-text.ts";
import { newId } from "../../_forms/new-id.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { ChoiceField, PickField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { More } from "../../_ui/more.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { depositForm, undoDepositForm } from "../deposit-actions.ts";

type Props = Readonly<{
  id: string;
  text: DepositsText;
  currency: string;
  today: string;
  /** The bill was taken back: nothing more happens to its deposits. */
  undone: boolean;
}>;

/** What became of it: so much given back or forfeited on a day. */
async function Happened({ id, text, currency, today }: Omit<Props, "undone">) {
  const t = await getTranslations("bills");
  const amounts = { locale: await getLocale(), words: await amountWords() };
  const open = text.deposits.filter(({ left }) => left !== null);
  const [first] = open;
  if (first === undefined) return null;
  return (
    <More title={t("becameTitle")}>
      <Form action={depositForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="billId" value={id} />
        {open.length === 1 ? (
          <input type="hidden" name="deposit" value={first.at} />
        ) : (
          <ChoiceField
            name="deposit"
            label={t("deposit")}
            choices={open.map(({ at, name }) => ({ value: `${at}`, label: name }))}
            start={`${first.at}`}
          />
        )}
        <PickField
          name="kind"
          label={t("becameOf")}
          starts={["given-back"]}
          choices={[
            { value: "given-back", label: t("became.given-back") },
            { value: "forfeited", label: t("became.forfeited") },
          ]}
        />
        <AmountField
          name="amount"
          label={t("amount")}
          hint={t("becameAmountHint")}
          start={first.left ?? ""}
          beside={currency}
          {...amounts}
        />
        <DayField name="on" label={t("becameOn")} start={today} />
        <Field name="note" label={t("note")} />
        <Button pending={t("saving")}>{t("becameSave")}</Button>
      </Form>
    </More>
  );
}

/** A bill's deposits that may come back: cash until they are forfeited, cost from that day. */
export async function Deposits({ id, text, currency, today, undone }: Props) {
  const t = await getTranslations("bills");
  return (
    <Part title={t("deposits")} note={t("depositsNote")}>
      <Table
        caption={t("deposits")}
        captionHidden
        cards
        columns={[
          { key: "deposit", label: t("deposit") },
          { key: "back", label: t("became.given-back"), figures: true },
          { key: "lost", label: t("became.forfeited"), figures: true },
          { key: "held", label: t("held"), figures: true },
        ]}
        rows={text.deposits.map(({ at, name, givenBack, forfeited, held }) => ({
          key: `${at}`,
          cells: [name, givenBack ?? "–", forfeited ?? "–", held ?? "–"],
        }))}
      />
      {text.cost === null ? null : <p>{t("costToday", { amount: text.cost, currency })}</p>}
      {text.events.map((event) => (
        <form key={event.id} action={undoDepositForm}>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="event" value={event.id} />
          <p>
            {t("becameLine", { ...event, note: event.note ?? "none" })}{" "}
            {undone ? null : <Button kind="quiet">{t("becameUndo", { day: event.day })}</Button>}
          </p>
        </form>
      ))}
      {undone ? null : <Happened id={id} text={text} currency={currency} today={today} />}
    </Part>
  );
}
