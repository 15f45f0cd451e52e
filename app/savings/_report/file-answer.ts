import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { savedReport } from "../../../lib/data/savings-saved.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { contentAsked } from "./content-asked.ts";
import type { FlatRows } from "./flat-rows.ts";
import { flatRows } from "./flat-rows.ts";
import type { ReportWords, WordedReport } from "./worded.ts";
import { reportWords, wordedReport } from "./worded-report.ts";

/** What a file of a report is made from. */
export type FileMakings = Readonly<{ report: WordedReport; flat: FlatRows; words: ReportWords }>;
type FileKind = Readonly<{
  extension: string;
  type: string;
  make: (makings: FileMakings) => string | Buffer | Promise<string | Buffer>;
}>;

/** "savings-2026-01-01-2026-12-31.pdf": what it is and of which days. */
function fileName({ asked }: ReportContent, { t }: ReportWords, extension: string): string {
  const days = [asked.from, asked.until ?? asked.day].filter((day) => day !== null);
  return `${[t("fileName"), ...days].join("-")}.${extension}`;
}

/** The report an address asks for, as a file to keep. */
export async function fileAnswer(request: Request, kind: FileKind): Promise<Response> {
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const { content, madeOn } = await contentOrSaved(query);
  const words = await reportWords();
  const report = wordedReport(content, words, madeOn);
  const body = await kind.make({ report, flat: flatRows(content, words), words });
  return new Response(typeof body === "string" ? body : new Uint8Array(body), {
    headers: {
      "content-type": kind.type,
      "content-disposition": `attachment; filename="${fileName(content, words, kind.extension)}"`,
      "cache-control": "no-store",
    },
  });
}

async function contentOrSaved(
  query: Readonly<Record<string, string>>,
): Promise<Readonly<{ content: ReportContent; madeOn: LocalDate }>> {
  if (isId(query.saved)) {
    const kept = await savedReport(await scopeSeen(), query.saved.toLowerCase());
    if (kept !== null) return { content: kept.content, madeOn: kept.madeOn };
  }
  const { content, today } = await contentAsked(Promise.resolve(query));
  return { content, madeOn: today };
}
