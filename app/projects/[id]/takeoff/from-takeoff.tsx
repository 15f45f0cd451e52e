import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { takeoffOfRequirement } from "../../../../lib/data/takeoffs.ts";
import type { PurchaseUnit } from "../../../../lib/measure/units.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { Below } from "../../../_ui/money-text.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

/** The way back to the takeoff a requirement came of; nothing where it came of none. */
export async function FromTakeoff({ needId, unit }: Readonly<{ needId: string; unit: PurchaseUnit }>) {
  const t = await getTranslations("takeoff");
  const found = await takeoffOfRequirement(await scopeSeen(), needId);
  if (found === null) return null;
  const { projectId, calculator, id, needs, yields } = found;
  const line = needs.find(({ requirementId }) => requirementId === needId)?.line ?? "";
  const holds = yields.get(line);
  const units = await unitWords();
  return (
    <p>
      <Link href={`/projects/${projectId}/takeoff/${calculator}?reopen=${id}`}>{t("reopen")}</Link>
      {holds === undefined ? null : (
        <Below>
          {t("typedHere", {
            unit: units.one(unit),
            holds: `${quantityText(holds.value, await getLocale())} ${units.short(holds.unit)}`,
          })}
        </Below>
      )}
    </p>
  );
}
