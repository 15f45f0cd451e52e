"use client";

import type { ReactNode } from "react";
import { DayField, Field } from "../_ui/field.client.tsx";
import { useField } from "../_ui/form-context.client.tsx";
import { More } from "../_ui/more.tsx";

type WhenProps = Readonly<{
  day: string;
  words: Readonly<{ title: string; on: string; reason: string }>;
  children?: ReactNode;
}>;

/** The day and a reason, folded away until one of them was typed: a form given back shows them again. */
export function When({ day, words, children }: WhenProps) {
  const on = useField("on", day).value;
  const reason = useField("reason", "").value;
  return (
    <More title={words.title} open={on !== day || reason !== ""}>
      <DayField name="on" label={words.on} start={day} />
      <Field name="reason" label={words.reason} />
      {children}
    </More>
  );
}
