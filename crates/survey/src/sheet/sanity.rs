//! Whether rows that could be read can be true, alone and beside each other.

use std::collections::BTreeMap;

use model::tire::Fitment;
use quantity::{ColdPressure, Length, Mass, Speed};

use super::mapping::{Layout, Mapping};
use super::problem::{CellPlace, Fault, Wanted};
use super::rows::Candidate;
use super::unit::PressureUnit;

/// Cold pressures of truck tires, wide bounds of our own choice: a slip between psi, kPa and bar
/// changes a number at least sevenfold and falls outside.
const PRESSURES: (ColdPressure, ColdPressure) =
    (ColdPressure::from_kpa(130.0), ColdPressure::from_kpa(1200.0));
/// Loads on one truck tire, wide bounds of our own choice.
const LOADS: (Mass, Mass) = (Mass::from_kg(150.0), Mass::from_kg(40_000.0));
/// No speed symbol of truck tires goes beyond.
const HIGHEST_SPEED: Speed = Speed::from_kmh(160.0);
/// Values closer than this share are the same, rounded in two units.
const ROUNDING: f64 = 0.01;

/// Keeps what can stand; every other cell comes back with its fault.
pub(super) fn judge(
    candidates: Vec<Candidate>,
    mapping: &Mapping,
) -> (Vec<Candidate>, Vec<(CellPlace, Fault)>) {
    let mut faults = Vec::new();
    let mut kept = Vec::with_capacity(candidates.len());
    for candidate in candidates {
        match implausible(&candidate, mapping.pressure_unit) {
            Some(fault) => faults.push((candidate.place, fault)),
            None => kept.push(candidate),
        }
    }
    let kept = leave_out_repeats(kept, &mut faults);
    let kept = leave_out_contradictions(kept, mapping, &mut faults);
    falling_loads(&kept, &mut faults);
    rising_with_speed(&kept, &mut faults);
    (kept, faults)
}

fn implausible(candidate: &Candidate, read_in: PressureUnit) -> Option<Fault> {
    let row = &candidate.row;
    let credible = |pressure: ColdPressure| PRESSURES.0 <= pressure && pressure <= PRESSURES.1;
    if !credible(row.pressure) {
        let number = read_in.number(row.pressure);
        let fits = |unit: &PressureUnit| unit.pressure(number).is_ok_and(credible);
        let likely = PressureUnit::ALL.into_iter().find(fits);
        return Some(Fault::ImplausiblePressure { pressure: row.pressure, likely });
    }
    if row.load < LOADS.0 || row.load > LOADS.1 {
        return Some(Fault::ImplausibleLoad { load: row.load });
    }
    if row.speed < Speed::ZERO || row.speed > HIGHEST_SPEED {
        return Some(Fault::ImplausibleSpeed { speed: row.speed });
    }
    let distance = row.hold_distance.filter(|distance| *distance <= Length::ZERO)?;
    Some(Fault::ImplausibleHold { distance })
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= ROUNDING * a.abs().max(b.abs())
}

fn leave_out_repeats(
    candidates: Vec<Candidate>,
    faults: &mut Vec<(CellPlace, Fault)>,
) -> Vec<Candidate> {
    let mut kept: Vec<Candidate> = Vec::with_capacity(candidates.len());
    for candidate in candidates {
        let row = &candidate.row;
        let earlier = kept.iter().find(|other| {
            let other = &other.row;
            other.fitment == row.fitment
                && other.hold_distance == row.hold_distance
                && same(other.speed.as_kmh(), row.speed.as_kmh())
                && same(other.pressure.as_kpa(), row.pressure.as_kpa())
                && same(other.load.as_kg(), row.load.as_kg())
        });
        match earlier {
            Some(earlier) => {
                faults.push((candidate.place, Fault::Repeats { earlier: earlier.place }));
            }
            None => kept.push(candidate),
        }
    }
    kept
}

/// Cells of the same case: fitment, speed and hold distance, rounded to be compared.
type Case = (Fitment, i64, Option<i64>);

fn rounded(value: f64) -> i64 {
    // Bounded by the credible ranges, far inside the integers.
    #[allow(clippy::cast_possible_truncation)]
    let rounded = (value * 10.0).round() as i64;
    rounded
}

fn case(candidate: &Candidate) -> Case {
    let row = &candidate.row;
    let hold = row.hold_distance.map(|distance| rounded(distance.as_m()));
    (row.fitment, rounded(row.speed.as_kmh()), hold)
}

fn groups<K: Ord>(
    candidates: &[Candidate],
    key: impl Fn(&Candidate) -> K,
) -> BTreeMap<K, Vec<&Candidate>> {
    let mut groups: BTreeMap<K, Vec<&Candidate>> = BTreeMap::new();
    for candidate in candidates {
        groups.entry(key(candidate)).or_default().push(candidate);
    }
    groups
}

/// A table gives one load for a pressure, or one pressure for a load; a list may be either, as
/// long as one of the two never comes twice in a case.
fn leave_out_contradictions(
    candidates: Vec<Candidate>,
    mapping: &Mapping,
    faults: &mut Vec<(CellPlace, Fault)>,
) -> Vec<Candidate> {
    let mut out: Vec<CellPlace> = Vec::new();
    for group in groups(&candidates, case).values() {
        let by_load = clashes(group, |candidate| rounded(candidate.row.load.as_kg()));
        let by_pressure = clashes(group, |candidate| rounded(candidate.row.pressure.as_kpa()));
        let load_keyed = mapping.load_column.is_some();
        let (pairs, shared) = match (mapping.layout, load_keyed) {
            (Layout::List, _) if by_load.is_empty() || by_pressure.is_empty() => continue,
            (Layout::List, _) | (_, false) => (by_pressure, Wanted::Pressure),
            (_, true) => (by_load, Wanted::Load),
        };
        for (place, other) in pairs {
            faults.push((place, Fault::Contradicts { other, same: shared }));
            out.push(place);
        }
    }
    candidates.into_iter().filter(|candidate| !out.contains(&candidate.place)).collect()
}

/// Each cell whose key another cell shares, with that other.
fn clashes(group: &[&Candidate], key: impl Fn(&Candidate) -> i64) -> Vec<(CellPlace, CellPlace)> {
    let mut by_key: BTreeMap<i64, Vec<CellPlace>> = BTreeMap::new();
    for candidate in group {
        by_key.entry(key(candidate)).or_default().push(candidate.place);
    }
    let several = by_key.into_values().filter(|places| places.len() > 1);
    let pairs = several.flat_map(|places| {
        let other = |i: usize| if i == 0 { places[1] } else { places[0] };
        (0..places.len()).map(|i| (places[i], other(i))).collect::<Vec<_>>()
    });
    pairs.collect()
}

fn falling_loads(candidates: &[Candidate], faults: &mut Vec<(CellPlace, Fault)>) {
    for group in groups(candidates, case).values() {
        let mut rising = group.clone();
        rising.sort_by(|a, b| {
            let loads = || a.row.load.total_cmp(&b.row.load);
            a.row.pressure.total_cmp(&b.row.pressure).then_with(loads)
        });
        for pair in rising.windows(2) {
            if pair[1].row.load < pair[0].row.load * (1.0 - ROUNDING) {
                let lower = pair[0].place;
                faults.push((pair[1].place, Fault::LoadFallsWithPressure { lower }));
            }
        }
    }
}

fn rising_with_speed(candidates: &[Candidate], faults: &mut Vec<(CellPlace, Fault)>) {
    let key = |candidate: &Candidate| {
        let (fitment, _, hold) = case(candidate);
        (fitment, hold, rounded(candidate.row.pressure.as_kpa()))
    };
    for group in groups(candidates, key).values() {
        let mut faster = group.clone();
        faster.sort_by(|a, b| {
            let loads = || b.row.load.total_cmp(&a.row.load);
            a.row.speed.total_cmp(&b.row.speed).then_with(loads)
        });
        for pair in faster.windows(2) {
            let more = pair[1].row.load * (1.0 - ROUNDING) > pair[0].row.load;
            if more && pair[1].row.speed > pair[0].row.speed {
                let slower = pair[0].place;
                faults.push((pair[1].place, Fault::LoadRisesWithSpeed { slower }));
            }
        }
    }
}
