import { randomBytes } from "node:crypto";

const HOUR = 3_600_000;
const SOON = 30_000;
const PATIENCE = 120_000;

/** A word known to this process and to the pages alone, made anew at each start. */
export function dailySecret() {
  return randomBytes(32).toString("hex");
}

/**
 * Asks the pages soon after the start, and then each hour, to do what is due once a day. What has been done is kept in the
 * database, so asking once too often, or after a restart, does nothing twice. A failure is the next hour's to mend.
 * @returns {{ stop(): void }}
 */
export function askDaily(address, secret, { soon = SOON, every = HOUR } = {}) {
  const stop = new AbortController();
  const ask = async () => {
    try {
      const signal = AbortSignal.any([stop.signal, AbortSignal.timeout(PATIENCE)]);
      const headers = { "x-dunnage-daily": secret };
      const response = await fetch(`${address}/calendar/daily`, { method: "POST", headers, signal });
      await response.arrayBuffer();
    } catch {
      // the pages say in their Settings what went wrong with the mail
    }
    if (!stop.signal.aborted) later(every);
  };
  let timer = null;
  const later = (wait) => {
    timer = setTimeout(ask, wait);
    timer.unref();
  };
  later(soon);
  return {
    stop() {
      stop.abort();
      clearTimeout(timer);
    },
  };
}
