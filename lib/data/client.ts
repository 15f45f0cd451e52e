import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import { tryAgainAfter } from "./database-errors.ts";
import { Prisma, PrismaClient } from "./generated/client.ts";

/** Whose rows a call works on, and who is at work: the change log names the actor. readOnly: the database refuses every write. */
export type Scope = Readonly<{ workspaceId: string; actor: string; readOnly?: boolean }>;
export type Tx = Prisma.TransactionClient;

/** The program was started without a database, or with one whose policies would not bind it. */
export class UnusableDatabase extends Error {
  constructor(what: string) {
    super(what);
    this.name = "UnusableDatabase";
  }
}

const TRIES = 5;
const WAIT_FOR_CONNECTION = 20_000;
const LONGEST_TRANSACTION = 120_000;
const CONNECTIONS = 10;

type Kept = { url: string; client: PrismaClient; role: Promise<string> | null };
const kept = globalThis as typeof globalThis & { dunnageDatabase?: Kept };

/** The one client of the process; outside of production a reloaded module finds it again. */
function database(): Kept {
  const url = process.env.DATABASE_URL;
  if (!url)
    throw new UnusableDatabase("DATABASE_URL is not set: start with `npm start`, or name a PostgreSQL");
  if (kept.dunnageDatabase?.url !== url) {
    const adapter = new PrismaPg({ connectionString: url, max: CONNECTIONS });
    kept.dunnageDatabase = { url, client: new PrismaClient({ adapter }), role: null };
  }
  return kept.dunnageDatabase;
}

/** Closes the connections of the process; for tests and scripts that end. */
export async function disconnect(): Promise<void> {
  await kept.dunnageDatabase?.client.$disconnect();
  kept.dunnageDatabase = undefined;
}

/** The role the policies bind: DUNNAGE_ROLE, else dunnage_app where it exists, else the user itself unless it is above them. */
async function askRole(client: PrismaClient): Promise<string> {
  const wanted = process.env.DUNNAGE_ROLE ?? "dunnage_app";
  const [user] = await client.$queryRaw<{ can: boolean; above: boolean }[]>`
    SELECT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = ${wanted} AND pg_has_role(current_user, oid, 'MEMBER')) AS can,
      (SELECT rolsuper OR rolbypassrls FROM pg_roles WHERE rolname = current_user) AS above`;
  if (user?.can) return wanted;
  if (process.env.DUNNAGE_ROLE !== undefined || user?.above !== false)
    throw new UnusableDatabase(
      `the database user cannot work as the role ${wanted}, and its own rights are too wide`,
    );
  return "none";
}

function roleOf(held: Kept): Promise<string> {
  held.role ??= askRole(held.client).catch((error: unknown) => {
    held.role = null;
    throw error;
  });
  return held.role;
}

/** The role of roleOf, for the connections about sign-in. */
export function workingRole(): Promise<string> {
  return roleOf(database());
}

type Settings = Readonly<{ workspace: string; actor: string; finding: "on" | "off"; readOnly: boolean }>;

function settingsOf({ workspaceId, actor, readOnly = false }: Scope): Settings {
  return { workspace: workspaceId, actor, finding: "off", readOnly };
}

async function inTransaction<T>(
  { workspace, actor, finding, readOnly }: Settings,
  work: (tx: Tx) => Promise<T>,
  snapshot: boolean,
): Promise<T> {
  const held = database();
  const role = await roleOf(held);
  const isolationLevel = snapshot
    ? Prisma.TransactionIsolationLevel.RepeatableRead
    : Prisma.TransactionIsolationLevel.ReadCommitted;
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await held.client.$transaction(
        async (tx) => {
          await tx.$queryRaw`SELECT set_config('role', ${role}, true), set_config('app.workspace', ${workspace}, true),
            set_config('app.actor', ${actor}, true), set_config('app.finding', ${finding}, true),
            set_config('random_page_cost', '1.1', true), set_config('jit', 'off', true),
            set_config('transaction_read_only', ${readOnly ? "on" : "off"}, true)`;
          return work(tx);
        },
        {
          maxWait: WAIT_FOR_CONNECTION,
          timeout: LONGEST_TRANSACTION,
          ...(snapshot ? { isolationLevel } : {}),
        },
      );
    } catch (error) {
      if (attempt >= TRIES || !tryAgainAfter(error)) throw error;
    }
  }
}

/**
 * Work on one workspace, in one transaction: the one place that scopes. The database shows and takes only that
 * workspace's rows. Work may run more than once: a deadlock, or two writers meeting on one id or name, is tried again,
 * and then finds what the other has written.
 */
export function inWorkspace<T>(scope: Scope, work: (tx: Tx) => Promise<T>): Promise<T> {
  return inTransaction(settingsOf(scope), work, false);
}

/** The same for several reads that must show one moment. */
export function inSnapshot<T>(scope: Scope, work: (tx: Tx) => Promise<T>): Promise<T> {
  return inTransaction(settingsOf(scope), work, true);
}

/** Looks for workspaces before one is entered: sees their names and settings, nothing inside them, and cannot write. */
export function findingWorkspaces<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
  return inTransaction({ workspace: "", actor: "system", finding: "on", readOnly: false }, work, false);
}

/** A statement outside of any workspace, as the connecting user: for asking how the database is. */
export function aboutDatabase<T>(ask: (client: PrismaClient) => Promise<T>): Promise<T> {
  return ask(database().client);
}
