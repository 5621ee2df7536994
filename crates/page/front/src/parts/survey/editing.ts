// One file under the hand: read, saved value by value, taken back step by step.
import { signal } from "@preact/signals";
import { Refused, readFile, send } from "../../api";
import type { FileDocument } from "../../documents";
import { refresh } from "../../state";
import { t } from "../../words";

export const file = signal<FileDocument | null>(null);
export const told = signal<string | null>(null);
/// Somebody else saved the file first: their text against what was wanted here.
export const conflict = signal<{ edits: Edit[] } | null>(null);
const past = signal<Record<string, string[]>>({});
const MOST_STEPS = 100;

export type Edit =
  | { do: "set" | "append"; pointer: string; value: unknown }
  | { do: "remove"; pointer: string };

export const steps = () => (file.value ? past.value[file.value.path]?.length ?? 0 : 0);

export async function open(path: string) {
  conflict.value = null;
  told.value = null;
  try {
    file.value = await readFile(path);
  } catch (error) {
    file.value = null;
    told.value = said(error);
  }
}

async function put(body: Record<string, unknown>): Promise<boolean> {
  const before = file.value!;
  try {
    const after = await send<FileDocument>("PUT", "/file", { path: before.path, base: before.hash, ...body });
    file.value = after;
    told.value = t("page-saved", { file: after.path });
    await refresh();
    return true;
  } catch (error) {
    if (error instanceof Refused && error.kind === "changed-meanwhile") conflict.value = { edits: (body.edits as Edit[]) ?? [] };
    told.value = said(error);
    return false;
  }
}

export async function save(...edits: Edit[]): Promise<boolean> {
  const before = file.value!;
  const good = await put({ edits });
  if (good && file.value!.text !== before.text) {
    const steps = [...(past.value[before.path] ?? []), before.text].slice(-MOST_STEPS);
    past.value = { ...past.value, [before.path]: steps };
  }
  return good;
}

export async function saveText(text: string): Promise<boolean> {
  const before = file.value!;
  const good = await put({ text });
  if (good) past.value = { ...past.value, [before.path]: [...(past.value[before.path] ?? []), before.text].slice(-MOST_STEPS) };
  return good;
}

export async function undo() {
  const path = file.value!.path;
  const steps = past.value[path] ?? [];
  const last = steps.at(-1);
  if (last !== undefined && await put({ text: last })) past.value = { ...past.value, [path]: steps.slice(0, -1) };
}

/// Makes the change that was refused on the file as it stands now.
export async function again() {
  const edits = conflict.value?.edits ?? [];
  await open(file.value!.path);
  if (edits.length > 0) await save(...edits);
}

const said = (error: unknown) => error instanceof Refused && error.status ? error.message : t("page-unreachable");
