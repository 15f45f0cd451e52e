/**
 * Registers the service worker, so that the form opens without a server, and asks the browser not to throw away what waits.
 * onNewer: a newer build took over. The page goes on as it is: nothing typed or waiting depends on a reload.
 */
export function registerWorker(onNewer: () => void): void {
  if (!("serviceWorker" in navigator) || process.env.NODE_ENV !== "production") return;
  let had = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (had) onNewer();
    had = true;
  });
  navigator.serviceWorker.register("/sw.js", { scope: "/", updateViaCache: "none" }).catch(() => undefined);
  void navigator.storage?.persist?.().catch(() => undefined);
}
