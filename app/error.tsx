"use client";

import { useRouter } from "next/navigation";
import { startTransition, useEffect } from "react";
import button from "./_ui/button.module.css";
import notice from "./_ui/notice.module.css";
import words from "./_words/failed.json";

/** A page that failed on the way, e.g. because the database was stopped. Uses its words directly: it must stand when all else fails. They have a file of their own, because it goes to the browser with every page. */
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
      <h1>{words.failed}</h1>
      <p>{words.failedText}</p>
      <button type="button" className={`${button.button} ${button.main}`} onClick={again}>
        {words.tryAgain}
      </button>
    </section>
  );
}
