import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { CODE_MINUTES } from "../../../lib/data/one-time-codes.ts";
import { passkeysOf } from "../../../lib/data/people.ts";
import { sessionsOf } from "../../../lib/data/sessions.ts";
import { callerInside } from "../../_gate/caller.ts";
import { Button } from "../../_ui/button.client.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { signOut } from "../actions.ts";
import { CodeMaker } from "../code-maker.client.tsx";
import { codeWords } from "../code-words.ts";
import { PasskeyButton } from "../passkeys.client.tsx";
import { SessionsTable } from "../sessions-table.tsx";
import { pairAPhone, removePasskey } from "./actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn"))("you") };
}

/** One's own sign-in: devices, passkeys, and out. */
export default async function YouPage() {
  const t = await getTranslations("signIn");
  const { role, person } = await callerInside();
  if (person === null || role === "here" || role === "demo" || role === "nobody") redirect("/sign-in");
  const [sessions, passkeys] = await Promise.all([sessionsOf(person.id), passkeysOf(person.id)]);
  return (
    <>
      <PageHead
        title={t("you")}
        answer={t("youAnswer", { name: person.name, role: t(`roles.${role}`) })}
        aside={
          <form action={signOut}>
            <Button kind="plain">{t("signOut")}</Button>
          </form>
        }
      />
      <Part title={t("pairPhone")} note={t("pairPhoneNote")}>
        <CodeMaker
          action={pairAPhone}
          button={t("pairPhoneMake")}
          words={await codeWords(CODE_MINUTES.pairing)}
        />
      </Part>
      <Part title={t("sessions")} note={t("sessionsNote")}>
        <SessionsTable sessions={sessions} title={t("sessions")} own={person.sessionId} back="you" />
      </Part>
      <Part title={t("passkeysTitle")}>
        {passkeys.length === 0 ? <p>{t("passkeyNone")}</p> : null}
        <ul>
          {passkeys.map(({ id, since }) => (
            <li key={id}>
              <form action={removePasskey}>
                {since?.toISOString().slice(0, 10)} <input type="hidden" name="passkeyId" value={id} />
                <Button kind="quiet">{t("passkeyRemove")}</Button>
              </form>
            </li>
          ))}
        </ul>
        <PasskeyButton
          deed="add"
          label={t("passkeyAdd")}
          failed={t("passkeyFailed")}
          not={t("passkeyNot")}
          to="/sign-in/you"
        />
      </Part>
    </>
  );
}
