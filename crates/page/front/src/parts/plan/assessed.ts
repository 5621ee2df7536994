// What the plan on show does and costs: asked for once the sliders rest, for it takes longer.
import { effect, signal } from "@preact/signals";
import { Refused, send } from "../../api";
import type { Assessed } from "../../documents";
import { surveyHash } from "../../state";
import { conditions, handSet, haul, moved } from "./trial";

const REST_MS = 350;

export const assessed = signal<Assessed | null>(null);
/// Whether what is shown belongs to a plan that was on show before.
export const behind = signal(false);
export const refused = signal<string | null>(null);

let request: AbortController | null = null;

async function ask(body: unknown, tries = 0) {
  request?.abort();
  const mine = new AbortController();
  request = mine;
  try {
    const answer = await send<{ plans: Assessed[] }>("POST", "/effects", body, mine.signal);
    if (request !== mine) return;
    assessed.value = answer.plans[0] ?? null;
    behind.value = false;
    refused.value = null;
  } catch (error) {
    if (mine.signal.aborted || !(error instanceof Refused)) return;
    if (error.kind === "busy" && tries < 50) {
      setTimeout(() => { if (request === mine) ask(body, tries + 1); }, 100);
      return;
    }
    refused.value = error.status ? error.message : "";
  }
}

/// Follows what is tried, as long as the part is on show.
export function followAssessed() {
  let rest = 0;
  const stop = effect(() => {
    surveyHash.value;
    const body = { haul: haul.value, what_if: conditions.value, hand_set: handSet.value, moved: moved.value };
    behind.value = true;
    clearTimeout(rest);
    if (body.haul) rest = window.setTimeout(() => ask(body), REST_MS);
  });
  return () => { stop(); clearTimeout(rest); request?.abort(); };
}
