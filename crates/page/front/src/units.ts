// Numbers in the reader's unit and language; a shown number errs on the safe side.
import { forms, language, profile } from "./state";
import type { Band, UnitForm } from "./documents";

export type Kind = "pressure" | "speed" | "load" | "distance" | "span" | "temperature" | "temperature-step" | "liquid" | "minutes" | "hours";
export type Round = "up" | "down" | "nearest";

export function form(kind: Kind): UnitForm {
  const found = forms.value.find((one) => one.kind === kind && one.profile === profile.value);
  return found ?? { kind, profile: "si", label: "", decimals: 1, factor: 1, offset: 0 };
}

export const inShown = (value: number, kind: Kind) => value * form(kind).factor + form(kind).offset;
export const fromShown = (value: number, kind: Kind) => (value - form(kind).offset) / form(kind).factor;

// Float noise does not cost a step; the program rounds the same way.
const NOISE = 1e-9;
function rounded(value: number, decimals: number, round: Round): number {
  const steps = value * 10 ** decimals;
  const nearest = Math.round(steps);
  if (round === "nearest" || Math.abs(steps - nearest) <= NOISE * Math.abs(steps)) return nearest / 10 ** decimals;
  return (round === "up" ? Math.ceil(steps) : Math.floor(steps)) / 10 ** decimals;
}

export function digits(value: number, decimals: number, round: Round = "nearest"): string {
  const shown = rounded(value, decimals, round) + 0;
  const options = { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: false };
  return new Intl.NumberFormat(language.value, options).format(shown);
}

export function number(value: number | null | undefined, kind: Kind, round: Round = "nearest"): string {
  return value == null ? "–" : digits(inShown(value, kind), form(kind).decimals, round);
}

export function amount(value: number | null | undefined, kind: Kind, round: Round = "nearest"): string {
  return value == null ? "–" : `${number(value, kind, round)} ${form(kind).label}`;
}

export const minutes = (seconds: number, round: Round = "nearest") => `${digits(seconds / 60, 1, round)} min`;

/// Low, middle and high; the ends rounded outward.
export function band(of: Band, decimals: number, shown = (value: number) => value): string {
  const middle = digits(shown(of.middle), decimals);
  if (Math.abs(of.high - of.low) <= 1e-9 * Math.max(1, Math.abs(of.high))) return middle;
  const dash = of.low < 0 ? " – " : "–";
  return [digits(shown(of.low), decimals, "down"), middle, digits(shown(of.high), decimals, "up")].join(dash);
}

/// A number as typed: comma or point, no thousands mark; null for what is none.
export function typed(text: string): number | null {
  const plain = text.trim().replace(",", ".");
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/// The kind of number behind the ending of a column.
export function kindOf(ending: string): Kind | null {
  return ({ kpa: "pressure", kmh: "speed", c: "temperature" } as Record<string, Kind>)[ending] ?? null;
}

const BASE: Record<string, Kind> = { kPa: "pressure", kg: "load", "m/s": "speed", K: "temperature-step", "°C": "temperature" };

/// What a law says where it does not hold, every number with a base unit after it in the reader's unit;
/// of a range both ends.
export function inTheirUnits(reason: string): string {
  return reason.replace(/(?:(-?\d+(?:\.\d+)?) to )?(-?\d+(?:\.\d+)?) (kPa|kg|m\/s|K|°C)(?![\w/])/g, (all, low: string | undefined, high: string, unit: string) => {
    const kind = BASE[unit];
    if (!kind) return all;
    const base = (text: string) => Number(text) * (unit === "m/s" ? 3.6 : 1);
    return `${low === undefined ? "" : `${number(base(low), kind)} to `}${amount(base(high), kind)}`;
  });
}
