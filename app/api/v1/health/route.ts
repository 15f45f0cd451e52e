import { databaseState } from "../../../../lib/data/database-state.ts";
import { version } from "../../../../package.json";
import { does, resource } from "../_answers/resource.ts";
import { readHealth } from "../_operations/program.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readHealth, async () => {
    const { applied, newest, failed, version: server } = await databaseState();
    const database = `PostgreSQL ${server}`;
    return { status: 200, value: { ok: failed === 0, database, migrations: { applied, newest }, version } };
  }),
);
