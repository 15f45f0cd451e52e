import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { LAYERS } from "./layers.mjs";

const PACKAGES = {
  "decimal.js": "dependencies",
  pg: "dependencies",
  uuid: "dependencies",
  vitest: "devDependencies",
};

function write(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** The file in which a part of lib is looked for here. */
export const fileOf = (name: string): string => (name.endsWith(".ts") ? `lib/${name}` : `lib/${name}/it.ts`);

/** A small project as ours should be, with a file for each part of lib, in a folder of its own. */
export function soundProject(): string {
  const folder = mkdtempSync(join(tmpdir(), "dunnage-planted-"));
  const named = (kind: string) =>
    Object.fromEntries(
      Object.entries(PACKAGES).flatMap(([name, its]) => (its === kind ? [[name, "1.0.0"]] : [])),
    );
  write(folder, {
    "package.json": JSON.stringify({
      name: "planted",
      dependencies: named("dependencies"),
      devDependencies: named("devDependencies"),
    }),
    "tsconfig.json": "{}",
    "app/page.tsx": 'import { it } from "../lib/show/it.ts";\nexport const page = it;\n',
    "app/field.client.tsx": "export const field = 1;\n",
    "prisma/seed.ts": "export const seed = 1;\n",
    "tests/some.test.ts": 'import "vitest";\nexport const tested = 1;\n',
  });
  for (const name of Object.keys(PACKAGES))
    write(folder, {
      [`node_modules/${name}/package.json`]: JSON.stringify({ name, version: "1.0.0", main: "index.js" }),
      [`node_modules/${name}/index.js`]: "module.exports = {};\n",
    });
  for (const { name } of LAYERS) write(folder, { [fileOf(name)]: "export const it = 1;\n" });
  return folder;
}

/** Adds an import to a file of such a project, making the file when it is not there. */
export function plant(folder: string, path: string, imported: string): void {
  write(folder, { [path]: `import ${JSON.stringify(imported)};\nexport const it = 1;\n` });
}
