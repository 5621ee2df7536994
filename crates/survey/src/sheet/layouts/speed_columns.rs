//! Speeds across; loads down and pressures in the cells, or the other way.

use rust_xlsxwriter::{Format, Workbook};

use super::*;
use crate::sheet::{Confidence, Decimal, Layout, PressureUnit};

/// Decimal commas, thousands points, units in the heading cells, a title and a footnote.
const METRIC: &str = "Reifen Vorführung, Zwilling;;;\nLuftdruck kalt in bar;;;\n;;;\nLast kg;20 km/h;50 km/h;80 km/h\n2.000;4,5;5,2;6,0\n2.500;5,5;6,4;7,9\n3.000;6,5;7,75;-\n(1) nur beladen;;;\n";

#[test]
fn a_metric_table_with_decimal_commas_is_imported() {
    let proposal = proposed(METRIC.as_bytes(), "metric.csv");
    let mapping = &proposal.mapping;
    assert_eq!((mapping.layout, mapping.decimal), (Layout::SpeedColumns, Decimal::Comma));
    assert_eq!(
        (mapping.pressure_unit, proposal.confidence),
        (PressureUnit::Bar, Confidence::Written),
        "{:?}",
        proposal.reasons
    );
    assert_eq!(
        mapping.describe(),
        [
            "Headings in row 4, table to the end.",
            "Loads on one tire: in column 'Last kg', in kg.",
            "Cold pressures: in the cells, in bar.",
            "Highest speeds: across in columns 'B' to 'D', in km/h.",
            "Every row is for dual tires.",
            "6.175,5 is six thousand: the comma stands before decimals.",
        ]
    );
    let (rows, problems) = imported(METRIC.as_bytes(), "metric.csv", mapping);
    let short: Vec<_> = rows.iter().map(short).collect();
    assert_eq!(
        short,
        [
            ('D', 2000.0, 20.0, 450.0),
            ('D', 2000.0, 50.0, 520.0),
            ('D', 2000.0, 80.0, 600.0),
            ('D', 2500.0, 20.0, 550.0),
            ('D', 2500.0, 50.0, 640.0),
            ('D', 2500.0, 80.0, 790.0),
            ('D', 3000.0, 20.0, 650.0),
            ('D', 3000.0, 50.0, 775.0),
        ]
    );
    assert_eq!(
        told(&problems),
        [
            "sheet 'metric.csv', cell D7 '-': 1 cells of the table are empty, the first here; no row for them",
            "sheet 'metric.csv', cell A8 '(1) nur beladen': a line of text, not a row; read it, it may limit the rows",
        ]
    );
}

#[test]
fn the_same_table_in_another_encoding_and_as_a_workbook_gives_the_same_rows() {
    let latin: Vec<u8> = METRIC.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    let mapping = proposed(METRIC.as_bytes(), "metric.csv").mapping;
    let (expected, _) = imported(METRIC.as_bytes(), "metric.csv", &mapping);
    assert_eq!(imported(&latin, "metric.csv", &mapping).0, expected);
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.merge_range(0, 0, 0, 3, "Cold pressures in bar, dual tires", &Format::new()).unwrap();
    sheet.merge_range(1, 1, 1, 3, "Speed, km/h", &Format::new()).unwrap();
    sheet.write(2, 0, "Load, kg").unwrap();
    for (column, speed) in (1_u16..).zip([20.0, 50.0, 80.0]) {
        sheet.write(2, column, speed).unwrap();
    }
    let values = [(2000.0, [4.5, 5.2, 6.0]), (2500.0, [5.5, 6.4, 7.9]), (3000.0, [6.5, 7.75, 0.0])];
    for (row, (load, pressures)) in (3_u32..).zip(values) {
        sheet.write(row, 0, load).unwrap();
        for (column, pressure) in (1_u16..).zip(pressures).filter(|(_, pressure)| *pressure > 0.0) {
            sheet.write(row, column, pressure).unwrap();
        }
    }
    let bytes = book.save_to_buffer().unwrap();
    let proposal = proposed(&bytes, "metric.xlsx");
    assert_eq!((proposal.confidence, &proposal.reasons[..]), (Confidence::Written, &[][..]));
    let rows = imported(&bytes, "metric.xlsx", &proposal.mapping).0;
    assert_eq!(
        rows.iter().map(short).collect::<Vec<_>>(),
        expected.iter().map(short).collect::<Vec<_>>()
    );
}

#[test]
fn pressures_down_and_loads_in_the_cells_are_told_apart() {
    let text =
        "Single tires\nPressure (psi);6 mph;19 mph\n69;6119 lb;4487 lb\n73;6306 lb;4631 lb\n";
    let proposal = proposed(text.as_bytes(), "down.csv");
    assert_eq!(proposal.mapping.pressure_column.as_deref(), Some("Pressure (psi)"));
    let (rows, problems) = imported(text.as_bytes(), "down.csv", &proposal.mapping);
    assert_eq!((rows.len(), problems.len()), (4, 0));
    assert!((rows[3].load.as_lb() - 4631.0).abs() < 1e-6);
    assert!((rows[3].pressure.as_psi() - 73.0).abs() < 1e-9);
}

#[test]
fn a_psi_table_read_as_kpa_gives_no_row_but_says_why() {
    let text = "dual\nLoad lb;20 mph;50 mph\n4,000;65;85\n5,000;80;100\n";
    let mut mapping = proposed(text.as_bytes(), "slip.csv").mapping;
    mapping.pressure_unit = PressureUnit::Kilopascal;
    let (rows, problems) = imported(text.as_bytes(), "slip.csv", &mapping);
    assert_eq!((rows.len(), problems.len()), (0, 4));
    assert!(told(&problems).iter().all(|told| told.contains("as psi the number would be")));
}
