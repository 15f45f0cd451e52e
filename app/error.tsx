"use client";

import { useRouter } from "next/navigation";
import { startTransition, useEffect } from "react";
import button from "./_ui/button.module.css";
import notice from "./_ui/notice.module.css";
import words from "./_words/en.json";

/** A page that failed on the way, e.g. because the database was stopped. Uses its words directly: it must stand when all else fails. */
export default function PageFailed({ error, reset }: Readonly<{ error: Error; reset: () => void }>) {
  const router = useRouter();
  useEffect(() => console.error(error), [error]);
  // The page was made on the server: it has to be asked for anew, drawing it again is not enough.
  const again = () =>
    startTransition(() => {
      router.refresh();
      reset();
    });
  return (
    <section className={notice.empty} role="alert">
      <h1>{words.shell.failed}</h1>
      <p>{words.shell.failedText}</p>
      <button type="button" className={`${button.button} ${button.main}`} onClick={again}>
        {words.shell.tryAgain}
      </button>
    </section>
  );
}
