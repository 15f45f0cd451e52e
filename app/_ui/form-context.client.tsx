"use client";

import { createContext, useContext } from "react";
import { type FormState, FRESH_FORM } from "./form-state.ts";

export const FormContext = createContext<Readonly<{ id: string; state: FormState }>>({
  id: "form",
  state: FRESH_FORM,
});

/**
 * What every form of the page knows. place: which data it was drawn for; sent along, so that a tab left open never writes into
 * other data. tooMuch: what to say instead of sending more than the server takes.
 */
export const FormPlace = createContext<Readonly<{ place: string; tooMuch: string }>>({
  place: "",
  tooMuch: "",
});

/** What a field of this name shows: its id, the typed text given back, and the fault beside it. */
export function useField(name: string, start: string) {
  const { id, state } = useContext(FormContext);
  const faults = state.faults.filter((fault) => fault.path === name);
  const known = state.attempt > 0 && name in state.values;
  return {
    id: `${id}-${name}`,
    value: known ? (state.values[name]?.[0] ?? "") : start,
    /** All typed values of the name, for check boxes; null before the first answer. */
    values: state.attempt > 0 ? (state.values[name] ?? []) : null,
    fault: faults.map((fault) => fault.text).join(" ") || null,
  };
}

/** The ids a field points at with aria-describedby, hint first. */
export function describedBy(id: string, has: Readonly<{ hint: boolean; fault: boolean; more?: string }>) {
  const ids = [has.hint ? `${id}-hint` : "", has.more ?? "", has.fault ? `${id}-fault` : ""].filter(Boolean);
  return ids.length === 0 ? undefined : ids.join(" ");
}
