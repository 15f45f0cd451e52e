import { codesOf } from "../../lib/data/database-errors.ts";

/** Codes of a database that is not there: the network's, PostgreSQL's class 08, 57P and 3D000, and the client's own. */
const CODES =
  /^(3D000|ECONN|EPIPE|ENOENT|ETIMEDOUT|EHOSTUNREACH|ENOTFOUND|08|57P0|P100[1-3,8]|P1017|P2024|P2037)/;
const MESSAGES =
  /Connection terminated|Can't reach database|DatabaseNotReachable|ConnectionClosed|SocketTimeout|server closed the connection|timeout exceeded when trying to connect|the database system is (shutting down|starting up)/;

/** An error, what caused it, what the client wraps, and each of several that failed together. */
function* errorsIn(error: unknown, depth = 0): Generator<object> {
  if (typeof error !== "object" || error === null || depth > 8) return;
  yield error;
  yield* errorsIn(Reflect.get(error, "cause"), depth + 1);
  const meta: unknown = Reflect.get(error, "meta");
  if (typeof meta === "object" && meta !== null)
    yield* errorsIn(Reflect.get(meta, "driverAdapterError"), depth + 1);
  if (error instanceof AggregateError) for (const one of error.errors) yield* errorsIn(one, depth + 1);
}

/** Whether an error, or one it was caused by, means that the database cannot be reached. The one place that decides it. */
export function isDatabaseDown(error: unknown): boolean {
  return [...errorsIn(error)].some(
    (one) =>
      [...codesOf(one)].some((code) => CODES.test(code)) ||
      MESSAGES.test(String(Reflect.get(one, "message"))),
  );
}
