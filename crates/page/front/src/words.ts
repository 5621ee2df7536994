// Words: the same Fluent texts that the program prints.
import { FluentBundle, FluentResource } from "@fluent/bundle";
import { signal } from "@preact/signals";
import { getText } from "./api";

const bundle = signal<FluentBundle | null>(null);

export async function readTexts(tag: string) {
  const source = await getText(`/texts?language=${encodeURIComponent(tag)}`);
  const fresh = new FluentBundle(tag, { useIsolating: false });
  fresh.addResource(new FluentResource(source), { allowOverrides: true });
  bundle.value = fresh;
}

export const has = (key: string) => bundle.value?.hasMessage(key) ?? false;

/// The text of a key; one that is missing is seen, never a blank.
export function t(key: string, args: Record<string, string | number> = {}): string {
  const message = bundle.value?.getMessage(key);
  if (!message?.value) return `[${key}]`;
  return bundle.value!.formatPattern(message.value, args, []);
}
