//! What the ground of a leg bears, as its author knows it.

use schemars::JsonSchema;
use serde::Deserialize;

/// Class of the unified soil classification.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "UPPERCASE")]
pub(crate) enum SoilClassWord {
    Gw,
    Gp,
    Gm,
    Gc,
    Sw,
    Sp,
    Sm,
    Sc,
    Ml,
    Cl,
    Ol,
    Mh,
    Ch,
    Oh,
}

/// How wet the ground is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum SeasonWord {
    /// Drained.
    Drained,
    /// Poorly drained, wet.
    Wet,
    /// Thawing after frost.
    Thaw,
}

/// Aggregate on the soil.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AggregateFile {
    /// Thickness.
    #[schemars(range(min = 0.02, max = 3))]
    pub thickness_m: f64,
    /// Bearing ratio of the aggregate.
    #[schemars(range(min = 0.2, max = 200))]
    pub cbr_top_pct: Option<f64>,
}

/// A layer of a pavement.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LayerFile {
    /// Young's modulus, in megapascals.
    #[schemars(range(min = 0.1, max = 1_000_000))]
    pub modulus_mpa: f64,
    /// Poisson's ratio.
    #[schemars(range(min = 0, max = 0.5))]
    pub poisson: f64,
    /// Thickness; the last layer, the ground itself, has none.
    #[schemars(range(min = 0.001, max = 100))]
    pub thickness_m: Option<f64>,
}
