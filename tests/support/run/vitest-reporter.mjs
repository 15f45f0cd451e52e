import { writeFileSync } from "node:fs";
import { outcome } from "./outcome.mjs";
import { plain } from "./plain.mjs";

const REMARK = /^not compared: /;

/** A vitest reporter that writes what came of each project to the file RUN_REPORT names. */
export default class OutcomeReporter {
  remarks = [];

  onUserConsoleLog({ content }) {
    this.remarks.push(...content.split("\n").filter((line) => REMARK.test(line)));
  }

  onTestRunEnd(modules, unhandledErrors) {
    const projects = new Map();
    for (const module of modules) {
      const name = module.project.name;
      if (!projects.has(name)) projects.set(name, outcome(name, 0));
      count(projects.get(name), module);
    }
    const outcomes = [...projects.values()];
    if (unhandledErrors.length > 0)
      outcomes.push(
        outcome("outside of any test", 0, unhandledErrors.map(failureOf("an error nobody caught"))),
      );
    if (outcomes[0]) outcomes[0].remarks.push(...new Set(this.remarks));
    writeFileSync(process.env.RUN_REPORT, JSON.stringify(outcomes));
  }
}

function count(project, module) {
  const suites = [module, ...module.children.allSuites()];
  const broken = suites.some((suite) => suite.errors().length > 0); // then skipped tests are a consequence
  for (const test of module.children.allTests()) {
    const { state, errors = [] } = test.result();
    const name = `${module.relativeModuleId} > ${test.fullName}`;
    if (state === "passed") project.passed += 1;
    else if (state === "failed") project.failed.push({ name, reason: errors.map(reasonOf).join("\n") });
    else if (!broken) project.left.push({ name, reason: "the test is skipped" });
  }
  for (const suite of suites)
    project.failed.push(...suite.errors().map(failureOf(suite.fullName ?? module.relativeModuleId)));
}

const failureOf = (name) => (error) => ({ name, reason: reasonOf(error) });

function reasonOf(error) {
  const first = error.stacks?.[0];
  const place = first ? `\nat ${first.file}:${first.line}` : "";
  return `${error.name ?? "Error"}: ${error.message}${error.diff ? `\n${plain(error.diff)}` : ""}${place}`;
}
