//! Whole cycles of many trucks on many days.

use haul::{Course, Cycle, NoRecord, Truck};
use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, Length, Time, Volume};

use crate::Detail;
use crate::change::draw;
use crate::drive::{Driven, NotDriven};
use crate::ladder::Ladder;
use crate::workers::{Workers, collect};

/// Longest cell of the road while whole cycles are sampled.
const CELL: Length = Length::from_m(50.0);

/// One cycle of one truck on one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SampledCycle {
    /// Time of the cycle.
    pub time: Time,
    /// Waited for pressure alone.
    pub waited: Time,
    /// Fuel.
    pub fuel: Volume,
    /// Compressor time.
    pub compressor_loaded: Time,
    /// Lowest service pressure.
    pub lowest_supply: GaugePressure,
}

/// Ten, fifty and ninety of a hundred lie at or under these.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tenths<T> {
    /// One of ten.
    pub p10: T,
    /// The middle.
    pub p50: T,
    /// Nine of ten.
    pub p90: T,
}

/// How whole cycles spread.
#[derive(Debug, Clone, PartialEq)]
pub struct CycleSpread {
    /// Every cycle that could be driven, in order of its number.
    pub cycles: Vec<SampledCycle>,
    /// How many could not.
    pub not_driven: usize,
    /// Time.
    pub time: Tenths<Time>,
    /// Waited for pressure alone.
    pub waited: Tenths<Time>,
    /// Fuel.
    pub fuel: Tenths<Volume>,
    /// Compressor time.
    pub compressor_loaded: Tenths<Time>,
    /// Lowest service pressure.
    pub lowest_supply: Tenths<GaugePressure>,
}

/// Drives a planned haul `samples` times, each with its own truck and day, changes called where the
/// plan puts them.
///
/// # Errors
/// [`NotDriven`] where not even the nominal haul can be driven.
pub fn sample_cycles(
    haul: &HaulCycle,
    ladder: &Ladder,
    driven: &Driven,
    detail: &Detail,
    samples: usize,
    workers: &dyn Workers,
) -> Result<CycleSpread, NotDriven> {
    let truck = Truck::new(haul, ladder.set_pressures(haul))?;
    let (empty, laden) = Course::of_haul(haul, detail.cell.max(CELL), &detail.style)?;
    let one = |sample: usize| {
        let drawn = draw(&haul.spread, sample);
        let truck = truck.varied(&drawn.variation);
        let courses = (&empty, &laden);
        let plan = &driven.plan;
        let cycle = Cycle::drive_at(
            haul,
            &truck,
            courses,
            plan,
            detail.style,
            drawn.road_speed,
            &mut NoRecord,
        );
        let cycle = cycle.ok()?;
        Some(SampledCycle {
            time: cycle.time(),
            waited: cycle.waited(),
            fuel: cycle.fuel(),
            compressor_loaded: cycle.compressor_loaded(),
            lowest_supply: cycle.lowest_supply()?,
        })
    };
    let cycles: Vec<SampledCycle> = collect(workers, samples, one).into_iter().flatten().collect();
    let tenths = |of: fn(&SampledCycle) -> f64| {
        let mut values: Vec<f64> = cycles.iter().map(of).collect();
        values.sort_by(f64::total_cmp);
        let rank = |tenth: usize| (values.len() * tenth).div_ceil(10).max(1) - 1;
        let at = |tenth: usize| values.get(rank(tenth)).copied().unwrap_or(0.0);
        Tenths { p10: at(1), p50: at(5), p90: at(9) }
    };
    Ok(CycleSpread {
        not_driven: samples - cycles.len(),
        time: tenths(|cycle| cycle.time.as_s()).map(Time::from_s),
        waited: tenths(|cycle| cycle.waited.as_s()).map(Time::from_s),
        fuel: tenths(|cycle| cycle.fuel.as_l()).map(Volume::from_l),
        compressor_loaded: tenths(|cycle| cycle.compressor_loaded.as_s()).map(Time::from_s),
        lowest_supply: tenths(|cycle| cycle.lowest_supply.as_kpa()).map(GaugePressure::from_kpa),
        cycles,
    })
}

impl<T> Tenths<T> {
    fn map<U>(self, to: fn(T) -> U) -> Tenths<U> {
        Tenths { p10: to(self.p10), p50: to(self.p50), p90: to(self.p90) }
    }
}
