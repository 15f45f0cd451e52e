import "server-only";
import { remindersOf } from "../../../lib/data/reminder-facts.ts";
import { standing } from "../../../lib/reminders/marks.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";

/** How many reminders stand today. */
export async function remindersToday(): Promise<number> {
  const day = await today();
  const { all, marks } = await remindersOf(await scopeSeen(), day);
  return standing(all, marks, day).length;
}
