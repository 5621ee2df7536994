//! Bands, and effects that were not assessed.

use plan::effect::{Band, Finding, Input, Kind, NotAssessed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Least, expected and most; the unit is that of the key.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BandView {
    /// Least.
    pub low: f64,
    /// Expected.
    pub middle: f64,
    /// Most.
    pub high: f64,
}

impl BandView {
    /// A band in the unit that a function reads it in.
    pub(in crate::plan) fn of<T: Copy>(band: &Band<T>, unit: impl Fn(T) -> f64) -> Self {
        let map = |value| unit(value);
        Self { low: map(band.low), middle: map(band.middle), high: map(band.high) }
    }
}

/// An effect that was not assessed, and why; it is never taken for none.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct NotAssessedView {
    /// Which, such as `climb`.
    pub effect: String,
    /// `give`, `out of range` or `no such way`.
    pub why: String,
    /// What the survey would have to give, such as `soil-strength`.
    pub input: Option<String>,
    /// What the law says where it does not hold.
    pub reason: Option<String>,
}

impl NotAssessedView {
    fn new(effect: &str, why: &NotAssessed) -> Self {
        let effect = effect.to_owned();
        let (name, input, reason) = match why {
            NotAssessed::Give(input) => ("give", Some(input_name(*input).to_owned()), None),
            NotAssessed::OutOfRange(reason) => ("out of range", None, Some(reason.clone())),
            NotAssessed::NoSuchWay => ("no such way", None, None),
        };
        Self { effect, why: name.to_owned(), input, reason }
    }
}

/// Collects what was not assessed while values are read out.
#[derive(Default)]
pub(in crate::plan) struct Lacking(Vec<NotAssessedView>);

impl Lacking {
    /// The value, or a note why there is none.
    pub fn read<T, U>(
        &mut self,
        effect: &str,
        found: &Finding<T>,
        show: impl Fn(&T) -> U,
    ) -> Option<U> {
        match found {
            Ok(value) => Some(show(value)),
            Err(why) => {
                let note = NotAssessedView::new(effect, why);
                if !self.0.contains(&note) {
                    self.0.push(note);
                }
                None
            }
        }
    }

    /// The same for what a surface may have no use for.
    pub fn maybe<T, U>(
        &mut self,
        effect: &str,
        found: Option<&Finding<T>>,
        show: impl Fn(&T) -> U,
    ) -> Option<U> {
        found.and_then(|found| self.read(effect, found, show))
    }

    pub fn list(self) -> Vec<NotAssessedView> {
        self.0
    }
}

/// What the survey would have to give.
pub(crate) fn input_name(input: Input) -> &'static str {
    match input {
        Input::Strength => "soil-strength",
        Input::Layers => "pavement-layers",
        Input::Grip => "grip",
        Input::DualSpacing => "dual-spacing",
        Input::Money => "money",
        Input::FuelPrice => "fuel-price",
        Input::Season => "season",
        Input::Payload => "payload",
        Input::TireSaving => "tire-saving",
        Input::RepairSaving => "repair-saving",
        Input::RoadCost => "road-cost",
        Input::RoadSaving => "road-saving",
    }
}

/// A kind of effect, as the sources name it.
pub(super) fn kind_name(kind: Kind) -> &'static str {
    match kind {
        Kind::Contact => "contact",
        Kind::StressBelow => "stress-below",
        Kind::Gravel => "gravel-rut",
        Kind::Soil => "soil-rut",
        Kind::Gap => "dual-gap",
        Kind::Tkph => "heat-load",
        Kind::Spread => "spread",
        Kind::Washboard => "washboard",
        Kind::Pavement => "pavement",
        Kind::Climb => "climb",
        Kind::Descent => "descent",
        Kind::Rolling => "rolling",
        Kind::Heat => "heat",
        Kind::Ride => "ride",
        Kind::WindUp => "wind-up",
    }
}
