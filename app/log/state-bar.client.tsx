"use client";

import { ageWords } from "./age-words.ts";
import style from "./aisle.module.css";
import type { Aisle } from "./use-aisle.client.ts";
import type { LogWords } from "./words.ts";

/** What waits to be sent and how old the oldest of it is; how old the figures are. Always in sight. */
export function StateBar({ aisle, words }: Readonly<{ aisle: Aisle; words: LogWords }>) {
  const { outbox } = aisle.rows;
  const waiting = outbox.filter(({ state }) => state === "queued");
  const oldest = Math.min(...waiting.map(({ at }) => at));
  const { kind, name } = aisle.snapshot.workspace;
  return (
    <div className={style.state} data-waiting={waiting.length} data-refused={outbox.length - waiting.length}>
      <p role="status">
        {waiting.length === 0 ? (
          words.allSent
        ) : (
          <>
            <span aria-hidden="true" className={style.diamond}>
              ◆
            </span>{" "}
            {words.waiting(waiting.length, ageWords(aisle.now - oldest))}
          </>
        )}
      </p>
      <p className={style.quiet}>
        {aisle.known
          ? words.figuresOf(ageWords(aisle.now - Date.parse(aisle.snapshot.takenAt)))
          : aisle.reached === "away"
            ? words.neverReached
            : words.fetching}
        {kind === "demo" ? ` ${words.inDemo(name)}` : null}
        {aisle.reached === "away" && aisle.known ? ` ${words.notReached}` : null}
        {aisle.reached === "signed-out" ? (
          <>
            {" "}
            {words.signedOut} <a href="/sign-in?to=/log">{words.signIn}</a>
          </>
        ) : null}
      </p>
    </div>
  );
}
