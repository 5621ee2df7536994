// A route on a plain map of its own track, and as a strip.
import { useEffect, useState } from "preact/hooks";
import { Refused, get } from "../../api";
import type { RouteMap } from "../../documents";
import { surveyHash } from "../../state";
import { amount } from "../../units";
import { t } from "../../words";
import { GROUND, Ground, LEFT, RIGHT, useWidth } from "../ground";
import { scale } from "../plan/scale";

const HIGH = 340, EDGE = 24;

export function RouteOnMap({ name }: { name: string }) {
  const [map, setMap] = useState<RouteMap | null>(null);
  const [told, setTold] = useState<string | null>(null);
  useEffect(() => {
    get<RouteMap>(`/map?route=${encodeURIComponent(name)}`).then(
      (found) => { setMap(found); setTold(null); },
      (error) => { setMap(null); setTold(error instanceof Refused && error.status ? error.message : t("page-unreachable")); },
    );
  }, [name, surveyHash.value]);
  const [box, width] = useWidth();
  const route = map?.route;
  const length = route?.legs.at(-1)?.to_km ?? 0;
  return (
    <figure class="route" ref={box}>
      {told && <p class="note">{told}</p>}
      {map && route && (
        <>
          <figcaption>{t("page-map-summary", { route: route.route, length: amount(length, "distance"), legs: route.legs.length })}</figcaption>
          {map.points.length > 1 ? <Plane map={map} width={width} /> : <p class="about">{t("page-map-no-track")}</p>}
          <svg class="half" width={width} height={GROUND + 6} role="img" aria-label={t("chart-strip-title")}>
            <Ground strip={route} x={scale([0, length], [LEFT, width - RIGHT])} top={0} />
          </svg>
          <details class="numbers"><summary>{t("page-as-table")}</summary><div class="wide"><table>
            <thead><tr><th scope="col">{t("effects-leg")}</th><th scope="col">{t("chart-chainage")}</th><th scope="col">{t("page-practice-leg")}</th></tr></thead>
            <tbody>{route.legs.map((leg) => <tr key={leg.from_km}><th scope="row">{leg.name}</th><td>{amount(leg.from_km, "distance")} – {amount(leg.to_km, "distance")}</td><td>{t(`chart-surface-${leg.surface.replaceAll(" ", "-")}`)}</td></tr>)}</tbody>
          </table></div></details>
        </>
      )}
    </figure>
  );
}

/// North up, the same scale both ways; each leg in the color and width of its surface.
function Plane({ map, width }: { map: RouteMap; width: number }) {
  const { points, route } = map;
  const east = points.map((point) => point.east_m), north = points.map((point) => point.north_m);
  const span = (values: number[]) => Math.max(1, Math.max(...values) - Math.min(...values));
  const unit = Math.min((width - 2 * EDGE) / span(east), (HIGH - 2 * EDGE) / span(north));
  const x = (value: number) => EDGE + (value - Math.min(...east)) * unit;
  const y = (value: number) => EDGE + (Math.max(...north) - value) * unit;
  const at = (km: number) => points.reduce((best, point) => (Math.abs(point.km - km) < Math.abs(best.km - km) ? point : best), points[0]!);
  const high = EDGE * 2 + span(north) * unit;
  return (
    <svg class="half map" width={width} height={Math.max(high, 90)} role="img" aria-label={t("page-map-summary", { route: route.route, length: amount(route.legs.at(-1)?.to_km, "distance"), legs: route.legs.length })}>
      {route.legs.map((leg) => {
        const inside = points.filter((point) => point.km >= leg.from_km - 0.02 && point.km <= leg.to_km + 0.02);
        const line = inside.map((point, index) => `${index ? "L" : "M"}${x(point.east_m).toFixed(1)} ${y(point.north_m).toFixed(1)}`).join("");
        return <path key={leg.from_km} d={line} class={`way ${leg.surface.replaceAll(" ", "-")}`}><title>{leg.name}: {t(`chart-surface-${leg.surface.replaceAll(" ", "-")}`)}</title></path>;
      })}
      {labelled(route.marks, (km) => { const place = at(km); return [x(place.east_m), y(place.north_m)]; }, width).map(({ mark, from, label }, index) => (
        <g key={index} class="mark"><circle cx={from[0]} cy={from[1]} r={mark.kind === "lay-by" ? 5 : 4}><title>{mark.name}</title></circle>
          {label && <text x={label.x} y={label.y} text-anchor={label.anchor}>{mark.name}</text>}</g>
      ))}
      <text class="axis" x={6} y={16}>{t("page-map-north")} ↑</text>
    </svg>
  );
}

type Mark = RouteMap["route"]["marks"][number];
interface Label { x: number; y: number; anchor: "start" | "end" }
const LETTER = 6.6, LINE = 14;

/// Names beside their places where there is room; a place without room keeps its name as a title.
function labelled(marks: Mark[], place: (km: number) => [number, number], width: number): { mark: Mark; from: [number, number]; label: Label | null }[] {
  const taken: [number, number, number, number][] = marks.map((mark) => { const [x, y] = place(mark.km); return [x - 5, y - 5, x + 5, y + 5]; });
  return marks.map((mark) => {
    const from = place(mark.km);
    const wide = mark.name.length * LETTER;
    const tries: Label[] = [[9, 4, "start"], [9, 18, "start"], [9, -9, "start"], [-9, 4, "end"], [-9, 18, "end"], [-9, -9, "end"]].map(([dx, dy, anchor]) => ({ x: from[0] + (dx as number), y: from[1] + (dy as number), anchor: anchor as Label["anchor"] }));
    const label = tries.find((one) => {
      const left = one.anchor === "start" ? one.x : one.x - wide;
      const box: [number, number, number, number] = [left, one.y - LINE + 3, left + wide, one.y + 3];
      const free = box[0] >= 0 && box[2] <= width && !taken.some((other) => box[0] < other[2] && box[2] > other[0] && box[1] < other[3] && box[3] > other[1]);
      if (free) taken.push(box);
      return free;
    });
    return { mark, from, label: label ?? null };
  });
}
