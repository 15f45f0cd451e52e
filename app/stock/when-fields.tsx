import { getTranslations } from "next-intl/server";
import { DayField, Field } from "../_ui/field.client.tsx";
import { More } from "../_ui/more.tsx";

/** The day and a reason, folded away: most things are written down on their day. */
export async function WhenFields({ day }: Readonly<{ day: string }>) {
  const t = await getTranslations("stock");
  return (
    <More title={t("anotherDay")}>
      <DayField name="on" label={t("on")} start={day} />
      <Field name="reason" label={t("reason")} />
    </More>
  );
}
