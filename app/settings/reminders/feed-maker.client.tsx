"use client";

import { useActionState } from "react";
import { Button } from "../../_ui/button.client.tsx";
import { Notice } from "../../_ui/notice.tsx";
import { Square } from "../../sign-in/square.tsx";
import style from "./reminders.module.css";
import type { ShownAddress } from "./shown-address.ts";

export type FeedMakerProps = Readonly<{
  action: (previous: ShownAddress | null, form: FormData) => Promise<ShownAddress | null>;
  button: string;
  /** With {address} in them. */
  words: Readonly<{ shown: string; square: string }>;
}>;

/** Makes the calendar's address and shows it, once, as letters and as a square for a camera. */
export function FeedMaker({ action, button, words }: FeedMakerProps) {
  const [made, make] = useActionState(action, null);
  return (
    <form action={make}>
      <Button kind="plain">{button}</Button>
      {made === null ? null : (
        <Notice live>
          <p className={style.address}>{words.shown.replace("{address}", made.address)}</p>
          <Square path={made.path} size={made.size} label={words.square.replace("{address}", made.address)} />
        </Notice>
      )}
    </form>
  );
}
