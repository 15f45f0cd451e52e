import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, inject, test } from "vitest";
import { migrate } from "../../lib/launch/migrate.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { withDatabase } from "../support/test-server.ts";

let folder = "";
let url = "";
let made = 0;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "dunnage-migrate-"));
  const { name, serverUrl } = inject("template");
  made += 1;
  const database = `${name}_migrate_${process.pid}_${made}`;
  await onConnection(serverUrl, (client) => client.query(`create database ${database}`));
  url = withDatabase(serverUrl, database);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function write(name: string, sql: string): void {
  mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, name, "migration.sql"), sql);
}

async function asked<T>(sql: string): Promise<T[]> {
  return onConnection(url, async (client) => (await client.query(sql)).rows);
}

const tables = () =>
  asked<{ name: string }>(
    "select tablename as name from pg_tables where schemaname = 'public' and tablename <> '_prisma_migrations' order by 1",
  );
const noted = () =>
  asked<{ migration_name: string; checksum: string; finished: boolean; applied_steps_count: number }>(
    "select migration_name, checksum, finished_at is not null as finished, applied_steps_count from _prisma_migrations order by 1",
  );

describe("migrations", () => {
  test("are applied in the order of their names, once", async () => {
    write("2_second", "create table b (a_id int references a);");
    write("1_first", "create table a (id int primary key);");
    expect(await migrate(url, folder)).toEqual(["1_first", "2_second"]);
    expect(await migrate(url, folder)).toEqual([]);
    expect(await tables()).toEqual([{ name: "a" }, { name: "b" }]);
  });

  test("are noted with the SHA-256 of their file, as Prisma notes them", async () => {
    const sql = "create table a (id int);";
    write("1_first", sql);
    await migrate(url, folder);
    const checksum = createHash("sha256").update(sql).digest("hex");
    expect(await noted()).toEqual([
      { migration_name: "1_first", checksum, finished: true, applied_steps_count: 1 },
    ]);
  });

  test("that are new are applied on top of what is there", async () => {
    write("1_first", "create table a (id int); insert into a values (7);");
    await migrate(url, folder);
    write("2_second", "alter table a add note text;");
    expect(await migrate(url, folder)).toEqual(["2_second"]);
    expect(await asked("select * from a")).toEqual([{ id: 7, note: null }]);
  });

  test("asked for by many at once are applied once", async () => {
    write("1_first", "create table a (id int); select pg_sleep(0.1);");
    const answers = await Promise.all(Array.from({ length: 6 }, () => migrate(url, folder)));
    expect(answers.flat()).toEqual(["1_first"]);
    expect(await noted()).toHaveLength(1);
  });

  test("that were edited after they were applied are refused, and nothing is touched", async () => {
    write("1_first", "create table a (id int);");
    await migrate(url, folder);
    const before = await noted();
    write("1_first", "create table a (id bigint);");
    write("2_second", "create table b (id int);");
    await expect(migrate(url, folder)).rejects.toThrow(
      /^Migration 1_first was edited after it was applied to this database\./,
    );
    expect(await noted()).toEqual(before);
    expect(await tables()).toEqual([{ name: "a" }]);
  });

  test("the program does not know are refused: the database is newer", async () => {
    write("1_first", "create table a (id int);");
    write("2_second", "create table b (id int);");
    await migrate(url, folder);
    rmSync(join(folder, "2_second"), { recursive: true });
    write("3_third", "create table c (id int);");
    await expect(migrate(url, folder)).rejects.toThrow(
      /^The database was changed by a newer version of this program \(migration 2_second is not known here\)/,
    );
    expect(await tables()).toEqual([{ name: "a" }, { name: "b" }]);
  });

  test("that fail are taken back whole, and can be put right", async () => {
    write("1_first", "create table a (id int); create table a (id int);");
    await expect(migrate(url, folder)).rejects.toThrow(
      'Migration 1_first could not be applied, and was taken back whole: relation "a" already exists',
    );
    expect(await tables()).toEqual([]);
    write("1_first", "create table a (id int);");
    expect(await migrate(url, folder)).toEqual(["1_first"]);
  });

  test("that Prisma noted as begun and never finished stop the start", async () => {
    write("1_first", "create table a (id int);");
    await migrate(url, folder);
    await asked("update _prisma_migrations set finished_at = null");
    await expect(migrate(url, folder)).rejects.toThrow(/^Migration 1_first failed before/);
    await asked("update _prisma_migrations set rolled_back_at = now()");
    await asked("drop table a");
    expect(await migrate(url, folder)).toEqual(["1_first"]);
  });
});
