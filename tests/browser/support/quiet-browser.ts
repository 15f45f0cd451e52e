/** A browser that asks nobody anything and runs without a sandbox of its own. */
export const QUIET_BROWSER = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
