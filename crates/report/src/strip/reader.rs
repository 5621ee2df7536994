//! Words and units of the one who reads the chart.

use language::{Arg, Format, Kind, Round, Texts};
use quantity::{GaugePressure, Length, Speed, Time, Unit};

use super::check::ChartError;

/// The reader's words and units.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Reader<'a> {
    pub(crate) texts: &'a Texts,
    pub(crate) format: &'a Format,
}

impl Reader<'_> {
    pub(crate) fn word(&self, key: &str) -> Result<String, ChartError> {
        self.filled(key, &[])
    }

    pub(crate) fn filled(&self, key: &str, args: &[(&str, Arg<'_>)]) -> Result<String, ChartError> {
        Ok(self.texts.try_get(key, args)?)
    }

    /// A word with the unit of its numbers.
    pub(crate) fn heading(&self, key: &str, kind: Kind) -> Result<String, ChartError> {
        let what = self.word(key)?;
        let unit = self.format.unit(kind);
        self.filled("chart-in-unit", &[("what", what.into()), ("unit", unit.into())])
    }

    /// A chainage in the reader's unit.
    pub(crate) fn chainage(&self, km: f64) -> f64 {
        self.number(Length::from_km(km), Kind::Distance)
    }

    /// An elevation in the reader's unit.
    pub(crate) fn height(&self, m: f64) -> f64 {
        self.number(Length::from_m(m), Kind::Span)
    }

    /// A speed in the reader's unit.
    pub(crate) fn speed(&self, kmh: f64) -> f64 {
        self.number(Speed::from_kmh(kmh), Kind::Speed)
    }

    /// A pressure in the reader's unit.
    pub(crate) fn pressure(&self, kpa: f64) -> f64 {
        self.number(GaugePressure::from_kpa(kpa), Kind::Pressure)
    }

    /// A place as text.
    pub(crate) fn place(&self, km: f64, round: Round) -> String {
        self.format.distance(Length::from_km(km), round).to_string()
    }

    /// Whole minutes as text.
    pub(crate) fn minutes(&self, time_s: f64) -> String {
        self.format.plain(Time::from_s(time_s).as_min(), 0, Round::Nearest)
    }

    fn number<Q: Unit>(&self, value: Q, kind: Kind) -> f64 {
        value
            .in_unit(kind.shown(self.format.profile()).symbol)
            .expect("each kind is shown in a unit of its quantity")
    }
}
