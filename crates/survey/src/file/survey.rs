//! `survey.toml`: who answers for the survey, and the conditions all hauls share.

use schemars::JsonSchema;
use serde::Deserialize;

/// Unit profile used on screens and paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum UnitsWord {
    /// kPa, kg, km/h, °C.
    Si,
    /// psi, lb, mph, °F.
    Us,
    /// bar, kg, km/h, °C.
    MetricBar,
}

/// The survey: who answers for it, and the conditions all hauls share.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SurveyFile {
    /// Name of the survey, as it is printed on documents.
    #[schemars(length(min = 1, max = 120))]
    pub name: String,
    /// Person who answers for the numbers.
    #[schemars(length(min = 1, max = 120))]
    pub responsible: String,
    /// Language of documents, as a language tag such as `en` or `fr-CA`.
    #[schemars(length(min = 2, max = 35))]
    pub language: String,
    /// Units on screens and paper.
    pub units: UnitsWord,
    /// Altitude of the site above sea level.
    #[schemars(range(min = -430, max = 6000))]
    pub altitude_m: f64,
    /// Relative humidity of the air the compressor takes in, in percent.
    #[schemars(range(min = 0, max = 100))]
    pub humidity_pct: f64,
    /// Step between the speed caps that the planner tries.
    #[schemars(range(min = 1, max = 20))]
    pub speed_cap_step_kmh: f64,
    /// Temperatures the plan must stand.
    pub temperature: TemperatureFile,
}

/// Temperatures the plan must stand.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[expect(clippy::struct_field_names, reason = "keys carry their unit")]
pub(crate) struct TemperatureFile {
    /// Reference temperature of cold pressures.
    #[schemars(range(min = -30, max = 50))]
    pub reference_c: f64,
    /// Coldest air to be expected while the plan is in force.
    #[schemars(range(min = -60, max = 50))]
    pub coldest_c: f64,
    /// Warmest air to be expected while the plan is in force.
    #[schemars(range(min = -40, max = 60))]
    pub warmest_c: f64,
    /// Air temperature of an ordinary day, for the nominal run.
    #[schemars(range(min = -60, max = 60))]
    pub nominal_c: f64,
}
