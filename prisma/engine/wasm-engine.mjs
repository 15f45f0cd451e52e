import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import { log } from "./command.mjs";

const folder = dirname(createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm"));

/** The version of the engine's npm package. */
export function engineVersion() {
  return JSON.parse(readFileSync(join(folder, "package.json"), "utf8")).version;
}

/** The engine, loaded once; call the result with an adapter factory to get an engine on that database. */
export async function loadEngine({ datamodelPaths, previewFeatures }) {
  globalThis.PRISMA_WASM_PANIC_REGISTRY = {
    set_message: (message) => log("ERROR", { message, is_panic: true }),
  };
  const bindings = await import("@prisma/schema-engine-wasm/schema_engine_bg");
  const binary = await readFile(join(folder, "schema_engine_bg.wasm"));
  const { instance } = await WebAssembly.instantiate(binary, { "./schema_engine_bg.js": bindings });
  bindings.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();

  const datamodels = await Promise.all(
    datamodelPaths.map(async (path) => [path, await readFile(path, "utf8")]),
  );
  const options = {
    ...(datamodels.length > 0 ? { datamodels } : {}),
    enabledPreviewFeatures: previewFeatures,
  };
  return (factory) =>
    bindings.SchemaEngine.new(options, () => {}, bindMigrationAwareSqlAdapterFactory(factory));
}
