//! Tables without boxes: columns aligned, a rule under the headings.

use comfy_table::{Cell, CellAlignment, ContentArrangement, LineStyle, Table, TableStyle};

use super::text::WIDTH;

/// Columns a table stands in from the edge.
const INDENT: usize = 2;

/// On which side a column is even.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Words.
    Left,
    /// Numbers.
    Right,
}

/// A table under way.
pub struct Sheet {
    table: Table,
    sides: Vec<Side>,
}

impl Sheet {
    /// A table with these headings; a heading may hold a line break.
    pub fn new(headings: Vec<(String, Side)>) -> Self {
        let mut table = Table::new();
        let rule = LineStyle::none().fill('─').junction('─');
        table.load_style(TableStyle::new().header_separator(rule));
        table.set_content_arrangement(ContentArrangement::Dynamic);
        table.set_width(u16::try_from(WIDTH - INDENT).unwrap_or(u16::MAX));
        let sides: Vec<Side> = headings.iter().map(|(_, side)| *side).collect();
        table.set_header(headings.into_iter().map(|(text, side)| cell(text, side)));
        let last = sides.len().saturating_sub(1);
        for (index, column) in table.column_iter_mut().enumerate() {
            // One more column stands between two by itself.
            column.set_padding((0, u16::from(index != last)));
        }
        Self { table, sides }
    }

    /// Adds a row.
    pub fn row(&mut self, cells: Vec<String>) {
        let sides = self.sides.iter().copied();
        self.table.add_row(cells.into_iter().zip(sides).map(|(text, side)| cell(text, side)));
    }

    /// The lines of the table.
    pub fn lines(&self) -> String {
        let indent = " ".repeat(INDENT);
        self.table
            .lines()
            .map(|line| format!("{indent}{}", line.trim_end()).trim_end().to_owned() + "\n")
            .collect()
    }
}

fn cell(text: String, side: Side) -> Cell {
    Cell::new(text).set_alignment(match side {
        Side::Left => CellAlignment::Left,
        Side::Right => CellAlignment::Right,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_stand_even_and_no_line_is_wider_than_the_page() {
        let mut sheet =
            Sheet::new(vec![("Rung".to_owned(), Side::Left), ("Set\nkPa".to_owned(), Side::Right)]);
        sheet.row(vec!["pit".to_owned(), "85".to_owned()]);
        sheet.row(vec!["long name ".repeat(20), "610".to_owned()]);
        let lines = sheet.lines();
        assert!(lines.lines().all(|line| line.chars().count() <= WIDTH), "{lines}");
        assert!(lines.lines().all(|line| !line.ends_with(' ')), "{lines}");
        assert!(lines.lines().nth(2).is_some_and(|rule| rule.starts_with("  ───")), "{lines}");
    }
}
