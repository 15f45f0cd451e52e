import { firstCode } from "../../lib/launch/first-code.mjs";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, PHONE } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

const PASSWORD = "four unrelated words here";

test("the first owner, sign-in asked for, somebody invited, a phone let in, out again", async ({
  page,
  program,
  browser,
}) => {
  await page.setViewportSize(PHONE);
  await open(page, "/settings/people");
  await expect(page.getByText("Nobody has a sign-in yet.")).toBeVisible();
  await page.getByRole("link", { name: "Make the first sign-in" }).click();
  const code = (await firstCode(program.databaseUrl, process.env.DUNNAGE_ROLE ?? "dunnage_app")) ?? "";
  await page.getByLabel("Code").fill("wrong");
  await page.getByLabel("What you are called").fill("Robin");
  await page.getByLabel("A new password").fill("short");
  await page.getByRole("button", { name: "Make my sign-in" }).click();
  await expect(page.locator("main").getByRole("alert")).toContainText("takes at least 12 characters");
  await expect(page.getByLabel("What you are called")).toHaveValue("Robin");
  await axe(page);
  await shot(page, "sign-in-first-phone");
  await page.getByLabel("Code").fill(code);
  await page.getByLabel("A new password").fill(PASSWORD);
  await page.getByRole("button", { name: "Make my sign-in" }).click();
  await page.waitForURL(/\/sign-in\/you$/);

  await open(page, "/settings/people");
  await page.getByRole("button", { name: "Ask for sign-in" }).click();
  await expect(page.getByText("Asked for. Without it only the demo can be seen here.")).toBeVisible();
  await page.getByRole("radio", { name: "reader" }).check();
  await page.getByRole("button", { name: "Make a code" }).click();
  const shown = page.getByRole("status").filter({ hasText: "Shown this once" });
  await expect(shown).toBeVisible();
  await axe(page);
  await fitsAcross(page);
  await shot(page, "people-phone");
  await page.setViewportSize(LAPTOP);
  await shot(page, "people-laptop");
  await page.emulateMedia({ colorScheme: "dark" });
  await axe(page);
  await shot(page, "people-laptop-dark");
  const invited = /[0-9A-Z]{4}(-[0-9A-Z]{4}){2}/.exec((await shown.textContent()) ?? "")?.[0] ?? "";

  const other = await browser.newContext({ baseURL: program.address, viewport: PHONE });
  const guest = await other.newPage();
  await guest.goto(`/sign-in/join#${invited}`);
  await expect(guest.getByLabel("Code")).toHaveValue(invited);
  await guest.getByLabel("What you are called").fill("Sam");
  await guest.getByLabel("A new password").fill(PASSWORD);
  await guest.getByRole("button", { name: "Make my sign-in" }).click();
  await guest.waitForURL(/\/sign-in\/you$/);
  await guest.goto("/");
  await expect(guest).toHaveURL(/\/savings$/);
  await axe(guest);
  await shot(guest, "reader-savings-phone");
  await guest.goto("/stock");
  await expect(guest.getByRole("heading", { name: "This is not open to you" })).toBeVisible();
  await axe(guest);
  await other.close();

  await open(page, "/sign-in/you");
  await page.getByRole("button", { name: "Show the code" }).click();
  await expect(page.getByRole("img", { name: /Square to point a camera at/ })).toBeVisible();
  await axe(page);
  await shot(page, "you-laptop-dark");
  await page.getByRole("button", { name: "Sign out" }).click();
  await page.waitForURL(/\/sign-in$/);
  await axe(page);
  await shot(page, "sign-in-laptop-dark");
  await page.goto("/stock");
  await page.getByLabel("Name").fill("robin");
  await page.getByLabel("Password").fill(PASSWORD);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await page.waitForURL(/\/stock$/);
});

test("a passkey is added and signs in", async ({ page, program }) => {
  const named = program.address.replace("127.0.0.1", "localhost");
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("WebAuthn.enable");
  await devtools.send("WebAuthn.addVirtualAuthenticator", {
    options: {
      protocol: "ctap2",
      transport: "internal",
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  });
  await page.goto(`${named}/sign-in?to=/sign-in/you`);
  await page.getByLabel("Name").fill("Robin");
  await page.getByLabel("Password").fill(PASSWORD);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await page.getByRole("button", { name: "Add a passkey on this device" }).click();
  await expect(page.getByRole("button", { name: "Remove" })).toBeVisible();
  await page.getByRole("button", { name: "Sign out" }).click();
  await page.waitForURL(/\/sign-in$/);
  await page.goto(`${named}/sign-in?to=/sign-in/you`);
  await page.getByRole("button", { name: "Sign in with a passkey" }).click();
  await expect(page.getByText("Signed in as Robin, owner.")).toBeVisible();
});

test("a form sent after the session was ended keeps what was typed", async ({ page, context }) => {
  await page.goto("/sign-in?to=/projects/new");
  await page.getByLabel("Name").fill("Robin");
  await page.getByLabel("Password").fill(PASSWORD);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await page.waitForURL(/\/projects\/new$/);
  await expect(page.getByLabel("Password")).toHaveCount(0); // the address changes before the page does
  await page.getByLabel("Name").first().fill("Heron Lane workshop");
  await context.clearCookies();
  await page.locator("main form button[type=submit]").first().click();
  await expect(page.locator("main").getByRole("alert")).toContainText("You are no longer signed in");
  await expect(page.getByLabel("Name").first()).toHaveValue("Heron Lane workshop");
});

test("no inline script but ours runs, and no other site may frame a page", async ({
  page,
  expectedErrors,
}) => {
  expectedErrors.push(/Content Security Policy|Content-Security-Policy/, /status of 404/);
  const response = await page.goto("/sign-in");
  const policy = response?.headers()["content-security-policy"] ?? "";
  expect(policy).toMatch(/script-src 'nonce-[^']+' 'strict-dynamic'/);
  expect(policy).toContain("frame-ancestors 'none'");
  expect(policy).not.toMatch(/script-src[^;]*unsafe/);
  const blocked = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener("securitypolicyviolation", (event) => resolve(event.effectiveDirective));
        const planted = document.createElement("div");
        planted.innerHTML = '<img src="/icons/none" onerror="document.title = \'planted\'">';
        document.body.append(planted);
      }),
  );
  expect([blocked, await page.title()]).toEqual(["script-src-attr", expect.not.stringContaining("planted")]);
});
