import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { hasOwner } from "../../lib/data/people.ts";
import { caller } from "../_gate/caller.ts";
import { Button } from "../_ui/button.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { Form } from "../_ui/form.client.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { PageHead, Part } from "../_ui/page-head.tsx";
import { openDemo } from "../_workspace/actions.ts";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { enterForm } from "./actions.ts";
import { PasskeyButton } from "./passkeys.client.tsx";
import { PasswordField } from "./password-field.client.tsx";
import { wayBack } from "./way-back.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn"))("title") };
}

/** The door: name and password, a passkey, or a code. */
export default async function SignInPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("signIn");
  const to = wayBack(await asked(searchParams, "to"));
  const from = (await caller())?.from;
  const owned = await hasOwner();
  return (
    <>
      <PageHead title={t("title")} answer={owned ? t("answer") : t("answerNoOwner")} />
      {owned ? (
        <>
          <Form action={enterForm} faultsTitle={t("faultsTitle")}>
            <input type="hidden" name="to" value={to} />
            <Field name="name" label={t("name")} autoComplete="username webauthn" required />
            <PasswordField label={t("password")} fresh={false} />
            <Button pending={t("entering")}>{t("enter")}</Button>
          </Form>
          <PasskeyButton deed="enter" label={t("passkey")} failed={t("passkeyFailed")} to={to} />
          <LinkButton kind="quiet" href="/sign-in/join">
            {t("join")}
          </LinkButton>
        </>
      ) : (
        <LinkButton kind="main" href="/sign-in/first">
          {t("first")}
        </LinkButton>
      )}
      {from?.loopback ? (
        <Part title={t("demo")} note={t("demoText")}>
          <form action={openDemo}>
            <Button kind="plain">{t("demo")}</Button>
          </form>
        </Part>
      ) : null}
    </>
  );
}
