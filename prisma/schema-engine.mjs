#!/usr/bin/env node
// Stands in for Prisma's schema-engine binary: the same commands, answered by Prisma's own WebAssembly
// build of that engine over @prisma/adapter-pg. prisma.config.ts points Prisma here.
import { readCommand } from "./engine/command.mjs";
import { runDatabaseCommand } from "./engine/database-command.mjs";
import { engineVersion } from "./engine/wasm-engine.mjs";

const command = readCommand(process.argv.slice(2));
if (command.version) console.log(`schema-engine-cli wasm ${engineVersion()}`);
else if (command.databaseCommand) process.exitCode = await runDatabaseCommand(command);
else await (await import("./engine/serve.mjs")).serve(command);
