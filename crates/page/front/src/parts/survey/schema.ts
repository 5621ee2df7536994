// JSON Schemas of survey files, as the forms read them.
export interface Schema {
  title?: string; description?: string; type?: string; enum?: string[]; minimum?: number; maximum?: number;
  properties?: Record<string, Schema>; items?: Schema; additionalProperties?: Schema | boolean; required?: string[];
}

// Longer endings stand before the shorter ones they end with.
const FAMILIES: string[][] = [
  ["_kpa", "_psi", "_bar"], ["_kg", "_lb", "_t"], ["_kmh", "_mph"], ["_mm", "_in", "_cm"], ["_km", "_mi", "_m"],
  ["_kw", "_hp"], ["_m2", "_ft2"], ["_m", "_ft"], ["_c", "_f"], ["_l", "_gal", "_in3", "_ft3"], ["_l_min", "_l_s", "_cfm"], ["_min", "_s", "_h"], ["_s", "_min"],
];
const US = ["_psi", "_lb", "_mph", "_in", "_mi", "_hp", "_ft2", "_ft", "_f", "_gal", "_cfm"];
const LABELS: Record<string, string> = {
  kpa: "kPa", psi: "psi", bar: "bar", kg: "kg", lb: "lb", t: "t", kmh: "km/h", mph: "mph", mm: "mm", in: "in", cm: "cm", km: "km", mi: "mi", m: "m",
  ft: "ft", kw: "kW", hp: "hp", c: "°C", f: "°F", pct: "%", min: "min", s: "s", h: "h", rpm: "rpm", l: "l", gal: "gal", cfm: "cfm", m2: "m²", ft2: "ft²", cm3: "cm³",
};

/// The key without its unit, and the unit.
export function parted(key: string): [string, string] {
  const at = key.lastIndexOf("_");
  const unit = at > 0 ? LABELS[key.slice(at + 1)] : undefined;
  return unit ? [key.slice(0, at).replaceAll("_", " "), unit] : [key.replaceAll("_", " "), ""];
}

/// Keys that may be added: each quantity once, in the unit of the reader.
export function addable(properties: Record<string, Schema>, present: string[], profile: string): string[] {
  const chosen = new Map<string, string>();
  for (const key of Object.keys(properties)) {
    if (key === "$schema") continue;
    const family = FAMILIES.find((one) => one.some((ending) => key.endsWith(ending) && properties[key.slice(0, -ending.length) + one[0]]));
    const ending = family?.find((one) => key.endsWith(one)) ?? "";
    const stem = family ? key.slice(0, -ending.length) : key;
    const spellings = family ? family.map((one) => stem + one).filter((one) => properties[one]) : [key];
    if (spellings.some((one) => present.includes(one))) continue;
    const liked = profile === "us" && US.includes(ending) || profile === "metric-bar" && ending === "_bar";
    if (liked || !chosen.has(stem)) chosen.set(stem, key);
  }
  return [...chosen.values()];
}

/// What a new key begins with.
export function begun(schema: Schema): unknown {
  if (schema.enum) return schema.enum[0];
  switch (schema.type) {
    case "number": case "integer": return schema.minimum ?? 0;
    case "boolean": return false;
    case "array": return [];
    case "object": return {};
    default: return "";
  }
}

/// A new row with everything it must have.
export function row(schema: Schema): Record<string, unknown> {
  return Object.fromEntries((schema.required ?? []).filter((key) => schema.properties?.[key]).map((key) => [key, begun(schema.properties![key]!)]));
}

export const escaped = (key: string) => key.replaceAll("~", "~0").replaceAll("/", "~1");
