import { getMessages } from "next-intl/server";
import type en from "../../../_words/en.json";

/** The words the form shows while it is typed in, as plain text. */
export type TakeoffWords = typeof en.takeoff &
  Readonly<{ faults: Readonly<Record<string, string>>; units: Units }>;
type Units = Readonly<Record<string, Readonly<{ short: string; one: string; many: string }>>>;

/** The words of takeoffs, of faults and of units in the language of the request. */
export async function takeoffWords(): Promise<TakeoffWords> {
  const { takeoff, faults, units } = await getMessages();
  return { ...takeoff, faults, units };
}
