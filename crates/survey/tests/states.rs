//! Load states: lifted axles, raised bodies, loads that nobody knows.

mod quarry_edits;

use quarry_edits::*;
use survey::Folder;

/// The quarry with a third axle group that is lifted when empty.
fn lifted() -> Folder {
    let mut folder = edited(TRAILER, "axles = 3", "axles = 3\nliftable = true");
    edit(&mut folder, COMBINATION, "gross_mass_kg = 16000", "gross_mass_kg = 10100");
    let line = "\"tipper.tridem\" = { mass_kg = 5900, weighed = \"scale\", uncertainty_pct = 1 }\n";
    let down = "\n[load_states.axles_down]\n\"tipper.tridem\" = 0\n";
    edit(&mut folder, COMBINATION, line, down);
    folder
}

#[test]
fn a_lifted_group_carries_nothing_and_needs_no_load() {
    let (survey, problems) = load(&lifted());
    assert!(problems.is_empty(), "{problems:#?}");
    let states = &survey.unwrap().hauls[0].combination.load_states;
    assert_eq!(states[0].axles_down, [1, 2, 0]);
    assert_eq!(states[1].axles_down, [1, 2, 3]);
    assert!(states[0].is_lifted(2) && !states[1].is_lifted(2));
    assert!((states[0].gross().as_kg() - 10_100.0).abs() < 1e-6);
}

#[test]
fn lifting_is_held_against_the_group() {
    let told = |old: &str, new: &str, words: &str| {
        let mut folder = lifted();
        edit(&mut folder, COMBINATION, old, new);
        tells(&folder, words);
    };
    let down = "\"tipper.tridem\" = 0";
    told(down, "\"tipper.tridem\" = 4", "4 axles of 'tipper.tridem' down, but it has 3");
    told(down, "\"tractor.drive\" = 1", "'tractor.drive' cannot be lifted, so all of its 2 axles");
    told(down, "\"tipper.tandem\" = 0", "there is no such axle group");
    told(down, "\"tipper.tridem\" = 2", "no load is given for 'tipper.tridem'");
    let loads = "[load_states.loads]\n";
    let carries = "[load_states.loads]\n\"tipper.tridem\" = { mass_kg = 900, weighed = \"scale\", uncertainty_pct = 1 }\n";
    told(loads, carries, "'tipper.tridem' is lifted and still carries 900 kg");
}

#[test]
fn axles_that_stay_down_carry_the_whole_load() {
    // The laden tridem on two of its axles: 20 t on eight tires in place of twelve.
    let mut folder = edited(TRAILER, "axles = 3", "axles = 3\nliftable = true");
    let chains = "[[chain_states]]\nname = \"no chains\"";
    let down = format!("[load_states.axles_down]\n\"tipper.tridem\" = 2\n\n{chains}");
    edit(&mut folder, COMBINATION, chains, &down);
    tells(&folder, "'tipper.tridem', laden: the worst tire carries 2756 kg");
}

#[test]
fn a_raised_body_is_a_state_and_not_for_the_road() {
    let mut folder = edited(COMBINATION, "name = \"laden\"", "name = \"laden\"\nbody = \"raised\"");
    tells(&folder, "warning: the haul is driven in 'laden', with the body raised");
    let survey = load(&folder).0.unwrap();
    assert!(survey.hauls[0].combination.load_states[1].body_raised);
    edit(&mut folder, COMBINATION, "\"raised\"", "\"up\"");
    tells(&folder, "is not one of the choices");
}

fn unknown(treat_as: &str) -> Folder {
    let state =
        format!("[[load_states]]\nname = \"mixed\"\nunknown = true\n{treat_as}\n[[chain_states]]");
    edited(COMBINATION, "[[chain_states]]", &state)
}

#[test]
fn unknown_loads_are_those_of_the_heavier_state() {
    let (survey, problems) = load(&unknown("treat_as = \"laden\"\n"));
    assert!(problems.is_empty(), "{problems:#?}");
    let states = &survey.unwrap().hauls[0].combination.load_states;
    assert_eq!(states[2].treat_as, Some(1));
    assert_eq!(states[2].groups, states[1].groups);
    assert_eq!(states[2].center_height, states[1].center_height);
    assert_eq!(states[1].treat_as, None);
}

#[test]
fn unknown_loads_name_a_known_state() {
    tells(&unknown(""), "treat_as is missing: the loads of this state are not known");
    tells(&unknown("treat_as = \"mixed\"\n"), "the loads of 'mixed' are not known either");
    tells(&unknown("treat_as = \"ladn\"\n"), "no such load state");
    let lighter = unknown("treat_as = \"empty\"\n");
    tells(&lighter, "warning: 'empty' stands in for unknown loads, but 'laden' is heavier");
    assert_eq!(load(&lighter).0.unwrap().hauls.len(), 1);
    tells(
        &unknown("treat_as = \"laden\"\ngross_mass_kg = 30000\n"),
        "gross_mass_kg has no place here: the loads of this state are not known",
    );
    one_problem(
        COMBINATION,
        "gross_mass_kg = 40800",
        "treat_as = \"empty\"\ngross_mass_kg = 40800",
        "treat_as has no place here: the loads of this state are known",
        "",
    );
    let folder = edited(COMBINATION, "gross_mass_kg = 40800\n", "");
    tells(&folder, "gross_mass_kg is missing: the loads of this state are known — weigh it");
}
