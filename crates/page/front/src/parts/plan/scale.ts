// From values to places on the screen, and round numbers for an axis.
export type Scale = (value: number) => number;

export function scale(from: [number, number], to: [number, number]): Scale {
  const span = from[1] - from[0] || 1;
  return (value) => to[0] + ((value - from[0]) / span) * (to[1] - to[0]);
}

export function ticks(low: number, high: number, about: number): number[] {
  const rough = (high - low) / Math.max(about, 1) || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough)!;
  const found: number[] = [];
  for (let at = Math.ceil(low / step) * step; at <= high + step * 1e-9; at += step) found.push(at);
  return found;
}

export function path(xs: number[], ys: (number | null)[], x: Scale, y: Scale): string {
  let text = "";
  let broken = true;
  xs.forEach((at, index) => {
    const value = ys[index];
    if (value == null) { broken = true; return; }
    text += `${broken ? "M" : "L"}${x(at).toFixed(1)} ${y(value).toFixed(1)}`;
    broken = false;
  });
  return text;
}
