import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { CODE_MINUTES } from "../../../lib/data/one-time-codes.ts";
import { people } from "../../../lib/data/people.ts";
import { sessionsOf } from "../../../lib/data/sessions.ts";
import { callerInside } from "../../_gate/caller.ts";
import { openness } from "../../_gate/caller-of.ts";
import { Button } from "../../_ui/button.client.tsx";
import { PickField } from "../../_ui/choice-field.client.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { CodeMaker } from "../../sign-in/code-maker.client.tsx";
import { codeWords } from "../../sign-in/code-words.ts";
import { SessionsTable } from "../../sign-in/sessions-table.tsx";
import { askForSignIn, inviteForm } from "./actions.ts";
import { Network } from "./network.tsx";
import { PeopleTable } from "./people-table.tsx";

export const dynamic = "force-dynamic";
const DONE = ["changed", "lastOwner", "gone"] as const;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn.people"))("title") };
}

/** Who may come in, from where, and whether this computer is asked too. */
export default async function PeoplePage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("signIn.people");
  const s = await getTranslations("signIn");
  const { asksSignIn, person } = await callerInside();
  const [everybody, sessions, done] = [
    await people(),
    await sessionsOf(null),
    await asked(searchParams, "done"),
  ];
  const told = DONE.find((one) => one === done);
  const owned = everybody.some(({ role }) => role === "owner");
  const open = openness().mode !== null;
  return (
    <>
      {told ? <UndoBar>{t(told)}</UndoBar> : null}
      <PageHead
        title={t("title")}
        answer={t("answer")}
        up={<Link href="/settings">{(await getTranslations("settings"))("back")}</Link>}
        aside={person === null ? null : <LinkButton href="/sign-in/you">{s("you")}</LinkButton>}
      />
      <Part title={t("list")}>
        {everybody.length === 0 ? <p>{t("none")}</p> : <PeopleTable people={everybody} />}
        {owned ? null : <LinkButton href="/sign-in/first">{s("first")}</LinkButton>}
      </Part>
      <Part title={t("invite")} note={t("inviteNote")}>
        <CodeMaker action={inviteForm} button={t("inviteMake")} words={await codeWords(CODE_MINUTES.invite)}>
          <PickField
            name="role"
            label={t("role")}
            hint={t("roleHint")}
            starts={["crew"]}
            choices={(["owner", "crew", "reader"] as const).map((value) => ({
              value,
              label: s(`roles.${value}`),
            }))}
          />
        </CodeMaker>
      </Part>
      {sessions.length === 0 ? null : (
        <Part title={s("allSessions")} note={s("sessionsNote")}>
          <SessionsTable
            sessions={sessions}
            title={s("allSessions")}
            own={person?.sessionId ?? null}
            back="people"
          />
        </Part>
      )}
      <Part title={t("asks")}>
        <p>{open ? t("asksNetwork") : asksSignIn ? t("asksOn") : owned ? t("asksOff") : t("asksNoOwner")}</p>
        {open || !owned ? null : (
          <form action={askForSignIn}>
            <input type="hidden" name="asks" value={asksSignIn ? "no" : "yes"} />
            <Button kind="plain">{asksSignIn ? t("asksTurnOff") : t("asksTurnOn")}</Button>
          </form>
        )}
      </Part>
      <Network />
    </>
  );
}
