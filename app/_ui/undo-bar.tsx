import type { ReactNode } from "react";
import { Button } from "./button.client.tsx";
import style from "./notice.module.css";

export type UndoBarProps = Readonly<{
  /** What was done, in words: "Price deleted." */
  children: ReactNode;
  /** Takes it back; `fields` are sent along. Left out where nothing can be taken back. */
  undo?: Readonly<{
    action: (form: FormData) => Promise<void>;
    fields: Readonly<Record<string, string>>;
    label: string;
  }>;
}>;

/** After a change: says what was done and offers to take it back. Works without JavaScript. */
export function UndoBar({ children, undo }: UndoBarProps) {
  return (
    <div className={style.undo} role="status">
      <p>{children}</p>
      {undo ? (
        <form action={undo.action}>
          {Object.entries(undo.fields).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <Button kind="quiet">{undo.label}</Button>
        </form>
      ) : null}
    </div>
  );
}
