"use client";

import { useState } from "react";
import { decimal } from "../../../../lib/decimal.ts";
import type { Quantity, UnitCode } from "../../../../lib/measure/units.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { purchaseByYield } from "../../../../lib/takeoff/purchase.ts";
import { TYPED_HERE, typedYield } from "../../../../lib/takeoff/yield.ts";
import { FieldFrame } from "../../../_ui/field.client.tsx";
import style from "../../../_ui/field.module.css";
import { describedBy, useField } from "../../../_ui/form-context.client.tsx";

type Plain = Readonly<{ value: string; unit: UnitCode }>;

export type YieldFieldProps = Readonly<{
  name: string;
  start: string;
  /** Of the line: how much of what, and the least length of a piece. */
  line: Readonly<{ quantity: Plain; cut: Plain | null }>;
  words: Readonly<{ label: string; hint: string; comesTo: string }>;
  locale: string;
}>;

const exact = ({ value, unit }: Plain): Quantity => ({ value: decimal(value), unit });

/** How many that makes, before waste; empty while it cannot be told. */
function comesTo(typed: string, { line, words, locale }: YieldFieldProps): string {
  const holds = typedYield().safeParse(typed);
  if (!holds.success) return "";
  const [quantity, cut] = [exact(line.quantity), line.cut && exact(line.cut)];
  const read = purchaseByYield({ quantity, cut }, { unit: "each", holds: holds.data, source: TYPED_HERE });
  return read.ok ? `${words.comesTo} ${quantityText(read.quantity.value, locale)}` : "";
}

/** What one bag, bundle, box or roll gives, and how many of them that makes of the line. */
export function YieldField(props: YieldFieldProps) {
  const { name, start, words } = props;
  const { id, value, fault } = useField(name, start);
  const [typed, setTyped] = useState(value);
  return (
    <FieldFrame id={id} label={words.label} hint={words.hint} fault={fault}>
      <input
        id={id}
        name={name}
        type="text"
        autoComplete="off"
        className={`${style.input} ${style.figure}`}
        defaultValue={value}
        onChange={(event) => setTyped(event.target.value)}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: true, fault: fault !== null, more: `${id}-read` })}
      />
      <p className={style.readBack} id={`${id}-read`}>
        {comesTo(typed, props)}
      </p>
    </FieldFrame>
  );
}
