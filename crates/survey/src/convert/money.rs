//! Money of a haul.

use model::money::{Money, PaidBy, Payer, PayloadGain, RoadCost, SeasonGain};
use quantity::Mass;

use super::Loaded;
use crate::file::{HaulFile, MoneyFile, PaidByFile, PayerWord, RoadFile};
use crate::problem::{GroundFault, Problem, ProblemKind};

/// The money of a haul, where its file tells it.
pub(super) fn money(file: &Loaded<HaulFile>, problems: &mut Vec<Problem>) -> Option<Money> {
    let data: &MoneyFile = file.data.money.as_ref()?;
    let road = data.road.as_ref().map(|road| RoadCost {
        per_pass_km: road.pass_cost_per_km,
        saving: saving(file, road, problems),
        passed_on: road.passed_on_pct / 100.0,
    });
    Some(Money {
        currency: data.currency.clone(),
        capex: data.capex,
        salvage: data.salvage,
        life_years: data.life_years,
        interest: data.interest_pct / 100.0,
        service_per_year: data.service_per_year,
        trips_per_year: data.trips_per_year,
        truck_hour: data.truck_hour,
        fuel_price_per_l: data.fuel_price_per_l,
        tire_saving_per_year: data.tire_saving_per_year,
        repair_saving_per_year: data.repair_saving_per_year,
        season: data.season.map(|season| SeasonGain {
            days: season.days_gained,
            margin_per_trip: season.margin_per_trip,
        }),
        payload: data.payload.map(|payload| PayloadGain {
            extra: Mass::from_kg(payload.extra_kg),
            rate_per_t: payload.rate_per_t,
        }),
        road,
        paid_by: paid_by(data.paid_by),
    })
}

/// The three ends of the saving: all of them in order, or none.
fn saving(
    file: &Loaded<HaulFile>,
    road: &RoadFile,
    problems: &mut Vec<Problem>,
) -> Option<[f64; 3]> {
    let told = [road.saving_low_pct, road.saving_pct, road.saving_high_pct];
    match told {
        [None, None, None] => None,
        [Some(low), Some(middle), Some(high)] if low <= middle && middle <= high => {
            Some([low, middle, high].map(|pct| pct / 100.0))
        }
        _ => {
            let keys = ["saving_low_pct", "saving_pct", "saving_high_pct"];
            let key = keys
                .iter()
                .zip(told)
                .find(|(_, one)| one.is_some())
                .map_or(keys[1], |(key, _)| key);
            let kind = ProblemKind::Ground(GroundFault::SavingOrder);
            problems.push(file.problem(&format!("/money/road/{key}"), kind));
            None
        }
    }
}

fn paid_by(file: PaidByFile) -> PaidBy {
    let usual = PaidBy::default();
    let or = |word: Option<PayerWord>, usual: Payer| word.map_or(usual, payer);
    PaidBy {
        system: or(file.system, usual.system),
        time: or(file.time, usual.time),
        fuel: or(file.fuel, usual.fuel),
        truck: or(file.truck, usual.truck),
        season: or(file.season, usual.season),
        road: or(file.road, usual.road),
    }
}

fn payer(word: PayerWord) -> Payer {
    match word {
        PayerWord::Haulier => Payer::Haulier,
        PayerWord::RoadOwner => Payer::RoadOwner,
        PayerWord::Client => Payer::Client,
    }
}
