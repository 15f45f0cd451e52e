import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { newId } from "../../_forms/new-id.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { type Choice, ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { More } from "../../_ui/more.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { eventForm } from "../event-actions.ts";

type EventFormProps = Readonly<{
  lotId: string;
  kind: "drawn" | "allocated";
  button: string;
  main?: boolean;
  quantity: string;
  unit: string;
  choices: readonly Choice[];
  day: LocalDate;
}>;

/** One thing to happen to a lot: how many, for what; the day and a reason where it was not today. */
export async function EventForm({ lotId, kind, button, main, quantity, unit, choices, day }: EventFormProps) {
  const t = await getTranslations("stock");
  return (
    <Form action={eventForm} id={newId()} faultsTitle={t("faultsTitle")}>
      <input type="hidden" name="lotId" value={lotId} />
      <input type="hidden" name="kind" value={kind} />
      <AmountField
        name="quantity"
        label={t("howMany")}
        start={quantity}
        beside={unit}
        locale={await getLocale()}
        words={await amountWords()}
        required
      />
      <ChoiceField
        name="requirementId"
        label={t("requirement")}
        choices={choices}
        start={choices[0]?.value ?? ""}
      />
      <More title={t("anotherDay")}>
        <DayField name="on" label={t("on")} start={day} />
        <Field name="reason" label={t("reason")} />
      </More>
      <Button kind={main ? "main" : "plain"} pending={t("saving")} wide>
        {button}
      </Button>
    </Form>
  );
}
