//! What an import wrote, `airtide.import/1`.

use logs::read::Losses;
use logs::store::{Imported, RouteTold};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::LogFileView;

/// What an import wrote.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ImportDocument {
    /// `airtide.import/1`.
    pub schema: String,
    /// Fleet number of the unit.
    pub unit: String,
    /// Where its files are.
    pub folder: String,
    /// How many files.
    pub files: usize,
    /// Rows of native samples.
    pub rows: u64,
    /// Numbers that found no second of the grid: a clock that went back, or too many locations.
    pub off_grid: u64,
    /// Frames of all logs.
    pub frames: u64,
    /// Records that could not be read.
    pub bad_records: u64,
    /// What the drive did on the route of a survey, where one was named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<ImportRouteView>,
    /// Each log.
    pub logs: Vec<LogFileView>,
}

/// Wheels whose scale is off by more than this are flagged, percent: the rolling radius itself moves by a few
/// with pressure, load and wear. Common practice, no source.
const WHEELS_OFF_PCT: f64 = 4.0;
/// Stretches that a judgment of the wheels needs.
const LEAST_STRETCHES: usize = 3;

/// Positions of a log on a surveyed route, and the wheels against it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ImportRouteView {
    /// Name of the route.
    pub name: String,
    /// Seconds with a position.
    pub positions_s: u64,
    /// Those of them that were off the route.
    pub off_route_s: u64,
    /// Stretches of half a kilometer on which wheels and track are compared.
    pub stretches: usize,
    /// Way by wheel speed over way along the track: the middle one of all stretches.
    pub wheel_ratio: Option<f64>,
    /// Nine of ten stretches have at least about this.
    pub wheel_ratio_low: Option<f64>,
    /// Nine of ten stretches have at most about this.
    pub wheel_ratio_high: Option<f64>,
    /// Whether the scale of the wheel speed is wrong; unknown with too few stretches.
    pub wheel_scale_wrong: Option<bool>,
}

impl ImportRouteView {
    fn new(name: &str, told: &RouteTold) -> Self {
        let mut ratios = told.wheel_ratios.clone();
        ratios.sort_by(f64::total_cmp);
        let at =
            |share: usize| ratios.get((ratios.len() * share / 10).min(ratios.len().max(1) - 1));
        let middle = at(5).copied();
        let enough = ratios.len() >= LEAST_STRETCHES;
        Self {
            name: name.to_owned(),
            positions_s: told.positions,
            off_route_s: told.off_route,
            stretches: ratios.len(),
            wheel_ratio: middle,
            wheel_ratio_low: at(1).copied(),
            wheel_ratio_high: at(9).copied(),
            wheel_scale_wrong: middle
                .filter(|_| enough)
                .map(|middle| (middle - 1.0).abs() * 100.0 > WHEELS_OFF_PCT),
        }
    }
}

impl ImportDocument {
    /// What an import for a unit wrote, with the name of the route where one was given.
    pub fn new(unit: &str, route: Option<&str>, imported: &Imported) -> Self {
        let none = Losses::default();
        Self {
            schema: "airtide.import/1".to_owned(),
            unit: unit.to_owned(),
            folder: imported.folder.display().to_string(),
            files: imported.files,
            rows: imported.rows,
            off_grid: imported.off_grid,
            frames: imported.logs.iter().map(|told| told.frames).sum(),
            bad_records: imported.logs.iter().map(|told| told.losses.bad_records()).sum(),
            route: route
                .zip(imported.route.as_ref())
                .map(|(name, told)| ImportRouteView::new(name, told)),
            logs: imported.logs.iter().map(|told| LogFileView::new(told, &none)).collect(),
        }
    }
}
