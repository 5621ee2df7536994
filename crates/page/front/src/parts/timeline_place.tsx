// Where on the road the time in view is: its stretch, and the place under the cursor.
import { signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { get } from "../api";
import type { RouteMap } from "../documents";
import { site } from "../state";
import { amount } from "../units";
import { t } from "../words";
import { GROUND, Ground, LEFT, RIGHT, useWidth } from "./ground";
import { scale } from "./plan/scale";

/// Chainage under the cursor of the charts.
export const cursorKm = signal<number | null>(null);

export function PlaceOnRoad({ id, places }: { id: string; places: Float32Array }) {
  const haul = site.value!.hauls.find((one) => `run:${one.name}` === id);
  const [map, setMap] = useState<RouteMap | null>(null);
  const [box, width] = useWidth();
  useEffect(() => {
    cursorKm.value = null;
    if (haul) get<RouteMap>(`/map?route=${encodeURIComponent(haul.route)}`).then(setMap, () => setMap(null));
  }, [id]);
  const seen = Array.from(places).filter((km) => !Number.isNaN(km));
  const length = map?.route.legs.at(-1)?.to_km ?? 0;
  if (!haul || !map || seen.length === 0) return null;
  const x = scale([0, length], [LEFT, width - RIGHT]);
  const [from, to] = [Math.min(...seen), Math.max(...seen)];
  const here = cursorKm.value;
  const said = `${t("chart-chainage")}: ${amount(from, "distance")} – ${amount(to, "distance")}`;
  return (
    <figure class="strip" ref={box}>
      <figcaption>{said}{here != null && <>, <strong>{amount(here, "distance")}</strong></>}</figcaption>
      <svg class="half" width={width} height={GROUND + 8} role="img" aria-label={said}>
        <rect class="lead" x={x(from)} width={Math.max(2, x(to) - x(from))} y={0} height={GROUND + 8} />
        <Ground strip={map.route} x={x} top={2} />
        {here != null && <g class="truck"><line x1={x(here)} x2={x(here)} y1={0} y2={GROUND + 8} /></g>}
      </svg>
    </figure>
  );
}
