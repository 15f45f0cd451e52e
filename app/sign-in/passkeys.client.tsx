"use client";

import { useState, useSyncExternalStore } from "react";
import button from "../_ui/button.module.css";
import { Notice } from "../_ui/notice.tsx";
import { addPasskey, canPasskey, enterByPasskey } from "./passkey-ceremony.ts";

type PasskeyProps = Readonly<{
  deed: "enter" | "add";
  label: string;
  failed: string;
  not?: string;
  to: string;
}>;

const never = () => () => {};

/** Signs in by a passkey, or adds one of this device. Where the browser has none, says so (`not`) or is not there. */
export function PasskeyButton({ deed, label, failed, not, to }: PasskeyProps) {
  const can = useSyncExternalStore(never, canPasskey, () => false);
  const [trouble, setTrouble] = useState(false);
  if (!can) return not ? <p>{not}</p> : null;
  const press = async () => {
    setTrouble(false);
    const done = await (deed === "enter" ? enterByPasskey() : addPasskey()).catch(() => false);
    if (done) window.location.assign(to);
    else setTrouble(true);
  };
  return (
    <div>
      <button type="button" className={`${button.button} ${button.plain}`} onClick={() => void press()}>
        {label}
      </button>
      {trouble ? (
        <Notice tone="warn" live>
          {failed}
        </Notice>
      ) : null}
    </div>
  );
}
