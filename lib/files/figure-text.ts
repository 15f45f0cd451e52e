import { type Decimal, decimal } from "../decimal.ts";
import type { FaultCode } from "../fault.ts";

const LONGEST = 40;
/** How files say that there is no value: FRED "." or nothing, the ECB "N/A", the Federal Reserve "ND", spreadsheets "#N/A". */
const NO_VALUE: ReadonlySet<string> = new Set([".", "..", "-", "na", "n/a", "#n/a", "nan", "nd", "null"]);

/** Whether a cell says that there is no value. */
export function isNoValue(text: string): boolean {
  return text === "" || NO_VALUE.has(text.toLowerCase());
}

/** Which sign stands before the decimals; null: nothing in the file shows it. */
export type DecimalSign = "point" | "comma" | null;

/**
 * The decimal sign the figures of a file show: a figure that can be read one way only decides for all. A comma counts only
 * where it is not what stands between the cells.
 */
export function decimalSignOf(figures: readonly string[], separator: string): DecimalSign {
  if (separator === ",") return "point";
  if (figures.some((text) => /^[-+]?\d+\.\d+$/.test(text))) return "point";
  return figures.some((text) => /^[-+]?(0,\d+|\d+,(\d{1,2}|\d{4,})|\d{4,},\d+)$/.test(text)) ? "comma" : null;
}

/**
 * The number a cell is, exactly; else why it is none. "1,234" is read only where its file shows which sign is the decimal
 * one. Never throws. Rounds: never. Errors: too-long, not-a-number, comma-unclear.
 */
export function figureOf(text: string, sign: DecimalSign): Decimal | FaultCode {
  if (text.length > LONGEST) return "too-long";
  if (/^[-+]?\d+(\.\d+)?$/.test(text)) return decimal(text.replace("+", ""));
  if (/^[-+]?\d{1,3}(,\d{3})+\.\d+$/.test(text) && sign !== "comma")
    return decimal(text.replaceAll(/[,+]/g, ""));
  if (!/^[-+]?\d+,\d+$/.test(text)) return "not-a-number";
  if (sign === "comma") return decimal(text.replace(",", ".").replace("+", ""));
  return sign === null || /^[-+]?\d{1,3},\d{3}$/.test(text) ? "comma-unclear" : "not-a-number";
}
