//! Sheets laid out in different ways, proposed, described and imported. Numbers are invented
//! except where a test names its source.

mod list;
mod pressure_columns;
mod speed_columns;

use model::tire::{Fitment, MakerRow};
use proptest::prelude::*;

use super::{Mapping, Proposal, SheetProblem, import, propose, read_sheets};

/// The first proposal for the first sheet.
fn proposed(bytes: &[u8], file: &str) -> Proposal {
    let sheets = read_sheets(bytes, file).unwrap();
    propose(&sheets[0]).into_iter().next().unwrap()
}

/// Rows and problems under a mapping, which must survive being written to TOML.
fn imported(bytes: &[u8], file: &str, mapping: &Mapping) -> (Vec<MakerRow>, Vec<SheetProblem>) {
    let text = toml_edit::ser::to_string(mapping).unwrap();
    assert_eq!(&toml_edit::de::from_str::<Mapping>(&text).unwrap(), mapping, "{text}");
    import(bytes, file, mapping).unwrap()
}

fn told(problems: &[SheetProblem]) -> Vec<String> {
    problems.iter().map(ToString::to_string).collect()
}

/// A row in short: fitment, kg, km/h, kPa, rounded to one decimal.
fn short(row: &MakerRow) -> (char, f64, f64, f64) {
    let tenth = |value: f64| (value * 10.0).round() / 10.0;
    let fitment = match row.fitment {
        Fitment::Single => 'S',
        Fitment::Dual => 'D',
    };
    let (load, speed) = (tenth(row.load.as_kg()), tenth(row.speed.as_kmh()));
    (fitment, load, speed, tenth(row.pressure.as_kpa()))
}

proptest! {
    #[test]
    fn whatever_a_table_holds_a_proposal_can_be_imported_and_described(
        rows in prop::collection::vec(
            prop::collection::vec(
                prop::sample::select(vec![
                    "", "-", "S", "Dual", "Load (kg)", "Pressure kPa", "Speed km/h", "psi", "50 km/h",
                    "6,175", "7,5", "1e999", "500", "600", "620 kPa*", "80 mph", "title", "\u{2020}",
                ]),
                0..6,
            ),
            0..12,
        ),
    ) {
        let lines: Vec<String> = rows.iter().map(|cells| cells.join(";")).collect();
        let text = lines.join("\n");
        for sheet in read_sheets(text.as_bytes(), "any.csv").into_iter().flatten() {
            for proposal in propose(&sheet) {
                prop_assert!(!proposal.mapping.describe().is_empty());
                if let Ok((rows, problems)) = import(text.as_bytes(), "any.csv", &proposal.mapping) {
                    prop_assert_eq!((rows.len(), problems.len()), (proposal.rows, proposal.problems));
                }
            }
        }
    }
}
