import { createHash, randomInt, randomUUID } from "node:crypto";
import { onConnection } from "./postgres-connection.mjs";

const LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * A one-time code for the first owner, or null when the house has one (unless `another` is asked for). Those of earlier
 * starts are void. The database keeps its hash alone; it is printed on the terminal and nowhere else.
 */
export function firstCode(url, role, another = false) {
  return onConnection(url, async (client) => {
    await client.query("begin");
    await client.query("select set_config('app.house', 'on', true), set_config('role', $1, true)", [
      role === "" ? "none" : role,
    ]);
    await client.query("delete from one_time_code where kind = 'first' and used_at is null");
    const { rowCount } = await client.query("select 1 from person where role = 'owner' limit 1");
    const code = rowCount === 0 || another ? newCode() : null;
    if (code !== null) {
      await client.query(
        `insert into one_time_code (id, kind, code_hash, role, expires_at)
          values ($1, 'first', $2, 'owner', now() + interval '100 years')`,
        [randomUUID(), createHash("sha256").update(code.replaceAll("-", "")).digest("hex")],
      );
    }
    await client.query("commit");
    return code;
  });
}

// As newCode of lib/data/sign-in-secret.ts, which is not plain Node.
function newCode() {
  const letters = Array.from({ length: 12 }, () => LETTERS[randomInt(LETTERS.length)]).join("");
  return letters.replaceAll(/(.{4})(?=.)/g, "$1-");
}
