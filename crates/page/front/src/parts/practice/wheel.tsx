// What whoever drives may do: order a rung, choose a speed, stop, move off; and how fast time passes.
import { useEffect, useState } from "preact/hooks";
import type { Drive, Plan } from "../../documents";
import { amount, digits, form, fromShown, inShown } from "../../units";
import { t } from "../../words";
import { PACES, act, judge, leave, pace } from "./driving";

export function Wheel({ now, plan }: { now: Drive; plan: Plan }) {
  const [state, setState] = useState(now.load_state);
  // After loading the truck's own load state is the one to order, as long as nobody chooses another.
  useEffect(() => setState(now.load_state), [now.load_state]);
  const chosen = now.chosen_kmh ?? plan.rungs[0]!.cap_kmh;
  const standing = now.speed_kmh < 0.5;
  return (
    <div class="wheel">
      <fieldset disabled={now.over}>
        <legend>{t("page-practice-order")}</legend>
        <div class="buttons">{[plan.empty_state, plan.laden_state].map((name) => (
          <label key={name} class={`tick ${name === state ? "chosen" : ""}`}><input type="radio" name="state" checked={name === state} onChange={() => setState(name)} />{name}</label>
        ))}</div>
        <div class="buttons">{plan.rungs.map((rung) => (
          <button key={rung.name} class={now.rung === rung.name && now.rung_load_state === state ? "main" : ""} aria-pressed={now.rung === rung.name && now.rung_load_state === state}
            onClick={() => act({ action: "order", rung: rung.name, load_state: state })}>
            {rung.name} <small>{amount(rung.cap_kmh, "speed", "down")}</small>
          </button>
        ))}</div>
      </fieldset>
      <fieldset disabled={now.over}>
        <legend>{t("chart-speed")}</legend>
        <div class="buttons">
          <button aria-pressed={now.speed === "cap"} class={now.speed === "cap" ? "main" : ""} onClick={() => act({ action: "speed", speed: "cap" })}>{t("page-practice-speed-cap")}</button>
          <button aria-pressed={now.speed === "road"} class={now.speed === "road" ? "main" : ""} onClick={() => act({ action: "speed", speed: "road" })}>{t("page-practice-speed-road")}</button>
          <label>{t("page-practice-speed-chosen")}
            <input type="range" min={Math.ceil(inShown(5, "speed"))} max={Math.ceil(inShown(120, "speed"))} step={1} value={Math.round(inShown(chosen, "speed"))}
              aria-valuetext={amount(chosen, "speed")} onChange={(event) => act({ action: "speed", speed: "chosen", speed_kmh: fromShown(Number(event.currentTarget.value), "speed") })} />
            <output>{now.speed === "chosen" ? `${digits(inShown(chosen, "speed"), 0)} ${form("speed").label}` : "–"}</output>
          </label>
        </div>
        <div class="buttons">
          <button disabled={standing} onClick={() => act({ action: "stop" })}>■ {t("page-practice-stop")}</button>
          <button disabled={!standing} onClick={() => act({ action: "go" })}>▶ {t("page-practice-go")}</button>
        </div>
      </fieldset>
      <fieldset>
        <legend>{t("page-practice-pace")}</legend>
        <div class="buttons">
          <button disabled={now.over} aria-pressed={pace.value === 0} class={pace.value === 0 ? "main" : ""} onClick={() => { pace.value = 0; }}>{t("page-practice-pause")}</button>
          {PACES.map((one) => <button key={one} disabled={now.over} aria-pressed={pace.value === one} class={pace.value === one ? "main" : ""} onClick={() => { pace.value = one; }}>× {one}</button>)}
        </div>
        <div class="buttons">
          <button onClick={() => { pace.value = 0; judge(); }}>{t("page-practice-judge")}</button>
          <button onClick={leave}>{t("page-practice-again")}</button>
        </div>
      </fieldset>
    </div>
  );
}
