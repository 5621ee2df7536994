//! Issued plans as stored, edited behind our back, and in force.

use std::path::PathBuf;

use serde_json::{Value, json};
use study::{
    Hash, InForce, Issued, IssuedFault, IssuedPlan, Opened, in_force, issued, issued_problems,
};
use survey::{Folder, Severity};

/// A plan as the first version of the format stored it.
const GOLDEN: &str = include_str!("golden/issued-1.json");
const FILE: &str = "plans/stone-1.json";

fn read(file: &str, text: &str) -> Issued {
    let mut folder = Folder::default();
    folder.insert(file, text);
    issued(&folder)
}

fn golden() -> IssuedPlan {
    read(FILE, GOLDEN).plans.remove(0)
}

/// The golden plan of another haul and number, dated and valid otherwise.
fn plan(haul: &str, number: u32, date: &str, until: Option<&str>, units: &[&str]) -> IssuedPlan {
    let date = date.parse().unwrap();
    IssuedPlan {
        id: format!("{haul}-{number}"),
        haul: haul.to_owned(),
        number,
        date,
        valid_from: date,
        valid_until: until.map(|day| day.parse().unwrap()),
        units: units.iter().map(|unit| (*unit).to_owned()).collect(),
        ..golden()
    }
}

fn fault(text: &str) -> IssuedFault {
    let found = read(FILE, text);
    assert!(found.plans.is_empty(), "a broken plan counts for nobody");
    assert_eq!(found.problems.len(), 1);
    assert_eq!(found.problems[0].file, FILE);
    assert_eq!(found.problems[0].severity(), Severity::Error);
    assert!(found.problems[0].fault.hint().is_some());
    found.problems[0].fault.clone()
}

#[test]
fn regress_the_first_stored_plan_still_reads_and_gives_the_same_document() {
    let found = read(FILE, GOLDEN);
    assert_eq!(found.problems, []);
    let plan = &found.plans[0];
    assert_eq!((plan.number, plan.haul.as_str()), (1, "stone"));
    assert_eq!(plan.units, ["101", "102"]);
    assert_eq!(plan.valid_until.unwrap().to_string(), "2027-03-31");
    let stored: Value = serde_json::from_str(GOLDEN).unwrap();
    let again: Value = serde_json::from_str(&plan.text()).unwrap();
    assert_eq!(again, stored);
    // Written again and read again: the same plan, to the last digit.
    assert_eq!(read(FILE, &plan.text()).plans, found.plans);
}

#[test]
fn the_hash_of_the_inputs_is_that_of_their_lines() {
    let plan = golden();
    assert!(plan.inputs.is_sorted_by(|one, other| one.path < other.path));
    let mut lines = String::new();
    for input in &plan.inputs {
        lines.extend([input.hash.digits(), "  ", &input.path, "\n"]);
    }
    assert_eq!(plan.inputs_hash, Hash::of_bytes(lines.as_bytes()));
}

#[test]
fn table_hashes_are_those_of_the_standards() {
    // FIPS 180-4, the message "abc".
    let abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assert_eq!(Hash::of_bytes(b"abc").digits(), abc);
    // RFC 8785, section 3.2.2: the sample and its canonical text.
    let sample = json!({
        "numbers": [333_333_333.333_333_3, 1E30, 4.50, 2e-3, 1e-27],
        "literals": [null, true, false],
    });
    let canonical =
        r#"{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]}"#;
    assert_eq!(Hash::of_json(&sample), Hash::of_bytes(canonical.as_bytes()));
}

#[test]
fn every_edit_of_a_value_is_found() {
    for (from, to) in [
        ("\"responsible\":\"", "\"responsible\":\"X"),
        ("\"valid_until\":\"2027-03-31\"", "\"valid_until\":null"),
        ("\"units\":[\"101\",", "\"units\":[\"102\","),
        ("\"driver\":\"road pressure\"", "\"driver\":\"set\""),
        ("\"cap_kmh\":", "\"cap_kmh\":1"),
        ("\"cautions\":[", "\"more\":0,\"cautions\":["),
    ] {
        assert!(GOLDEN.contains(from), "{from}");
        let found = fault(&GOLDEN.replacen(from, to, 1));
        assert!(matches!(found, IssuedFault::Edited { .. }), "{from}: {found:?}");
    }
}

#[test]
fn spacing_and_order_are_no_edits() {
    let document: Value = serde_json::from_str(GOLDEN).unwrap();
    assert_eq!(read(FILE, &format!("{document:#}")).problems, []);
    let Value::Object(keys) = document else { panic!("a document is an object") };
    let turned: serde_json::Map<String, Value> = keys.into_iter().rev().collect();
    assert_eq!(read(FILE, &Value::Object(turned).to_string()).problems, []);
}

#[test]
fn what_is_no_issued_plan_is_told_as_that() {
    assert!(matches!(fault("{"), IssuedFault::NotReadable { line: Some(1), .. }));
    assert!(matches!(fault(""), IssuedFault::NotReadable { .. }));
    assert!(matches!(fault("[]"), IssuedFault::OtherSchema { .. }));
    let newer = GOLDEN.replacen("airtide.issued/1", "airtide.issued/9", 1);
    assert!(matches!(fault(&newer), IssuedFault::OtherSchema { schema } if schema.ends_with('9')));
    let lacking = GOLDEN.replacen("\"number\":1,", "", 1);
    assert!(matches!(fault(&lacking), IssuedFault::NotReadable { .. }));
    let copied = read("plans/stone-2.json", GOLDEN);
    assert!(copied.plans.is_empty());
    assert!(matches!(&copied.problems[0].fault, IssuedFault::Renamed { id } if id == "stone-1"));
    let elsewhere = read("plans/old/stone-1.json", GOLDEN);
    assert!(elsewhere.plans.is_empty() && elsewhere.problems.is_empty());
}

#[test]
fn the_plan_issued_last_is_in_force_on_the_days_it_covers() {
    let plans = [
        plan("rock", 1, "2027-01-10", None, &["1", "2"]),
        plan("rock", 2, "2027-02-01", Some("2027-02-28"), &["1"]),
    ];
    let on = |unit: &str, day: &str| match in_force(&plans, unit, day.parse().unwrap()) {
        InForce::One(plan) => Some(plan.number),
        InForce::None => None,
        InForce::Two(..) => panic!("no unit has two"),
    };
    assert_eq!(on("1", "2027-01-09"), None, "not begun");
    assert_eq!(on("1", "2027-01-10"), Some(1));
    assert_eq!(on("1", "2027-01-31"), Some(1));
    assert_eq!(on("1", "2027-02-01"), Some(2));
    assert_eq!(on("1", "2027-02-28"), Some(2), "the last day counts");
    assert_eq!(on("1", "2027-03-01"), Some(1), "the one before holds on");
    assert_eq!(on("2", "2027-02-10"), Some(1), "not assigned the second");
    assert_eq!(on("3", "2027-02-10"), None);
}

#[test]
fn plans_of_one_haul_and_day_follow_by_number_and_those_of_two_hauls_are_in_dispute() {
    let day = "2027-01-10";
    let same = [plan("rock", 1, day, None, &["1"]), plan("rock", 2, day, None, &["1"])];
    assert!(matches!(in_force(&same, "1", day.parse().unwrap()), InForce::One(p) if p.number == 2));
    let two = [
        plan("night", 4, day, Some("2027-01-20"), &["1", "2"]),
        plan("rock", 1, day, None, &["1"]),
    ];
    let InForce::Two(one, other) = in_force(&two, "1", day.parse().unwrap()) else {
        panic!("both claim the unit")
    };
    assert_eq!((one.id.as_str(), other.id.as_str()), ("night-4", "rock-1"));
    assert!(matches!(in_force(&two, "2", day.parse().unwrap()), InForce::One(_)));
    let opened = |today: &str| Opened {
        path: PathBuf::new(),
        day: today.parse().unwrap(),
        folder: Folder::default(),
        survey: None,
        problems: Vec::new(),
    };
    let issued = Issued { plans: two.to_vec(), problems: Vec::new() };
    let disputes = |today: &str| -> Vec<(String, IssuedFault)> {
        issued_problems(&opened(today), &issued)
            .into_iter()
            .filter(|problem| matches!(problem.fault, IssuedFault::TwoInForce { .. }))
            .map(|problem| (problem.file, problem.fault))
            .collect()
    };
    // Seen before it begins and while it lasts; once the first has ended nobody disputes.
    let from = |day: &str| IssuedFault::TwoInForce {
        unit: "1".to_owned(),
        other: "plans/rock-1.json".to_owned(),
        from: day.parse().unwrap(),
    };
    let file = "plans/night-4.json".to_owned();
    assert_eq!(disputes("2027-01-01"), [(file.clone(), from("2027-01-10"))]);
    assert_eq!(disputes("2027-01-20"), [(file, from("2027-01-20"))]);
    assert_eq!(disputes("2027-01-21"), []);
    // A plan issued later settles it.
    let settled = [&two[..], &[plan("night", 5, "2027-01-11", None, &["1"])]].concat();
    let settled = in_force(&settled, "1", "2027-01-12".parse().unwrap());
    assert!(matches!(settled, InForce::One(p) if p.number == 5));
}
