// The road ahead: the planned change points, the pressures wanted, those held so far, and the truck.
import type { Drive, Strip, Trial } from "../../documents";
import { amount, form, inShown } from "../../units";
import { t } from "../../words";
import { DASHES, GROUND, Ground, LEFT, RIGHT, useWidth } from "../ground";
import { path, scale, ticks } from "../plan/scale";
import { isLaden, trace } from "./driving";

const FLAGS = 46, LINES = 150, GAP = 22;
const BOTTOM = FLAGS + GROUND + GAP + LINES;

export function Road({ now, trial, strip }: { now: Drive; trial: Trial; strip: Strip }) {
  const [box, width] = useWidth();
  const laden = isLaden(now);
  const columns = laden ? strip.laden : strip.empty;
  const rises = (strip.laden_direction === "forward") === laden;
  const state = strip.load_states[laden ? 1 : 0];
  const points = trial.plan.change_points.filter((point) => point.load_state === state);
  const x = scale([0, strip.route_km], [LEFT, width - RIGHT]);
  const all = [...strip.empty.tire_kpa, ...strip.laden.tire_kpa].flat();
  const [low, high] = [Math.min(...all) - 30, Math.max(...all) + 30];
  const lines = FLAGS + GROUND + GAP;
  const y = scale([low, high], [lines + LINES, lines]);
  const driven = trace.value[laden ? "laden" : "empty"];
  const unshown = (tick: number) => (tick - form("pressure").offset) / form("pressure").factor;
  const next = points.filter((point) => (rises ? point.km > now.km : point.km < now.km)).sort((a, b) => Math.abs(a.km - now.km) - Math.abs(b.km - now.km))[0];
  const summary = next
    ? t("page-practice-next", { what: t(next.action === "raise" ? "plan-start-raising" : "plan-start-lowering"), rung: next.to_rung, road: amount(Math.abs(next.km - now.km), "distance", "down") })
    : t("page-practice-no-next");
  return (
    <figure class="strip" ref={box}>
      <figcaption><h2>{t(laden ? "chart-laden-run" : "chart-empty-run")} {rises ? "→" : "←"}</h2><p class="next">{summary}</p></figcaption>
      <svg class="half" width={width} height={BOTTOM + 28} role="img" aria-label={`${t(laden ? "chart-laden-run" : "chart-empty-run")}, ${amount(now.km, "distance")}. ${summary}`}>
        <Ground strip={strip} x={x} top={FLAGS} />
        {ticks(inShown(low, "pressure"), inShown(high, "pressure"), 4).map((tick) => (
          <g key={tick}><line class="grid" x1={LEFT} x2={width - RIGHT} y1={y(unshown(tick))} y2={y(unshown(tick))} /><text class="tick" x={LEFT - 8} y={y(unshown(tick)) + 4}>{tick}</text></g>
        ))}
        <text class="axis" x={LEFT} y={lines - 6}>{t("chart-in-unit", { what: t("chart-tire-pressure"), unit: form("pressure").label })}</text>
        {strip.channels.map((name, channel) => (
          <g key={name} class={`channel c${channel % 6}`}>
            <path d={path(columns.km, columns.tire_minimum_kpa[channel]!, x, y)} class="minimum" stroke-dasharray={DASHES[channel % 6]} />
            <path d={path(driven.km, driven.tire_kpa.map((values) => values[channel]!), x, y)} class="line" stroke-dasharray={DASHES[channel % 6]} />
          </g>
        ))}
        {points.map((point, index) => (
          <g key={index} class={`flag ${point.action}`}>
            <line x1={x(point.km)} x2={x(point.km)} y1={20 + (index % 2) * 16} y2={BOTTOM} />
            <text x={x(point.km) + (x(point.km) > width - 150 ? -6 : 6)} y={26 + (index % 2) * 16} text-anchor={x(point.km) > width - 150 ? "end" : "start"}>{point.action === "raise" ? "▲" : "▼"} {point.to_rung}</text>
          </g>
        ))}
        <g class="truck"><line x1={x(now.km)} x2={x(now.km)} y1={FLAGS} y2={BOTTOM} /><path d={`M${x(now.km) - (rises ? 9 : -9)} ${FLAGS + 2}v16l${rises ? 18 : -18} -8z`} /></g>
        {ticks(0, inShown(strip.route_km, "distance"), width / 110).map((tick) => (
          <text key={tick} class="tick middle" x={x((tick - form("distance").offset) / form("distance").factor)} y={BOTTOM + 18}>{tick}</text>
        ))}
        <text class="axis end" x={width - RIGHT} y={BOTTOM + 18}>{form("distance").label}</text>
      </svg>
    </figure>
  );
}
