import { getTranslations } from "next-intl/server";
import type { WeightText } from "../../../lib/show/weight-text.ts";
import { NotKnown } from "../../_ui/money-text.tsx";

type WeightLineProps = Readonly<{ weight: WeightText; materialName: (id: string) => string }>;

/** What lies somewhere weighs, in kilograms and pounds; what has no weight is named, never taken for zero. */
export async function WeightLine({ weight, materialName }: WeightLineProps) {
  const t = await getTranslations("places");
  const { kilograms, pounds, unknown, none } = weight;
  const missing = unknown.map(materialName).join("; ");
  if (none)
    return unknown.length === 0 ? null : <NotKnown>{t("weightUnknownAll", { materials: missing })}</NotKnown>;
  if (unknown.length === 0) return <span>{t("weighs", { kilograms, pounds })}</span>;
  return (
    <>
      <span>{t("weighsAtLeast", { kilograms, pounds })}</span>{" "}
      <NotKnown>{t("weightUnknown", { materials: missing })}</NotKnown>
    </>
  );
}
