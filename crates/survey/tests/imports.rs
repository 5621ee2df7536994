//! Tracks and makers' tables that files of the survey name.

mod quarry_edits;

use std::fmt::Write;

use quarry_edits::*;
use survey::{Folder, Severity};

/// A straight track due north, rising 1 in 100, of about this many kilometers.
fn track(kilometers: f64) -> String {
    let mut text = "lat,lon,ele (m)\n".to_owned();
    let steps = 200;
    for step in 0..=steps {
        let share = f64::from(step) / f64::from(steps);
        // One degree of latitude near 46° is 111.15 km on the WGS 84 ellipsoid.
        let latitude = 46.0 + share * kilometers / 111.15;
        let elevation = 500.0 + share * kilometers * 10.0;
        writeln!(text, "{latitude:.7},7.0,{elevation:.2}").unwrap();
    }
    text
}

fn with_track(kilometers: f64) -> Folder {
    let mut folder = quarry();
    let text = folder.text(ROUTE).unwrap();
    let (from, to) = (text.find("[[elevation]]").unwrap(), text.find("[[lay_bys]]").unwrap());
    let text = format!("track = \"routes/bench.csv\"\n{}{}", &text[..from], &text[to..]);
    folder.insert(ROUTE, text);
    folder.insert("routes/bench.csv", track(kilometers));
    folder
}

#[test]
fn a_track_gives_the_elevation() {
    let (survey, problems) = load(&with_track(31.0));
    assert!(problems.is_empty(), "{problems:#?}");
    let survey = survey.unwrap();
    let route = &survey.hauls[0].route;
    let grade = route.profile.grade(route.legs[1].from, route.legs[1].to);
    assert!((grade - 0.01).abs() < 1e-4, "{grade}");
}

#[test]
fn a_track_that_does_not_cover_the_legs_is_told() {
    let folder = with_track(24.0);
    tells(&folder, "routes/bench-to-plant.toml:1:9: the track is 24");
    tells(&folder, "the legs 31 km");
    assert!(load(&folder).0.unwrap().hauls.is_empty());
}

#[test]
fn a_broken_track_is_told_where_it_is_named() {
    let mut folder = with_track(31.0);
    folder.insert("routes/bench.csv", vec![0u8, 1, 2]);
    tells(&folder, "routes/bench-to-plant.toml:1:9: routes/bench.csv: ");
    folder.insert("routes/bench.csv", "lat,lon\n46.0,7.0\n46.2,7.0\n");
    tells(&folder, "have an elevation: the grades of this track are unknown");
}

#[test]
fn a_bad_point_is_told_and_does_not_stop_the_haul() {
    let mut folder = with_track(31.0);
    let text = folder.text("routes/bench.csv").unwrap().replacen("7.0,", "seven,", 1);
    folder.insert("routes/bench.csv", text);
    let (survey, problems) = load(&folder);
    assert!(problems.iter().all(|problem| problem.severity == Severity::Warning));
    tells(&folder, "routes/bench.csv: warning: ");
    assert_eq!(survey.unwrap().hauls.len(), 1);
}

const ROWS: &str =
    "Load (kg);Pressure (kPa);Max. speed (km/h);Fitment\n2000;340;30;dual\n2000;410;60;dual\n";

fn with_rows(mapping: &str, table: &str) -> Folder {
    let mut folder = quarry();
    let text = folder.text(TIRE).unwrap();
    let from = text.find("[approved]").unwrap();
    let approved = "approved = { document = \"Letter 14\", for_this_fleet = true }\n";
    let head = text[..from].replacen("designation", &format!("{approved}{mapping}designation"), 1);
    folder.insert(TIRE, head);
    folder.insert("tires/rows.csv", table);
    folder
}

const MAPPING: &str = "maker_rows_file = \"tires/rows.csv\"\nmaker_rows_mapping = { layout = \"list\", header_row = 1, load_unit = \"kg\", load_column = \"A\", pressure_unit = \"kPa\", pressure_column = \"B\", speed_unit = \"km/h\", speed_column = \"C\", fitment_column = \"D\" }\n";

#[test]
fn rows_come_from_a_table_as_the_mapping_says() {
    let (survey, problems) = load(&with_rows(MAPPING, ROWS));
    assert!(problems.is_empty(), "{problems:#?}");
    let survey = survey.unwrap();
    let table = survey.tires["drive-11r22-5-g"].maker_table.as_ref().unwrap();
    assert_eq!(table.rows.len(), 2);
    assert!((table.rows[1].pressure.as_kpa() - 410.0).abs() < 1e-9);
    assert!((table.rows[1].speed.as_kmh() - 60.0).abs() < 1e-9);
    assert!(table.approved);
}

#[test]
fn a_table_without_mapping_gets_one_proposed() {
    let folder = with_rows("maker_rows_file = \"tires/rows.csv\"\n", ROWS);
    tells(&folder, "maker_rows_mapping is missing");
    let hint = problems(&folder)[0].hint().unwrap();
    let proposed = hint.split_once("add: ").unwrap().1;
    let mapping = format!("maker_rows_file = \"tires/rows.csv\"\n{proposed}\n");
    assert!(problems(&with_rows(&mapping, ROWS)).is_empty(), "{proposed}");
}

#[test]
fn a_bad_row_is_told_at_its_line() {
    let table = ROWS.replacen("2000;340", "two;340", 1);
    let folder = with_rows(MAPPING, &table);
    tells(&folder, "tires/rows.csv:2: warning: ");
    assert_eq!(
        load(&folder).0.unwrap().tires["drive-11r22-5-g"].maker_table.as_ref().unwrap().rows.len(),
        1
    );
    let folder = with_rows(MAPPING, &table.replacen("2000;410", "x;410", 1));
    tells(&folder, "no row of the table could be used");
}

#[test]
fn rows_without_a_document_are_refused() {
    let mut folder = with_rows(MAPPING, ROWS);
    edit(&mut folder, TIRE, "approved = { document = \"Letter 14\", for_this_fleet = true }\n", "");
    tells(&folder, "approved is missing: there are maker's rows");
}

#[test]
fn a_table_that_is_not_there_is_told_with_those_that_are() {
    let folder = with_rows(&MAPPING.replace("tires/rows.csv", "tires/row.csv"), ROWS);
    tells(&folder, "there is no such file in the survey — did you mean \"tires/rows.csv\"?");
}
