//! The register of units, in TOML, as a table of text and as a workbook.

mod quarry_edits;

use quarry_edits::*;
use survey::{Folder, Measured, Unit};

const TOML_REGISTER: &str = "units.toml";
const STEER: &str = "steer-11r22-5-h";

const TOML: &str = r#"[[units]]
number = "T-101"
type = "tractor"
source_addresses = [11, 27]
sensors = [{ place = "drive.1.left.outer", verified = 2027-01-15 }, { place = "drive" }]
fitted = [
    { what = "delivery", share_pct = 91, date = 2027-02-11 },
    { what = "conductance", channel = "drive", share_pct = 87.5, date = 2027-02-11 },
]

[units.tires]
"drive.2.left.inner" = "steer-11r22-5-h"

[[units]]
number = "P-7"
type = "tipper"
pool = true
"#;

const CSV: &str = "Number;Type;Pool;Source addresses;tire drive.2.left.inner;sensor drive.1.left.outer;sensor drive;fitted delivery;fitted conductance drive;fitted date\nT-101;tractor;;0x0B 27;steer-11r22-5-h;2027-01-15;yes;91 %;87,5;2027-02-11\nP-7;tipper;yes;;;;;;;\n";

fn registered() -> Folder {
    let mut folder = quarry();
    folder.insert(TOML_REGISTER, TOML);
    folder
}

fn with(old: &str, new: &str) -> Folder {
    let mut folder = registered();
    edit(&mut folder, TOML_REGISTER, old, new);
    folder
}

fn sheet(old: &str, new: &str) -> Folder {
    assert!(CSV.contains(old));
    let mut folder = quarry();
    folder.insert(REGISTER, CSV.replacen(old, new, 1));
    folder
}

fn fleet(folder: &Folder) -> Vec<Unit> {
    let (survey, problems) = load(folder);
    assert!(problems.is_empty(), "{problems:#?}");
    survey.unwrap().fleet
}

#[test]
fn a_register_is_read_whole() {
    let fleet = fleet(&registered());
    assert_eq!(fleet.len(), 2);
    let truck = &fleet[0];
    assert_eq!((truck.number.as_str(), truck.vehicle.as_str()), ("T-101", "tractor"));
    assert_eq!(truck.source_addresses, [11, 27]);
    assert_eq!(truck.tires[0].position.to_string(), "drive.2.left.inner");
    assert_eq!(truck.sensors[0].verified.unwrap().to_string(), "2027-01-15");
    assert_eq!(truck.sensors[1].verified, None);
    assert_eq!(truck.fitted[0].measured, Measured::Delivery);
    assert_eq!(truck.fitted[1].measured, Measured::Conductance("drive".into()));
    assert!((truck.fitted[1].ratio - 0.875).abs() < 1e-12);
    assert!(fleet[1].pool && !truck.pool);
}

#[test]
fn a_table_of_text_and_a_workbook_say_the_same() {
    let toml = fleet(&registered());
    assert_eq!(fleet(&sheet("Number", "fleet number")), toml);
    let mut book = rust_xlsxwriter::Workbook::new();
    let page = book.add_worksheet();
    let day = rust_xlsxwriter::Format::new().set_num_format("yyyy-mm-dd");
    for (row, line) in (0_u32..).zip(CSV.lines()) {
        for (column, text) in (0_u16..).zip(line.split(';')) {
            match rust_xlsxwriter::ExcelDateTime::parse_from_str(text) {
                Ok(date) if text.len() == 10 && row > 0 => {
                    page.write_datetime_with_format(row, column, &date, &day).unwrap();
                }
                _ if text == "91 %" => {
                    page.write_number(row, column, 91.0).unwrap();
                }
                _ => {
                    page.write_string(row, column, text).unwrap();
                }
            }
        }
    }
    let mut folder = quarry();
    folder.insert("units.xlsx", book.save_to_buffer().unwrap());
    assert_eq!(fleet(&folder), toml);
}

#[test]
fn other_tires_of_units_belong_to_the_type() {
    let survey = load(&registered()).0.unwrap();
    let groups = &survey.hauls[0].combination.groups;
    assert_eq!(groups[1].tire.name, "drive-11r22-5-g");
    assert_eq!(groups[1].also_fitted.len(), 1);
    assert_eq!(groups[1].also_fitted[0].name, STEER);
    assert!(groups[0].also_fitted.is_empty() && groups[2].also_fitted.is_empty());
}

#[test]
fn a_combination_may_name_a_unit() {
    let mut folder = with("\"drive.2.left.inner\"", "drive");
    let text = folder.text(COMBINATION).unwrap().replace("tractor", "T-101");
    folder.insert(COMBINATION, text);
    let (survey, problems) = load(&folder);
    assert!(problems.is_empty(), "{problems:#?}");
    let combination = &survey.unwrap().hauls[0].combination;
    assert_eq!(combination.vehicles[0].name, "T-101");
    // Its whole drive group has the other tire, and nothing else.
    assert_eq!(combination.groups[1].tire.name, STEER);
    assert!(combination.groups[1].also_fitted.is_empty());
    edit(&mut folder, COMBINATION, "\"T-101\", \"tipper\"", "\"T-102\", \"tipper\"");
    tells(&folder, "no such file in vehicles/ or unit — did you mean \"T-101\"?");
}

#[test]
fn the_weakest_tire_of_a_group_is_held_against_its_load() {
    // The same size with a lower index at one position of the tridem.
    let mut folder =
        with("pool = true", "pool = true\ntires = { \"tridem.1.left.outer\" = \"light\" }");
    let light = folder.text(TIRE).unwrap().replace("144/142 L", "126/124 L");
    let light = light.replace("rated_load_single_lb = 6175\nrated_load_dual_lb = 5840\n", "");
    folder.insert("tires/light.toml", light);
    tells(
        &folder,
        "'tipper.tridem', laden: the worst tire carries 1837 kg (4051 lb), its dual rating is 1600 kg",
    );
}

#[test]
fn numbers_types_and_tires_are_known_ones() {
    let told = |old: &str, new: &str, words: &str| {
        let folder = with(old, new);
        tells(&folder, words);
        assert!(load(&folder).0.unwrap().hauls.is_empty(), "{words}");
    };
    told(
        "\"P-7\"",
        "\"T-101\"",
        "units.toml:15:10: the fleet number \"T-101\" stands already in line 2",
    );
    told("\"P-7\"", "\"tipper\"", "is also the name of a file in vehicles/");
    told(
        "\"tipper\"",
        "\"tiper\"",
        "there is no such file in vehicles/ — did you mean \"tipper\"?",
    );
    told(STEER, "steer-11r22-5-g", "there is no such file in tires/");
    told("pool = true", "pool = true\nsource_addresses = [254]", "is outside 0 to 253");
    told(
        "source_addresses",
        "pool = true\nsource_addresses",
        "a truck cannot be in the trailer pool",
    );
}

#[test]
fn positions_are_those_of_the_type() {
    let told = |position: &str, words: &str| {
        tells(&with("drive.2.left.inner", position), words);
    };
    told("rear.2.left.inner", "it has no axle group 'rear' — such as: steer, steer.1.left, drive");
    told("drive.3.left.inner", "'drive' has axles 1 to 2");
    told("drive.2.left", "'drive' has duals: say inner or outer");
    told("steer.1.left.inner", "'steer' has singles, not duals");
    told("drive.2.near.inner", "behind the group stands axle.side.mate, or nothing");
    assert!(problems(&with("drive.2.left.inner", "drive.2.LEFT.Inner")).is_empty());
}

#[test]
fn tires_of_units_suit_their_group() {
    let mut folder = registered();
    let text = folder.text(STEER_TIRE).unwrap();
    let text = text.replace("146/143 L", "146 L").replace("rated_load_dual_lb = 6005\n", "");
    folder.insert(STEER_TIRE, text);
    tells(&folder, "units.toml:12:24: 'steer-11r22-5-h' has no dual rating");
}

#[test]
fn a_fixed_pressure_stays_under_what_every_tire_may_hold() {
    // The drive tire is molded for 105 psi, the steer group is kept at 115 psi.
    let folder =
        with("\"drive.2.left.inner\" = \"steer-11r22-5-h\"", "steer = \"drive-11r22-5-g\"");
    tells(&folder, "793 kPa (115 psi) is above molded_maximum_kpa, 724 kPa");
}

#[test]
fn measured_values_have_a_day_and_a_channel_where_they_need_one() {
    let told = |old: &str, new: &str, words: &str| tells(&with(old, new), words);
    told("date = 2027-02-11", "date = 2027-12-11", "lies in the future");
    told("channel = \"drive\", ", "", "those of a channel, and none is named");
    told("channel = \"drive\"", "channel = \"driv\"", "the type has no air channel 'driv'");
    told("\"delivery\",", "\"delivery\", channel = \"drive\",", "belongs to no channel");
    told("verified = 2027-01-15", "verified = 2028-01-15", "lies in the future");
    tells(&sheet("2027-02-11", ""), "units.csv:2: measured values without the day");
    tells(&sheet("91 %", "0.91"), "units.csv:2: fitted delivery = 0.91 is not a share");
}

#[test]
fn columns_of_a_sheet_are_found_by_name() {
    tells(
        &sheet("Type", "Kind"),
        "units.csv:1: there is no column 'type'; the columns are: Number, Kind, Pool, Source addresses",
    );
    tells(&sheet("Type", "Kind"), "units.csv:1: warning: nothing reads the column 'Kind'");
    tells(&sheet("0x0B", "0xFF"), "units.csv:2: Source addresses = 0xFF is not a source address");
    tells(&sheet(";yes;;", ";perhaps;;"), "Pool = perhaps is neither yes nor no");
    tells(&sheet("P-7;", ";"), "units.csv:3: number is empty");
    tells(&sheet("P-7", "T-101"), "units.csv:3: the fleet number T-101 stands already in line 2");
    tells(&sheet("2027-01-15", "in spring"), "sensor drive.1.left.outer = in spring is not a day");
}

#[test]
fn a_unit_that_nothing_uses_is_told() {
    let mut folder = registered();
    folder.insert("vehicles/pup.toml", folder.text(TRAILER).unwrap().to_owned());
    edit(&mut folder, TOML_REGISTER, "type = \"tipper\"", "type = \"pup\"");
    tells(
        &folder,
        "units.toml:15:10: warning: unit \"P-7\": no combination has it or its type 'pup'",
    );
}

#[test]
fn there_is_one_register() {
    let mut folder = registered();
    folder.insert(REGISTER, CSV);
    tells(&folder, "units.csv: there is another register of units, units.toml — keep one");
}

#[test]
fn a_broken_register_is_told() {
    let mut folder = quarry();
    folder.insert(REGISTER, vec![0u8, 1, 2]);
    tells(&folder, "units.csv: units.csv: cannot be read");
    folder.insert(REGISTER, "");
    tells(&folder, "the file is empty");
}
