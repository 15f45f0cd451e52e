import { getTranslations } from "next-intl/server";
import { Button } from "../_ui/button.client.tsx";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { openDemo } from "../_workspace/actions.ts";

/** What a workspace lacks first: a store, a material, a project, or what a project needs. */
export type Step = "store" | "material" | "project" | "need";

const PLACES: Readonly<Record<Exclude<Step, "need">, string>> = {
  store: "/settings/stores/new",
  material: "/materials/new",
  project: "/projects/new",
};

/** Teaches the next step with one button, and offers the demo beside it. projectId: the project without needs. */
export async function FirstStep({
  step,
  projectId,
  demo,
}: Readonly<{ step: Step; projectId?: string; demo: boolean }>) {
  const t = await getTranslations("today");
  const button = {
    store: "addStore",
    material: "addMaterial",
    project: "addProject",
    need: "addNeed",
  } as const;
  const text = {
    store: "stepStore",
    material: "stepMaterial",
    project: "stepProject",
    need: "stepNeeds",
  } as const;
  return (
    <>
      <EmptyState
        title={t("stepTitle", { step })}
        action={
          <LinkButton kind="main" href={step === "need" ? `/projects/${projectId ?? ""}` : PLACES[step]}>
            {t(button[step])}
          </LinkButton>
        }
      >
        {t(text[step])}
      </EmptyState>
      {demo ? null : (
        <form action={openDemo}>
          <p>{t("demoOffer")}</p>
          <Button kind="plain" pending={t("openingDemo")}>
            {t("openDemo")}
          </Button>
        </form>
      )}
    </>
  );
}
