//! Ground and money: read in the units their authors have, refused where they say two things.

mod quarry_edits;

use model::ground::soil_class::{Season, SoilClass};
use model::ground::strength::Reading;
use model::money::Payer;
use model::route::SoilGiven;
use quarry_edits::*;

const EARTH: &str = "ground_maximum_kpa = 600\n";

fn with_ground(text: &str) -> survey::Folder {
    edited(ROUTE, EARTH, &format!("{EARTH}{text}\n"))
}

const MONEY: &str = r#"
[money]
currency = "USD"
capex = 30_000
life_years = 8
interest_pct = 8
service_per_year = 1500
trips_per_year = 600
truck_hour = 150
fuel_price_per_gal = 4
season = { days_gained = 25, margin_per_trip = 350 }
paid_by = { fuel = "client" }

[money.road]
pass_cost_per_mi = 0.5
saving_low_pct = 0
saving_pct = 30
saving_high_pct = 60
passed_on_pct = 50
"#;

fn with_money(text: &str) -> survey::Folder {
    let mut folder = quarry();
    let haul = folder.text(HAUL).unwrap().to_owned();
    folder.insert(HAUL, haul + text);
    folder
}

#[test]
fn ground_is_read_as_people_have_it() {
    let leg = |text: &str, index: usize| {
        let (survey, problems) = load(&with_ground(text));
        assert!(problems.is_empty(), "{problems:#?}");
        survey.unwrap().hauls[0].route.legs[index].ground.clone()
    };
    assert_eq!(leg("", 0), None);
    let soil = leg("cone_index_psi = 60", 0).unwrap().soil.unwrap();
    let SoilGiven::Measured { reading: Reading::ConeIndex(index), .. } = soil else {
        panic!("{soil:?}")
    };
    assert!((index.as_psi() - 60.0).abs() < 1e-9);
    let judged = leg("soil_class = \"ML\"\nseason = \"wet\"", 0).unwrap().soil.unwrap();
    assert_eq!(judged, SoilGiven::Judged { class: SoilClass::Ml, season: Season::Wet });
    let road = leg(
        "dcp_mm_per_blow = 30\naggregate = { thickness_in = 8, cbr_top_pct = 60 }\nlayers = [\
         { modulus_mpa = 3000, poisson = 0.35, thickness_mm = 75 }, { modulus_mpa = 50, poisson = 0.4 }]",
        0,
    );
    let road = road.unwrap();
    assert!((road.aggregate.unwrap().thickness.as_in() - 8.0).abs() < 1e-9);
    assert_eq!(road.pavement.unwrap().layers().len(), 2);
}

#[test]
fn ground_told_twice_or_by_halves_is_refused() {
    tells(&with_ground("cbr_pct = 4\ndcp_mm_per_blow = 30"), "is told by cbr_pct too");
    tells(&with_ground("soil_class = \"ML\""), "a soil class alone has no strength");
    tells(&with_ground("season = \"wet\""), "a season says nothing without soil_class");
    tells(&with_ground("soil_class = \"OL\"\nseason = \"wet\""), "no published strength");
    tells(
        &with_ground("cbr_pct = 30\naggregate = { thickness_m = 0.2, cbr_top_pct = 20 }"),
        "no stronger than the soil",
    );
    tells(
        &with_ground(
            "layers = [{ modulus_mpa = 3000, poisson = 0.35 }, { modulus_mpa = 50, poisson = 0.4 }]",
        ),
        "layer 1 needs a thickness",
    );
}

#[test]
fn money_is_read_in_whatever_units_and_keeps_the_usual_payers() {
    let (survey, problems) = load(&with_money(MONEY));
    assert!(problems.is_empty(), "{problems:#?}");
    let money = survey.unwrap().hauls[0].money.clone().unwrap();
    assert!((money.fuel_price_per_l.unwrap() - 4.0 / 3.785411784).abs() < 1e-9);
    let road = money.road.unwrap();
    assert!((road.per_pass_km - 0.5 / 1.609344).abs() < 1e-9);
    assert_eq!(road.saving, Some([0.0, 0.3, 0.6]));
    assert_eq!(money.paid_by.fuel, Payer::Client);
    assert_eq!(money.paid_by.road, Payer::RoadOwner);
    assert_eq!(money.payload, None);
}

#[test]
fn a_saving_by_halves_is_refused() {
    tells(&with_money(&MONEY.replace("saving_pct = 30\n", "")), "saving are not in order");
    tells(
        &with_money(&MONEY.replace("saving_pct = 30", "saving_pct = 90")),
        "saving are not in order",
    );
}
