//! `routes/*.toml`: legs by chainage, elevation, and places along the way.

use schemars::JsonSchema;
use serde::Deserialize;

use super::{AggregateFile, LayerFile, SeasonWord, SoilClassWord};

/// What the wheels run on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum SurfaceWord {
    /// Asphalt or concrete.
    Paved,
    /// Thin seal over a granular base.
    Sealed,
    /// Maintained gravel or crushed rock.
    Gravel,
    /// Native soil, graded.
    Earth,
    /// Rock-fill or mat over peat or other very soft ground.
    SoftGround,
    /// Sand.
    Sand,
    /// Compact snow or ice.
    SnowOrIce,
}

/// Whose road it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum JurisdictionWord {
    /// A private road.
    Private,
    /// A public road in the United States.
    UsPublic,
    /// A public road elsewhere.
    OtherPublic,
}

/// Direction of travel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum TravelWord {
    /// Chainage rises.
    Forward,
    /// Chainage falls.
    Backward,
    /// Either way.
    Both,
}

/// A haul route.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RouteFile {
    /// Recorded track (GPX, `GeoJSON`, KML or CSV file of the survey) that gives the elevation.
    pub track: Option<String>,
    /// Stretch over which the elevations of the track are smoothed; left out, 150 m.
    #[schemars(range(min = 20, max = 1000))]
    pub track_smoothing_m: Option<f64>,
    /// What counts as a sustained descent.
    pub descent: DescentFile,
    /// Legs in order of chainage, without gaps.
    #[schemars(length(min = 1, max = 500))]
    pub legs: Vec<LegFile>,
    /// Elevation points, where neither a track nor grades on the legs give it.
    #[serde(default)]
    pub elevation: Vec<ElevationFile>,
    /// Places where a laden truck can stand.
    #[serde(default)]
    pub lay_bys: Vec<LayByFile>,
    /// Named places and posted boards.
    #[serde(default)]
    pub landmarks: Vec<LandmarkFile>,
}

/// What counts as a sustained descent.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct DescentFile {
    /// Grade from which it counts, as a positive number.
    #[schemars(range(min = 0.5, max = 25))]
    pub grade_pct: f64,
    /// Length from which it counts.
    #[schemars(range(min = 20, max = 20_000))]
    pub length_m: f64,
    /// Distance before it in which raising is not begun.
    #[schemars(range(min = 0, max = 20_000))]
    pub approach_m: f64,
}

/// A stretch with one surface, strength, speed and rule.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LegFile {
    /// Name, such as `quarry spur`.
    #[schemars(length(min = 1, max = 80))]
    pub name: String,
    /// Chainage where it begins.
    #[schemars(range(min = 0, max = 2000))]
    pub from_km: f64,
    /// Chainage where it ends.
    #[schemars(range(min = 0, max = 2000))]
    pub to_km: f64,
    /// Surface.
    pub surface: SurfaceWord,
    /// Rolling-resistance coefficient of the combination on it, at road pressure.
    #[schemars(range(min = 0.003, max = 0.4))]
    pub rolling_resistance: f64,
    /// Speed limit, or the speed drivers keep.
    #[schemars(range(min = 3, max = 140))]
    pub speed_limit_kmh: f64,
    /// Grade, rising positive in the direction of chainage, where no track or points give it.
    #[schemars(range(min = -30, max = 30))]
    pub grade_pct: Option<f64>,
    /// Crossfall.
    #[schemars(range(min = 0, max = 20))]
    pub crossfall_pct: f64,
    /// Radius of the tightest curve, where curves bind.
    #[schemars(range(min = 8, max = 5000))]
    pub curve_radius_m: Option<f64>,
    /// Whose road.
    pub jurisdiction: JurisdictionWord,
    /// Rung wanted here, where the surface does not decide it.
    pub rung: Option<String>,
    /// Highest cold tire pressure the ground bears while a change is under way.
    #[schemars(range(min = 50, max = 1300))]
    pub ground_maximum_kpa: Option<f64>,
    /// Whether tires may be raised while rolling on it.
    pub raising_allowed: bool,
    /// Bearing ratio of the soil, under the aggregate or the pavement where there is one.
    #[schemars(range(min = 0.2, max = 200))]
    pub cbr_pct: Option<f64>,
    /// Cone index of the soil, in place of its bearing ratio.
    #[schemars(range(min = 10, max = 10_000))]
    pub cone_index_kpa: Option<f64>,
    /// Millimeters a blow of the cone with the 8 kg hammer, in place of the bearing ratio.
    #[schemars(range(min = 1, max = 150))]
    pub dcp_mm_per_blow: Option<f64>,
    /// Class of the soil by the unified classification.
    pub soil_class: Option<SoilClassWord>,
    /// How wet the ground is: with the class, a strength where nobody measured one.
    pub season: Option<SeasonWord>,
    /// Aggregate on the soil.
    pub aggregate: Option<AggregateFile>,
    /// Layers of the pavement from the top down, the last without thickness.
    #[serde(default)]
    #[schemars(length(max = 5))]
    pub layers: Vec<LayerFile>,
    /// Coefficient of adhesion measured here.
    #[schemars(range(min = 0.02, max = 1.2))]
    pub grip: Option<f64>,
}

/// A point of elevation.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ElevationFile {
    /// Chainage.
    #[schemars(range(min = 0, max = 2000))]
    pub at_km: f64,
    /// Elevation above sea level, or above any level used for the whole route.
    #[schemars(range(min = -500, max = 7000))]
    pub elevation_m: f64,
}

/// A place where a laden truck can stand.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LayByFile {
    /// Name.
    #[schemars(length(min = 1, max = 80))]
    pub name: String,
    /// Chainage.
    #[schemars(range(min = 0, max = 2000))]
    pub at_km: f64,
    /// Direction of travel it can be used in.
    pub travel: TravelWord,
}

/// A named place or posted board.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LandmarkFile {
    /// Name, or the text of the board.
    #[schemars(length(min = 1, max = 80))]
    pub name: String,
    /// Chainage.
    #[schemars(range(min = 0, max = 2000))]
    pub at_km: f64,
}
