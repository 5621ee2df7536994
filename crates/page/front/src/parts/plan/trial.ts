// What is tried on the plan, and the answer of the program while a slider moves.
import { batch, computed, effect, signal } from "@preact/signals";
import { Refused, send } from "../../api";
import type { Trial } from "../../documents";
import { surveyHash } from "../../state";

export interface HandSet { channel: string; load_state: string; rung: string; pressure_kpa: number }
export interface Conditions { load_pct: number; bearing_pct: number; ambient_k: number; delivery_pct: number; late_m: number }
export const AS_SURVEYED: Conditions = { load_pct: 0, bearing_pct: 0, ambient_k: 0, delivery_pct: 0, late_m: 0 };

export const haul = signal<string | null>(null);
export const conditions = signal<Conditions>(AS_SURVEYED);
export const handSet = signal<HandSet[]>([]);
export const moved = signal<{ number: number; km: number }[]>([]);
export const trial = signal<Trial | null>(null);
/// The trial that tables show: that of the run, a frame later.
export const drawn = signal<Trial | null>(null);
export const kept = signal<Trial | null>(null);
export const problem = signal<string | null>(null);

export const changed = computed(() =>
  handSet.value.length > 0 || moved.value.length > 0 || Object.values(conditions.value).some((value) => value !== 0));

export function asSurveyed() {
  conditions.value = AS_SURVEYED;
  handSet.value = [];
  moved.value = [];
}

export const sameCell = (a: HandSet, b: { channel: string; load_state: string; rung: string }) =>
  a.channel === b.channel && a.load_state === b.load_state && a.rung === b.rung;

let request: AbortController | null = null;

/// Asks for what is wanted now and forgets what was asked before.
async function ask(body: unknown, tries = 0) {
  request?.abort();
  const mine = new AbortController();
  request = mine;
  try {
    const answer = await send<Trial>("POST", "/plan", body, mine.signal);
    if (request !== mine) return;
    batch(() => {
      trial.value = answer;
      problem.value = null;
    });
    // What is read rather than watched follows once the run is drawn.
    requestAnimationFrame(() => setTimeout(() => { if (trial.value === answer) drawn.value = answer; }));
  } catch (error) {
    if (mine.signal.aborted || !(error instanceof Refused)) return;
    // The program still works on what nobody wants any more: ask again, soon.
    if (error.kind === "busy" && tries < 100) {
      setTimeout(() => { if (request === mine) ask(body, tries + 1); }, 15);
      return;
    }
    problem.value = error.status ? error.message : "";
  }
}

/// Follows what is tried, as long as the part is on show.
export const follow = () => effect(() => {
  const name = haul.value;
  // Another state of the files is another plan.
  surveyHash.value;
  const body = { haul: name, what_if: conditions.value, hand_set: handSet.value, moved: moved.value };
  if (name) ask(body);
});
