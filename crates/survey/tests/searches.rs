//! What a haul says of the search for the best ladder, and of how trucks and runs differ.

mod quarry_edits;

use model::haul_cycle::Spread;
use quarry_edits::*;
use survey::Folder;

const LADDER: &str = r#"
[ladder]
rungs = 3
lowest_cap_mph = 15
fixed_caps_mph = [25, 55]
truck_hour = 95
hard_kpa_km = 0.002
change = 1.5
compressor_hour = 4
currency = "USD"
"#;

fn haul_with(section: &str) -> Folder {
    let mut folder = quarry();
    folder.insert(HAUL, format!("{}{section}", folder.text(HAUL).unwrap()));
    folder
}

fn wish(old: &str, new: &str) -> Folder {
    assert!(LADDER.contains(old));
    haul_with(&LADDER.replacen(old, new, 1))
}

#[test]
fn a_wish_for_a_ladder_is_read_in_whatever_units() {
    let (survey, problems) = load(&haul_with(LADDER));
    assert!(problems.is_empty(), "{problems:#?}");
    let survey = survey.unwrap();
    let wish = survey.hauls[0].ladder_wish.as_ref().unwrap();
    assert_eq!(wish.rungs, 3);
    assert!((wish.lowest_cap.as_mph() - 15.0).abs() < 1e-9);
    assert_eq!(wish.fixed_caps.len(), 2);
    assert!((wish.fixed_caps[1].as_mph() - 55.0).abs() < 1e-9);
    assert!((wish.cap_step.as_kmh() - 5.0).abs() < 1e-9);
    assert!((wish.hard_kpa_km - 0.002).abs() < 1e-15);
    assert_eq!(wish.currency, "USD");
}

#[test]
fn a_wish_fits_the_controller_the_tires_and_itself() {
    tells(&wish("rungs = 3", "rungs = 5"), "5 rungs, but the controller stores 4");
    tells(&wish("rungs = 3", "rungs = 1"), "2 speed caps are fixed, but only 1 rungs are wanted");
    tells(&wish("[25, 55]", "[10, 55]"), "the fixed cap 16 km/h (10 mph) is under the lowest");
    tells(&wish("[25, 55]", "[25, 80]"), "is above the speed symbol L");
    tells(
        &wish("[25, 55]", "[25, 155]"),
        "hauls/aggregate.toml:26:23: fixed_caps_mph = 155 is outside",
    );
    let both = wish("fixed_caps_mph = [25, 55]", "fixed_caps_mph = [25]\nfixed_caps_kmh = [40]");
    tells(&both, "says again what fixed_caps_kmh says");
}

/// The quarry without rungs.
fn without_rungs(section: &str) -> Folder {
    let mut folder = haul_with(section);
    let text = folder.text(COMBINATION).unwrap().to_owned();
    let rungs = text.find("[[rungs]]").unwrap();
    folder.insert(COMBINATION, &text[..rungs]);
    folder
}

#[test]
fn a_combination_without_rungs_needs_a_search() {
    let mut folder = without_rungs(LADDER);
    edit(&mut folder, HAUL, "parked_rung = \"highway\"\n", "");
    let (survey, problems) = load(&folder);
    assert!(problems.is_empty(), "{problems:#?}");
    let haul = &survey.unwrap().hauls[0];
    assert!(haul.combination.rungs.is_empty() && haul.ladder_wish.is_some());
    tells(
        &without_rungs(LADDER),
        "parked_rung has no place here: the combination has no [[rungs]]",
    );
    let folder = without_rungs("");
    tells(
        &folder,
        "hauls/aggregate.toml:2:15: ladder is missing: the combination has no [[rungs]]",
    );
    tells(&folder, "or [ladder] to the haul so that rungs are searched for");
    assert!(load(&folder).0.unwrap().hauls.is_empty());
    let folder = edited(HAUL, "parked_rung = \"highway\"", "");
    tells(&folder, "parked_rung is missing: the combination has [[rungs]]");
}

#[test]
fn spreads_left_out_have_their_usual_width() {
    let survey = load(&quarry()).0.unwrap();
    assert_eq!(survey.hauls[0].spread, Spread::default());
    let section = "\n[spread]\nseed = 7\ntruck = { delivery_pct = 12 }\nrun = { ambient_f = 9, held_pressure_psi = 2, reaction_m = 55 }\n";
    let (survey, problems) = load(&haul_with(section));
    assert!(problems.is_empty(), "{problems:#?}");
    let spread = survey.unwrap().hauls[0].spread;
    assert!((spread.truck.delivery - 0.12).abs() < 1e-12);
    assert!((spread.truck.conductance - Spread::default().truck.conductance).abs() < 1e-12);
    // Nine degrees Fahrenheit of difference are five kelvin, whatever the scale begins with.
    assert!((spread.run.ambient.as_kelvin() - 5.0).abs() < 1e-12);
    assert!((spread.run.held_pressure.as_psi() - 2.0).abs() < 1e-9);
    assert!((spread.run.reaction.as_m() - 55.0).abs() < 1e-12);
    assert_eq!(spread.seed, 7);
    tells(&haul_with("\n[spread]\ntruck = { delivery_pct = 40 }\n"), "is outside 0 to 30");
    tells(
        &haul_with("\n[spread]\nrun = { ambient_f = 60 }\n"),
        "ambient_f = 60 is outside 0 to 45 °F",
    );
}
