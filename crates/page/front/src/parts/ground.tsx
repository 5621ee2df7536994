// The road under a chart: hills, surfaces, lay-bys; and what every chart along it has in common.
import { useEffect, useState } from "preact/hooks";
import type { Strip } from "../documents";
import { t } from "../words";
import { scale } from "./plan/scale";
import type { Scale } from "./plan/scale";

export const LEFT = 64, RIGHT = 16, GROUND = 70;
export const DASHES = ["", "8 4", "2 4", "12 4 2 4", "4 2", "1 3"];

/// The width that a chart has, as the window changes; the first is what its figure takes as `ref`.
export function useWidth(): [(figure: HTMLElement | null) => void, number] {
  const [figure, setFigure] = useState<HTMLElement | null>(null);
  const [width, setWidth] = useState(960);
  useEffect(() => {
    if (!figure) return;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.max(480, Math.floor(entry!.contentRect.width))));
    watch.observe(figure);
    return () => watch.disconnect();
  }, [figure]);
  return [setFigure, width];
}

export function Ground({ strip, x, top }: { strip: Pick<Strip, "legs" | "elevation_km_m" | "marks">; x: Scale; top: number }) {
  const heights = strip.elevation_km_m;
  const base = top + GROUND - 14;
  const y = scale([Math.min(...heights.map((h) => h[1])), Math.max(...heights.map((h) => h[1]))], [base - 2, top + 18]);
  const shape = heights.length ? `M${x(heights[0]![0])} ${base}${heights.map(([km, m]) => `L${x(km).toFixed(1)} ${y(m).toFixed(1)}`).join("")}L${x(heights.at(-1)![0])} ${base}Z` : "";
  return (
    <g>
      <path d={shape} class="hill" />
      {strip.legs.map((leg) => {
        const wide = x(leg.to_km) - x(leg.from_km);
        const name = t(`chart-surface-${leg.surface.replaceAll(" ", "-")}`);
        return (
          <g key={leg.from_km}>
            <rect class={`surface ${leg.surface.replaceAll(" ", "-")}`} x={x(leg.from_km)} width={Math.max(1, wide - 1)} y={base} height={14} />
            {wide > name.length * 7 && <text class="leg-name" x={x(leg.from_km) + 4} y={base + 11}>{name}</text>}
            <title>{leg.name}: {name}</title>
          </g>
        );
      })}
      {strip.marks.filter((mark) => mark.kind === "lay-by").map((mark) => (
        <g key={mark.km}><path d={`M${x(mark.km) - 5} ${base}h10v-7h-10z`} class="lay-by" /><title>{mark.name}</title></g>
      ))}
    </g>
  );
}
