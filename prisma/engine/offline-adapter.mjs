import { ColumnTypeEnum } from "@prisma/driver-adapter-utils";

// The engine asks for the server's version even when it compares two schema files: the oldest we support.
const VERSION = {
  columnNames: ["exists", "version", "numeric_version"],
  columnTypes: [ColumnTypeEnum.Boolean, ColumnTypeEnum.Text, ColumnTypeEnum.Int32],
  rows: [[true, "PostgreSQL 15.0", 150000]],
};

async function refuse(query) {
  throw new Error(`this command needs a database: ${query?.sql ?? query}`);
}

const connection = {
  provider: "postgres",
  adapterName: "offline",
  executeRaw: refuse,
  executeScript: refuse,
  startTransaction: refuse,
  dispose: async () => {},
  getConnectionInfo: () => ({ schemaName: "public", supportsRelationJoins: true }),
  queryRaw: async (query) => (query.sql.includes("server_version_num") ? VERSION : refuse(query)),
};

/** Enough of a connection to compare schema files, which touches no database. */
export const offlineFactory = {
  provider: "postgres",
  adapterName: "offline",
  connect: async () => connection,
  connectToShadowDb: async () => connection,
};
