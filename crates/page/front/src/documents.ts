// The documents of the API as far as the page reads them; /api/openapi.json describes them whole.
export interface HaulName {
  name: string; combination: string; combination_file: string; route: string; units: string[];
  load_states: string[]; channels: string[]; fixed_groups: string[]; ambient_c: number;
}
export interface Site {
  program: string; survey: string; read_only: boolean; token: string; language: string; units: string;
  languages: string[]; speed_cap_step_kmh: number; hauls: HaulName[]; broken_hauls: string[];
  responsible: string; date: string; pairing_code: string | null;
}
export interface UnitForm {
  kind: string; profile: string; label: string; decimals: number; factor: number; offset: number;
}
export interface Limit { governed_by: string; pressure_kpa: number; source: string; standing: string }
export interface Cell {
  channel: string; load_state: string; chain_state: string; rung: string; used: boolean;
  pressure_kpa: number | null; set_kpa: number | null; min_kpa: number | null; max_kpa: number | null;
  min_governed_by: string | null; max_governed_by: string | null; min_source: string | null;
  min_runner_up: Limit | null; stack: { added_for: string; pressure_kpa: number }[];
  approval: string; not_possible_because: string | null; not_possible_with: Record<string, number>;
  ground_advice_kpa: number | null;
}
export interface ChangePoint {
  km: number; near: string | null; load_state: string; from_rung: string; to_rung: string;
  action: "raise" | "lower"; change_time_s: number; lead_m: number; reach_by_km: number; reached_km: number;
  cap_kmh: number; fits: boolean; fits_p90: boolean | null; chosen: { way: string; place: string | null };
}
export interface Caution {
  caution: string; breaks_a_limit: boolean; names: Record<string, string>; numbers: Record<string, number>;
}
export interface Plan {
  haul: string; combination: string; route: string; route_km: number; laden_direction: string;
  empty_state: string; laden_state: string; breaks_a_limit: boolean; reference_temperature_c: number;
  channels: string[]; rungs: { name: string; cap_kmh: number }[]; ladder: Cell[];
  change_points: ChangePoint[]; cautions: Caution[]; controller_unit: string;
  cycle: null | { time_s: number; time_added_s: number; fuel_l: number; compressor_loaded_s: number; lowest_supply_kpa: number };
}
export interface Columns {
  km: number[]; time_s: number[]; speed_kmh: number[]; cap_kmh: number[]; supply_kpa: number[];
  changing: boolean[]; rung: number[]; tire_kpa: number[][]; tire_minimum_kpa: (number | null)[][];
}
export interface Strip {
  route_km: number; channels: string[]; load_states: [string, string]; laden_direction: string;
  legs: { name: string; from_km: number; to_km: number; surface: string; speed_limit_kmh: number }[];
  elevation_km_m: [number, number][]; marks: { km: number; name: string; kind: string }[];
  empty: Columns; laden: Columns;
}
export interface Trial {
  plan: Plan; strip: Strip | null; not_driven_because: string | null; cycle_time_s: number | null;
  time_lost_s: number; called: { number: number; km: number; reached_km: number | null; wrong_road_m: number }[];
}
export interface Problem {
  severity: "error" | "warning"; file: string; line: number | null; key: string | null; value: string | null;
  message: string; hint: string | null; pointer?: string | null;
}
export interface FileEntry { path: string; kind: string | null; bytes: number; errors: number; warnings: number }
export interface FileDocument {
  path: string; kind: string | null; hash: string; text: string; values: unknown; problems: Problem[];
}
export interface Said { what: string; names: Record<string, string>; numbers: Record<string, number> }
export interface Now {
  verdict: "go" | "go-slow" | "stop"; highest_speed_kmh: number | null; load_state: string; rung: string | null;
  how_far: { to: string; distance_m: number | null; time_min: number | null };
  groups: { axle_group: string; known_from: string; reading_kpa: number | null; cold_kpa: number | null; highest_speed_kmh: number | null; verdict: string; rung: string | null }[];
  reasons: Said[]; checks: Said[];
}
export interface SeriesEntry {
  id: string; name: string; samples: number; from_s: number; to_s: number; columns: string[]; problem: string | null;
}
export interface IssuedPlan {
  id: string; number: number; date: string; haul: string; units: string[]; valid_from: string; valid_until: string | null; stale: boolean;
}
