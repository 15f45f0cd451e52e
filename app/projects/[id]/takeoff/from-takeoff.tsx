import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { takeoffOfRequirement } from "../../../../lib/data/takeoffs.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

/** The way back to the takeoff a requirement came of; nothing where it came of none. */
export async function FromTakeoff({ needId }: Readonly<{ needId: string }>) {
  const t = await getTranslations("takeoff");
  const found = await takeoffOfRequirement(await scopeSeen(), needId);
  if (found === null) return null;
  const { projectId, calculator, id } = found;
  return (
    <p>
      <Link href={`/projects/${projectId}/takeoff/${calculator}?reopen=${id}`}>{t("reopen")}</Link>
    </p>
  );
}
