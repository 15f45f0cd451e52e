import { getTranslations } from "next-intl/server";
import type { LifeStep } from "../../../lib/show/lot-life.ts";
import { Below } from "../../_ui/money-text.tsx";

type StepWhatProps = Readonly<{
  step: LifeStep;
  projectOf: ReadonlyMap<string, string>;
  placeName: (id: string) => string;
}>;

/** What a step of a lot's life was: for which project, where to, for how much, why. */
export async function StepWhat({ step, projectOf, placeName }: StepWhatProps) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  if (step.step === "ordered") return life("steps.ordered");
  if (step.step === "paid")
    return (
      <>
        {life("steps.paid")}
        {step.home ? <Below>{step.home}</Below> : null}
      </>
    );
  if (step.step === "received")
    return (
      <>
        {life("steps.received")}
        {step.placeId ? <Below>{placeName(step.placeId)}</Below> : null}
      </>
    );
  const { event, places } = step;
  const named = (placeId: string | null) => (placeId === null ? life("notPutAway") : placeName(placeId));
  const where =
    event.kind === "moved"
      ? `${places.fromPlaceId === null ? "" : `${named(places.fromPlaceId)} `}→ ${named(places.placeId)}`
      : places.placeId === null
        ? null
        : named(places.placeId);
  const project = event.requirementId === null ? null : (projectOf.get(event.requirementId) ?? "–");
  return (
    <>
      {t(`kinds.${event.kind}`)}
      {event.undone ? `, ${t("undone")}` : ""}
      {project ? <Below>{project}</Below> : null}
      {where ? <Below>{where}</Below> : null}
      {event.amount && event.kind !== "stored" ? <Below>{event.amount}</Below> : null}
      {event.reason ? <Below>{event.reason}</Below> : null}
      {places.actId ? <Below>{life("together")}</Below> : null}
    </>
  );
}
