import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";
import type { Reminder, ReminderKind } from "../reminders/reminder.ts";
import { dayText } from "./day-text.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";

/** A reminder as text. daysLeft below zero: the day has passed. quantityExact: decimal text, to choose the form of a word by. */
export type ReminderText = Readonly<{
  key: string;
  kind: ReminderKind;
  day: string;
  daysLeft: number;
  materialId: string;
  unit: PurchaseUnit;
  storeId: string | null;
  projectId: string | null;
  lotId: string | null;
  each: string;
  wanted: string;
  money: string;
  quantity: string;
  quantityExact: string;
  currency: string;
}>;

/** A reminder for reading; what does not apply to it is empty. Rounds: for reading, half up. */
export function reminderText(reminder: Reminder, day: LocalDate, locale: string): ReminderText {
  const { key, kind, on, materialId, unit, storeId, projectId, lotId, quantity } = reminder;
  const price = (value: Money | null) => (value === null ? "" : unitPriceText(value, locale));
  return {
    key,
    kind,
    day: dayText(on, locale),
    daysLeft: daysBetween(day, on),
    materialId,
    unit,
    storeId,
    projectId,
    lotId,
    each: price(reminder.each),
    wanted: price(reminder.wanted),
    money: reminder.money === null ? "" : moneyText(reminder.money, locale),
    quantity: quantity === null ? "" : quantityText(quantity, locale),
    quantityExact: quantity?.toFixed() ?? "0",
    currency: (reminder.each ?? reminder.money)?.currency ?? "",
  };
}

/** Where on the screens a reminder is dealt with. */
export function reminderPlace({
  materialId,
  projectId,
  lotId,
}: Pick<ReminderText, "materialId" | "projectId" | "lotId">) {
  if (lotId !== null) return `/stock/${lotId}`;
  return projectId === null ? `/materials/${materialId}` : `/projects/${projectId}`;
}

/** How far a reminder can be put off. Judgement. Units: calendar days. */
const PUT_OFF_DAYS = [1, 3, 7, 14, 30] as const;

/** The days a reminder can be put off to, the nearest first. */
export function putOffDays(day: LocalDate, locale: string) {
  return PUT_OFF_DAYS.map((days) => {
    const until = plusDays(day, days);
    return { until, days, text: dayText(until, locale) };
  });
}
