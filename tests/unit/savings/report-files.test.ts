import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { readSheet } from "read-excel-file/node";
import { afterAll, describe, expect, test } from "vitest";
import { csvFile } from "../../../app/savings/_report/csv-file.ts";
import { flatRows } from "../../../app/savings/_report/flat-rows.ts";
import { pdfFile } from "../../../app/savings/_report/pdf-file.ts";
import { plainLetters } from "../../../app/savings/_report/plain-letters.ts";
import { wordedReport } from "../../../app/savings/_report/worded-report.ts";
import { xlsxFile } from "../../../app/savings/_report/xlsx-file.ts";
import { savingBreakdown } from "../../../lib/savings/saving-causes.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { TODAY } from "../../support/price-example.ts";
import { REPORT_WORDS, reportExample } from "../../support/report-example.ts";

const content = reportExample();
const { realised, unrealised } = savingsReport(content.rows, "CAD");
const report = wordedReport(content, REPORT_WORDS, TODAY);
const flat = flatRows(content, REPORT_WORDS);
const folder = mkdtempSync(join(tmpdir(), "dunnage-report-"));
afterAll(() => rmSync(folder, { recursive: true }));
const signed = (amount: typeof realised.saving) =>
  `${amount.amount.isNegative() ? "" : "+"}${amount.amount.toFixed(2)}`;

describe("the PDF, read by pdftotext", () => {
  const pdf = (async () => {
    const path = join(folder, "report.pdf");
    writeFileSync(path, await pdfFile(report, REPORT_WORDS));
    return execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
  })();
  const line = async (begins: string) =>
    (await pdf).split("\n").find((one) => one.trim().startsWith(begins)) ?? "";

  test("has the headline, and the totals of the breakdown as the core reckons them", async () => {
    expect(await pdf).toContain(`Cost avoided: ${realised.saving.amount.toFixed(2)} CAD.`);
    expect((await line("In all")).match(/[+-][\d.]+/g)).toEqual([
      signed(realised.saving),
      signed(unrealised.saving),
      signed({ ...realised.saving, amount: realised.saving.amount.plus(unrealised.saving.amount) }),
    ]);
  });

  test("has a line of the breakdown for each cause, with its own figures", async () => {
    for (const { cause, amount } of savingBreakdown(content.rows, "CAD"))
      expect(await line(REPORT_WORDS.t(`causes.${cause}`))).toContain(signed(amount));
  });

  test("has accents, a dash, a half and a minus, and says what it is not", async () => {
    expect(await pdf).toContain("Épinette – contreplaqué ½ in – 4×8");
    expect(await pdf).toContain("It is not tax advice");
    expect(await pdf).toContain("Page 1 of ");
  });
});

describe("the spreadsheet, read by a spreadsheet reader", () => {
  const file = xlsxFile(report, flat, REPORT_WORDS);

  test("has every amount of a row as a number and every day as a day", async () => {
    const [head = [], ...rows] = await readSheet(await file, "Rows");
    const at = (name: string) => head.indexOf(name);
    const savings = rows.flatMap((row) =>
      typeof row[at("Saving")] === "number" ? [Number(row[at("Saving")])] : [],
    );
    const known = content.rows.flatMap(({ saving }) => saving?.amount.toNumber() ?? []);
    expect(savings).toEqual(known);
    expect(rows.map((row) => row[at("Bought on")])).toEqual(
      content.rows.map(({ acquiredOn }) => new Date(`${acquiredOn}T00:00:00Z`)),
    );
    expect(rows.map((row) => row[at("Quantity")])).toEqual(
      content.rows.map(({ quantity }) => quantity.toNumber()),
    );
  });

  test("has the totals of the core in its breakdown and its summary", async () => {
    const breakdown = await readSheet(await file, "Breakdown");
    expect(breakdown.at(-1)?.slice(1, 3)).toEqual([
      realised.saving.amount.toNumber(),
      unrealised.saving.amount.toNumber(),
    ]);
    const summary = await readSheet(await file, "Summary");
    expect(summary.find(([what]) => what === "Realised")?.[1]).toBe(realised.saving.amount.toNumber());
    expect(summary.find(([what]) => what === "Not known")?.[1]).toBe(2);
  });
});

describe("the rows as text, read back", () => {
  const { data } = Papa.parse<Record<string, string>>(csvFile(flat).slice(1), { header: true });

  test("are the core's figures digit for digit, losses with their minus, what is not known empty", () => {
    expect(data.map((row) => row.saving)).toEqual(
      content.rows.map(({ saving }) => saving?.amount.toFixed(2) ?? ""),
    );
    expect(data.map((row) => [row.quantity, row.acquiredOn, row.leftOn])).toEqual(
      content.rows.map(({ quantity, acquiredOn, on }) => [quantity.toFixed(), acquiredOn, on ?? ""]),
    );
    expect(data.some((row) => row.saving?.startsWith("-"))).toBe(true);
  });

  test("have no name that a spreadsheet would reckon with", () => {
    expect(data.map((row) => row.material)).toContain("'=1+1 board");
    expect(data.map((row) => row.project)).toContain("'+Quarry Street");
    for (const start of ["=", "+", "-", "@", "\t", "\r"]) {
      const cell = { text: `${start}1` };
      expect(csvFile({ columns: [{ key: "a", label: "a" }], rows: [[cell]] })).toContain(`'${start}1`);
    }
  });
});

test("letters a PDF’s own fonts are without become the nearest they have", () => {
  expect(plainLetters("é – ½ − “x” 7⅝ őł ≥ 木")).toBe("é – ½ – “x” 7 5/8 ol >= ?");
});

test("a group none of whose savings is known says so, and is not 0", () => {
  const other = report.views[0]?.rows.find(({ cells }) => cells[0]?.text === "+Quarry Street");
  expect(other?.cells.map(({ text }) => text)).toEqual([
    "+Quarry Street",
    "not known",
    "not known",
    "not known",
    "not known",
    "2",
    "2",
  ]);
});
