// One value of a file with its problems beside it.
import { useId, useState } from "preact/hooks";
import type { Problem } from "../../documents";
import { site } from "../../state";
import { typed } from "../../units";
import { t } from "../../words";
import { file, save } from "./editing";
import { parted } from "./schema";
import type { Schema } from "./schema";

export function problemsAt(pointer: string): Problem[] {
  return file.value?.problems.filter((one) => one.pointer === pointer) ?? [];
}

export function Problems({ at, id }: { at: string; id?: string }) {
  const found = problemsAt(at);
  if (found.length === 0) return null;
  return (
    <div class="problems" id={id} role="alert">
      {found.map((one, index) => <p key={index} class={one.severity === "error" ? "wrong" : "note"}>{one.severity === "error" ? "! " : "△ "}{one.message}{one.hint && <><br /><small>{one.hint}</small></>}</p>)}
    </div>
  );
}

const written = (value: unknown) => Array.isArray(value) ? value.join(", ") : value == null ? "" : String(value);

export function Field({ name, value, schema, pointer }: { name: string; value: unknown; schema: Schema; pointer: string }) {
  const id = useId();
  const [text, setText] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [label, unit] = parted(name);
  const locked = site.value!.read_only;
  const list = schema.type === "array";
  const kind = list ? schema.items?.type : schema.type;
  const numeric = kind === "number" || kind === "integer" || (kind === undefined && typeof value === "number");
  const read = (text: string): unknown => {
    if (!numeric) return text;
    return typed(text);
  };
  const commit = async () => {
    if (text === null || text === written(value)) { setText(null); setRefused(null); return; }
    const given = list ? text.split(",").map((one) => read(one.trim())).filter((one) => one !== "") : read(text);
    if (given === null || (Array.isArray(given) && given.includes(null))) { setRefused(t("page-not-a-number")); return; }
    setRefused(null);
    if (await save({ do: "set", pointer, value: given })) setText(null);
  };
  const bad = refused !== null || problemsAt(pointer).some((one) => one.severity === "error");
  const described = `${id}-about ${id}-problems`;
  return (
    <div class={`field ${bad ? "bad" : ""}`}>
      <label for={id}>{label}{unit && <span class="unit">, {unit}</span>}</label>
      {schema.type === "boolean" ? (
        <input id={id} type="checkbox" disabled={locked} checked={value === true} aria-describedby={described} onChange={(event) => save({ do: "set", pointer, value: event.currentTarget.checked })} />
      ) : schema.enum && !list ? (
        <select id={id} disabled={locked} value={String(value)} aria-describedby={described} aria-invalid={bad} onChange={(event) => save({ do: "set", pointer, value: event.currentTarget.value })}>
          {[...new Set([...schema.enum, String(value)])].map((one) => <option key={one} value={one}>{one.replaceAll("_", " ")}</option>)}
        </select>
      ) : (
        <input id={id} disabled={locked} value={text ?? written(value)} inputMode={numeric && !list ? "decimal" : "text"} autocomplete="off" spellcheck={false} aria-invalid={bad} aria-describedby={described}
          onInput={(event) => setText(event.currentTarget.value)} onBlur={commit}
          onKeyDown={(event) => { if (event.key === "Enter") commit(); if (event.key === "Escape") { setText(null); setRefused(null); } }} />
      )}
      {!locked && <button class="remove" title={t("page-remove")} aria-label={`${t("page-remove")}: ${label}`} onClick={() => save({ do: "remove", pointer })}>×</button>}
      {schema.description && <p class="about" id={`${id}-about`}>{schema.description.split("\n")[0]}</p>}
      {refused && <p class="wrong" role="alert">{refused}</p>}
      <Problems at={pointer} id={`${id}-problems`} />
    </div>
  );
}
