import { spawnSync } from "node:child_process";
import { chownSync } from "node:fs";
import { Refusal } from "./refusal.mjs";

const NAMESPACE = ["-U", "--map-user=65534", "--map-group=65534"];

/**
 * How to run PostgreSQL, which refuses to run as root.
 * As root: in a user namespace, where root looks like nobody (works under any folder), else as an unprivileged user.
 * The answer: { wrap(program, args) -> [program, args], options for spawn, own(path) to hand a file over }.
 */
export function postgresUser() {
  const plain = { wrap: (program, args) => [program, args], options: {}, own: () => {} };
  if (process.getuid?.() !== 0) return plain;
  if (spawnSync("unshare", [...NAMESPACE, "true"]).status === 0) {
    return { ...plain, wrap: (program, args) => ["unshare", [...NAMESPACE, program, ...args]] };
  }
  const user = unprivilegedUser();
  return { ...plain, options: user, own: (path) => chownSync(path, user.uid, user.gid) };
}

function unprivilegedUser() {
  for (const name of ["postgres", "nobody"]) {
    const [uid, gid] = ["-u", "-g"].map((flag) =>
      numberOf(spawnSync("id", [flag, name], { encoding: "utf8" })),
    );
    if (uid > 0 && gid > 0) return { uid, gid };
  }
  throw new Refusal(
    "PostgreSQL does not run as root, and this system offers neither user namespaces nor the users postgres or nobody. Start the program as an ordinary user.",
  );
}

const numberOf = ({ status, stdout }) => (status === 0 ? Number(stdout) : 0);
