import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Written } from "../fault.ts";
import { type ReportContent, reportContent } from "../savings/report-content.ts";
import { figuresOfStored, type SavedFigures, savedFigures } from "../savings/saved-figures.ts";
import { askedOfStored, contentOfStored, storedContent } from "../savings/stored-content.ts";
import { marksOfLots } from "../savings/unrealised-through-time.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { dateOf, row, rows, storedDay } from "./rows.ts";
import { savingsFactsWithin } from "./savings-facts.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, repeated } from "./written.ts";

/** A report as it was when it was kept. at: the moment, ISO 8601. */
export type SavedReport = Readonly<{
  id: string;
  at: string;
  madeOn: LocalDate;
  content: ReportContent;
  figures: SavedFigures;
  deletedAt: string | null;
}>;
/** What a list of them shows. */
export type SavedReportLine = Omit<SavedReport, "content"> & Readonly<{ asked: ReportContent["asked"] }>;

type LineRow = Readonly<{
  id: string;
  at: string;
  made_on: string;
  figures: unknown;
  deleted_at: string | null;
}>;

const LINE = Prisma.sql`s.id, s.created_at AS at, s.made_on, s.figures, s.deleted_at`;

function lineOf({ id, at, made_on: madeOn, figures, deleted_at: deletedAt }: LineRow) {
  return { id, at, madeOn: storedDay(madeOn), figures: figuresOfStored(figures), deletedAt };
}

async function savedWithin(tx: Tx, id: string): Promise<SavedReport | null> {
  const found = await row<LineRow & { content: unknown }>(
    tx,
    Prisma.sql`SELECT ${LINE}, s.content FROM saved_report s WHERE s.id = ${id}::uuid`,
  );
  return found === null ? null : { ...lineOf(found), content: contentOfStored(found.content) };
}

/**
 * Keeps the report of a question as it is now, with all it was reckoned from; later corrections do not touch it (R11).
 * Sent twice it is kept once.
 */
export function keepReport(
  scope: Scope,
  id: string,
  asked: ReportContent["asked"],
): Promise<Written<SavedReport>> {
  const hash = entryHash(asked);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "saved_report", id, hash, stored: () => savedWithin(tx, id) }, async () => {
      const { from, day } = asked;
      const facts = await savingsFactsWithin(tx, null, day, (lots) => marksOfLots(lots, from, day));
      const content = reportContent(asked, facts);
      const plain: Prisma.InputJsonObject = JSON.parse(JSON.stringify(storedContent(content)));
      await tx.savedReport.create({
        data: {
          id,
          madeOn: dateOf(todayOf(await workspaceWithin(tx))),
          query: { ...asked },
          content: plain,
          figures: { ...savedFigures(content) },
          entryHash: hash,
        },
        select: { id: true },
      });
      const kept = await savedWithin(tx, id);
      return kept === null ? NOT_THERE : accepted(kept);
    }),
  );
}

/** One kept report, a deleted one too; null: not there. */
export function savedReport(scope: Scope, id: string): Promise<SavedReport | null> {
  return inWorkspace(scope, (tx) => savedWithin(tx, id));
}

/** The workspace's kept reports, the last one first, without those deleted. */
export function savedReports(scope: Scope): Promise<SavedReportLine[]> {
  return inWorkspace(scope, async (tx) => {
    const found = await rows<LineRow & { query: unknown }>(
      tx,
      Prisma.sql`SELECT ${LINE}, s.query FROM saved_report s WHERE s.deleted_at IS NULL ORDER BY s.sequence DESC`,
    );
    return found.map((one) => ({ ...lineOf(one), asked: askedOfStored(one.query) }));
  });
}

/** Deletes a kept report, or brings it back. Not there: no report of this id. */
export function deleteReport(scope: Scope, id: string, deleted: boolean): Promise<Written<SavedReport>> {
  return inWorkspace(scope, async (tx) => {
    const there = await savedWithin(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.deletedAt !== null) === deleted) return repeated(there);
    await tx.savedReport.updateMany({ where: { id }, data: { deletedAt: deleted ? new Date() : null } });
    const now = await savedWithin(tx, id);
    return now === null ? NOT_THERE : accepted(now);
  });
}
