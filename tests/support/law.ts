import * as fc from "fast-check";

/** A law holds for every case tried, or the smallest case found against it is reported. Throws: {Error} with that case. */
export function law<Ts>(property: fc.IProperty<Ts>, parameters: fc.Parameters<Ts> = {}): void {
  const details = fc.check(property, parameters);
  if (details.failed) throw new Error(fc.defaultReportMessage(details));
}
