// What people must be told, those that break a limit first.
import type { Caution, Plan } from "../../documents";
import { amount, digits } from "../../units";
import type { Kind, Round } from "../../units";
import { has, t } from "../../words";

export function Cautions({ plan }: { plan: Plan }) {
  const lines = new Map<string, { broken: boolean; cells: string[]; caution: Caution }>();
  for (const caution of plan.cautions) {
    const cell = ["load_state", "rung", "channel", "chain_state"].map((role) => caution.names[role]).filter(Boolean).join(", ");
    const joins = caution.names.channel && caution.names.rung;
    const key = caution.caution + (joins ? JSON.stringify(caution.numbers) : JSON.stringify(caution));
    const line = lines.get(key) ?? { broken: caution.breaks_a_limit, cells: [], caution };
    line.cells.push(cell);
    lines.set(key, line);
  }
  const sorted = [...lines.values()].sort((a, b) => Number(b.broken) - Number(a.broken));
  return (
    <section class="cautions">
      <h2>{t("plan-cautions")}</h2>
      <ul>{sorted.map((line, index) => <li key={index} class={line.broken ? "wrong" : ""}>{line.broken ? "! " : ""}{words(line.caution, line.cells, plan)}</li>)}</ul>
    </section>
  );
}

function words(caution: Caution, cells: string[], plan: Plan): string {
  const args: Record<string, string> = { cells: cells.join("; "), groups: caution.names.axle_group ?? "", ...caution.names };
  for (const [key, value] of Object.entries(caution.numbers)) Object.assign(args, named(key, value));
  const point = plan.change_points[(caution.numbers.change_point ?? 0) - 1];
  if (point) Object.assign(args, { number: digits(caution.numbers.change_point!, 0), place: amount(point.km, "distance") });
  const key = `caution-${caution.caution}`;
  return has(key) ? t(key, args) : caution.caution;
}

const KINDS: [string, Kind, number, Round][] = [
  ["_kpa", "pressure", 1, "nearest"], ["_kmh", "speed", 1, "down"], ["_kg", "load", 1, "up"], ["_km", "distance", 1, "nearest"], ["_m", "distance", 0.001, "nearest"], ["_c", "temperature", 1, "nearest"],
];
function named(key: string, value: number): Record<string, string> {
  for (const [suffix, kind, factor, round] of KINDS) if (key.endsWith(suffix)) return { [key.slice(0, -suffix.length)]: amount(value * factor, kind, round) };
  if (key.endsWith("_s")) return { [key.slice(0, -2)]: `${digits(value / 60, 1)} min` };
  if (key.endsWith("_min")) return { [key.slice(0, -4)]: `${digits(value, 1)} min` };
  if (key === "wheel_ends") return { count: digits(value, 0) };
  return { [key]: digits(value, 0) };
}
