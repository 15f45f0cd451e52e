"use client";

import { type KeyboardEvent, useId, useState } from "react";
import { folded, hasEveryWord } from "../../lib/show/every-word.ts";
import { FieldFrame } from "../_ui/field.client.tsx";
import field from "../_ui/field.module.css";
import { describedBy, useField } from "../_ui/form-context.client.tsx";
import style from "./aisle.module.css";
import type { LogWords } from "./words.ts";

type Named = Readonly<{ id: string; name: string }>;
type MaterialFieldProps = Readonly<{
  words: LogWords;
  materials: readonly Named[];
  chosen: Named | null;
  onChoice: (id: string) => void;
  /** Nothing in the list is meant: make one of these words. */
  onNew: (name: string) => void;
}>;

const AT_REST = 5;
const LISTED = 50;

/** The material: what was logged last stands there to be tapped; any words, in any order, find the others. */
export function MaterialField({ words, materials, chosen, onChoice, onNew }: MaterialFieldProps) {
  const { id, fault } = useField("materialId", "");
  const list = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [at, setAt] = useState(0);
  const looking = typed !== null || chosen === null;
  const found = looking
    ? materials
        .filter(({ name }) => typed === null || typed.trim() === "" || hasEveryWord(name, typed))
        .slice(0, typed === null ? AT_REST : LISTED)
    : [];
  const choose = (material: Named) => {
    setTyped(null);
    setAt(0);
    onChoice(material.id);
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === "ArrowDown") setAt(Math.min(at + 1, found.length - 1));
    else if (event.key === "ArrowUp") setAt(Math.max(at - 1, 0));
    else if (event.key === "Escape") setTyped(null);
    else if (event.key === "Enter") {
      const there = found[at];
      if (there !== undefined && typed !== null) choose(there);
    } else return;
    event.preventDefault();
  };
  const wanted = typed?.trim() ?? "";
  const isKnown = materials.some(({ name }) => folded(name) === folded(wanted));
  return (
    <FieldFrame id={id} label={words.material} fault={fault}>
      <input
        id={id}
        role="combobox"
        aria-expanded={found.length > 0}
        aria-controls={list}
        aria-autocomplete="list"
        aria-activedescendant={typed !== null && found[at] ? `${list}-${found[at].id}` : undefined}
        aria-invalid={fault !== null}
        aria-describedby={describedBy(id, { hint: false, fault: fault !== null })}
        className={field.input}
        type="text"
        value={typed ?? chosen?.name ?? ""}
        placeholder={words.materialHint}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="next"
        onFocus={(event) => event.target.select()}
        onChange={(event) => {
          setTyped(event.target.value);
          setAt(0);
        }}
        onKeyDown={press}
      />
      <div
        id={list}
        role="listbox"
        aria-label={words.material}
        className={style.choices}
        hidden={found.length === 0}
      >
        {found.map((material, index) => (
          <div
            key={material.id}
            id={`${list}-${material.id}`}
            role="option"
            tabIndex={-1}
            aria-selected={typed !== null && index === at}
            className={style.option}
            onClick={() => choose(material)}
            onKeyDown={press}
          >
            {material.name}
          </div>
        ))}
      </div>
      {wanted !== "" && !isKnown ? (
        <>
          {found.length === 0 ? <p className={style.quiet}>{words.noSuchMaterial}</p> : null}
          <button type="button" className={style.link} onClick={() => onNew(wanted)}>
            {words.makeMaterial(wanted)}
          </button>
        </>
      ) : null}
    </FieldFrame>
  );
}
