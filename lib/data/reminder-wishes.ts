import "server-only";
import { DAY_LIMITS } from "../calendar/day-limits.ts";
import type { Written } from "../fault.ts";
import type { Money } from "../money/money.ts";
import type { Wishes } from "../reminders/reminder.ts";
import type { ReminderSettingEntry, WantedPriceEntry } from "../reminders/reminder-entry.ts";
import { inSnapshot, inWorkspace, type Scope, type Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { materialWithin } from "./material-rows.ts";
import { currencyOf, digits, row, rows, storedDecimal } from "./rows.ts";
import { workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE } from "./written.ts";

type WantedRow = Readonly<{ material_id: string; amount: string; currency: string }>;

function wantedOf({ amount, currency }: WantedRow): Money {
  return { amount: storedDecimal(amount), currency: currencyOf(currency) };
}

function wantedWithin(tx: Tx, only: Prisma.Sql): Promise<WantedRow[]> {
  return rows<WantedRow>(
    tx,
    Prisma.sql`SELECT w.material_id, w.amount::text, w.currency FROM wanted_price w WHERE ${only} ORDER BY w.id`,
  );
}

async function lapseDaysWithin(tx: Tx): Promise<number> {
  const stored = await row<{ lapse_days: number | null }>(
    tx,
    Prisma.sql`SELECT s.lapse_days FROM reminder_setting s`,
  );
  return stored?.lapse_days ?? DAY_LIMITS.lapseAhead;
}

/** What the workspace has asked to be told. */
export function reminderWishes(scope: Scope): Promise<Wishes> {
  return inSnapshot(scope, async (tx) => {
    const wanted = await wantedWithin(tx, Prisma.sql`true`);
    return {
      wanted: new Map(wanted.map((one) => [one.material_id, wantedOf(one)])),
      lapseDays: await lapseDaysWithin(tx),
    };
  });
}

/** The price a material is to be told at, or null. */
export function wantedPrice(scope: Scope, materialId: string): Promise<Money | null> {
  return inWorkspace(scope, async (tx) => {
    const [stored] = await wantedWithin(tx, Prisma.sql`w.material_id = ${materialId}::uuid`);
    return stored === undefined ? null : wantedOf(stored);
  });
}

/** Sets it in the home currency of now, or takes it away. The answer is what was said before. Not there: no such material. */
export function tellAtOrBelow(
  scope: Scope,
  materialId: string,
  { amount }: WantedPriceEntry,
): Promise<Written<Readonly<{ before: Money | null }>>> {
  return inWorkspace(scope, async (tx) => {
    if ((await materialWithin(tx, materialId)) === null) return NOT_THERE;
    const [stored] = await wantedWithin(tx, Prisma.sql`w.material_id = ${materialId}::uuid`);
    const before = stored === undefined ? null : wantedOf(stored);
    if (amount === null) await tx.wantedPrice.deleteMany({ where: { materialId } });
    else {
      const { homeCurrency: currency } = await workspaceWithin(tx);
      const data = { amount: digits(amount), currency };
      await tx.wantedPrice.upsert({
        where: { workspaceId_materialId: { workspaceId: scope.workspaceId, materialId } },
        create: { materialId, ...data },
        update: data,
        select: { id: true },
      });
    }
    return accepted({ before });
  });
}

/** Changes how long before an offer lapses it is reminded of. */
export function changeReminderSetting(
  scope: Scope,
  { lapseDays }: ReminderSettingEntry,
): Promise<Written<ReminderSettingEntry>> {
  return inWorkspace(scope, async (tx) => {
    await tx.reminderSetting.upsert({
      where: { workspaceId: scope.workspaceId },
      create: { lapseDays },
      update: { lapseDays },
      select: { id: true },
    });
    return accepted({ lapseDays });
  });
}
