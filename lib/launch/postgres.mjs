import { resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { withLock } from "./lock.mjs";
import { clusterAddress, clusterPaths, makeCluster } from "./postgres-cluster.mjs";
import { connected, onConnection, PRESENCE } from "./postgres-connection.mjs";
import { runningServer, startServer, stopServer } from "./postgres-server.mjs";
import { postgresUser } from "./postgres-user.mjs";

/**
 * The PostgreSQL of a data folder, started or found running. Several programs may use one server;
 * each keeps one connection open while it does, and the last of them to call stop() ends the server.
 * @param {string} dataDir
 * @param {{ binFolder?: string, settings?: string[], port?: number, whenLost?: () => void }} options
 *   binFolder: another PostgreSQL than the one from npm; settings: as in postgresql.conf ("fsync=off");
 *   port: one to prefer; whenLost: called when the server ends before stop() is called.
 * @returns {Promise<{ url: string, port: number, pid: number, reused: boolean, stop(): Promise<void> }>}
 */
export async function openPostgres(dataDir, { whenLost = () => {}, ...options } = {}) {
  const paths = clusterPaths(resolve(dataDir));
  return withLock(paths.lock, async () => {
    const found = await runningServer(paths);
    const { pid, port } = found ?? (await newServer(paths, options));
    await makeDatabase(paths, port);
    const url = clusterAddress(paths, port);
    const presence = await connected(url);
    let stopping = false;
    presence.on("end", () => stopping || whenLost());
    const stop = () => {
      stopping = true;
      return withLock(paths.lock, () => leave(presence, pid));
    };
    return { url, port, pid, reused: found !== null, stop };
  });
}

async function newServer(paths, options) {
  const user = postgresUser();
  makeCluster(paths, user, options.binFolder);
  return startServer(paths, user, options);
}

async function makeDatabase(paths, port) {
  await onConnection(clusterAddress(paths, port, "postgres"), async (client) => {
    const { rowCount } = await client.query("select 1 from pg_database where datname = 'dunnage'");
    if (rowCount === 0) await client.query("create database dunnage");
  });
}

async function leave(presence, pid) {
  const alone = await isAlone(presence);
  await presence.end().catch(() => {});
  if (alone) await stopServer(pid);
}

// Asked a few times: a program that has just left shows for another moment.
async function isAlone(presence) {
  const others = "select 1 from pg_stat_activity where application_name = $1 and pid <> pg_backend_pid()";
  for (let asked = 0; asked < 10; asked += 1) {
    const count = await presence.query(others, [PRESENCE]).then(
      ({ rowCount }) => rowCount,
      () => 0,
    );
    if (count === 0) return true;
    await pause(50);
  }
  return false;
}
