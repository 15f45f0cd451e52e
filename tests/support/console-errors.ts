import { afterEach, beforeEach } from "vitest";

let written: string[] = [];

/** What was written to console.error in this test so far; taking it says that it was expected. */
export function takeConsoleErrors(): string[] {
  return written.splice(0);
}

beforeEach(() => {
  written = [];
  console.error = (...args: unknown[]) => written.push(args.map(String).join(" "));
});

afterEach(() => {
  const unexpected = takeConsoleErrors();
  if (unexpected.length > 0) throw new Error(`console.error was called:\n${unexpected.join("\n")}`);
});
