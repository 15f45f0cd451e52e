import { randomUUID } from "node:crypto";
import { PrismaPg } from "@prisma/adapter-pg";
import { ColumnTypeEnum } from "@prisma/driver-adapter-utils";
import { connectionOf, once } from "./connection.mjs";

const OID_OF_CHAR = 18;
const OID_OF_TEXT = 25;

/** Opens the database and its shadow for the engine; `onError` sees the first cause of a failure. */
export function databaseFactory(datasource, onError) {
  const { fields, schema } = connectionOf(datasource.url);
  const factory = new PrismaPg(fields, { schema });
  const connect = factory.connect.bind(factory);
  factory.connect = noting(onError, async () => corrected(await connect()));
  factory.connectToShadowDb = noting(onError, async () =>
    corrected(await shadow(datasource, fields, schema)),
  );
  return factory;
}

const noting = (onError, open) => async () => {
  try {
    return await open();
  } catch (error) {
    onError(error);
    throw error;
  }
};

// The adapter's own shadow database is dropped while its pool is still open, which PostgreSQL refuses.
async function shadow(datasource, fields, schema) {
  if (datasource.shadowDatabaseUrl) {
    const given = connectionOf(datasource.shadowDatabaseUrl);
    return new PrismaPg(given.fields, { schema: given.schema }).connect();
  }
  const database = `prisma_migrate_shadow_db_${randomUUID()}`;
  await once(fields, `create database "${database}"`);
  const connection = await new PrismaPg({ ...fields, database }, { schema }).connect();
  const dispose = connection.dispose.bind(connection);
  connection.dispose = async () => {
    await dispose();
    await once(fields, `drop database "${database}" with (force)`);
  };
  return connection;
}

/** Mends two things the adapter does not do for the engine: whole scripts, and the type "char". */
function corrected(connection) {
  connection.executeScript = (sql) => wholeScript(connection, sql);
  mapCharColumns(connection);
  return connection;
}

// The adapter splits a script at each semicolon, which cuts function bodies apart.
async function wholeScript(connection, sql) {
  try {
    await connection.client.query(sql);
  } catch (error) {
    connection.onError(error);
  }
}

// The catalogue answers with columns of type "char", which the adapter does not know: read them as text.
function mapCharColumns(connection) {
  const performIO = connection.performIO.bind(connection);
  const queryRaw = connection.queryRaw.bind(connection);
  const charColumns = new WeakMap();
  connection.performIO = async (query) => {
    const result = await performIO(query);
    const found = [];
    for (const [at, field] of (result.fields ?? []).entries())
      if (field.dataTypeID === OID_OF_CHAR) found.push(at);
    for (const at of found) result.fields[at].dataTypeID = OID_OF_TEXT;
    charColumns.set(query, found);
    return result;
  };
  connection.queryRaw = async (query) => {
    const result = await queryRaw(query);
    for (const at of charColumns.get(query) ?? []) result.columnTypes[at] = ColumnTypeEnum.Character;
    return result;
  };
}
