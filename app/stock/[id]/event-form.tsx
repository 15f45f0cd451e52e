import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import type { LyingText } from "../../../lib/show/place-text.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import type { FormAction } from "../../_ui/form-state.ts";
import { eventForm } from "../event-actions.ts";
import type { Places } from "../place-choices.ts";

type EventFormProps = Readonly<{
  lotId: string;
  /** The kind of event `eventForm` records; left out where another action knows by itself. */
  kind?: string;
  action?: FormAction;
  button: string;
  main?: boolean;
  children: ReactNode;
}>;

/** One thing to happen to a lot. */
export async function EventForm({ lotId, kind, action = eventForm, button, main, children }: EventFormProps) {
  const t = await getTranslations("stock");
  return (
    <Form action={action} id={newId()} faultsTitle={t("faultsTitle")}>
      <input type="hidden" name="lotId" value={lotId} />
      {kind === undefined ? null : <input type="hidden" name="kind" value={kind} />}
      {children}
      <Button kind={main ? "main" : "plain"} pending={t("saving")} wide>
        {button}
      </Button>
    </Form>
  );
}

/** Which of several places it is taken from; in one place there is nothing to ask. */
export async function TakenFrom({
  lying,
  places,
}: Readonly<{ lying: readonly LyingText[]; places: Places }>) {
  const t = await getTranslations("lotLife");
  const stored = lying.flatMap(({ placeId, quantity }) =>
    placeId === null ? [] : [{ value: placeId, label: `${places.name(placeId)}: ${quantity}` }],
  );
  if (lying.length < 2) return null;
  return (
    <ChoiceField
      name="placeId"
      label={t("takenFrom")}
      choices={[{ value: "", label: t("anyPlace") }, ...stored]}
    />
  );
}
