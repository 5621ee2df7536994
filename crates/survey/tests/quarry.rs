//! The quarry survey is read whole, with the numbers it was written with.

mod quarry_edits;

use quarry_edits::load;
use std::path::Path;

use survey::{Folder, UnitProfile};

fn quarry() -> Folder {
    Folder::read(Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/surveys/quarry"))).unwrap()
}

#[test]
fn a_sound_survey_gives_its_haul_without_a_word() {
    let (survey, problems) = load(&quarry());
    let told: Vec<String> = problems.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{}", told.join("\n"));
    let survey = survey.unwrap();
    assert_eq!(survey.name, "Alder Bench quarry");
    assert_eq!(survey.units, UnitProfile::Si);
    assert_eq!(survey.hauls.len(), 1);
    let haul = &survey.hauls[0];
    assert_eq!(haul.name, "aggregate");
    assert_eq!(haul.combination.groups.len(), 3);
    assert_eq!(haul.combination.channels.len(), 2);
    assert_eq!(haul.combination.rungs.len(), 3);
    assert_eq!(haul.combination.load_states[haul.laden_state].name, "laden");
    assert!((haul.combination.load_states[1].gross().as_kg() - 40_800.0).abs() < 1e-6);
    assert!((haul.route.length().as_km() - 31.0).abs() < 1e-9);
}

#[test]
fn other_units_are_changed_to_the_canonical_ones() {
    let (survey, _) = load(&quarry());
    let survey = survey.unwrap();
    let tire = &survey.tires["drive-11r22-5-g"];
    assert!((tire.single.pressure.as_psi() - 105.0).abs() < 1e-9);
    assert!((tire.single.load.as_lb() - 6175.0).abs() < 1e-9);
    let tridem = &survey.hauls[0].combination.groups[2];
    assert!((tridem.dual.unwrap().spacing.as_in() - 13.5).abs() < 1e-9);
}

#[test]
fn a_trailer_prolongs_the_line_of_the_truck() {
    let (survey, _) = load(&quarry());
    let survey = survey.unwrap();
    let trailer = &survey.hauls[0].combination.channels[1];
    assert_eq!(trailer.name, "trailer");
    assert_eq!(trailer.path.len(), 5);
    assert!((trailer.line_length.as_m() - 19.0).abs() < 1e-9);
    assert_eq!(trailer.wheel_end.len(), 3);
}
