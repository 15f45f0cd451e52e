import { setTimeout as pause } from "node:timers/promises";
import { onConnection } from "./postgres-connection.mjs";
import { Refusal } from "./refusal.mjs";

/** The plain role the application works as, so that row-level security and append-only tables bind it. */
export const APPLICATION_ROLE = "dunnage_app";

const CREATE = `do $$ begin
  create role ${APPLICATION_ROLE} nologin nosuperuser nobypassrls nocreatedb nocreaterole;
exception when duplicate_object or unique_violation then null;
end $$`;

const CONNECTED = `select current_user as name, rolsuper or rolbypassrls as unbound, rolsuper or rolcreaterole as creator
  from pg_roles where rolname = current_user`;

// "May become": PostgreSQL 16 tells the right to become a role from being its member.
const STANDING = `select rolsuper or rolbypassrls as unbound,
    pg_has_role(current_user, oid, case when current_setting('server_version_num')::int < 160000 then 'MEMBER' else 'SET' end) as ours,
    coalesce(has_table_privilege(oid, to_regclass('public.workspace'), 'select'), false) as granted
  from pg_roles where rolname = $1`;

/** Makes the application's role where the server lets us, before the migrations say what it may do. */
export function makeRole(url) {
  return onConnection(url, async (client) => {
    const { creator } = await connectedUser(client);
    if (!creator) return;
    if ((await standing(client)) === null) await again(() => client.query(CREATE));
    if (!(await standing(client)).ours)
      await again(() => client.query(`grant ${APPLICATION_ROLE} to current_user`));
  });
}

/**
 * The role the application is to work as: "dunnage_app", or "" where the server does not let us make roles and the
 * connecting user, bound by FORCE ROW LEVEL SECURITY, is the plain role itself. Asked after the migrations.
 * @throws {Refusal} when neither is so: nothing would keep one workspace's rows from another's.
 */
export function applicationRole(url) {
  return onConnection(url, async (client) => {
    const role = await standing(client);
    if (role?.unbound) {
      throw new Refusal(
        `The role ${APPLICATION_ROLE} passes over row-level security. Take that right from it.`,
      );
    }
    if (role?.ours && role.granted) return APPLICATION_ROLE;
    const user = await connectedUser(client);
    if (!user.unbound) return "";
    throw new Refusal(
      `The database user ${user.name} passes over row-level security, and the role ${APPLICATION_ROLE} has no right to the tables. Use a plain user for DATABASE_URL.`,
    );
  });
}

async function connectedUser(client) {
  return (await client.query(CONNECTED)).rows[0];
}

async function standing(client) {
  return (await client.query(STANDING, [APPLICATION_ROLE])).rows[0] ?? null;
}

const COLLISIONS = ["XX000", "40001", "23505", "42710"];

// Roles belong to the whole server and locks to one database: two databases set up at once may collide here.
async function again(work) {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await work();
    } catch (error) {
      if (!COLLISIONS.includes(error.code) || attempt === 20) throw error;
      await pause(20 * attempt);
    }
  }
}
