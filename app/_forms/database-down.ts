import { codesOf } from "../../lib/data/database-errors.ts";

/** Codes of a database that is not there: the network's, PostgreSQL's class 08, 57P and 3D000, and the client's own. */
const CODES =
  /^(3D000|ECONN|EPIPE|ENOENT|ETIMEDOUT|EHOSTUNREACH|ENOTFOUND|08|57P0|P100[1-3,8]|P1017|P2024|P2037)/;
const MESSAGES =
  /Connection terminated|Can't reach database|DatabaseNotReachable|ConnectionClosed|SocketTimeout|server closed the connection|timeout exceeded when trying to connect|the database system is (shutting down|starting up)/;

/** Whether an error, or one it was caused by, means that the database cannot be reached. The one place that decides it. */
export function isDatabaseDown(error: unknown): boolean {
  if ([...codesOf(error)].some((code) => CODES.test(code))) return true;
  for (let at: unknown = error, depth = 0; at instanceof Error && depth < 6; at = at.cause, depth += 1) {
    if (MESSAGES.test(at.message)) return true;
    if (at instanceof AggregateError && at.errors.some((inner) => isDatabaseDown(inner))) return true;
  }
  return false;
}
