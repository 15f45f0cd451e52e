import { getTranslations } from "next-intl/server";
import { Button } from "../_ui/button.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { Form } from "../_ui/form.client.tsx";
import type { FormAction } from "../_ui/form-state.ts";
import { CodeField } from "./code-field.client.tsx";
import { PasswordField } from "./password-field.client.tsx";

/** Code, name and password of somebody new. */
export async function Newcomer({ action }: Readonly<{ action: FormAction }>) {
  const t = await getTranslations("signIn");
  return (
    <Form action={action} faultsTitle={t("faultsTitle")}>
      <CodeField label={t("code")} />
      <Field name="name" label={t("newName")} hint={t("newNameHint")} autoComplete="username" required />
      <PasswordField label={t("newPassword")} hint={t("newPasswordHint")} fresh />
      <Button pending={t("entering")}>{t("make")}</Button>
    </Form>
  );
}
