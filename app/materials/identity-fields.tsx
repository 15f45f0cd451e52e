import { getTranslations } from "next-intl/server";
import type { Identity } from "../../lib/materials/identity.ts";
import type { Category } from "../../lib/materials/material.ts";
import { IDENTITY_CHOICES, identityFields } from "../../lib/show/identity-fields.ts";
import { ChoiceField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { RowFields, Rows } from "../_ui/rows.tsx";
import { identityWords } from "./identity-words.ts";

/** What tells a material apart beside its sizes: hand, frame, grade, treatment, where its category has any of them. */
export async function IdentityFields({
  category,
  identity,
}: Readonly<{ category: Category; identity: Identity }>) {
  const t = await getTranslations("materials.form");
  const said = await identityWords();
  const names = identityFields(category, identity);
  if (names.length === 0) return null;
  return (
    <Rows title={t("identityTitle")} hint={t("identityHint")}>
      <RowFields label={t("identityTitle")}>
        {names.map((name) => {
          const shared = {
            name: `identity.${name}`,
            label: t(`identity.${name}`),
            hint: t(`identityHints.${name}`),
            start: identity[name],
          };
          if (name === "grade") return <Field key={name} {...shared} />;
          const choices = IDENTITY_CHOICES[name].map((value) => ({ value, label: said(name, value) }));
          return (
            <ChoiceField key={name} {...shared} choices={[{ value: "", label: t("notSaid") }, ...choices]} />
          );
        })}
      </RowFields>
    </Rows>
  );
}
