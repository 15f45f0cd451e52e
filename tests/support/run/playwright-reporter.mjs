import { writeFileSync } from "node:fs";
import { outcome } from "./outcome.mjs";
import { plain } from "./plain.mjs";

/** A Playwright reporter that writes what came of the tests to the file RUN_REPORT names. */
export default class OutcomeReporter {
  found = outcome("browser", 0);

  printsToStdio() {
    return false;
  }

  onTestEnd(test, result) {
    const name = test.titlePath().filter(Boolean).join(" > ");
    if (result.status === "passed") this.found.passed += 1;
    else if (result.status === "skipped") this.found.left.push({ name, reason: "the test is skipped" });
    else this.found.failed.push({ name, reason: reasonOf(result) });
  }

  onError(error) {
    this.found.failed.push({
      name: "outside of any test",
      reason: plain(error.message ?? String(error.value)),
    });
  }

  onEnd() {
    writeFileSync(process.env.RUN_REPORT, JSON.stringify([this.found]));
  }
}

function reasonOf({ status, errors }) {
  return errors.length === 0
    ? status
    : errors.map(({ message, value }) => plain(message ?? value ?? "")).join("\n");
}
