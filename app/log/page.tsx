import type { Metadata } from "next";
import Link from "next/link";
import { PageHead } from "../_ui/page-head.tsx";
import { Aisle } from "./aisle.client.tsx";
import { logWords } from "./words.ts";

/** The same for everyone, without anybody's data: a phone keeps it and opens it without a server. */
export const dynamic = "force-static";

const LOCALE = "en-CA";

export function generateMetadata(): Metadata {
  return { title: logWords(LOCALE).title };
}

/** Log: one price as it stands on the tag, and at once what it means. */
export default function LogPage() {
  const words = logWords(LOCALE);
  return (
    <>
      <PageHead title={words.title} />
      <noscript>
        <p>{words.needsScript}</p>
      </noscript>
      <Aisle locale={LOCALE} />
      <p>
        <Link href="/bills/new">{words.enterReceipt}</Link>
      </p>
    </>
  );
}
