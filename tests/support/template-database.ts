import type { TestProject } from "vitest/node";
import { generateClient } from "../../lib/launch/build.mjs";
import { type Template, testServer } from "./test-server.ts";

declare module "vitest" {
  interface ProvidedContext {
    template: Template;
  }
}

/** One PostgreSQL for the whole run, of whose migrated database every test file gets its own copy. */
export default async function templateDatabase(project: TestProject) {
  await generateClient();
  const { template, stop } = await testServer();
  project.provide("template", template);
  return stop;
}
