use std::io::Cursor;

use calamine::{Data, Reader as _, Xlsx};

use crate::html::tests::sample;

fn read() -> Xlsx<Cursor<Vec<u8>>> {
    Xlsx::new(Cursor::new(super::xlsx(&sample()).unwrap())).unwrap()
}

#[test]
fn numbers_are_numbers_as_printed_and_sources_have_their_sheet() {
    let mut book = read();
    assert_eq!(book.sheet_names(), ["Sample <script>", "Sources"]);
    let sheet = book.worksheet_range("Sample <script>").unwrap();
    let numbers: Vec<f64> = sheet
        .used_cells()
        .filter_map(|(_, _, cell)| if let Data::Float(value) = cell { Some(*value) } else { None })
        .collect();
    assert_eq!(numbers, [5.87]);
    let sources = book.worksheet_range("Sources").unwrap();
    assert_eq!(sources.get_value((1, 1)), Some(&Data::String("maker".to_owned())));
}

#[test]
fn the_same_document_gives_the_same_bytes() {
    let (one, two) = (super::xlsx(&sample()).unwrap(), super::xlsx(&sample()).unwrap());
    assert!(one == two);
}

#[test]
fn a_name_with_what_a_sheet_name_may_not_hold_is_made_one() {
    assert_eq!(
        super::sheet::name("a/b: c [d] with a name that is far too long"),
        "a b  c  d  with a name that is "
    );
}
