"use client";

import { useCallback, useEffect, useMemo, useState } from "react";
import { type LocalDate, todayIn } from "../../lib/calendar/local-date.ts";
import type { AisleSnapshot } from "../../lib/show/aisle-snapshot.ts";
import type { Since } from "../../lib/show/aisle-verdict.ts";
import { emptySnapshot } from "../_offline/empty-snapshot.ts";
import { allRows, onOutboxChange, type Rows, sendOutbox } from "../_offline/outbox.ts";
import { rowsSince, sinceOf, withMade } from "../_offline/since.ts";
import { freshSnapshot, keptSnapshot, type Unreached } from "../_offline/snapshot.ts";

/** All the form works from. known false: this phone never reached its server. */
export type Aisle = Readonly<{
  snapshot: AisleSnapshot;
  known: boolean;
  since: Since;
  rows: Rows;
  today: LocalDate;
  /** The phone's clock is behind the snapshot's: which day it is must be asked. */
  clockWrong: boolean;
  now: number;
  /** null while it is not known yet. */
  reached: "yes" | Unreached | null;
}>;

const NO_ROWS: Rows = { outbox: [], acknowledged: [] };
const TICK = 30_000;
/** A snapshot younger than this is not fetched anew when the page comes back into sight. */
const FRESH_FOR = 60_000;

/** The snapshot, the rows and the clock; sends what waits on load, when the network or the page comes back, and after a while. */
export function useAisle(): Aisle | null {
  const [snapshot, setSnapshot] = useState<AisleSnapshot | null | undefined>(undefined);
  const [rows, setRows] = useState<Rows>(NO_ROWS);
  const [now, setNow] = useState(0);
  const [reached, setReached] = useState<Aisle["reached"]>(null);
  const look = useCallback(async () => setRows(await allRows()), []);
  const renew = useCallback(async () => {
    await sendOutbox();
    const fresh = await freshSnapshot();
    setReached(typeof fresh === "string" ? fresh : "yes");
    if (typeof fresh !== "string") setSnapshot(fresh);
    await look();
  }, [look]);
  useEffect(() => {
    setNow(Date.now());
    void (async () => {
      await look();
      setSnapshot(await keptSnapshot());
      await renew();
    })();
    let asked = Date.now();
    const again = () => {
      if (document.visibilityState !== "visible") return;
      setNow(Date.now());
      if (Date.now() - asked < FRESH_FOR) return void sendOutbox();
      asked = Date.now();
      void renew();
    };
    const online = () => void renew();
    const tick = setInterval(() => {
      setNow(Date.now());
      void sendOutbox();
    }, TICK);
    const end = onOutboxChange(() => void look());
    addEventListener("online", online);
    document.addEventListener("visibilitychange", again);
    return () => {
      clearInterval(tick);
      end();
      removeEventListener("online", online);
      document.removeEventListener("visibilitychange", again);
    };
  }, [look, renew]);
  return useMemo(() => {
    if (snapshot === undefined || now === 0) return null;
    const base = snapshot ?? emptySnapshot(new Date(now));
    const since = rowsSince(rows, base);
    const day = todayIn(base.workspace.timeZone, new Date(now));
    const clockWrong = day < base.today;
    return {
      snapshot: withMade(base, since),
      known: snapshot !== null,
      since: sinceOf(since),
      rows,
      today: clockWrong ? base.today : day,
      clockWrong,
      now,
      reached,
    };
  }, [snapshot, rows, now, reached]);
}
