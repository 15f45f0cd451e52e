import { fileURLToPath } from "node:url";
import { defineConfig } from "prisma/config";

// Prisma's own engine is a downloaded binary. The shim runs the same engine from an npm package instead.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= fileURLToPath(
  new URL("./prisma/schema-engine.mjs", import.meta.url),
);
process.env.CHECKPOINT_DISABLE ??= "1";

export default defineConfig({
  schema: "prisma/schema.prisma",
  migrations: {
    path: "prisma/migrations",
    seed: "node --conditions=react-server --import tsx prisma/seed.ts",
  },
  datasource: { url: process.env.DATABASE_URL ?? "" },
});
