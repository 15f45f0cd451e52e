import { test as base, expect } from "@playwright/test";
import { type Program, programOf } from "./program.ts";

type Own = {
  /** test.use({ demo: true }): the file's database holds the demo, and the browser looks at it. */
  demo: boolean;
  /** The program of this test file, on a database nobody else uses; it is empty before the file's first test. */
  program: Program;
  /** What the browser may complain of in this test; anything else fails it. */
  expectedErrors: RegExp[];
};

/** A test of the built program in a browser; each file has its own program and database, which its tests share in order. */
export const test = base.extend<Own>({
  demo: [false, { option: true }],
  program: async ({ demo }, use, info) => use(await programOf(info.file, demo)),
  baseURL: async ({ program }, use) => use(program.address),
  context: async ({ context, demo, program }, use) => {
    if (demo) await context.addCookies([{ name: "dunnage-workspace", value: "demo", url: program.address }]);
    await use(context);
  },
  expectedErrors: [
    async ({ page }, use) => {
      const expected: RegExp[] = [];
      const said: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error") said.push(`${message.text()} ${message.location().url}`);
      });
      page.on("pageerror", (error) => said.push(String(error)));
      await use(expected);
      expect(said.filter((text) => !expected.some((pattern) => pattern.test(text)))).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
