import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { DAY_LIMITS } from "../../../lib/calendar/day-limits.ts";
import { feedMadeAt } from "../../../lib/data/reminder-feed.ts";
import { reminderWishes } from "../../../lib/data/reminder-wishes.ts";
import { momentText } from "../../../lib/show/day-text.ts";
import { fingerprint } from "../../_forms/fingerprint.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Field } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { makeFeedForm, revokeFeedForm, saveReminders } from "./actions.ts";
import { FeedMaker } from "./feed-maker.client.tsx";
import { MailState } from "./mail-state.tsx";
import { remindersToday } from "./reminders-today.ts";

export const dynamic = "force-dynamic";
const DONE = ["saved", "revoked"] as const;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("reminders.settings"))("title") };
}

/** What is reminded of, and by which ways beside Today: a calendar's address, a mail. */
export default async function RemindersPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("reminders.settings");
  const ui = await getTranslations("ui");
  const scope = await scopeSeen();
  const { timeZone } = await workspaceSeen();
  const [wishes, made, done] = [
    await reminderWishes(scope),
    await feedMadeAt(scope),
    await asked(searchParams, "done"),
  ];
  const told = DONE.find((one) => one === done);
  return (
    <>
      {told ? <UndoBar>{t(told)}</UndoBar> : null}
      <PageHead
        title={t("title")}
        answer={t("answer", { count: await remindersToday() })}
        up={<Link href="/settings">{(await getTranslations("settings"))("back")}</Link>}
      />
      <Part title={t("what")} note={t("whatNote", { safety: DAY_LIMITS.safety })}>
        <Form action={saveReminders} seen={fingerprint(wishes.lapseDays)} faultsTitle={ui("faultsTitle")}>
          <Field
            name="lapseDays"
            label={t("lapseDays")}
            start={String(wishes.lapseDays)}
            inputMode="numeric"
          />
          <Button pending={ui("saving")}>{ui("save")}</Button>
        </Form>
      </Part>
      <Part title={t("calendar")} note={t("calendarNote")} id="calendar">
        <p>
          {made === null
            ? t("none")
            : `${t("made", { at: momentText(made, await getLocale(), timeZone) })} ${t("anewNote")}`}
        </p>
        <FeedMaker
          action={makeFeedForm}
          button={made === null ? t("make") : t("makeAnew")}
          words={{
            shown: t("shown", { address: "{address}" }),
            square: t("square", { address: "{address}" }),
          }}
        />
        {made === null ? null : (
          <form action={revokeFeedForm}>
            <Button kind="quiet">{t("revoke")}</Button>
          </form>
        )}
      </Part>
      <Part title={t("mail")} id="mail">
        <MailState />
      </Part>
    </>
  );
}
