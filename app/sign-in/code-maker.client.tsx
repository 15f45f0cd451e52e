"use client";

import { type ReactNode, useActionState } from "react";
import { Button } from "../_ui/button.client.tsx";
import { Notice } from "../_ui/notice.tsx";
import type { CodeAction } from "./shown-code.ts";
import { Square } from "./square.tsx";

export type CodeMakerProps = Readonly<{
  action: CodeAction;
  button: string;
  /** With {code}, {address} in them. */
  words: Readonly<{ shown: string; at: string; square: string }>;
  children?: ReactNode;
}>;

const filled = (text: string, name: string, value: string) => text.replace(`{${name}}`, value);

/** Makes a one-time code and shows it, once, as letters and as a square for a camera. */
export function CodeMaker({ action, button, words, children }: CodeMakerProps) {
  const [shown, make] = useActionState(action, null);
  return (
    <form action={make}>
      {children}
      <Button kind="plain">{button}</Button>
      {shown === null ? null : (
        <Notice live>
          <p>{filled(words.shown, "code", shown.code)}</p>
          <p>{filled(words.at, "address", shown.plainAddress)}</p>
          <Square
            path={shown.path}
            size={shown.size}
            label={filled(words.square, "address", shown.plainAddress)}
          />
        </Notice>
      )}
    </form>
  );
}
