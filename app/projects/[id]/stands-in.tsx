import { getTranslations } from "next-intl/server";
import type { StandInText } from "../../../lib/show/stand-ins.ts";
import { Below } from "../../_ui/money-text.tsx";
import type { Names } from "../../_workspace/names-of.ts";

type StandsInProps = Readonly<{ standIns: readonly StandInText[]; names: Names }>;

/** Under the required material's figures: what else counts for it. */
export async function StandsIn({ standIns, names }: StandsInProps) {
  const t = await getTranslations("projects");
  return standIns.map(({ materialId, factor }) => (
    <Below key={materialId}>{t("standsIn", { material: names.material(materialId), factor })}</Below>
  ));
}

/** Under a material's own name: what it counts for. */
export async function StandsInFor({ standIns, names }: StandsInProps) {
  const t = await getTranslations("projects");
  return standIns.map(({ requiredId, factor }) => (
    <Below key={`${requiredId} ${factor}`}>
      {t("standsInFor", { material: names.material(requiredId), factor })}
    </Below>
  ));
}
