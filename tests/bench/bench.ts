// `npm run bench`: every figure as a ratio to a baseline measured in the same run (times alone move with the machine).
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { generateClient } from "../../lib/launch/build.mjs";
import { openDatabase } from "../../lib/launch/database.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { exposureFigures, onePriceFigure } from "./exposure.ts";
import { filledDatabase } from "./fill.ts";
import { pageFigures } from "./pages.ts";
import { LARGE, MEDIUM, SMALL } from "./sizes.ts";
import { startFigures } from "./start.ts";

const wanted = process.argv.slice(2);

async function report(name: string, figures: () => Promise<string[]>): Promise<void> {
  if (wanted.length > 0 && !wanted.includes(name)) return;
  console.log(`\n${name}`);
  for (const line of await figures()) console.log(`  ${line}`);
}

await generateClient();
const folder = mkdtempSync(join(tmpdir(), "dunnage-bench-"));
const { value: server } = await openDatabase({ databaseUrl: null, dataDir: folder }, {});
try {
  for (const [size, runs] of [
    [SMALL, 40],
    [MEDIUM, 20],
    [LARGE, 5],
  ] as const)
    await report(`exposure-${size.name}`, async () =>
      exposureFigures(await filledDatabase(server.url, size), size, runs),
    );
  await report("one-price", async () => onePriceFigure(await filledDatabase(server.url, MEDIUM)));
  await report("pages", async () => {
    const url = await filledDatabase(server.url, MEDIUM);
    const { loadDemo } = await import("../../prisma/demo/load.ts");
    const { ownerWorkspace, todayOf } = await import("../../lib/data/workspaces.ts");
    await loadDemo(todayOf(await ownerWorkspace()));
    const { rows } = await onConnection(url, (client) =>
      client.query("SELECT id FROM project WHERE name = 'Project 7'"),
    );
    return pageFigures({ DATABASE_URL: url, DUNNAGE_ROLE: process.env.DUNNAGE_ROLE ?? "" }, rows[0].id);
  });
} finally {
  const { disconnect } = await import("../../lib/data/client.ts");
  await disconnect();
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
}
await report("start", startFigures);
