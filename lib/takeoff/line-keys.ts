import type { TakeoffLine } from "./result.ts";

export type KeyedLine = TakeoffLine & Readonly<{ key: string }>;

/**
 * Lines with what each is known by when the takeoff is reckoned again: a counted thing by what the person called it, any
 * other by its name, the second of a name with "-2". Units: as given. Rounds: never.
 */
export function keyedLines(lines: readonly TakeoffLine[]): KeyedLine[] {
  return lines.map((line, at) => {
    if (line.label !== null) return { ...line, key: `${line.name} ${line.label.toLowerCase()}` };
    const before = lines.slice(0, at).filter((other) => other.name === line.name).length;
    return { ...line, key: before === 0 ? line.name : `${line.name}-${before + 1}` };
  });
}
