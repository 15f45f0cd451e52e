import { describe, expect, test } from "vitest";
import { dayIn, dayOrderOf } from "../../../lib/files/day-shapes.ts";
import { decimalSignOf, figureOf } from "../../../lib/files/figure-text.ts";
import { fileText } from "../../../lib/files/file-text.ts";
import { separatedRows } from "../../../lib/files/separated-rows.ts";

const utf16 = (text: string, { mark }: { mark: boolean }) => {
  const bytes = new Uint8Array(Buffer.from(mark ? `\uFEFF${text}` : text, "utf16le"));
  return { little: bytes, big: bytes.map((_, at) => bytes[at ^ 1] ?? 0) };
};

describe("the text of a file", () => {
  test("is read from UTF-8 with and without its mark, and from UTF-16 either way round", () => {
    const text = "date,value\n2024-01-01,1.5";
    expect(fileText(Buffer.from(`\uFEFF${text}`))).toBe(text);
    expect(fileText(Buffer.from(text))).toBe(text);
    for (const mark of [true, false])
      for (const bytes of Object.values(utf16(text, { mark }))) expect(fileText(bytes)).toBe(text);
  });

  test("that is none of these is read byte by byte", () => {
    expect(fileText(new Uint8Array([0x63, 0x61, 0x66, 0xe9]))).toBe("café");
  });
});

describe("rows", () => {
  test("name the line they begin on, past blank lines, remarks and line breaks within quotes", () => {
    const { rows } = separatedRows('# a remark\r\na,b\r\n\r\n"one\r\ntwo",3\r\n4,5\r\n');
    expect(rows).toEqual([
      { row: 2, cells: ["a", "b"] },
      { row: 4, cells: ["one\ntwo", "3"] },
      { row: 6, cells: ["4", "5"] },
    ]);
  });

  test.each([
    ["a;b\n1,5;2\n", ";"],
    ["a\tb\n1,5\t2\n", "\t"],
    ["a,b\n1,2\n", ","],
    ['"one; two",b\n"x; y",2\n', ","],
  ])("of %j are parted by %j", (text, separator) => {
    expect(separatedRows(text).separator).toBe(separator);
  });
});

describe("a figure", () => {
  test.each([
    ["1.5", "1.5"],
    ["-36.98", "-36.98"],
    ["1,234.50", "1234.5"],
    ["1e5", "not-a-number"],
    ["1.5 approx", "not-a-number"],
    ["0x10", "not-a-number"],
    ["1,234", "comma-unclear"],
    ["12,34", "not-a-number"],
    ["1".repeat(41), "too-long"],
  ])("with a decimal point, %s is %s", (text, read) => {
    expect(String(figureOf(text, "point"))).toBe(read);
  });

  test("with a comma is read where the file shows that it is the decimal sign, and never guessed", () => {
    expect(decimalSignOf(["1,234", "56,7"], ";")).toBe("comma");
    expect(decimalSignOf(["1,234", "56.7"], ";")).toBe("point");
    expect(decimalSignOf(["1,234"], ";")).toBeNull();
    expect(String(figureOf("1,234", "comma"))).toBe("1.234");
    expect(figureOf("1,234", null)).toBe("comma-unclear");
  });
});

describe("a day", () => {
  test.each([
    ["2025-03-01", "2025-03-01"],
    ["2025-03", "2025-03-01"],
    ["2024M11", "2024-11-01"],
    ["13 April 2026", "2026-04-13"],
    ["31-Dec-2024", "2024-12-31"],
    ["2024-12-31T00:00:00", "2024-12-31"],
    ["2024-02-30", "not-a-day"],
    ["45000", "not-a-day"],
    ["3/4/2025", "day-unclear"],
    ["", "missing"],
  ])("written %s is %s", (text, read) => {
    expect(dayIn(text, null)).toBe(read);
  });

  test("with slashes is read the way the others of its file show, and asked for where none does", () => {
    expect(dayOrderOf(["3/4/2025", "12/31/2025"], { monthly: false })).toBe("month-first");
    expect(dayOrderOf(["3/4/2025", "31/12/2025"], { monthly: false })).toBe("day-first");
    expect(dayOrderOf(["3/4/2025"], { monthly: false })).toBeNull();
    expect(dayIn("3/4/2025", "day-first")).toBe("2025-04-03");
  });

  test("of a month is the first of it, which shows the way round", () => {
    expect(dayOrderOf(["1/1/1947", "2/1/1947"], { monthly: true })).toBe("month-first");
    expect(dayOrderOf(["01/01/1947", "01/02/1947"], { monthly: true })).toBe("day-first");
    expect(dayOrderOf(["1/1/1947", "2/1/1947"], { monthly: false })).toBeNull();
  });
});
