import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { open, shot } from "./support/page.ts";
import type { Program } from "./support/program.ts";
import { expect, test } from "./support/test.ts";

/** The program's database is not to be had while the work runs: its connections are cut and new ones find nothing. */
async function withoutDatabase({ databaseUrl }: Program, work: () => Promise<void>): Promise<void> {
  const url = new URL(databaseUrl);
  const name = url.pathname.slice(1);
  url.pathname = "/postgres";
  await onConnection(url.href, async (client) => {
    await client.query("select pg_terminate_backend(pid) from pg_stat_activity where datname = $1", [name]);
    await client.query(`alter database "${name}" rename to "${name}_away"`);
  });
  try {
    await work();
  } finally {
    await onConnection(url.href, (client) =>
      client.query(`alter database "${name}_away" rename to "${name}"`),
    );
  }
}

test("with the database stopped a form keeps what was typed and says so; once it is back the same form is saved", async ({
  page,
  program,
}) => {
  await open(page, "/settings/stores/new");
  await page.getByLabel("Name").first().fill("Mill Road Yard");
  await page.getByLabel("Distance, km").fill("12.5");
  const save = page.getByRole("button", { name: "Save the store" });
  await withoutDatabase(program, async () => {
    await save.click();
    await expect(page.getByRole("main").getByRole("alert")).toContainText("The database cannot be reached");
    await expect(page.getByLabel("Name").first()).toHaveValue("Mill Road Yard");
    await expect(page.getByLabel("Distance, km")).toHaveValue("12.5");
  });
  await save.click();
  await expect(page.getByText("Store added.")).toBeVisible();
});

test("with the database stopped a page says what to do, and comes back when tried again", async ({
  page,
  program,
  expectedErrors,
}) => {
  expectedErrors.push(/500|Minified React|Server Components render|digest/);
  await withoutDatabase(program, async () => {
    await page.goto("/settings/stores");
    await expect(page.getByRole("heading", { name: "This page could not be shown" })).toBeVisible();
    await shot(page, "page-failed");
  });
  await page.getByRole("button", { name: "Try again" }).click();
  await expect(page.getByRole("link", { name: "Mill Road Yard" })).toBeVisible();
});
