// What whoever drives sees: place, speed against its cap, supply, tires, what happens.
import type { Drive, Strip } from "../../documents";
import { amount, digits, minutes } from "../../units";
import { t } from "../../words";

/// Speed over the cap that is told, km/h: less is the driver's own wavering.
const OVER = 1;

export function Seen({ now, strip }: { now: Drive; strip: Strip }) {
  const last = now.events.at(-1);
  const over = now.speed_kmh > now.cap_kmh + OVER;
  const leg = strip.legs.find((one) => now.km >= one.from_km && now.km < one.to_km) ?? strip.legs.at(-1);
  return (
    <>
      <dl class="seen">
        <div><dt>{t("page-practice-stage")}</dt><dd>{t(`page-practice-stage-${now.stage}`)}{now.loading_left_s > 0 && now.stage === "loading" ? `, ${minutes(now.loading_left_s, "up")}` : ""}</dd></div>
        <div><dt>{t("practice-item-time")}</dt><dd>{minutes(now.time_s)}</dd></div>
        <div><dt>{t("chart-chainage")}</dt><dd>{amount(now.km, "distance")}</dd></div>
        <div><dt>{t("page-practice-leg")}</dt><dd>{leg ? t(`chart-surface-${leg.surface.replaceAll(" ", "-")}`) : "–"}</dd></div>
        <div class={over ? "wrong" : ""}><dt>{t("chart-speed")}</dt><dd>{over ? "! " : ""}{amount(now.speed_kmh, "speed")}</dd></div>
        <div><dt>{t("page-practice-cap")}</dt><dd>{amount(now.cap_kmh, "speed", "down")}</dd></div>
        <div><dt>{t("page-practice-road-limit")}</dt><dd>{amount(now.limit_kmh, "speed", "down")}</dd></div>
        <div><dt>{t("page-practice-supply")}</dt><dd>{amount(now.supply_kpa, "pressure", "down")}</dd></div>
        <div><dt>{t("page-practice-ordered")}</dt><dd>{now.rung}, {now.rung_load_state} {now.changing ? `(${t("page-practice-changing")})` : ""}</dd></div>
        {strip.channels.map((name, channel) => <div key={name}><dt>{name}</dt><dd>{amount(now.tire_kpa[channel], "pressure", "down")}</dd></div>)}
      </dl>
      <p class="event" role="status">
        {over && <strong class="wrong">{t("page-practice-over-cap", { cap: amount(now.cap_kmh, "speed", "down") })} </strong>}
        {now.held_up && <strong>{t("page-practice-standing")} </strong>}
        {last && `${digits(last.time_s / 60, 1)} min: ${last.stage ? t(`page-practice-stage-${last.stage}`) : t(`page-practice-event-${last.event}`)}`}
      </p>
    </>
  );
}
