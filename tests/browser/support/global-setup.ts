import { buildProgram } from "../../../lib/launch/build.mjs";
import { testServer } from "../../support/test-server.ts";
import { keepTemplate } from "./program.ts";

/** Builds the program if it is not built, and starts the PostgreSQL of the run; the answer ends that. */
export default async function globalSetup(): Promise<() => Promise<void>> {
  await buildProgram();
  const { template, stop } = await testServer();
  keepTemplate(template);
  return stop;
}
