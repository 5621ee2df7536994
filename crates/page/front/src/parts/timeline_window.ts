// A window of a series as it comes over the wire; the API describes the bytes.
export interface Window {
  time: Float64Array;
  first: Uint32Array;
  low: Map<number, Float32Array>;
  high: Map<number, Float32Array>;
}

export function unpacked(bytes: ArrayBuffer, columns: number[]): Window {
  const head = new DataView(bytes);
  const baseTime = head.getFloat64(0, true), base = head.getUint32(8, true), count = head.getUint32(12, true);
  let at = 24;
  const take = <T>(make: (buffer: ArrayBuffer, offset: number, length: number) => T): T => {
    const taken = make(bytes, at, count);
    at += 4 * count;
    return taken;
  };
  const first = take((...one) => new Uint32Array(...one)).map((offset) => base + offset);
  const time = Float64Array.from(take((...one) => new Float32Array(...one)), (offset) => baseTime + offset);
  const low = new Map<number, Float32Array>(), high = new Map<number, Float32Array>();
  for (const column of columns) {
    low.set(column, take((...one) => new Float32Array(...one)));
    high.set(column, take((...one) => new Float32Array(...one)));
  }
  return { time, first, low, high };
}
