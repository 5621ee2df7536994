// The run strip: the empty run above the laden run, place under place, with change points to drag.
import type { ChangePoint, Columns, Strip, Trial } from "../../documents";
import { amount, form, inShown, minutes, number } from "../../units";
import { t } from "../../words";
import { DASHES, GROUND, Ground, LEFT, RIGHT, useWidth } from "../ground";
import { path, scale, ticks } from "./scale";
import type { Scale } from "./scale";
import { moved } from "./trial";

const FLAGS = 64, LINES = 150, SPEED = 80, GAP = 22;
const HALF = FLAGS + GROUND + GAP + LINES + GAP + SPEED;

export function StripChart({ trial, strip }: { trial: Trial; strip: Strip }) {
  const [box, width] = useWidth();
  const x = scale([0, strip.route_km], [LEFT, width - RIGHT]);
  const unload = (km: number) => Math.min(strip.route_km, Math.max(0, km));
  const toKm = (px: number) => unload(((px - LEFT) / (width - RIGHT - LEFT)) * strip.route_km);
  return (
    <figure class="strip" ref={box}>
      <figcaption><h2>{t("chart-strip-title")}</h2><p>{summary(trial, strip)}</p></figcaption>
      <Half strip={strip} trial={trial} laden={false} x={x} toKm={toKm} width={width} />
      <Half strip={strip} trial={trial} laden x={x} toKm={toKm} width={width} />
      <Legend strip={strip} />
      <Table strip={strip} />
    </figure>
  );
}

function summary(trial: Trial, strip: Strip): string {
  const lowest = (columns: Columns) => strip.channels.map((name, index) => `${name} ${amount(Math.min(...columns.tire_kpa[index]!), "pressure")}`).join(", ");
  return t("page-strip-summary", {
    changes: trial.plan.change_points.length, empty: lowest(strip.empty), laden: lowest(strip.laden),
    speed: amount(Math.max(...strip.laden.speed_kmh), "speed"),
  });
}

interface HalfProps { strip: Strip; trial: Trial; laden: boolean; x: Scale; toKm: (px: number) => number; width: number }

function Half({ strip, trial, laden, x, toKm, width }: HalfProps) {
  const columns = laden ? strip.laden : strip.empty;
  const state = strip.load_states[laden ? 1 : 0];
  const rises = (strip.laden_direction === "forward") === laden;
  const points = trial.plan.change_points.map((point, number) => ({ point, number })).filter(({ point }) => point.load_state === state);
  const all = [...strip.empty.tire_kpa, ...strip.laden.tire_kpa, ...strip.laden.tire_minimum_kpa, ...strip.empty.tire_minimum_kpa].flat().filter((value): value is number => value != null);
  const low = Math.min(...all), high = Math.max(...all);
  const ground = FLAGS, lines = FLAGS + GROUND + GAP, speed = lines + LINES + GAP;
  const y = scale([low - 20, high + 20], [lines + LINES, lines]);
  const fastest = Math.max(...strip.laden.cap_kmh, ...strip.empty.cap_kmh, 10);
  const v = scale([0, fastest * 1.05], [speed + SPEED, speed]);
  const shownTicks = (kind: "pressure" | "speed", from: number, to: number) => ticks(inShown(from, kind), inShown(to, kind), 4);
  return (
    <svg class="half" width={width} height={HALF + 30} role="group" aria-label={t(laden ? "chart-laden-run" : "chart-empty-run")}>
      <text class="half-name" x={LEFT} y={16}>{t(laden ? "chart-laden-run" : "chart-empty-run")} {rises ? "→" : "←"}</text>
      <Ground strip={strip} x={x} top={ground} />
      {points.map(({ point, number }) => <Lead key={number} point={calledAt(trial, point, number)} x={x} bottom={speed + SPEED} />)}
      {shownTicks("pressure", low - 20, high + 20).map((tick) => {
        const at = y(fromTick(tick, "pressure"));
        return <g key={tick}><line class="grid" x1={LEFT} x2={width - RIGHT} y1={at} y2={at} /><text class="tick" x={LEFT - 8} y={at + 4}>{tick}</text></g>;
      })}
      <text class="axis" x={LEFT} y={lines - 6}>{t("chart-in-unit", { what: t("chart-tire-pressure"), unit: form("pressure").label })}</text>
      {columns.tire_kpa.map((values, index) => (
        <g key={index} class={`channel c${index % 6}`}>
          <path d={path(columns.km, columns.tire_minimum_kpa[index]!, x, y)} class="minimum" stroke-dasharray={DASHES[index % 6]} />
          <path d={path(columns.km, values, x, y)} class="line" stroke-dasharray={DASHES[index % 6]} />
        </g>
      ))}
      {shownTicks("speed", 0, fastest).map((tick) => {
        const at = v(fromTick(tick, "speed"));
        return <g key={tick}><line class="grid" x1={LEFT} x2={width - RIGHT} y1={at} y2={at} /><text class="tick" x={LEFT - 8} y={at + 4}>{tick}</text></g>;
      })}
      <text class="axis" x={LEFT} y={speed - 6}>{t("chart-in-unit", { what: t("chart-speed"), unit: form("speed").label })}</text>
      <path d={path(columns.km, columns.cap_kmh, x, v)} class="cap" />
      <path d={path(columns.km, columns.speed_kmh, x, v)} class="speed" />
      {ticks(0, inShown(strip.route_km, "distance"), width / 110).map((tick) => (
        <text key={tick} class="tick middle" x={x(fromTick(tick, "distance"))} y={speed + SPEED + 18}>{tick}</text>
      ))}
      <text class="axis end" x={width - RIGHT} y={speed + SPEED + 18}>{form("distance").label}</text>
      {points.map(({ point, number }, index) => (
        <Handle key={number} point={point} number={number} trial={trial} x={x} toKm={toKm} bottom={speed + SPEED} rises={rises} lane={index % 2} width={width} />
      ))}
    </svg>
  );
}

const fromTick = (tick: number, kind: "pressure" | "speed" | "distance") => (tick - form(kind).offset) / form(kind).factor;

function calledAt(trial: Trial, point: ChangePoint, number: number) {
  const called = trial.called.find((one) => one.number === number);
  return { from: called?.km ?? point.km, to: called?.reached_km ?? point.reach_by_km, by: point.reach_by_km };
}

function Lead({ point, x, bottom }: { point: { from: number; to: number; by: number }; x: Scale; bottom: number }) {
  const late = (point.to - point.by) * Math.sign(point.by - point.from || 1) > 0.005;
  const band = (a: number, b: number, name: string) => <rect class={name} x={Math.min(x(a), x(b))} width={Math.abs(x(b) - x(a))} y={FLAGS} height={bottom - FLAGS} />;
  return <g>{band(point.from, point.by, "lead")}{late && band(point.by, point.to, "lead late")}</g>;
}

interface HandleProps { point: ChangePoint; number: number; trial: Trial; x: Scale; toKm: (px: number) => number; bottom: number; rises: boolean; lane: number; width: number }

function Handle({ point, number: index, trial, x, toKm, bottom, lane, width }: HandleProps) {
  const at = moved.value.find((one) => one.number === index)?.km ?? trial.called.find((one) => one.number === index)?.km ?? point.km;
  const place = (km: number) => {
    moved.value = [...moved.value.filter((one) => one.number !== index), { number: index, km: Math.min(trial.plan.route_km, Math.max(0, km)) }];
  };
  const drag = (event: PointerEvent & { currentTarget: SVGGElement }) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    place(toKm(event.clientX - event.currentTarget.ownerSVGElement!.getBoundingClientRect().left));
  };
  const keys: Record<string, number> = { ArrowRight: 0.05, ArrowUp: 0.05, ArrowLeft: -0.05, ArrowDown: -0.05, PageUp: 0.5, PageDown: -0.5 };
  const name = `${point.action === "raise" ? "▲" : "▼"} ${point.to_rung}`;
  const called = t(point.action === "raise" ? "plan-start-raising" : "plan-start-lowering");
  const turned = x(at) > width - 150;
  return (
    <g class={`handle ${point.action}`} role="slider" tabindex={0} aria-label={`${called}: ${point.to_rung}`} aria-valuemin={0}
      aria-valuemax={Math.round(trial.plan.route_km * 100) / 100} aria-valuenow={Math.round(at * 100) / 100} aria-valuetext={amount(at, "distance")}
      onPointerDown={(event) => { event.currentTarget.setPointerCapture(event.pointerId); event.preventDefault(); event.currentTarget.focus(); }}
      onPointerMove={drag}
      onDblClick={() => { moved.value = moved.value.filter((one) => one.number !== index); }}
      onKeyDown={(event) => {
        const step = keys[event.key];
        if (step) { place(at + step); event.preventDefault(); }
        if (event.key === "Escape") moved.value = moved.value.filter((one) => one.number !== index);
      }}>
      <line x1={x(at)} x2={x(at)} y1={30 + lane * 18} y2={bottom} />
      <circle class="grip" cx={x(at)} cy={34 + lane * 18} r={22} />
      <circle cx={x(at)} cy={34 + lane * 18} r={8} />
      <text x={x(at) + (turned ? -14 : 14)} y={39 + lane * 18} text-anchor={turned ? "end" : "start"}>{name}</text>
    </g>
  );
}

function Legend({ strip }: { strip: Strip }) {
  return (
    <ul class="legend">
      {strip.channels.map((name, index) => (
        <li key={name}><svg width="36" height="12" aria-hidden="true" class={`channel c${index % 6}`}><path d="M0 6H36" class="line" stroke-dasharray={DASHES[index % 6]} /></svg>{name}</li>
      ))}
      <li><svg width="36" height="12" aria-hidden="true" class="channel"><path d="M0 6H36" class="minimum" /></svg>{t("page-legend-minimum")}</li>
      <li><svg width="36" height="12" aria-hidden="true"><path d="M0 6H36" class="cap" /></svg>{t("chart-label-cap")}</li>
      <li><svg width="36" height="12" aria-hidden="true"><path d="M0 6H36" class="speed" /></svg>{t("chart-label-speed")}</li>
      <li>{t("page-legend-drag")}</li>
    </ul>
  );
}

/// The same as numbers, every so often along the road.
function Table({ strip }: { strip: Strip }) {
  const rows = (columns: Columns) => {
    const step = Math.max(1, Math.floor(columns.km.length / 20));
    return columns.km.map((_, index) => index).filter((index) => index % step === 0);
  };
  return (
    <details class="numbers"><summary>{t("page-as-table")}</summary>
      {[false, true].map((laden) => {
        const columns = laden ? strip.laden : strip.empty;
        return (
          <div class="wide" key={String(laden)}><table>
            <caption>{t(laden ? "chart-laden-run" : "chart-empty-run")}</caption>
            <thead><tr><th scope="col">{t("chart-chainage")}, {form("distance").label}</th><th scope="col">{t("page-clock")}</th><th scope="col">{t("chart-speed")}, {form("speed").label}</th>{strip.channels.map((name) => <th scope="col" key={name}>{name}, {form("pressure").label}</th>)}</tr></thead>
            <tbody>{rows(columns).map((index) => (
              <tr key={index}><td>{number(columns.km[index], "distance")}</td><td>{minutes(columns.time_s[index]!)}</td><td>{number(columns.speed_kmh[index], "speed")}</td>{columns.tire_kpa.map((values, channel) => <td key={channel}>{number(values[index], "pressure")}</td>)}</tr>
            ))}</tbody>
          </table></div>
        );
      })}
    </details>
  );
}
