import pg from "pg";

const PRISMA_ONLY = ["schema", "connection_limit", "pool_timeout", "pgbouncer", "connect_timeout"];

/**
 * A connection address as separate fields. A whole connection string would win over the `database` field,
 * and work meant for the shadow database would run on the main one.
 */
export function connectionOf(url) {
  if (!url) throw new Error("DATABASE_URL is not set: this command needs a database.");
  const address = new URL(url);
  const schema = address.searchParams.get("schema") ?? "public";
  for (const name of PRISMA_ONLY) address.searchParams.delete(name);
  const { host, port, user, password, database, ssl } = new pg.Client({ connectionString: address.href });
  return { schema, fields: { host, port, user, password, database, ssl, max: 4 } };
}

/** Runs one statement on its own connection. */
export async function once(fields, sql) {
  const client = new pg.Client(fields);
  await client.connect();
  try {
    return await client.query(sql);
  } finally {
    await client.end();
  }
}

const PRISMA_CODES = {
  "3D000": "P1003",
  "28P01": "P1000",
  28000: "P1000",
  ECONNREFUSED: "P1001",
  ENOTFOUND: "P1001",
  ETIMEDOUT: "P1001",
};

/** Prisma's code for a failed connection, or undefined. */
export function prismaCode(error) {
  return PRISMA_CODES[error?.code];
}
