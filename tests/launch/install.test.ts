import { expect, test } from "vitest";
import { matches, requireNode } from "../../lib/launch/install.mjs";
import { Refusal } from "../../lib/launch/refusal.mjs";

const wanted = {
  "": { name: "dunnage" },
  "node_modules/a": { version: "1.0.0", integrity: "sha512-a" },
  "node_modules/b": { version: "1.0.0", integrity: "sha512-b", optional: true },
};
const a = { "node_modules/a": { version: "1.0.0", integrity: "sha512-a" } };

test("packages are installed when each is there as the lock file names it", () => {
  expect(matches(wanted, { ...a, "node_modules/b": { version: "1.0.0", integrity: "sha512-b" } })).toBe(true);
});

test("a package for another kind of computer may be absent", () => {
  expect(matches(wanted, a)).toBe(true);
});

test.each([
  ["a package is missing", {}],
  ["a package is of another version", { "node_modules/a": { version: "1.0.1", integrity: "sha512-a" } }],
  ["a package has other content", { "node_modules/a": { version: "1.0.0", integrity: "sha512-x" } }],
  ["an optional package is of another version", { ...a, "node_modules/b": { version: "2.0.0" } }],
  ["a package is there that nobody asked for", { ...a, "node_modules/c": { version: "1.0.0" } }],
])("packages are installed anew when %s", (_, installed) => {
  expect(matches(wanted, installed)).toBe(false);
});

test.each(["20.19.0", "20.20.2", "22.0.0", "24.1.0"])("Node %s is new enough", (version) => {
  expect(() => requireNode(version)).not.toThrow();
});

test.each(["20.18.9", "18.20.0", "9.99.99"])("Node %s is refused by name", (version) => {
  expect(() => requireNode(version)).toThrow(
    new Refusal(`This needs Node 20.19 or newer; this is Node ${version}.`),
  );
});
