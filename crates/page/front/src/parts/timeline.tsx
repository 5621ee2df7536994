// Long series: every peak is seen at every zoom, because each bucket brings its extremes.
import { useEffect, useRef, useState } from "preact/hooks";
import uPlot from "uplot";
import { Refused, get, getBytes } from "../api";
import type { SeriesEntry } from "../documents";
import { look, place, goTo, surveyHash } from "../state";
import { digits, form, inShown, kindOf } from "../units";
import { t } from "../words";
import { PlaceOnRoad, cursorKm } from "./timeline_place";
import { unpacked } from "./timeline_window";
import type { Window } from "./timeline_window";

export function TimelinePart() {
  const [list, setList] = useState<SeriesEntry[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    get<{ series: SeriesEntry[] }>("/series").then((one) => setList(one.series)).catch((error: Refused) => setProblem(error.message || t("page-unreachable")));
  }, [surveyHash.value]);
  const chosen = list?.find((one) => one.id === place.value[1]) ?? list?.[0];
  return (
    <section class="timeline">
      <h1>{t("page-part-timeline")}</h1>
      {problem && <p class="wrong" role="alert">{problem}</p>}
      {!list && !problem && <p role="status">{t("page-working")}</p>}
      {list && list.length > 1 && <label class="choice">{t("page-series")}<select value={chosen?.id} onChange={(event) => goTo("timeline", event.currentTarget.value)}>{list.map((one) => <option key={one.id} value={one.id}>{one.name}</option>)}</select></label>}
      {chosen?.problem && <p class="wrong" role="alert">{chosen.name}: {chosen.problem}</p>}
      {chosen && !chosen.problem && <Charts key={chosen.id} series={chosen} />}
    </section>
  );
}

/// Columns by the unit they end with: one chart a unit.
function groups(columns: string[]): { unit: string; indices: number[] }[] {
  const found = new Map<string, number[]>();
  columns.forEach((name, index) => {
    const unit = /_(kpa|kmh|c|pct)$/.exec(name)?.[1];
    if (unit) found.set(unit, [...(found.get(unit) ?? []), index]);
  });
  return ["kpa", "kmh", "c", "pct"].filter((unit) => found.has(unit)).map((unit) => ({ unit, indices: found.get(unit)! }));
}

const clock = (seconds: number) => {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 3600)}:${String(Math.floor(whole / 60) % 60).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
};

function Charts({ series }: { series: SeriesEntry }) {
  const whole: [number, number] = [series.from_s, series.to_s];
  const [span, setSpan] = useState<[number, number]>(whole);
  const [window_, setWindow] = useState<Window | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const kinds = groups(series.columns);
  const placeColumn = series.columns.indexOf("place_km");
  const asked = [...kinds.flatMap((one) => one.indices), ...(placeColumn >= 0 ? [placeColumn] : [])].slice(0, 16);
  useEffect(() => {
    const stop = new AbortController();
    const query = new URLSearchParams({ id: series.id, columns: asked.join(","), from_s: String(span[0]), to_s: String(span[1]), buckets: "1200" });
    const ask = () => getBytes(`/series/window?${query}`, stop.signal).then((bytes) => { setWindow(unpacked(bytes, asked)); setProblem(null); }).catch((error) => {
      if (!(error instanceof Refused)) return;
      if (error.kind === "busy") setTimeout(ask, 20); else setProblem(error.message || t("page-unreachable"));
    });
    ask();
    return () => stop.abort();
  }, [series.id, span[0], span[1]]);
  const move = (by: number) => { const shift = (span[1] - span[0]) * by; setSpan(clamped(span[0] + shift, span[1] + shift, whole)); };
  const zoom = (by: number) => { const middle = (span[0] + span[1]) / 2, half = Math.max(0.5, ((span[1] - span[0]) / 2) * by); setSpan(clamped(middle - half, middle + half, whole)); };
  return (
    <div onKeyDown={(event) => {
      const keys: Record<string, () => void> = { "+": () => zoom(0.5), "-": () => zoom(2), ArrowLeft: () => move(-0.25), ArrowRight: () => move(0.25), Home: () => setSpan(whole) };
      if (event.target instanceof HTMLButtonElement || event.target === event.currentTarget) keys[event.key]?.();
    }}>
      <div class="zoom" role="toolbar" aria-label={t("page-zoom")}>
        <button onClick={() => zoom(0.5)} aria-label={t("page-zoom-in")}>+</button>
        <button onClick={() => zoom(2)} aria-label={t("page-zoom-out")}>−</button>
        <button onClick={() => move(-0.5)} aria-label={t("page-zoom-back")}>←</button>
        <button onClick={() => move(0.5)} aria-label={t("page-zoom-on")}>→</button>
        <button onClick={() => setSpan(whole)}>{t("page-zoom-whole")}</button>
        <output data-span={`${span[0]}:${span[1]}`} data-drawn={window_ ? `${window_.time[0]}:${window_.time[window_.time.length - 1]}` : ""}>{clock(span[0])} – {clock(span[1])}</output>
      </div>
      {problem && <p class="wrong" role="alert">{problem}</p>}
      {window_ && kinds.map((kind) => <Chart key={kind.unit} series={series} kind={kind} window_={window_} zoomTo={(from, to) => setSpan(clamped(from, to, whole))} placeColumn={placeColumn} />)}
      {window_ && placeColumn >= 0 && <PlaceOnRoad id={series.id} places={window_.low.get(placeColumn)!} />}
      {window_ && <Extremes series={series} kinds={kinds} window_={window_} />}
    </div>
  );
}

function clamped(from: number, to: number, whole: [number, number]): [number, number] {
  const wide = Math.min(to - from, whole[1] - whole[0]);
  const start = Math.min(Math.max(from, whole[0]), whole[1] - wide);
  return [start, start + wide];
}

const plain = (name: string) => name.replace(/_(kpa|kmh|c|pct)$/, "").replaceAll("_", " ");
// Seen on light paper and on dark.
const ON_LIGHT = ["#0b6b60", "#b4540a", "#4257b2", "#8a2f6b", "#5d6b12", "#5a4636"];
const ON_DARK = ["#6fd0c0", "#f0a367", "#a9b8ff", "#eda3d3", "#c3d46a", "#d3bfae"];
const isDark = () => look.value === "dark" || (look.value === "auto" && matchMedia("(prefers-color-scheme: dark)").matches);

function Chart({ series, kind, window_, zoomTo, placeColumn }: { series: SeriesEntry; kind: { unit: string; indices: number[] }; window_: Window; zoomTo: (from: number, to: number) => void; placeColumn: number }) {
  const box = useRef<HTMLDivElement>(null);
  const plot = useRef<uPlot | null>(null);
  const latest = useRef({ zoomTo });
  latest.current = { zoomTo };
  const shown = kindOf(kind.unit);
  const label = shown ? form(shown).label : "%";
  const scale = (value: number) => (Number.isNaN(value) ? null : shown ? inShown(value, shown) : value);
  const name = t(`page-timeline-${kind.unit}`);
  const data = (): uPlot.AlignedData => [
    Array.from(window_.time),
    ...kind.indices.flatMap((index) => [Array.from(window_.high.get(index)!, scale), Array.from(window_.low.get(index)!, scale)]),
  ] as uPlot.AlignedData;
  useEffect(() => {
    const colors = isDark() ? ON_DARK : ON_LIGHT;
    const ink = isDark() ? "#eceae2" : "#18211d";
    const axis = { stroke: ink, grid: { stroke: "rgba(128,128,128,.25)" }, ticks: { stroke: "rgba(128,128,128,.4)" }, font: "13px system-ui", labelFont: "13px system-ui" };
    const options: uPlot.Options = {
      width: box.current!.clientWidth, height: 190, title: "", legend: { live: true },
      cursor: { sync: { key: "airtide" }, drag: { x: true, y: false, setScale: false } },
      scales: { x: { time: false } },
      axes: [{ ...axis, values: (_, at) => at.map(clock) }, { ...axis, size: 64 }],
      series: [{ label: t("page-clock"), value: (_, at) => at == null ? "–" : clock(at) + here(at) },
        ...kind.indices.flatMap((index, nth) => {
          const stroke = colors[nth % colors.length]!;
          const dash = [[], [8, 4], [2, 4], [12, 4, 2, 4]][nth % 4]!;
          const value = (_: uPlot, one: number | null) => one == null ? "–" : digits(one, shown ? form(shown).decimals + 1 : 1);
          return [{ label: `${plain(series.columns[index]!)} ↑`, stroke, width: 1.5, dash, value }, { label: "↓", stroke, width: 1.5, dash, value }];
        })],
      bands: kind.indices.map((_, nth) => ({ series: [1 + 2 * nth, 2 + 2 * nth] as [number, number], fill: `${colors[nth % colors.length]}33` })),
      hooks: { setCursor: [(one) => { cursorKm.value = one.cursor.left == null || one.cursor.left < 0 ? null : placeAt(one.posToVal(one.cursor.left, "x")); }], setSelect: [(one) => {
        if (one.select.width < 4) return;
        latest.current.zoomTo(one.posToVal(one.select.left, "x"), one.posToVal(one.select.left + one.select.width, "x"));
        one.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false);
      }] },
    };
    const holder = box.current!;
    plot.current = new uPlot(options, data(), holder);
    const watch = new ResizeObserver(() => plot.current?.setSize({ width: holder.clientWidth, height: 190 }));
    watch.observe(holder);
    return () => { watch.disconnect(); plot.current?.destroy(); plot.current = null; };
  }, [series.id, label, name, look.value]);
  const windowNow = useRef(window_);
  windowNow.current = window_;
  const placeAt = (at: number): number | null => {
    const places = windowNow.current.low.get(placeColumn);
    if (!places) return null;
    const index = windowNow.current.time.findIndex((one) => one >= at);
    const km = places[index < 0 ? places.length - 1 : index];
    return km == null || Number.isNaN(km) ? null : km;
  };
  const here = (at: number) => {
    const km = placeAt(at);
    return km == null ? "" : `, ${digits(inShown(km, "distance"), 2)} ${form("distance").label}`;
  };
  useEffect(() => { plot.current?.setData(data()); }, [window_]);
  return (
    <figure class="chart"><figcaption>{name}, {label}</figcaption>
      <div ref={box} role="img" aria-label={`${name}, ${label}. ${kind.indices.map((index) => span(series, index, window_, scale)).join("; ")}`} />
    </figure>
  );
}

function extremes(index: number, window_: Window): [number, number] {
  const fold = (values: Float32Array, pick: (a: number, b: number) => number) => values.reduce((found, one) => Number.isNaN(one) ? found : Number.isNaN(found) ? one : pick(found, one), NaN);
  return [fold(window_.low.get(index)!, Math.min), fold(window_.high.get(index)!, Math.max)];
}

function span(series: SeriesEntry, index: number, window_: Window, scale: (value: number) => number | null): string {
  const [low, high] = extremes(index, window_).map(scale);
  return low == null || high == null ? `${plain(series.columns[index]!)}: –` : `${plain(series.columns[index]!)}: ${digits(low, 1)} – ${digits(high, 1)}`;
}

/// Lowest and highest in view, for those who do not see the charts.
function Extremes({ series, kinds, window_ }: { series: SeriesEntry; kinds: { unit: string; indices: number[] }[]; window_: Window }) {
  return (
    <details class="numbers"><summary>{t("page-as-table")}</summary><div class="wide"><table>
      <thead><tr><th scope="col">{t("page-what")}</th><th scope="col">{t("plan-lowest")}</th><th scope="col">{t("plan-highest")}</th></tr></thead>
      <tbody>{kinds.flatMap((kind) => kind.indices.map((index) => {
        const shown = kindOf(kind.unit);
        const [low, high] = extremes(index, window_).map((one) => Number.isNaN(one) ? "–" : digits(shown ? inShown(one, shown) : one, 1));
        return <tr key={index}><th scope="row">{plain(series.columns[index]!)}, {shown ? form(shown).label : "%"}</th><td>{low}</td><td>{high}</td></tr>;
      }))}</tbody>
    </table></div></details>
  );
}
