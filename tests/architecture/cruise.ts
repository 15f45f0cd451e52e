import { spawnSync } from "node:child_process";
import { join } from "node:path";
import * as z from "zod";
import { ROOT } from "../../lib/launch/paths.mjs";

const cruiseResult = z.object({
  modules: z.array(z.object({ source: z.string() })),
  summary: z.object({
    violations: z.array(z.object({ from: z.string(), to: z.string(), rule: z.object({ name: z.string() }) })),
  }),
});

/** What dependency-cruiser finds in some folders of a project by the rules of this one. */
export function cruise(folder: string, parts: readonly string[]): z.infer<typeof cruiseResult> {
  const program = join(ROOT, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const rules = join(ROOT, ".dependency-cruiser.mjs");
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [program, "--config", rules, "--output-type", "json", ...parts],
    {
      cwd: folder,
      encoding: "utf8",
      maxBuffer: 2 ** 28,
    },
  );
  if (stdout === "") throw new Error(`dependency-cruiser said nothing: ${stderr}`);
  return cruiseResult.parse(JSON.parse(stdout));
}
