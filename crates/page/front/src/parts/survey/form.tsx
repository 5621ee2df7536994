// A form made from a schema and what a file holds: keys as written, everything else to add.
import { useState } from "preact/hooks";
import { profile, site } from "../../state";
import { t } from "../../words";
import { save } from "./editing";
import { Field, Problems } from "./field";
import { addable, begun, escaped, parted, row } from "./schema";
import type { Schema } from "./schema";

type Values = Record<string, unknown>;
const isTable = (value: unknown): value is Values => typeof value === "object" && value !== null && !Array.isArray(value);
const isRows = (value: unknown): value is Values[] => Array.isArray(value) && value.length > 0 && value.every(isTable);

export function Form({ values, schema, pointer }: { values: Values; schema: Schema; pointer: string }) {
  const of = (key: string): Schema => schema.properties?.[key] ?? (typeof schema.additionalProperties === "object" ? schema.additionalProperties : {});
  return (
    <div class="form">
      {Object.entries(values).map(([key, value]) => {
        const at = `${pointer}/${escaped(key)}`;
        if (isRows(value)) return <Rows key={key} name={key} rows={value} schema={of(key)} pointer={at} />;
        if (isTable(value)) return <Group key={key} name={key} at={at} open={pointer === ""}><Form values={value} schema={of(key)} pointer={at} /></Group>;
        return <Field key={key} name={key} value={value} schema={of(key)} pointer={at} />;
      })}
      <Add schema={schema} present={Object.keys(values)} pointer={pointer} />
    </div>
  );
}

function Group({ name, at, open, children }: { name: string; at: string; open: boolean; children: preact.ComponentChildren }) {
  return <details class="group" open={open}><summary>{parted(name)[0]}</summary><Problems at={at} />{children}</details>;
}

function Rows({ name, rows, schema, pointer }: { name: string; rows: Values[]; schema: Schema; pointer: string }) {
  const title = (one: Values, index: number) => String(one.name ?? one.number ?? one.channel ?? index + 1);
  const items = schema.items ?? {};
  return (
    <fieldset class="rows"><legend>{parted(name)[0]}</legend>
      <Problems at={pointer} />
      {rows.map((one, index) => (
        <details key={index} class="group">
          <summary>{index + 1}. {title(one, index)}</summary>
          <Problems at={`${pointer}/${index}`} />
          <Form values={one} schema={items} pointer={`${pointer}/${index}`} />
          {!site.value!.read_only && <button onClick={() => save({ do: "remove", pointer: `${pointer}/${index}` })}>{t("page-remove-row", { name: title(one, index) })}</button>}
        </details>
      ))}
      {!site.value!.read_only && <button onClick={() => save({ do: "append", pointer, value: row(items) })}>{t("page-add-row", { name: parted(name)[0] })}</button>}
    </fieldset>
  );
}

function Add({ schema, present, pointer }: { schema: Schema; present: string[]; pointer: string }) {
  const [key, setKey] = useState("");
  const choices = addable(schema.properties ?? {}, present, profile.value);
  if (choices.length === 0 || site.value!.read_only) return null;
  const add = async () => {
    const wanted = schema.properties?.[key];
    if (!wanted) return;
    const at = `${pointer}/${escaped(key)}`;
    const rows = wanted.type === "array" && wanted.items?.type === "object";
    if (await save(rows ? { do: "append", pointer: at, value: row(wanted.items!) } : { do: "set", pointer: at, value: begun(wanted) })) setKey("");
  };
  return (
    <p class="add">
      <label>{t("page-add-value")}
        <select value={key} onChange={(event) => setKey(event.currentTarget.value)}>
          <option value="" />
          {choices.map((one) => { const [label, unit] = parted(one); return <option key={one} value={one}>{label}{unit && `, ${unit}`}</option>; })}
        </select>
      </label>
      <button disabled={!key} onClick={add}>{t("page-add")}</button>
    </p>
  );
}
