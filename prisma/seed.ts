import { todayIn } from "../lib/calendar/local-date.ts";
import { disconnect } from "../lib/data/client.ts";
import { loadDemo } from "./demo/load.ts";

// `npm run demo`: loads the demo, ending today, into the running database.
try {
  await loadDemo(todayIn("America/Halifax", new Date()));
  console.log("The demo is loaded. Open it from the first page.");
} finally {
  await disconnect();
}
