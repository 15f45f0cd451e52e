import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import type { AxeResults } from "axe-core";
import { expect } from "./test.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Opens a page of the program and checks that it is there. */
export async function open(page: Page, path: string): Promise<void> {
  const response = await page.goto(path);
  expect(`${path}: ${response?.status()}`).toBe(`${path}: 200`);
}

type AxeWindow = Window & {
  axe?: { run(where: Document, options: object): Promise<AxeResults> };
};

/** Fails on any barrier axe finds in the page. without: rules to leave out, each with a reason where it is called. */
export async function axe(page: Page, without: readonly string[] = []): Promise<void> {
  await page.getByRole("heading", { level: 1 }).first().waitFor(); // a page may still be on its way
  await page.evaluate(AXE);
  const found = await page.evaluate(async (left) => {
    const rules = Object.fromEntries(left.map((rule) => [rule, { enabled: false }]));
    const results = await (window as AxeWindow).axe?.run(document, { rules });
    return results?.violations.map(({ id, help, nodes }) => ({
      id,
      help,
      at: nodes.map(({ html }) => html),
    }));
  }, without);
  expect(found).toEqual([]);
}

/** Checks that nothing sticks out at the side: a page is never wider than its window. */
export async function fitsAcross(page: Page): Promise<void> {
  const { wide, window: room } = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth,
    window: document.documentElement.clientWidth,
  }));
  expect(wide).toBeLessThanOrEqual(room);
}

/** Keeps a picture of the whole page in tests/browser/shots, for people to look at; nothing is compared. */
export async function shot(page: Page, name: string): Promise<void> {
  await page.screenshot({
    path: new URL(`../shots/${name}.png`, import.meta.url).pathname,
    fullPage: true,
    animations: "disabled",
  });
}
