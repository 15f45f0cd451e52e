"use server";

import { redirect } from "next/navigation";
import { deleteReport, keepReport } from "../../../lib/data/savings-saved.ts";
import { savingsAsked } from "../../../lib/show/savings-asked.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed } from "../../_gate/allowed.ts";
import { dayAsked } from "../../_workspace/day-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** Keeps the report that stands on the page: `query` is its address. */
export async function keepReportForm(form: FormData): Promise<void> {
  await allowed("keepReportForm");
  const query = Object.fromEntries(new URLSearchParams(typed(form, "query") ?? ""));
  const { day } = await dayAsked(Promise.resolve(query));
  const { from, until, projectId, materialId, currency } = savingsAsked(query);
  const asked = { from, until, projectId, materialId, currency, day };
  const written = await keepReport(await scopeSeen(), typed(form, "id") ?? "", asked);
  redirect(written.ok ? `/savings/report/saved/${written.value.id}?done=kept` : "/savings/report/saved");
}

/** Deletes a kept report; the list offers it back. */
export async function deleteReportForm(form: FormData): Promise<void> {
  await allowed("deleteReportForm");
  const id = typed(form, "id") ?? "";
  await deleteReport(await scopeSeen(), id, true);
  redirect(`/savings/report/saved?done=deleted&report=${id}`);
}

/** Brings a deleted report back. */
export async function undeleteReportForm(form: FormData): Promise<void> {
  await allowed("undeleteReportForm");
  const id = typed(form, "id") ?? "";
  await deleteReport(await scopeSeen(), id, false);
  redirect(`/savings/report/saved/${id}?done=back`);
}
