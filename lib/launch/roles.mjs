import { setTimeout as pause } from "node:timers/promises";
import { onConnection } from "./postgres-connection.mjs";
import { Refusal } from "./refusal.mjs";

/** The plain role the application works as, so that row-level security and append-only tables bind it. */
export const APPLICATION_ROLE = "dunnage_app";

const CREATE = `do $$ begin
  create role ${APPLICATION_ROLE} nologin nosuperuser nobypassrls nocreatedb nocreaterole;
exception when duplicate_object or unique_violation then null;
end $$`;

const GRANTS = [
  `grant usage on schema public to ${APPLICATION_ROLE}`,
  `grant select, insert, update, delete on all tables in schema public to ${APPLICATION_ROLE}`,
  `grant usage, select on all sequences in schema public to ${APPLICATION_ROLE}`,
  `alter default privileges in schema public grant select, insert, update, delete on tables to ${APPLICATION_ROLE}`,
  `alter default privileges in schema public grant usage, select on sequences to ${APPLICATION_ROLE}`,
  `revoke all on table _prisma_migrations from ${APPLICATION_ROLE}`,
];

const IDENTITY = `select current_user as name, rolsuper or rolbypassrls as unbound, rolsuper or rolcreaterole as creator
  from pg_roles where rolname = current_user`;

/**
 * Makes the application's role and gives it the tables; run after every migration.
 * The answer is the role's name, or "" where the server does not let us make roles: the connecting user, bound by
 * FORCE ROW LEVEL SECURITY, is then the plain role itself.
 * @throws {Refusal} when neither is so: nothing would keep one workspace's rows from another's.
 */
export function applicationRole(url) {
  return onConnection(url, async (client) => {
    const user = (await client.query(IDENTITY)).rows[0];
    if (await roleIsOurs(client, user)) {
      for (const grant of GRANTS) await client.query(grant);
      return APPLICATION_ROLE;
    }
    if (!user.unbound) return "";
    throw new Refusal(
      `The database user ${user.name} passes over row-level security and may not make roles. Use a plain user, or one that may create roles.`,
    );
  });
}

async function roleIsOurs(client, user) {
  if (user.creator) await again(() => client.query(CREATE));
  const { rows } = await client.query(
    "select rolsuper or rolbypassrls as unbound from pg_roles where rolname = $1",
    [APPLICATION_ROLE],
  );
  if (rows.length === 0) return false;
  if (rows[0].unbound)
    throw new Refusal(`The role ${APPLICATION_ROLE} passes over row-level security; it must not.`);
  return mayBecome(client, user);
}

async function mayBecome(client, user) {
  const version = Number((await client.query("show server_version_num")).rows[0].server_version_num);
  const right = version >= 160_000 ? "SET" : "MEMBER";
  const may = async () =>
    (await client.query("select pg_has_role(current_user, $1, $2) as may", [APPLICATION_ROLE, right])).rows[0]
      .may;
  if (!(await may()) && user.creator) {
    await again(() => client.query(`grant ${APPLICATION_ROLE} to current_user`));
  }
  return may();
}

const BUSY = ["XX000", "40001", "23505", "42710"];

// Roles belong to the whole server and locks to one database: two databases set up at once may collide here.
async function again(work) {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await work();
    } catch (error) {
      if (!BUSY.includes(error.code) || attempt === 20) throw error;
      await pause(20 * attempt);
    }
  }
}
