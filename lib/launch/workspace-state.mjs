import { onConnection } from "./postgres-connection.mjs";

const OWNERS = "select id from workspace where kind = 'owner'";

/** Whether the owner's workspace has no material yet (or is not made yet). */
export function hasNoMaterials(url) {
  return onConnection(url, async (client) => {
    await client.query("begin");
    await client.query("select set_config('app.finding', 'on', true)"); // row-level security, see the migrations
    const [owner] = (await client.query(OWNERS)).rows;
    if (owner === undefined) return true;
    await client.query("select set_config('app.workspace', $1, true)", [owner.id]);
    return (
      (await client.query("select 1 from material where workspace_id = $1 limit 1", [owner.id])).rowCount ===
      0
    );
  });
}
