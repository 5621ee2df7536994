//! One row for each load, speed and pressure.

use proptest::prelude::*;
use rust_xlsxwriter::{Format, Workbook};

use super::*;
use crate::sheet::{Confidence, Fault, FixedFitment, Layout, SheetError, Wanted};

/// A workbook with titles, a merged cell, thousands as text, a footnote and a spoiled cell.
fn workbook() -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet().set_name("Rows").unwrap();
    let plain = Format::new();
    sheet.merge_range(0, 0, 0, 4, "Low-speed inflation, demonstration tire", &plain).unwrap();
    sheet
        .write_row(
            2,
            0,
            [
                "Single / dual",
                "Load per tire (lb)",
                "Max speed (mph)",
                "Cold psi",
                "Hold distance (mi)",
            ],
        )
        .unwrap();
    sheet.merge_range(3, 0, 5, 0, "Dual", &plain).unwrap();
    for (row, (speed, psi)) in (3_u32..).zip([(15.0, 45.0), (35.0, 60.0), (65.0, 90.0)]) {
        sheet.write(row, 1, "5,500").unwrap();
        sheet.write(row, 2, speed).unwrap();
        sheet.write(row, 3, psi).unwrap();
    }
    sheet.write(3, 4, 2.5).unwrap();
    sheet.write(4, 3, "60*").unwrap();
    sheet.write_row(6, 0, ["S", "six thousand", "", "70"]).unwrap();
    sheet.write(8, 0, "* Not on hot roads.").unwrap();
    book.add_worksheet().set_name("Notes").unwrap();
    book.save_to_buffer().unwrap()
}

#[test]
fn a_list_is_proposed_described_and_imported() {
    let bytes = workbook();
    let proposal = proposed(&bytes, "rows.xlsx");
    assert_eq!((proposal.confidence, proposal.mapping.layout), (Confidence::Written, Layout::List));
    assert_eq!(
        proposal.mapping.describe(),
        [
            "Sheet 'Rows': headings in row 3, table to the end.",
            "Loads on one tire: in column 'Load per tire (lb)', in lb.",
            "Cold pressures: in column 'Cold psi', in psi.",
            "Highest speeds: in column 'Max speed (mph)', in mph.",
            "Single or dual: in column 'Single / dual'.",
            "Hold distances: in column 'Hold distance (mi)', in mi.",
            "A blank cell beside a value repeats the cell above.",
            "6,175.5 is six thousand: the point stands before decimals.",
        ]
    );
    let mapping = Mapping { repeat_blanks: false, ..proposal.mapping };
    let (rows, problems) = imported(&bytes, "rows.xlsx", &mapping);
    let short: Vec<_> = rows.iter().map(short).collect();
    assert_eq!(
        short,
        [('D', 2494.8, 24.1, 310.3), ('D', 2494.8, 56.3, 413.7), ('D', 2494.8, 104.6, 620.5)]
    );
    assert!((rows[0].hold_distance.unwrap().as_m() - 2.5 * 1609.344).abs() < 1e-9);
    assert_eq!(rows[1].hold_distance, None);
    assert_eq!(
        told(&problems),
        [
            "sheet 'Rows', cell D5 '60*': carries a footnote mark: read the footnote, it may limit the row",
            "sheet 'Rows', cell B7 'six thousand': is not a load; row left out",
            "sheet 'Rows', cell C7 '': a highest speed is missing; row left out",
            "sheet 'Rows', cell A9 '* Not on hot roads.': a line of text, not a row; read it, it may limit the rows",
        ]
    );
}

#[test]
fn a_sheet_must_be_named_where_there_are_several() {
    let bytes = workbook();
    let mapping = Mapping { sheet: None, ..proposed(&bytes, "rows.xlsx").mapping };
    let error = import(&bytes, "rows.xlsx", &mapping).unwrap_err();
    assert_eq!(error.to_string(), "rows.xlsx: name one of its sheets in `sheet`: Rows, Notes");
    let mapping = Mapping { sheet: Some("rows".into()), ..mapping };
    assert!(matches!(import(&bytes, "rows.xlsx", &mapping), Err(SheetError::NoSheet { .. })));
}

#[test]
fn what_the_sheet_does_not_say_is_asked_for() {
    let text = "Load;Pressure\n2500;620\n3000;750\n";
    let proposal = proposed(text.as_bytes(), "bare.csv");
    assert_eq!((proposal.confidence, proposal.rows), (Confidence::Incomplete, 0));
    assert_eq!(
        proposal.reasons,
        [
            "no unit of pressure is written; kPa fits the numbers",
            "no unit of load is written; kg goes with kPa",
            "the sheet does not say the speed; fill in `speed`",
            "the sheet does not say single or dual; fill in `fitment`",
        ]
    );
    let error = import(text.as_bytes(), "bare.csv", &proposal.mapping).unwrap_err();
    assert!(
        error.to_string().contains("needs `speed` (such as '65 mph'), `speed_column`"),
        "{error}"
    );
    let mapping = Mapping {
        speed: Some("80 km/h".into()),
        fitment: Some(FixedFitment::Dual),
        ..proposal.mapping
    };
    let (rows, problems) = imported(text.as_bytes(), "bare.csv", &mapping);
    assert_eq!((rows.len(), problems.len()), (2, 0));
}

#[test]
fn a_slip_between_psi_and_kpa_is_told_with_the_likely_unit() {
    let text = "Load (kg),Pressure (kPa),Speed (km/h),Fitment\n2500,85,80,S\n2600,620,80,S\n";
    let (rows, problems) =
        imported(text.as_bytes(), "slip.csv", &proposed(text.as_bytes(), "slip.csv").mapping);
    assert_eq!(rows.len(), 1);
    assert_eq!(
        told(&problems),
        [
            "sheet 'slip.csv', cell A2 '2500': a cold pressure of 85 kPa is not credible; as psi the number would be; row left out"
        ]
    );
}

#[test]
fn repeated_contradicting_and_falling_rows_are_told() {
    let text = "Load (kg),Pressure (kPa),Speed (km/h),Fitment
2500,500,80,S
2500,500,80,S
2700,550,80,S
2700,600,80,S
2900,600,80,S
2400,700,80,S
";
    let (rows, problems) =
        imported(text.as_bytes(), "a.csv", &proposed(text.as_bytes(), "a.csv").mapping);
    let told: Vec<_> =
        problems.iter().map(|p| (p.place.to_string(), p.fault.leaves_out())).collect();
    assert_eq!(rows.len(), 3, "{rows:?}");
    assert!(
        problems.iter().any(|p| matches!(p.fault, Fault::Repeats { .. }) && p.place.row() == 3)
    );
    let contradicting = problems
        .iter()
        .filter(|p| matches!(p.fault, Fault::Contradicts { same: Wanted::Pressure, .. }));
    assert_eq!(contradicting.map(|p| p.place.row()).collect::<Vec<_>>(), [5, 6], "{told:?}");
    assert!(
        problems
            .iter()
            .any(|p| matches!(p.fault, Fault::LoadFallsWithPressure { .. }) && p.place.row() == 7)
    );
}

#[test]
fn a_mapping_that_does_not_fit_is_refused_with_what_there_is() {
    let text = "Load (kg),Pressure (kPa),Speed (km/h),Fitment\n2500,500,80,S\n";
    let sound = proposed(text.as_bytes(), "a.csv").mapping;
    let error =
        |mapping: Mapping| import(text.as_bytes(), "a.csv", &mapping).unwrap_err().to_string();
    let wrong = Mapping { load_column: Some("Weight".into()), ..sound.clone() };
    assert_eq!(
        error(wrong),
        "a.csv: `load_column`: no column 'Weight' in row 1; there are: A 'Load (kg)', B 'Pressure (kPa)', C 'Speed (km/h)', D 'Fitment'"
    );
    let twice = Mapping { speed: Some("80 km/h".into()), ..sound.clone() };
    assert!(error(twice).contains("cannot have `speed` beside `speed_column`"));
    let outside = Mapping { header_row: 9, ..sound.clone() };
    assert!(error(outside).contains("`header_row` 9 is not in the sheet, which has 2 rows"));
    let letters = Mapping { load_column: Some("a".into()), ..sound };
    assert_eq!(import(text.as_bytes(), "a.csv", &letters).unwrap().0.len(), 1);
    let unknown = toml_edit::de::from_str::<Mapping>(
        "layout = \"list\"\nheader_row = 1\nload_unit = \"kg\"\npressure_unit = \"kPa\"\ncolour = 1",
    );
    assert!(unknown.unwrap_err().to_string().contains("colour"));
}

proptest! {
    #[test]
    fn every_cell_is_a_row_or_a_problem(cells in prop::collection::vec(("[0-9a-z,.]{0,6}", "[0-9a-z,.]{0,5}"), 1..20)) {
        let mut text = "Load (kg);Pressure (kPa)\n".to_owned();
        for (load, pressure) in &cells {
            text.extend([load, ";", pressure, "\n"]);
        }
        let mapping = toml_edit::de::from_str::<Mapping>("layout = \"list\"\nheader_row = 1\nload_unit = \"kg\"\npressure_unit = \"kPa\"
load_column = \"A\"\npressure_column = \"B\"\nspeed = \"80 km/h\"\nfitment = \"dual\"").unwrap();
        let (rows, problems) = import(text.as_bytes(), "a.csv", &mapping).unwrap();
        let mut told: Vec<usize> = problems.iter().filter(|p| p.fault.leaves_out() || p.fault == Fault::Remark).map(|p| p.place.row()).collect();
        told.sort_unstable();
        told.dedup();
        let filled = cells.iter().filter(|(load, pressure)| !load.is_empty() || !pressure.is_empty()).count();
        prop_assert_eq!(rows.len() + told.len(), filled);
    }
}
