import { existsSync, readFileSync } from "node:fs";

/** A row of a table: its fields by the names of the columns. */
export type Row = Readonly<Record<string, string>>;

/** One line of a comma-separated file; quotes may wrap a field. */
function fieldsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted ?? bare ?? "");
}

/** The first line is a remark with the source, the second the names of the columns. */
function rowsOf(file: URL): Row[] {
  const [, header, ...lines] = readFileSync(file, "utf8").trim().split("\n");
  const names = fieldsOf(header ?? "");
  return lines.map((line) => {
    const fields = fieldsOf(line);
    return Object.fromEntries(names.map((name, index) => [name, fields[index] ?? ""]));
  });
}

/** The table frozen in tests/references/frozen: always there, compared on every run. Throws: {Error} when it is not. */
export function frozenTable(name: string): Row[] {
  return rowsOf(new URL(`../references/frozen/${name}`, import.meta.url));
}

/**
 * The frozen table and, when the shared data pack lies beside this repository (../shared/data), the whole of which it is a
 * part. A line of output says so when it does not.
 */
export function tablesOf(frozen: string, shared: string): Row[][] {
  const file = new URL(`../../../shared/data/${shared}`, import.meta.url);
  if (existsSync(file)) return [frozenTable(frozen), rowsOf(file)];
  console.info(`compared with tests/references/frozen/${frozen} only: ../shared/data/${shared} is not here`);
  return [frozenTable(frozen)];
}
