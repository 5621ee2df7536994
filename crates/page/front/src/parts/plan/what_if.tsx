// Sliders: what if it were heavier, wetter, colder, short of air, or called late.
import { digits, form, inShown, number } from "../../units";
import { t } from "../../words";
import { asSurveyed, changed, conditions } from "./trial";
import type { Conditions } from "./trial";

const SLIDERS: { key: keyof Conditions; low: number; high: number; step: number }[] = [
  { key: "load_pct", low: -30, high: 30, step: 1 },
  { key: "bearing_pct", low: -60, high: 40, step: 5 },
  { key: "ambient_k", low: -30, high: 30, step: 1 },
  { key: "delivery_pct", low: -60, high: 60, step: 5 },
  { key: "late_m", low: -500, high: 3000, step: 50 },
];

function shown(key: keyof Conditions, value: number): string {
  const sign = value > 0 ? "+" : "";
  if (key === "ambient_k") return `${sign}${digits(inShown(value, "temperature-step") - inShown(0, "temperature-step"), 0)} ${form("temperature-step").label}`;
  if (key === "late_m") return `${sign}${number(value, "span")} ${form("span").label}`;
  return `${sign}${digits(value, 0)} %`;
}

export function WhatIf() {
  const now = conditions.value;
  return (
    <fieldset class="what-if">
      <legend>{t("page-what-if")}</legend>
      {SLIDERS.map(({ key, low, high, step }) => (
        <label key={key}>
          <span>{t(`page-what-if-${key.replace(/_.*/, "")}`)}</span>
          <input type="range" min={low} max={high} step={step} value={now[key]} aria-valuetext={shown(key, now[key])} data-slider={key}
            onInput={(event) => { conditions.value = { ...conditions.value, [key]: Number(event.currentTarget.value) }; }} />
          <output>{shown(key, now[key])}</output>
        </label>
      ))}
      <button disabled={!changed.value} onClick={asSurveyed}>{t("page-as-surveyed")}</button>
    </fieldset>
  );
}
