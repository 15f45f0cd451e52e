// The service worker. After the build, lib/launch/service-worker.mjs writes public/sw.js: BUILD and ASSETS, then flush.mjs
// without its exports, then this.
const LOG = "/log";
const SHELL = [LOG, "/manifest.webmanifest", "/icons/icon-192.png"];
const CACHE = `shell-${BUILD}`;
const PATIENCE_WITH_NETWORK = 4000;

self.addEventListener("install", (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(CACHE);
      // All or nothing: one failed request leaves the worker before in charge.
      await cache.addAll([...SHELL, ...ASSETS].map((address) => new Request(address, { cache: "reload" })));
      await self.skipWaiting();
    })(),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    (async () => {
      const old = (await caches.keys()).filter((key) => key.startsWith("shell-") && key !== CACHE);
      // One older build stays for a page that is still open on it.
      await Promise.all(old.slice(0, -1).map((key) => caches.delete(key)));
      await self.clients.claim();
    })(),
  );
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== location.origin) return;
  if (address.pathname.startsWith("/api/")) return;
  if (address.pathname.startsWith("/_next/static/") || address.pathname.startsWith("/icons/"))
    event.respondWith(caches.match(request).then((hit) => hit ?? fetch(request)));
  else if (request.mode === "navigate") event.respondWith(opened(request, address));
});

async function opened(request, address) {
  const log = address.pathname === LOG;
  try {
    // One bar of signal counts as none, for the aisle form only: other screens need the server anyhow.
    const answer = await fetch(request, log ? { signal: AbortSignal.timeout(PATIENCE_WITH_NETWORK) } : {});
    if (!log || (answer.ok && !answer.redirected)) return answer;
    return (await caches.match(LOG)) ?? answer;
  } catch {
    return log ? ((await caches.match(LOG)) ?? Response.error()) : Response.redirect(`${LOG}?offline=1`, 302);
  }
}

self.addEventListener("sync", (event) => {
  if (event.tag === "outbox") event.waitUntil(sendWhatWaits());
});

async function sendWhatWaits() {
  const database = await outboxThere();
  if (database === null) return;
  const changed = new BroadcastChannel(DATABASE);
  try {
    await flush(database, () => changed.postMessage("changed"));
  } finally {
    changed.close();
    database.close();
  }
}

/** The phone's database, if the page has made it. */
function outboxThere() {
  return new Promise((resolve) => {
    const request = indexedDB.open(DATABASE);
    request.onupgradeneeded = () => request.transaction.abort();
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => resolve(null);
  });
}
