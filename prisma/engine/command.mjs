/** What Prisma asked for on the command line of its schema engine. */
export function readCommand(args) {
  const optionOf = (name) => valuesOf(args, name)[0];
  const cli = args.indexOf("cli");
  return {
    version: args.includes("--version"),
    databaseCommand: cli < 0 ? null : args[cli + 1],
    datasource: JSON.parse(optionOf("--datasource") ?? "{}"),
    datamodelPaths: valuesOf(args, "--datamodels"),
    previewFeatures: optionOf("--enabled-preview-features")?.split(",") ?? [],
  };
}

function valuesOf(args, name) {
  return args.flatMap((arg, at) => (arg === name ? [args[at + 1]] : []));
}

/** One line of the log that Prisma reads from the engine's standard error. */
export function log(level, fields) {
  const line = { timestamp: new Date().toISOString(), level, fields, target: "schema_engine::logger" };
  process.stderr.write(`${JSON.stringify(line)}\n`);
}
