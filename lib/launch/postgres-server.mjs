import { spawn } from "node:child_process";
import { closeSync, openSync, readdirSync, readFileSync, readlinkSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { freePort } from "./free-port.mjs";
import { postgresProgram } from "./postgres-binaries.mjs";
import { clusterAddress, notedServer } from "./postgres-cluster.mjs";
import { answers } from "./postgres-connection.mjs";
import { Refusal } from "./refusal.mjs";
import { isAlive } from "./running-process.mjs";

const STARTS = 24;
const PATIENCE = 60_000;
const FIXED = ["listen_addresses=127.0.0.1", "unix_socket_directories=", "timezone=UTC"];

/** The server that already runs on the cluster: { pid, port }, or null. One left by a killed program counts. */
export async function runningServer(paths) {
  const noted = notedServer(paths);
  if (noted === null || !isAlive(noted.pid)) return null;
  return (await answers(clusterAddress(paths, noted.port, "postgres"))) ? noted : null;
}

/** Starts a server on the cluster, on `port` if that is free: { pid, port }. */
export async function startServer(paths, user, { binFolder, settings = [], port = 0 }) {
  for (let attempt = 1; attempt <= STARTS; attempt += 1) {
    const chosen = attempt === 1 && port > 0 ? port : await freePort();
    const server = await serverOn(chosen, paths, user, binFolder, [...FIXED, ...settings]);
    if (server !== null) return server;
    forgetDeadServer(paths);
    await pause(500); // the server of a killed run may take a second to go
  }
  throw new Refusal(`The database did not start. Its own account of why is at the end of ${paths.log}.`);
}

async function serverOn(port, paths, user, binFolder, settings) {
  const program = postgresProgram("postgres", binFolder);
  const options = settings.flatMap((setting) => ["-c", setting]);
  const [command, args] = user.wrap(program, ["-D", paths.cluster, "-p", String(port), ...options]);
  const log = openSync(paths.log, "a", 0o600);
  // Detached, because Ctrl-C reaches the whole group at once and the database has to stop last.
  const child = spawn(command, args, {
    ...user.options,
    cwd: paths.folder,
    stdio: ["ignore", log, log],
    detached: true,
  });
  closeSync(log);
  let ended = false;
  for (const event of ["exit", "error"]) child.on(event, () => (ended = true));
  child.unref();
  for (const until = Date.now() + PATIENCE; !ended && Date.now() < until; await pause(40)) {
    if (await answers(clusterAddress(paths, port, "postgres"))) return { pid: child.pid, port };
  }
  if (!ended) child.kill("SIGQUIT");
  return null;
}

/** PostgreSQL's fast shutdown, waited for. */
export async function stopServer(pid) {
  if (isAlive(pid)) process.kill(pid, "SIGINT");
  for (const until = Date.now() + PATIENCE; isAlive(pid) && Date.now() < until; ) await pause(40);
}

// The process id noted by a killed server may belong to another program by now, which PostgreSQL takes for a server.
function forgetDeadServer(paths) {
  const noted = notedServer(paths);
  if (noted === null || process.platform !== "linux" || isUsed(paths.cluster)) return;
  if (isAlive(noted.pid) && !nameOf(noted.pid).startsWith("postgres"))
    rmSync(join(paths.cluster, "postmaster.pid"));
}

// Every process of a server works inside the folder of its cluster.
function isUsed(folder) {
  const pids = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  return pids.some((pid) => orNull(() => readlinkSync(`/proc/${pid}/cwd`)) === folder);
}

const nameOf = (pid) => orNull(() => readFileSync(`/proc/${pid}/comm`, "utf8")) ?? "postgres";

function orNull(read) {
  try {
    return read();
  } catch {
    return null;
  }
}
