//! `tires/*.toml`: a tire model with its ratings, sizes, rim and maker's rows.

use schemars::JsonSchema;
use serde::Deserialize;

use crate::sheet::Mapping;

/// Standards body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "UPPERCASE")]
pub(crate) enum BodyWord {
    /// The Tire and Rim Association.
    Tra,
    /// The European Tyre and Rim Technical Organisation.
    Etrto,
}

/// Column of the TRA restricted-speed table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum SizeClassWord {
    /// Inch sizes such as 11R22.5.
    Conventional,
    /// Metric and wide-base sizes such as 315/80R22.5.
    MetricOrWide,
}

/// Casing construction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum ConstructionWord {
    /// Radial ply.
    Radial,
    /// Bias (diagonal) ply.
    Bias,
}

/// Tube or tubeless.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum AirRetentionWord {
    /// The tire holds its own air.
    Tubeless,
    /// The air is in a tube.
    TubeType,
}

/// Single or dual.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum FitmentWord {
    /// One tire at each wheel end.
    Single,
    /// Two tires side by side.
    Dual,
}

/// A tire model, as it is fitted to the fleet.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct TireFile {
    /// Size as molded on the sidewall, such as `11R22.5` or `315/80R22.5`.
    #[schemars(length(min = 3, max = 30))]
    pub designation: String,
    /// Service description as molded: load index single/dual and speed symbol, such as `146/143 L`.
    #[schemars(length(min = 3, max = 20))]
    pub service_description: String,
    /// Standards body whose rules the rating follows.
    pub body: BodyWord,
    /// Column of the TRA restricted-speed table; left out, it follows from the designation.
    pub size_class: Option<SizeClassWord>,
    /// Casing construction.
    pub construction: ConstructionWord,
    /// Tube or tubeless.
    pub air_retention: AirRetentionWord,
    /// Cold pressure at which the rated load is carried.
    #[schemars(range(min = 200, max = 1200))]
    pub rated_pressure_kpa: f64,
    /// Cold pressure of the dual rating, where it differs from the single one.
    #[schemars(range(min = 200, max = 1200))]
    pub rated_pressure_dual_kpa: Option<f64>,
    /// Rated load of a single tire as molded; left out, it follows from the load index.
    #[schemars(range(min = 300, max = 70_000))]
    pub rated_load_single_kg: Option<f64>,
    /// Rated load of each tire of a dual as molded; left out, it follows from the load index.
    #[schemars(range(min = 300, max = 30_000))]
    pub rated_load_dual_kg: Option<f64>,
    /// Overall diameter, new.
    #[schemars(range(min = 500, max = 4100))]
    pub diameter_mm: f64,
    /// Section width on the rim fitted.
    #[schemars(range(min = 120, max = 1600))]
    pub section_width_mm: f64,
    /// Bead-seat diameter of the rim; left out, it follows from the designation.
    #[schemars(range(min = 300, max = 1700))]
    pub rim_diameter_mm: Option<f64>,
    /// Static loaded radius at the single rated load and pressure, from the maker's data sheet.
    #[schemars(range(min = 200, max = 2000))]
    pub static_loaded_radius_mm: Option<f64>,
    /// Highest cold pressure molded on the sidewall.
    #[schemars(range(min = 200, max = 1300))]
    pub molded_maximum_kpa: f64,
    /// Air volume of one mounted tire.
    #[schemars(range(min = 15, max = 6000))]
    pub air_volume_l: f64,
    /// Lowest pressure of the ordinary load-inflation table for this size.
    #[schemars(range(min = 150, max = 1000))]
    pub lowest_table_pressure_kpa: Option<f64>,
    /// Lowest pressure at which the maker holds the bead seated.
    #[schemars(range(min = 20, max = 600))]
    pub bead_minimum_kpa: Option<f64>,
    /// Rolling-resistance coefficient on a hard road at the single rated load and pressure.
    #[schemars(range(min = 0.003, max = 0.03))]
    pub rolling_resistance: f64,
    /// Limits stamped on the rim or wheel.
    pub rim: RimFile,
    /// The tire maker's document on reduced pressure, and whether it approves this use.
    pub approved: Option<DocumentFile>,
    /// The maker's rows of load, speed and pressure, written here.
    #[serde(default)]
    pub maker_rows: Vec<MakerRowFile>,
    /// The maker's rows as a CSV or XLSX file of the survey, such as `tires/rows.csv`.
    pub maker_rows_file: Option<String>,
    /// How that file is to be read.
    pub maker_rows_mapping: Option<Mapping>,
}

/// Limits stamped on the rim or wheel.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct RimFile {
    /// Size as stamped, such as `8.25x22.5`; an approval is for one rim.
    #[schemars(length(min = 2, max = 30))]
    pub size: Option<String>,
    /// Highest cold pressure.
    #[schemars(range(min = 200, max = 1400))]
    pub maximum_pressure_kpa: f64,
    /// Highest load.
    #[schemars(range(min = 300, max = 70_000))]
    pub maximum_load_kg: f64,
}

/// The tire maker's document on reduced pressure.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct DocumentFile {
    /// Number, or title and date.
    #[schemars(length(min = 1, max = 200))]
    pub document: String,
    /// Whether the maker approves the rows for this fleet; otherwise they only advise.
    pub for_this_fleet: bool,
}

/// One row of the maker's document.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct MakerRowFile {
    /// Single or dual.
    pub fitment: FitmentWord,
    /// Load on one tire.
    #[schemars(range(min = 100, max = 70_000))]
    pub load_kg: f64,
    /// Highest speed the row covers; 0 for a standing truck.
    #[schemars(range(min = 0, max = 160))]
    pub speed_kmh: f64,
    /// Cold pressure.
    #[schemars(range(min = 50, max = 1300))]
    pub pressure_kpa: f64,
    /// Longest distance at a time, where the maker limits it.
    #[schemars(range(min = 0.1, max = 1000))]
    pub hold_distance_km: Option<f64>,
}
