//! Pressures across, loads in the cells.

use rust_xlsxwriter::{Format, Workbook};

use super::*;
use crate::sheet::{Confidence, Layout, LoadUnit};

/// Loads of a 12-16.5 12PR loader tire by pressure at two speeds, as a maker's published table
/// prints them: the shape that a low-speed table has.
#[test]
fn table_a_published_low_speed_matrix_is_read_as_printed() {
    let text = "12-16.5 12PR single; inflation pressure (psi)\nSpeed (mph);69;73;76;80\n6;6,119;6,306;6,527;6,670\n19;4,487;4,631;4,774;4,895\n";
    let proposal = proposed(text.as_bytes(), "loader.csv");
    assert_eq!(proposal.mapping.layout, Layout::PressureColumns);
    let mapping = Mapping { load_unit: LoadUnit::Pound, ..proposal.mapping };
    let (rows, problems) = imported(text.as_bytes(), "loader.csv", &mapping);
    assert_eq!(told(&problems), [""; 0]);
    let printed = [(69, 6119, 4487), (73, 6306, 4631), (76, 6527, 4774), (80, 6670, 4895)];
    for (i, (psi, at_6, at_19)) in printed.into_iter().enumerate() {
        for (row, pounds, mph) in [(&rows[i], at_6, 6.0), (&rows[i + 4], at_19, 19.0)] {
            assert!((row.load.as_lb() - f64::from(pounds)).abs() < 1e-6);
            assert!((row.pressure.as_psi() - f64::from(psi)).abs() < 1e-9);
            assert!((row.speed.as_mph() - mph).abs() < 1e-9);
            assert_eq!(row.fitment, Fitment::Single);
        }
    }
}

/// Two stacked heading rows, S and D rows, a block for each speed, blank and dashed cells.
fn blocks() -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet().set_name("Loads").unwrap();
    sheet.write(0, 1, "Tire load limits at cold inflation pressures").unwrap();
    sheet.write(2, 1, "Speed up to 65 mph").unwrap();
    sheet.write_row(3, 1, ["kPa", "", "550", "620", "690"]).unwrap();
    sheet.write_row(4, 1, ["psi", ""]).unwrap();
    let mut block = |top: u32, single: [&str; 3], dual: [&str; 3]| {
        sheet.write_row(top, 1, ["S", "lb"]).unwrap();
        sheet.write_row(top, 3, single).unwrap();
        sheet.write_row(top + 1, 1, ["D", "lb"]).unwrap();
        sheet.write_row(top + 1, 3, dual).unwrap();
    };
    block(5, ["5,205", "5,665", "6,120"], ["4,780", "5,205", "-"]);
    block(9, ["6,455", "7,025", "7,590"], ["5,925", "", "6,910"]);
    for (column, psi) in (3_u16..).zip([80.0, 90.0, 100.0]) {
        sheet.write(4, column, psi).unwrap();
    }
    sheet.write(8, 1, "Speed up to 30 mph").unwrap();
    sheet.write(12, 1, "Loads for other speeds: ask the maker.").unwrap();
    book.save_to_buffer().unwrap()
}

#[test]
fn blocks_for_each_speed_with_single_and_dual_rows_are_imported() {
    let bytes = blocks();
    let proposal = proposed(&bytes, "loads.xlsx");
    assert_eq!((proposal.confidence, &proposal.reasons[..]), (Confidence::Written, &[][..]));
    assert_eq!(
        proposal.mapping.describe(),
        [
            "Sheet 'Loads': headings in row 5, table to the end.",
            "Loads on one tire: in the cells, in lb.",
            "Cold pressures: across in columns 'D' to 'F', in psi.",
            "Highest speeds: in lines of text above the rows.",
            "Single or dual: in column 'psi'.",
            "6,175.5 is six thousand: the point stands before decimals.",
        ]
    );
    let (rows, problems) = imported(&bytes, "loads.xlsx", &proposal.mapping);
    let short: Vec<_> = rows.iter().map(short).collect();
    assert_eq!(short.len(), 10);
    assert_eq!(short[0], ('S', 2360.9, 104.6, 551.6));
    assert_eq!(short[3], ('D', 2168.2, 104.6, 551.6));
    assert_eq!(short[9], ('D', 3134.3, 48.3, 689.5));
    assert_eq!(
        told(&problems),
        [
            "sheet 'Loads', cell F7 '-': 2 cells of the table are empty, the first here; no row for them",
            "sheet 'Loads', cell B13 'Loads for other speeds: ask the maker.': a line of text, not a row; read it, it may limit the rows",
        ]
    );
}

#[test]
fn rows_in_pounds_and_kilograms_of_the_same_loads_are_not_taken_twice() {
    let text = "At 65 mph\nLoad limits (psi),80,90\nSingle (kg),2360,2570\nSingle (lb),\"5,205\",\"5,665\"\nDual (lb),\"4,780\",\"5,205\"\n";
    let (rows, problems) =
        imported(text.as_bytes(), "both.csv", &proposed(text.as_bytes(), "both.csv").mapping);
    let short: Vec<_> = rows.iter().map(short).collect();
    assert_eq!(
        short,
        [
            ('S', 2360.0, 104.6, 551.6),
            ('S', 2570.0, 104.6, 620.5),
            ('D', 2168.2, 104.6, 551.6),
            ('D', 2360.9, 104.6, 620.5)
        ]
    );
    assert!(told(&problems)[0].contains("repeats B3"), "{:?}", told(&problems));
    assert_eq!(problems.len(), 2);
}

#[test]
fn contradicting_cells_and_loads_that_rise_with_speed_are_told() {
    let text =
        "single\nSpeed (km/h);500 kPa;600 kPa\n50;3000 kg;3400 kg\n50;3000;3500\n80;2800;3600\n";
    let (rows, problems) =
        imported(text.as_bytes(), "a.csv", &proposed(text.as_bytes(), "a.csv").mapping);
    let told = told(&problems);
    assert!(
        told.iter().any(|t| t.contains(
            "cell C3 '3400 kg': contradicts C4 for the same fitment, speed and a pressure"
        )),
        "{told:?}"
    );
    assert!(told.iter().any(|t| t.contains("cell B4 '3000': repeats B3")), "{told:?}");
    assert_eq!(rows.len(), 3, "{told:?}");
    let text = "single\nSpeed (km/h);500 kPa;600 kPa\n50;3000 kg;3400 kg\n80;2800;3600\n";
    let (rows, problems) =
        imported(text.as_bytes(), "a.csv", &proposed(text.as_bytes(), "a.csv").mapping);
    assert_eq!(rows.len(), 4);
    assert_eq!(
        super::told(&problems),
        [
            "sheet 'a.csv', cell C4 '3600': carries more than C3 at a lower speed and the same pressure; check both"
        ]
    );
}

#[test]
fn title_lines_merged_over_the_values_give_speed_and_fitment() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.write_row(0, 0, ["Loads in kg", "500 kPa", "600 kPa"]).unwrap();
    for (row, title) in [(1, "50 km/h, single"), (3, "50 km/h, dual"), (5, "80 km/h")] {
        sheet.merge_range(row, 0, row, 2, title, &Format::new()).unwrap();
    }
    for (row, loads) in [(2, [3000.0, 3400.0]), (4, [2700.0, 3100.0]), (6, [2500.0, 2900.0])] {
        sheet.write_row(row, 1, loads).unwrap();
    }
    let bytes = book.save_to_buffer().unwrap();
    let proposal = proposed(&bytes, "titles.xlsx");
    assert!(proposal.mapping.block_titles);
    let (rows, problems) = imported(&bytes, "titles.xlsx", &proposal.mapping);
    assert_eq!(told(&problems), [""; 0]);
    let short: Vec<_> = rows.iter().map(short).collect();
    assert_eq!(short[0], ('S', 3000.0, 50.0, 500.0));
    assert_eq!(short[2], ('D', 2700.0, 50.0, 500.0));
    assert_eq!(short[5], ('D', 2900.0, 80.0, 600.0));
}
