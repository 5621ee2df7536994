//! What the place and the weather fix for every cell.

use model::haul_cycle::{HaulCycle, Weather};
use model::route::{Jurisdiction, Leg, Permit, StatedPressure};
use model::tire::cold_warm::{Conditions, ConditionsError, as_cold, as_read};
use quantity::{ColdPressure, GaugePressure, Temperature};

use crate::sections::wanted_rung;

/// Temperatures and ambient pressure a window is judged in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// Conditions cold pressures are named at.
    pub reference: Conditions,
    /// Coldest credible ambient.
    pub coldest: Temperature,
    /// Warmest credible ambient.
    pub warmest: Temperature,
}

impl Site {
    /// Reads the weather of a haul.
    ///
    /// # Errors
    /// [`ConditionsError`] for a temperature or ambient pressure outside the gas law's range.
    pub fn new(weather: &Weather) -> Result<Self, ConditionsError> {
        let reference = Conditions::new(weather.reference, weather.ambient_pressure)?;
        reference.with_temperature(weather.coldest)?;
        Ok(Self { reference, coldest: weather.coldest, warmest: weather.warmest })
    }

    /// What a vented gauge reads on a tire of this cold pressure at a temperature.
    pub fn read_at(&self, cold: ColdPressure, temperature: Temperature) -> GaugePressure {
        let now = self.at(temperature);
        as_read(cold, self.reference, now)
    }

    /// The cold pressure behind a reading at a temperature.
    pub fn cold_of(&self, reading: GaugePressure, temperature: Temperature) -> ColdPressure {
        as_cold(reading, self.at(temperature), self.reference)
    }

    fn at(&self, temperature: Temperature) -> Conditions {
        // Temperatures come from checked weather plus a bounded rise, so they stay in range.
        self.reference.with_temperature(temperature).unwrap_or(self.reference)
    }
}

/// Where a rung is used on a route: what the ground and the law bring into its window.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RungUse {
    /// Steepest crossfall.
    pub crossfall: f64,
    /// Whether a public road in the United States is among the legs.
    pub united_states: bool,
    /// Whether any public road is.
    pub public: bool,
    /// Lowest pressure advice of the ground.
    pub ground_maximum: Option<ColdPressure>,
    /// Highest of the lowest cold pressures that permits in force ask for.
    pub permit_minimum: Option<ColdPressure>,
    /// Lowest of the highest cold pressures that permits in force allow.
    pub permit_maximum: Option<ColdPressure>,
    /// Highest of the lowest readings that permits in force ask for.
    pub permit_lowest_reading: Option<GaugePressure>,
    /// Lowest of the highest readings that permits in force allow.
    pub permit_highest_reading: Option<GaugePressure>,
    /// Whether any leg uses it.
    pub used: bool,
}

impl RungUse {
    /// Gathers what the legs that want a rung bring, on either run.
    pub fn of(haul: &HaulCycle, rung: usize) -> Self {
        let wants = |index: &usize| {
            wanted_rung(haul, haul.empty_state, *index) == Some(rung)
                || wanted_rung(haul, haul.laden_state, *index) == Some(rung)
        };
        let legs = &haul.route.legs;
        Self::of_legs((0..legs.len()).filter(wants).map(|index| &legs[index]))
    }

    /// Gathers what legs bring.
    pub fn of_legs<'a>(legs: impl IntoIterator<Item = &'a Leg>) -> Self {
        let mut found = Self::default();
        for leg in legs {
            found.used = true;
            found.crossfall = found.crossfall.max(leg.crossfall.abs());
            found.united_states |= leg.jurisdiction == Jurisdiction::UnitedStates;
            found.public |= leg.jurisdiction != Jurisdiction::Private;
            if let Some(permit) = leg.permit.as_ref().filter(|permit| permit.in_force) {
                found.permit(permit);
            }
            found.ground_maximum =
                pick(found.ground_maximum, leg.ground_maximum, ColdPressure::min);
        }
        found
    }

    fn permit(&mut self, permit: &Permit) {
        let (cold, reading) = parts(permit.minimum);
        self.permit_minimum = pick(self.permit_minimum, cold, ColdPressure::max);
        self.permit_lowest_reading = pick(self.permit_lowest_reading, reading, GaugePressure::max);
        let (cold, reading) = parts(permit.maximum);
        self.permit_maximum = pick(self.permit_maximum, cold, ColdPressure::min);
        self.permit_highest_reading =
            pick(self.permit_highest_reading, reading, GaugePressure::min);
    }
}

fn parts(stated: Option<StatedPressure>) -> (Option<ColdPressure>, Option<GaugePressure>) {
    match stated {
        Some(StatedPressure::Cold(cold)) => (Some(cold), None),
        Some(StatedPressure::AsRead(reading)) => (None, Some(reading)),
        None => (None, None),
    }
}

fn pick<P>(a: Option<P>, b: Option<P>, stricter: fn(P, P) -> P) -> Option<P> {
    match (a, b) {
        (Some(a), Some(b)) => Some(stricter(a, b)),
        (a, b) => a.or(b),
    }
}
