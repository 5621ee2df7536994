//! Approvals of a tire maker: which count on the day of the plan, and what they do to the tire.

mod quarry_edits;

use model::tire::Lapse;
use quarry_edits::*;
use survey::Folder;

const FIRST: &str = "approvals/letter-14.toml";
const SECOND: &str = "approvals/letter-15.toml";
const NAME: &str = "drive-11r22-5-g";

fn letter(number: &str, rows: &str) -> String {
    format!(
        "tire = \"{NAME}\"\nnumber = \"{number}\"\nanswered_by = \"Field engineering of the maker\"\ndate = 2026-05-04\nexpires = 2028-05-03\nrecommended_pressure = \"row\"\n\n[given_for]\ndesignation = \"11R22.5\"\nservice_description = \"144/142 l\"\nrim = \"8.25 x 22.5\"\n\n[asked]\nwarmest_c = 38\ndistance_per_cycle_km = 62\nhold_min = 20\nloads = [{{ fitment = \"dual\", load_kg = 2000, speed_kmh = 30, distance_km = 2.4 }}]\n{rows}"
    )
}

fn row(load_kg: u32, speed_kmh: u32, pressure_kpa: u32) -> String {
    format!(
        "\n[[rows]]\nfitment = \"dual\"\nload_kg = {load_kg}\nspeed_kmh = {speed_kmh}\npressure_kpa = {pressure_kpa}\nhold_distance_km = 3\n"
    )
}

/// The quarry with one approval instead of the rows in the tire's own file.
fn approved() -> Folder {
    let mut folder = edited(TIRE, "[rim]\n", "[rim]\nsize = \"8.25X22.5\"\n");
    let text = folder.text(TIRE).unwrap().to_owned();
    let own = text.find("[approved]").unwrap();
    folder.insert(TIRE, &text[..own]);
    folder.insert(FIRST, letter("L-14", &(row(2000, 30, 330) + &row(2500, 60, 480))));
    folder
}

#[test]
fn an_approval_in_force_becomes_the_makers_table() {
    let (survey, problems) = load(&approved());
    assert!(problems.is_empty(), "{problems:#?}");
    let survey = survey.unwrap();
    let table = survey.tires[NAME].maker_table.as_ref().unwrap();
    assert!(table.approved && table.lapsed.is_none());
    assert_eq!(table.document, "L-14, 2026-05-04");
    assert_eq!(table.rows.len(), 2);
    assert!((table.rows[0].hold_distance.unwrap().as_km() - 3.0).abs() < 1e-9);
    let approval = &survey.approvals[0];
    assert!((approval.asked.loads[0].load.as_kg() - 2000.0).abs() < 1e-9);
    assert_eq!(approval.rim, "8.25 x 22.5");
    assert_eq!(survey.hauls.len(), 1);
    // Every group of the haul on this tire sees it.
    assert_eq!(survey.hauls[0].combination.groups[1].tire.maker_table.as_ref(), Some(table));
}

#[test]
fn an_approval_counts_on_its_last_day_and_not_the_day_after() {
    let mut folder = approved();
    edit(&mut folder, FIRST, "expires = 2028-05-03", "expires = 2027-03-01");
    assert!(problems(&folder).is_empty());
    edit(&mut folder, FIRST, "expires = 2027-03-01", "expires = \"2027-02-28\"");
    tells(
        &folder,
        "approvals/letter-14.toml:5:11: warning: this approval counted until 2027-02-28; its rows only advise now — ask the tire maker to renew it",
    );
    let survey = load(&folder).0.unwrap();
    let table = survey.tires[NAME].maker_table.as_ref().unwrap();
    let on = model::date::Date::new(2027, 2, 28).unwrap();
    assert!(!table.approved);
    assert_eq!(table.lapsed, Some(Lapse::Expired { on }));
    assert_eq!(table.rows.len(), 2);
    assert_eq!(survey.hauls.len(), 1, "the haul is planned without it");
}

#[test]
fn another_tire_or_rim_needs_a_new_approval() {
    let lapse =
        |folder: &Folder| load(folder).0.unwrap().tires[NAME].maker_table.as_ref().unwrap().lapsed;
    let mut folder = approved();
    edit(&mut folder, FIRST, "designation = \"11R22.5\"", "designation = \"12R22.5\"");
    tells(&folder, "was given for 12R22.5 144/142 l, but the tire is 11R22.5 144/142 L");
    assert_eq!(lapse(&folder), Some(Lapse::TireChanged));
    let mut folder = approved();
    edit(&mut folder, FIRST, "144/142 l", "146/143 L");
    assert_eq!(lapse(&folder), Some(Lapse::TireChanged));
    let mut folder = approved();
    edit(&mut folder, TIRE, "8.25X22.5", "9.00X22.5");
    tells(&folder, "was given for the rim 8.25 x 22.5, but the rim is 9.00X22.5");
    assert_eq!(lapse(&folder), Some(Lapse::RimChanged));
    let mut folder = approved();
    edit(&mut folder, TIRE, "size = \"8.25X22.5\"\n", "");
    tells(&folder, "the tire's file does not say which rim is fitted — read the stamp");
    assert!(load(&folder).0.unwrap().hauls.is_empty(), "unknown is never a pass");
}

#[test]
fn rows_of_several_approvals_in_force_count_together() {
    let mut folder = approved();
    let second = letter("L-15", &row(3000, 80, 620)).replace("2026-05-04", "2027-01-11");
    folder.insert(SECOND, &*second);
    let table = load(&folder).0.unwrap().tires[NAME].maker_table.clone().unwrap();
    assert_eq!(table.document, "L-14, 2026-05-04; L-15, 2027-01-11");
    assert_eq!(table.rows.len(), 3);
    // One that lapsed while another is in force is history, and nobody has to be told.
    let old = second.replace("2028-05-03", "2027-01-31");
    folder.insert(SECOND, old);
    assert!(problems(&folder).is_empty());
    let table = load(&folder).0.unwrap().tires[NAME].maker_table.clone().unwrap();
    assert_eq!((table.approved, table.rows.len()), (true, 2));
}

#[test]
fn approvals_that_contradict_each_other_are_told_with_both_places() {
    let mut folder = approved();
    folder.insert(SECOND, letter("L-15", &row(2000, 30, 380)));
    let line = line_of(&folder, FIRST, "pressure_kpa = 330");
    tells(&folder, "approvals/letter-15.toml:23:16: 380 kPa (55 psi) for the same load, speed");
    tells(&folder, &format!("as 330 kPa (48 psi) in approvals/letter-14.toml, line {line}"));
    assert!(load(&folder).0.unwrap().hauls.is_empty());
    folder.insert(SECOND, letter("L-15", &row(2000, 30, 330)));
    assert!(problems(&folder).is_empty(), "the same answer twice is no contradiction");
}

#[test]
fn days_are_days_in_their_order() {
    let told = |old: &str, new: &str, words: &str| {
        let mut folder = approved();
        edit(&mut folder, FIRST, old, new);
        tells(&folder, words);
    };
    let date = "date = 2026-05-04";
    told(date, "date = 2027-05-04", "date = 2027-05-04 lies in the future; today is 2027-03-01");
    told(date, "date = \"4 May 2026\"", "date = \"4 May 2026\" is not a day");
    told(date, "date = \"2026-02-30\"", "is not a day");
    told(date, "date = 2026-02-30", "not valid TOML");
    let expires = "expires = 2028-05-03";
    told(expires, "expires = 2025-05-03", "the last day 2025-05-03 lies before the first");
}

#[test]
fn approvals_name_a_tire_and_stay_within_it() {
    let told = |old: &str, new: &str, words: &str| {
        let mut folder = approved();
        edit(&mut folder, FIRST, old, new);
        tells(&folder, words);
    };
    told(NAME, "drive-11r22-5-h", "there is no such file in tires/ — did you mean");
    told("pressure_kpa = 330", "pressure_kpa = 750", "is above molded_maximum_kpa");
    told("pressure_kpa = 330", "pressure_kpa = 60", "did you mean psi?");
    told("speed_kmh = 60", "speed_kmh = 130", "is above the speed symbol L");
    told(
        "warmest_c = 38",
        "warmest_c = 30",
        "asked about air up to 30 °C; the survey has up to 36",
    );
    told("recommended_pressure = \"row\"", "recommended_pressure = \"rows\"", "\"row\"?");
}

#[test]
fn own_approved_rows_count_beside_approvals() {
    let mut folder = edited(TIRE, "[rim]\n", "[rim]\nsize = \"8.25X22.5\"\n");
    folder.insert(FIRST, letter("L-14", &row(2500, 60, 480)));
    let table = load(&folder).0.unwrap().tires[NAME].maker_table.clone().unwrap();
    assert_eq!(table.rows.len(), 4);
    edit(&mut folder, TIRE, "for_this_fleet = true", "for_this_fleet = false");
    let table = load(&folder).0.unwrap().tires[NAME].maker_table.clone().unwrap();
    assert_eq!((table.approved, table.rows.len()), (true, 1), "rows that only advise stay out");
}
