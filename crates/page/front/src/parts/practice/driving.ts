// The drive under way: what is ordered, the time that passes, and how it goes on after a break.
import { signal } from "@preact/signals";
import { Refused, send } from "../../api";
import type { Drive, Trial, Verdict } from "../../documents";

export interface Wish { haul: string; surprise: string; seed: number }
export type Order =
  | { action: "order"; rung: string; load_state: string }
  | { action: "speed"; speed: "cap" | "road" | "chosen"; speed_kmh?: number }
  | { action: "stop" | "go" };

/// Seconds of the drive to a second of the clock on the wall.
export const PACES = [4, 12, 40, 120];
const TICKS = 4;
const KEPT = "airtide-drive";

export const planned = signal<Trial | null>(null);
export const drive = signal<Drive | null>(null);
/// Where the truck was and what its tires held, for each run.
export const trace = signal<Record<"empty" | "laden", { km: number[]; tire_kpa: number[][] }>>(fresh());
export const pace = signal(0);
export const verdict = signal<Verdict | null>(null);
export const problem = signal<string | null>(null);

let id = "";
let wish: Wish | null = null;
let turn: Promise<unknown> = Promise.resolve();
let asking = 0;

function fresh() {
  return { empty: { km: [], tire_kpa: [] }, laden: { km: [], tire_kpa: [] } };
}

export const isLaden = (one: Drive) => ["loaded", "laden", "arrived"].includes(one.stage) || (one.stage === "stuck" && trace.value.laden.km.length > 0);

function show(now: Drive) {
  const half = isLaden(now) ? "laden" : "empty";
  const so = trace.value[half];
  if (so.km.at(-1) !== now.km || so.km.length === 0) {
    trace.value = { ...trace.value, [half]: { km: [...so.km, now.km], tire_kpa: [...so.tire_kpa, now.tire_kpa] } };
  }
  drive.value = now;
  try { sessionStorage.setItem(KEPT, JSON.stringify({ wish, acted: now.acted, time_s: now.time_s })); } catch { /* a private window keeps nothing */ }
  if (now.over) {
    pace.value = 0;
    judge();
  }
}

/// One question after the other, so that what is done stays in its order.
function inTurn(work: () => Promise<void>) {
  asking++;
  turn = turn.then(work).catch((error) => {
    pace.value = 0;
    if (!(error instanceof Refused)) throw error;
    problem.value = error.status ? error.message : "";
  }).finally(() => { asking--; });
  return turn;
}

async function start(wanted: Wish, again: { acted: unknown[]; time_s: number } | null) {
  const begun = await patient(() => send<{ id: string; drive: Drive }>("POST", "/practice", { ...wanted, again }));
  id = begun.id;
  wish = wanted;
  problem.value = null;
  show(begun.drive);
}

/// Asks again while every core is at work.
async function patient<T>(question: () => Promise<T>, tries = 0): Promise<T> {
  try {
    return await question();
  } catch (error) {
    if (!(error instanceof Refused) || error.kind !== "busy" || tries > 100) throw error;
    await new Promise((done) => setTimeout(done, 30));
    return patient(question, tries + 1);
  }
}

export function begin(wanted: Wish) {
  verdict.value = null;
  trace.value = fresh();
  return inTurn(async () => {
    planned.value = await patient(() => send<Trial>("POST", "/plan", { haul: wanted.haul }));
    await start(wanted, null);
    pace.value = PACES[1]!;
  });
}

/// Takes up the drive of this window where a reload broke it off.
export function takeUp(haul: string) {
  let kept: { wish: Wish; acted: unknown[]; time_s: number } | null = null;
  try { kept = JSON.parse(sessionStorage.getItem(KEPT) ?? "null"); } catch { /* nothing to take up */ }
  if (!kept?.wish || kept.wish.haul !== haul || drive.value) return;
  const { wish: wanted, acted, time_s } = kept;
  inTurn(async () => {
    planned.value = await patient(() => send<Trial>("POST", "/plan", { haul }));
    await start(wanted, { acted, time_s });
  });
}

export function leave() {
  pace.value = 0;
  drive.value = null;
  verdict.value = null;
  problem.value = null;
  trace.value = fresh();
  try { sessionStorage.removeItem(KEPT); } catch { /* nothing kept */ }
}

function step(action: Order | null, seconds: number) {
  return inTurn(async () => {
    const now = drive.value;
    if (!now || now.over) return;
    try {
      show(await patient(() => send<Drive>("POST", "/practice/step", { id, action, seconds })));
      problem.value = null;
    } catch (error) {
      // The program was started again, or kept the drives of others: it is played again to here.
      if (!(error instanceof Refused) || error.kind !== "not-there" || !wish) throw error;
      await start(wish, { acted: now.acted, time_s: now.time_s });
      show(await send<Drive>("POST", "/practice/step", { id, action, seconds }));
    }
  });
}

export const act = (order: Order) => step(order, 0);

export function judge() {
  return inTurn(async () => { verdict.value = await patient(() => send<Verdict>("POST", "/practice/verdict", { id })); });
}

/// Lets time pass as long as the part is on show.
export function run() {
  const clock = setInterval(() => {
    // A slow answer slows the drive down; it never jumps.
    if (pace.value > 0 && asking === 0) step(null, pace.value / TICKS);
  }, 1000 / TICKS);
  return () => { clearInterval(clock); pace.value = 0; };
}
