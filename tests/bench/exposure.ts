import pg from "pg";
import { v7 } from "uuid";
import { figure, inTurns, quantile, timesOf } from "./measured.ts";
import { EXPOSURE_IN_ONE_STATEMENT } from "./single-statement.ts";
import type { Size } from "./sizes.ts";

/** Exposure of all projects through lib/data and the core, against one statement that does much less. */
export async function exposureFigures(url: string, size: Size, runs: number): Promise<string[]> {
  const { ownerWorkspace, todayOf } = await import("../../lib/data/workspaces.ts");
  const { exposureFacts } = await import("../../lib/data/facts.ts");
  const { exposure } = await import("../../lib/exposure/exposure.ts");
  const workspace = await ownerWorkspace();
  const scope = { workspaceId: workspace.id, actor: "bench" };
  const day = todayOf(workspace);
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const [ours, statement] = await inTurns(
      async () => exposure(day, await exposureFacts(scope, day)),
      () => client.query(EXPOSURE_IN_ONE_STATEMENT, [day]),
      runs,
    );
    const facts = await exposureFacts(scope, day);
    const core = await timesOf(async () => exposure(day, facts), runs);
    const at = `Exposure of ${size.projects} projects at ${size.name}`;
    return [
      figure(`${at}, to one statement`, quantile(ours, 0.5), quantile(statement, 0.5), 2),
      `  of it the core ${quantile(core, 0.5).toFixed(1)} ms, with ${facts.observations.length} observations brought along`,
    ];
  } finally {
    await client.end();
  }
}

/** One price appended and the new figure of one project, against a bare insert and a bare query. */
export async function onePriceFigure(url: string): Promise<string[]> {
  const { ownerWorkspace, todayOf } = await import("../../lib/data/workspaces.ts");
  const { exposureFacts } = await import("../../lib/data/facts.ts");
  const { addObservation } = await import("../../lib/data/observations.ts");
  const { observationEntry } = await import("../../lib/prices/observation-entry.ts");
  const { exposure } = await import("../../lib/exposure/exposure.ts");
  const workspace = await ownerWorkspace();
  const scope = { workspaceId: workspace.id, actor: "bench" };
  const day = todayOf(workspace);
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query<{ project: string; material: string; store: string }>(
    `SELECT project_id AS project, material_id AS material, (SELECT id FROM store LIMIT 1) AS store
     FROM requirement ORDER BY id LIMIT 1`,
  );
  const [there] = rows;
  if (there === undefined) throw new Error("the database of the bench is empty");
  const entry = observationEntry.parse({
    materialId: there.material,
    storeId: there.store,
    seenOn: day,
    amount: "31.40",
    currency: "CAD",
    per: { quantity: "1", unit: "sheet" },
    taxIncluded: false,
    terms: "shelf",
  });
  try {
    const [ours, bare] = await inTurns(
      async () => {
        const written = await addObservation(scope, v7(), entry);
        if (!written.ok) throw new Error("the bench's price was refused");
        return exposure(day, await exposureFacts(scope, day, there.project));
      },
      async () => {
        await client.query(
          `INSERT INTO observation (workspace_id, id, material_id, store_id, seen_on, terms, amount, currency, per_quantity,
             per_unit, tax_included, entry_hash) VALUES ($1, $2, $3, $4, $5, 'shelf', 31.40, 'CAD', 1, 'sheet', false, '')`,
          [workspace.id, v7(), there.material, there.store, day],
        );
        await client.query(
          `SELECT DISTINCT ON (o.material_id, o.store_id, o.terms, o.tier) o.* FROM observation o
           JOIN requirement r ON r.material_id = o.material_id AND r.project_id = $1
           WHERE o.deleted_at IS NULL AND o.workspace_id = $2
           ORDER BY o.material_id, o.store_id, o.terms, o.tier, o.seen_on DESC, o.sequence DESC`,
          [there.project, workspace.id],
        );
      },
      60,
    );
    return [
      figure(
        "One price more and a project's new figure at M (p95)",
        quantile(ours, 0.95),
        quantile(bare, 0.95),
        3,
      ),
    ];
  } finally {
    await client.end();
  }
}
