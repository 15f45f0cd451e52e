import pg from "pg";
import { log } from "./command.mjs";
import { connectionOf, once, prismaCode } from "./connection.mjs";

/** Answers `cli can-connect-to-database | create-database | drop-database`; the result is the exit code. */
export async function runDatabaseCommand({ databaseCommand, datasource }) {
  log("INFO", { message: "schema engine started" }); // Prisma skips the first line it reads
  try {
    const { fields } = connectionOf(datasource.url);
    await statementFor(databaseCommand, fields);
    log("INFO", { message: "ok" });
    return 0;
  } catch (error) {
    const message = String(error.message || error);
    log("ERROR", { error_code: prismaCode(error) ?? "P1011", message, is_panic: false, meta: null });
    return 1;
  }
}

function statementFor(command, fields) {
  if (command === "can-connect-to-database") return once(fields, "select 1");
  const name = pg.escapeIdentifier(fields.database);
  const fromOutside = { ...fields, database: "postgres" };
  if (command === "create-database") return once(fromOutside, `create database ${name}`);
  if (command === "drop-database") return once(fromOutside, `drop database if exists ${name}`);
  throw new Error(`unknown database command: ${command}`);
}
