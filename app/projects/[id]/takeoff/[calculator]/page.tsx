import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { project as projectById } from "../../../../../lib/data/projects.ts";
import { CALCULATOR_NAMES, type CalculatorName } from "../../../../../lib/takeoff/calculators.ts";
import { takeoffOf } from "../../../../../lib/takeoff/takeoff-entry.ts";
import { Caution } from "../../../../_ui/notice.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import type { Query } from "../../../../_workspace/day-asked.ts";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { askedTakeoff, needsBefore } from "../asked-takeoff.ts";
import { INPUT_SHAPES } from "../input-shapes.ts";
import { NeedsForm } from "../needs-form.tsx";
import { TakeoffForm } from "../takeoff.client.tsx";
import { takeoffWords } from "../takeoff-words.ts";
import { inputsGiven } from "../typed-inputs.ts";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string; calculator: string }>; searchParams: Query }>;

function calculatorAsked(text: string): CalculatorName {
  const known = CALCULATOR_NAMES.find((name) => name === text);
  if (known === undefined) notFound();
  return known;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const t = await getTranslations("takeoff");
  return { title: t(`calculators.${calculatorAsked((await params).calculator)}.title`) };
}

/** One calculator: what it asks, its drawing and figures, and the step to requirements. */
export default async function CalculatorPage({ params, searchParams }: Props) {
  const t = await getTranslations("takeoff");
  const { id, calculator: named } = await params;
  const projectId = idAsked(id);
  const calculator = calculatorAsked(named);
  const scope = await scopeSeen();
  const project = await projectById(scope, projectId);
  if (project === null) notFound();
  const { system, typed, sent, reopened } = await askedTakeoff(scope, searchParams, calculator, projectId);
  const read = takeoffOf({ calculator, system, inputs: inputsGiven(INPUT_SHAPES[calculator], typed) });
  const day = await today();
  return (
    <>
      <PageHead
        title={t(`calculators.${calculator}.title`)}
        answer={t(`calculators.${calculator}.text`)}
        up={<Link href={`/projects/${projectId}/takeoff`}>{t("title")}</Link>}
      />
      <TakeoffForm
        key={JSON.stringify([system, typed])}
        calculator={calculator}
        system={system}
        typed={typed}
        sent={sent}
        reopen={reopened?.id ?? null}
        words={await takeoffWords()}
        locale={await getLocale()}
      >
        {sent && read.ok ? (
          <NeedsForm
            projectId={projectId}
            takeoff={read.value}
            reopen={reopened?.id ?? null}
            before={await needsBefore(scope, reopened, day)}
            yields={reopened?.yields ?? new Map()}
            day={day}
          />
        ) : (
          <Caution>{t("caution")}</Caution>
        )}
      </TakeoffForm>
    </>
  );
}
