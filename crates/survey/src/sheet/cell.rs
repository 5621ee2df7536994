//! A sheet as rows of cells, and how cells are addressed.

/// What stands in a cell.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum Cell {
    /// Nothing.
    #[default]
    Blank,
    /// A number typed as one.
    Number(f64),
    /// A day that the spreadsheet stores as one, as year-month-day.
    Day(String),
    /// Anything else, as shown.
    Text(String),
}

impl Cell {
    /// The cell as text.
    pub fn text(&self) -> String {
        match self {
            Self::Blank => String::new(),
            Self::Number(value) => value.to_string(),
            Self::Day(text) => text.clone(),
            Self::Text(text) => text.trim().to_owned(),
        }
    }

    /// Whether it holds nothing, or only the dash that printed tables put for nothing.
    pub(super) fn is_empty(&self) -> bool {
        match self {
            Self::Blank => true,
            Self::Number(_) | Self::Day(_) => false,
            Self::Text(text) => {
                matches!(text.trim(), "" | "-" | "–" | "—" | "--" | "..." | "…" | "n/a" | "N/A")
            }
        }
    }

    /// Whether it holds nothing at all.
    pub(super) fn is_blank(&self) -> bool {
        match self {
            Self::Blank => true,
            Self::Number(_) | Self::Day(_) => false,
            Self::Text(text) => text.trim().is_empty(),
        }
    }
}

/// One sheet of a workbook, or a text table.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sheet {
    /// Its name; of a text table, the file's.
    pub name: String,
    /// Whether it is one of the sheets of a workbook; a text table has no name of its own.
    pub in_workbook: bool,
    /// Rows from the first of the sheet on; not all have the same length.
    pub rows: Vec<Vec<Cell>>,
}

const NOTHING: Cell = Cell::Blank;

impl Sheet {
    /// The cell at a row and column counted from zero; blank beyond the sheet.
    pub(super) fn cell(&self, row: usize, column: usize) -> &Cell {
        self.rows.get(row).and_then(|cells| cells.get(column)).unwrap_or(&NOTHING)
    }

    /// Columns of the longest row.
    pub(super) fn width(&self) -> usize {
        self.rows.iter().map(Vec::len).max().unwrap_or(0)
    }

    /// Everything a row says, as one text; merged cells say it once.
    pub(super) fn row_text(&self, row: usize) -> String {
        let cells = self.rows.get(row).into_iter().flatten().filter(|cell| !cell.is_blank());
        let mut texts: Vec<String> = cells.map(Cell::text).collect();
        texts.dedup();
        texts.join(" ")
    }
}

/// The letters of a column counted from zero: A, B, … Z, AA.
pub(super) fn letters(column: usize) -> String {
    let digit = char::from(b'A' + u8::try_from(column % 26).unwrap_or(0));
    if column < 26 { digit.to_string() } else { letters(column / 26 - 1) + &digit.to_string() }
}

/// The column counted from zero that letters name; `None` for anything but one to three letters.
pub(super) fn column_of(letters: &str) -> Option<usize> {
    if !(1..=3).contains(&letters.len()) || !letters.bytes().all(|byte| byte.is_ascii_alphabetic())
    {
        return None;
    }
    let value = |byte: u8| usize::from(byte.to_ascii_uppercase() - b'A') + 1;
    Some(letters.bytes().fold(0, |sum, byte| sum * 26 + value(byte)) - 1)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn columns_are_lettered_as_spreadsheets_do() {
        assert_eq!(
            [0, 25, 26, 51, 52, 701, 702].map(letters),
            ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]
        );
        assert_eq!((column_of("load"), column_of("B2"), column_of("")), (None, None, None));
    }

    proptest! {
        #[test]
        fn letters_turn_round(column in 0_usize..18_000) {
            prop_assert_eq!(column_of(&letters(column)), Some(column));
            prop_assert_eq!(column_of(&letters(column).to_lowercase()), Some(column));
        }
    }
}
