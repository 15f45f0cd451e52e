const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1)} s`;
const indented = (text) => text.trimEnd().replaceAll(/^/gm, "      ");

/** One line for each part as it ends; parts that ran together end together. */
export function say(outcomes, milliseconds) {
  for (const [place, { part, passed, failed, left }] of outcomes.entries()) {
    const counts = [
      `${passed} passed`,
      failed.length > 0 && `${failed.length} failed`,
      left.length > 0 && "not all run",
    ];
    const last = place === outcomes.length - 1 ? seconds(milliseconds) : "";
    console.log(`  ${part.padEnd(26)} ${counts.filter(Boolean).join(", ").padEnd(32)} ${last.padStart(8)}`);
  }
}

/** The failures with their reasons, what was left out, and the count that closes the run; true when nothing failed. */
export function sayInAll({ passed, failed, left, remarks }, milliseconds) {
  if (failed.length > 0) console.log("\nFailed:");
  for (const { part, name, reason } of failed) console.log(`\n  ${part}: ${name}\n${indented(reason)}`);
  if (left.length > 0) console.log("\nNot run:");
  for (const { name, reason } of left) console.log(`  ${name}: ${reason}`);
  if (remarks.length > 0) console.log(`\nRemarks:\n${remarks.map((remark) => `  ${remark}`).join("\n")}`);
  console.log(`\n${seconds(milliseconds)}\n${passed} passed, ${failed.length} failed`);
  return failed.length === 0;
}
