import { getTranslations } from "next-intl/server";
import type { Identity } from "../../lib/materials/identity.ts";
import type { IdentityName } from "../../lib/show/identity-fields.ts";

/** One property of a material in words; a grade is said as it is stamped. */
export async function identityWords() {
  const t = await getTranslations("materials.identity");
  return (name: IdentityName, value: NonNullable<Identity[IdentityName]>): string =>
    name === "grade" ? value : t(`${name}.${value}` as Parameters<typeof t>[0]);
}
