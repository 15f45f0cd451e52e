import { existsSync, readFileSync } from "node:fs";

/** One line of a comma-separated file; quotes may wrap a field. */
function fieldsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted ?? bare ?? "");
}

/**
 * The rows of a file of the shared data pack, which lies beside this repository (../shared/data) or not at all: null and
 * a line of output when it is not there. The first line is a remark, the second the names of the columns.
 */
export function sharedData(path: string): Record<string, string>[] | null {
  const file = new URL(`../../../shared/data/${path}`, import.meta.url);
  if (!existsSync(file)) {
    console.info(`not compared: ../shared/data/${path} is not here`);
    return null;
  }
  const [, header, ...lines] = readFileSync(file, "utf8").trim().split("\n");
  const names = fieldsOf(header ?? "");
  return lines.map((line) => {
    const fields = fieldsOf(line);
    return Object.fromEntries(names.map((name, index) => [name, fields[index] ?? ""]));
  });
}
