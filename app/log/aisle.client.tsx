"use client";

import { Suspense, useEffect, useState } from "react";
import type { Row } from "../_offline/log-database.ts";
import { registerWorker } from "../_offline/register-worker.ts";
import { remember, remembered } from "../_offline/snapshot.ts";
import type { Kept } from "./after-keep.client.tsx";
import style from "./aisle.module.css";
import { later } from "./later.tsx";
import { PriceForm, type Remembered } from "./price-form.client.tsx";
import { StateBar } from "./state-bar.client.tsx";
import { useAisle } from "./use-aisle.client.ts";
import { logWords } from "./words.ts";

// Seldom or later needed, so they come after the form; the worker has put them by, so they come without a server too.
const AfterKeep = later(async () => (await import("./after-keep.client.tsx")).AfterKeep);
const Visit = later(async () => (await import("./visit.client.tsx")).Visit);
const NewMaterial = later(async () => (await import("./new-material.client.tsx")).NewMaterial);
const NewStore = later(async () => (await import("./new-store.client.tsx")).NewStore);
const Checklist = later(async () => (await import("./checklist.client.tsx")).Checklist);
const Refused = later(async () => (await import("./refused.client.tsx")).Refused);

const NO_HABITS: Remembered = { storeId: "", tax: {}, units: {} };

function askedMaterial(): string {
  return new URLSearchParams(location.search).get("material") ?? "";
}

/** All of /log: it comes from the phone, works from what the phone has, and tells the server when it can. */
export function Aisle({ locale }: Readonly<{ locale: string }>) {
  const words = logWords(locale);
  const aisle = useAisle();
  const [habits, setHabits] = useState<Remembered | null>(null);
  const [materialId, setMaterial] = useState("");
  const [chosenStore, setStore] = useState<string | null>(null);
  const [making, setMaking] = useState<"store" | Readonly<{ name: string }> | null>(null);
  const [kept, setKept] = useState<Kept | null>(null);
  const [round, setRound] = useState(0);
  const [newer, setNewer] = useState(false);
  const workspaceId = aisle?.snapshot.workspace.id;
  useEffect(() => {
    setMaterial(askedMaterial());
    registerWorker(() => setNewer(true));
    void import("./after-keep.client.tsx").catch(() => undefined);
  }, []);
  useEffect(() => {
    if (workspaceId === undefined) return;
    void remembered(`habits ${workspaceId}`, NO_HABITS).then(setHabits);
  }, [workspaceId]);
  if (aisle === null || habits === null) return <p className={style.opening}>{words.opening}</p>;
  const stores = aisle.snapshot.stores.filter(({ archivedOn }) => archivedOn === null);
  const wanted = chosenStore ?? habits.storeId;
  const storeId = stores.find(({ id }) => id === wanted)?.id ?? stores[0]?.id ?? "";
  const keepHabits = ({ tax, units, ...more }: Partial<Remembered>) => {
    const next = {
      ...habits,
      ...more,
      tax: { ...habits.tax, ...tax },
      units: { ...habits.units, ...units },
    };
    setHabits(next);
    void remember(`habits ${workspaceId}`, next);
  };
  const onKept = (row: Row, habit: Partial<Remembered>) => {
    keepHabits(habit);
    setKept({ kind: "price", row });
    setMaterial("");
    setRound(round + 1);
    scrollTo({ top: 0 });
  };
  return (
    <>
      <StateBar aisle={aisle} words={words} />
      {newer ? <p className={style.quiet}>{words.newerBuild}</p> : null}
      <Suspense>
        <Refused aisle={aisle} words={words} locale={locale} />
        <AfterKeep aisle={aisle} kept={kept} locale={locale} onKept={setKept} />
      </Suspense>
      <Suspense fallback={<p className={style.quiet}>{words.opening}</p>}>
        {making === "store" ? (
          <NewStore
            aisle={aisle}
            words={words}
            onMade={(id) => {
              setStore(id);
              setMaking(null);
            }}
            onCancel={() => setMaking(null)}
          />
        ) : making !== null ? (
          <NewMaterial
            aisle={aisle}
            words={words}
            name={making.name}
            onMade={(id) => {
              setMaterial(id);
              setMaking(null);
            }}
            onCancel={() => setMaking(null)}
          />
        ) : null}
      </Suspense>
      <PriceForm
        key={round}
        aisle={aisle}
        locale={locale}
        materialId={materialId}
        storeId={storeId}
        habits={habits}
        onMaterial={setMaterial}
        onStore={setStore}
        onNewMaterial={(name) => setMaking({ name })}
        onKept={onKept}
      />
      <Suspense>
        <Checklist
          key={storeId}
          aisle={aisle}
          storeId={storeId}
          words={words}
          locale={locale}
          onMaterial={setMaterial}
        />
        <Visit aisle={aisle} storeId={storeId} words={words} locale={locale} />
      </Suspense>
      <p className={style.answers}>
        <button type="button" className={style.link} onClick={() => setMaking({ name: "" })}>
          {words.newMaterial}
        </button>
        <button type="button" className={style.link} onClick={() => setMaking("store")}>
          {words.newStore}
        </button>
      </p>
    </>
  );
}
