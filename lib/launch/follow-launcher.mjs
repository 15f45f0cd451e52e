// Loaded into the web server: it ends with the launcher, even when that is killed and can tell nobody.
process.on("disconnect", () => process.exit(0));
