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
export interface Acted { time_s: number; action: string; rung: string | null; load_state: string | null; speed: string | null; speed_kmh: number | null }
export interface Drive {
  haul: string; seed: number; stage: "start" | "empty" | "loading" | "loaded" | "laden" | "arrived" | "stuck"; over: boolean;
  time_s: number; km: number; speed_kmh: number; cap_kmh: number; limit_kmh: number; speed: string; chosen_kmh: number | null;
  load_state: string; rung: string; rung_load_state: string; changing: boolean; held_up: boolean; loading_left_s: number;
  supply_kpa: number; tire_kpa: number[]; fuel_l: number;
  events: { time_s: number; event: string; stage: string | null }[]; acted: Acted[];
}
export interface Evidence {
  channel: string | null; rung: string | null; reading_kpa: number | null; reading_limit_kpa: number | null; cold_kpa: number | null;
  minimum_kpa: number | null; min_governed_by: string | null; speed_kmh: number | null; cap_kmh: number | null; held_s: number | null;
  hold_limit_s: number | null; held_m: number | null; hold_limit_m: number | null; rise_kpa: number | null;
}
export interface Finding {
  rule: string; severity: "loss" | "limit" | "danger"; start_s: number; lasted_s: number; km: number | null; load_state: string; evidence: Evidence;
}
export interface Tally {
  arrived: boolean; time_s: number; stood_s: number; fuel_l: number; compressor_loaded_s: number; changes: number;
  under_minimum_kpa_min: number; hard_kpa_km: number;
}
export interface Verdict {
  haul: string; seed: number; surprises: string[]; findings: Finding[]; coverage: { unknown_s: number }; driven: Tally; planned: Tally;
  prices: { item: string; more: number; cost: number | null }[]; currency: string | null; cost: number | null;
}
export interface Band { low: number; middle: number; high: number }
export interface NotAssessed { effect: string; why: string; input: string | null; reason: string | null }
export interface Grade { possible_pct: Band; needed_pct: number; verdict: "go" | "doubtful" | "no-go" }
export interface LegWay {
  way: string; rung: string; speed_kmh: number; climbs_more_than_it_holds: boolean; leave_locks_open: boolean | null; not_assessed: NotAssessed[];
  means: Record<"contact_area_ratio" | "stress_below_ratio" | "gravel_rut_ratio" | "soil_rut_ratio" | "asphalt_damage_ratio" | "ride_change_pct", Band | null>;
  climb: Grade | null; descent: Grade | null; resistance_ratio: Band | null;
  groups: GroupEffect[];
}
export interface GroupEffect {
  axle_group: string; pressure_kpa: number; washboard_likely: boolean | null; measure_the_gap: boolean; heat: string | null;
  least_resistance_kpa: Band | null; least_resistance_at_lowest: boolean | null; resistance_over_least: number | null;
  not_assessed: NotAssessed[];
}
export interface LegEffects { leg: string; from_km: number; to_km: number; surface: string; run: "empty" | "laden"; ways: LegWay[] }
export interface EffectTotal {
  way: string; trips_for_the_same: number; time_s: number | null; fuel_l: Band | null; gravel_rut_ratio: Band | null;
  asphalt_damage_ratio: Band | null; legs_not_assessed: number; not_assessed: NotAssessed[];
}
export interface CostLine { item: string; per_year: Band | null; not_assessed: NotAssessed | null }
export interface Cost {
  payer: string; currency: string; lines: CostLine[]; net_after_capital: Band; present_value: Band;
  payback_years: number | null; break_even_lost_min: number | null; left_out: string[];
}
export interface Assessed {
  effects: LegEffects[]; effect_totals: EffectTotal[];
  missing_inputs: { input: string; file: string; leg: string | null; keys: string[]; decides: string[] }[];
  trials: { effect: string; ground: string; found: string; low_ratio: number | null; high_ratio: number | null; source: string; extent_read: string }[];
  cost: Cost[]; cost_decided_by: { figure: string; present_value_at_low: number; present_value_at_high: number; own_band: boolean }[];
  cost_rivals: { way: string; lines: (CostLine & { payer: string })[] }[];
}
export interface RouteMap {
  route: { route: string; laden_direction: string; load_states: [string, string]; legs: Strip["legs"]; elevation_km_m: [number, number][]; marks: Strip["marks"] };
  points: { km: number; east_m: number; north_m: number }[];
}
