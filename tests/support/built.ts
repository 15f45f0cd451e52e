import { buildProgram } from "../../lib/launch/build.mjs";

/** The pages, built unless those there are of these very sources. */
export default async function built(): Promise<void> {
  await buildProgram();
}
