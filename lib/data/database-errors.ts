import "server-only";

/** Deadlock, serialization conflict, and two writers on one unique value (the second finds the first's row when asked again). */
const TRY_AGAIN = new Set(["40001", "40P01", "23505", "P2034", "P2002"]);

/** Every code an error and its causes carry: PostgreSQL's SQLSTATE and Prisma's own. */
export function* codesOf(error: unknown): Generator<string> {
  let at = error;
  for (let depth = 0; typeof at === "object" && at !== null && depth < 8; depth += 1) {
    for (const name of ["code", "originalCode"]) {
      const code = Reflect.get(at, name);
      if (typeof code === "string") yield code;
    }
    const meta: unknown = Reflect.get(at, "meta");
    if (typeof meta === "object" && meta !== null) {
      yield* codesOf(Reflect.get(meta, "driverAdapterError"));
      const code = Reflect.get(meta, "code");
      if (typeof code === "string") yield code;
    }
    at = Reflect.get(at, "cause");
  }
}

/** Whether the same transaction, run once more, may succeed. */
export function tryAgainAfter(error: unknown): boolean {
  return [...codesOf(error)].some((code) => TRY_AGAIN.has(code));
}
