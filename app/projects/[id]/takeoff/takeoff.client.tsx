"use client";

import { type ReactNode, useState } from "react";
import type { Fault } from "../../../../lib/fault.ts";
import { UNIT_SYSTEMS, type UnitSystem } from "../../../../lib/measure/unit-system.ts";
import type { CalculatorName } from "../../../../lib/takeoff/calculators.ts";
import { takeoffOf } from "../../../../lib/takeoff/takeoff-entry.ts";
import { Button } from "../../../_ui/button.client.tsx";
import field from "../../../_ui/field.module.css";
import form from "../../../_ui/form.module.css";
import { Notice } from "../../../_ui/notice.tsx";
import { INPUT_SHAPES } from "./input-shapes.ts";
import { Inputs } from "./inputs.client.tsx";
import { Measured } from "./measured.tsx";
import type { TakeoffWords } from "./takeoff-words.ts";
import { inputsGiven, type TypedInputs } from "./typed-inputs.ts";

export type TakeoffFormProps = Readonly<{
  calculator: CalculatorName;
  system: UnitSystem;
  typed: TypedInputs;
  /** The form was sent: everything wrong with it is said, what was left empty too. */
  sent: boolean;
  /** The takeoff that is reckoned again; null for a new one. */
  reopen: string | null;
  words: TakeoffWords;
  locale: string;
  /** What can be made of the figures the page was drawn with. */
  children: ReactNode;
}>;

function spokenFaults(
  faults: readonly Fault[],
  { typed, sent, words }: Pick<TakeoffFormProps, "typed" | "sent" | "words">,
): ReadonlyMap<string, string> {
  const at = faults.map(({ path, code }): [string, string] => [
    path.replace(/^inputs\./, ""),
    words.faults[code] ?? code,
  ]);
  return new Map(at.filter(([path]) => sent || (typed[path] ?? "") !== ""));
}

/**
 * What a calculator asks, and what comes of it while it is typed. Without JavaScript the form is sent to its own page, which
 * shows the same.
 */
export function TakeoffForm(props: TakeoffFormProps) {
  const { calculator, words, locale, sent, reopen, children } = props;
  const [typed, setTyped] = useState(props.typed);
  const [system, setSystem] = useState(props.system);
  const shape = INPUT_SHAPES[calculator];
  const read = takeoffOf({ calculator, system, inputs: inputsGiven(shape, typed) });
  const faults = read.ok ? new Map<string, string>() : spokenFaults(read.faults, { typed, sent, words });
  const isAsShown = typed === props.typed && system === props.system;
  return (
    <>
      <form method="get" className={form.form} noValidate>
        <input type="hidden" name="sent" value="yes" />
        {reopen === null ? null : <input type="hidden" name="reopen" value={reopen} />}
        {sent && faults.size > 0 ? (
          <Notice tone="bad" live>
            {words.notYet}
          </Notice>
        ) : null}
        <fieldset className={field.field}>
          <legend className={field.label}>{words.system}</legend>
          <div className={field.choices}>
            {UNIT_SYSTEMS.map((one) => (
              <label key={one} className={field.choice}>
                <input
                  type="radio"
                  name="system"
                  value={one}
                  checked={one === system}
                  onChange={() => setSystem(one)}
                />
                {words.systems[one]}
              </label>
            ))}
          </div>
        </fieldset>
        <Inputs
          shape={shape}
          at=""
          typed={typed}
          faults={faults}
          system={system}
          words={words}
          onTyped={(name, value) => setTyped((before) => ({ ...before, [name]: value }))}
        />
        <Button kind={sent && isAsShown && read.ok ? "plain" : "main"}>{words.workOut}</Button>
      </form>
      {read.ok ? <Measured takeoff={read.value} words={words} locale={locale} /> : null}
      {isAsShown ? children : <p>{words.changedSince}</p>}
    </>
  );
}
