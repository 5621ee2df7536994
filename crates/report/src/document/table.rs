//! Tables: aligned columns, cells that carry their number beside its digits.

use language::Amount;
use serde::Serialize;

/// A table.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Table {
    /// What it shows; empty where a heading says so.
    pub caption: String,
    /// Headings over several columns; empty for none. Their spans add up to the columns.
    pub groups: Vec<Group>,
    /// Columns; the first one names the rows.
    pub columns: Vec<Column>,
    /// Rows, each with a cell for every column.
    pub rows: Vec<Row>,
    /// How its figures are set.
    pub look: Look,
}

/// How the figures of a table are set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Look {
    /// As the text.
    #[default]
    Plain,
    /// To be read at arm's length.
    Big,
    /// For long tables.
    Small,
}

/// A heading over several columns.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Group {
    /// What it says.
    pub head: String,
    /// How many columns.
    pub span: usize,
}

/// On which side of its column a cell stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Align {
    /// Words.
    Left,
    /// Marks, and figures of one length.
    Center,
    /// Figures.
    Right,
}

/// A column.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Column {
    /// What it says on top, with the unit.
    pub head: String,
    /// Side its cells stand on.
    pub align: Align,
    /// Share of the width it takes; 0 for as much as its words need.
    pub share: u8,
}

/// A row.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Row {
    /// Cells.
    pub cells: Vec<Cell>,
    /// Whether it stands out.
    pub strong: bool,
}

/// A cell.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Cell {
    /// What it says.
    pub text: String,
    /// The number its text stands for.
    pub figure: Option<Figure>,
}

/// A number with its unit, as it is printed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Figure {
    /// The number, rounded as printed.
    pub value: f64,
    /// Digits after the decimal mark.
    pub decimals: u8,
    /// Unit.
    pub unit: String,
}

impl Table {
    /// A table of these columns.
    pub fn new(columns: Vec<Column>) -> Self {
        Self { columns, ..Self::default() }
    }

    /// Adds a row.
    pub fn row(&mut self, cells: Vec<Cell>) {
        self.rows.push(Row { cells, strong: false });
    }

    pub(super) fn texts<'a>(&'a self, texts: &mut Vec<&'a str>) {
        texts.push(&self.caption);
        texts.extend(self.groups.iter().map(|group| &*group.head));
        texts.extend(self.columns.iter().map(|column| &*column.head));
        texts.extend(self.rows.iter().flat_map(|row| &row.cells).map(|cell| &*cell.text));
    }
}

impl Column {
    /// A column of words that takes a share of the width.
    pub fn words(head: impl Into<String>, share: u8) -> Self {
        Self { head: head.into(), align: Align::Left, share }
    }

    /// A column of figures.
    pub fn figures(head: impl Into<String>) -> Self {
        Self { head: head.into(), align: Align::Right, share: 0 }
    }

    /// A column of figures of one length, or of marks, that takes a share of the width.
    pub fn centered(head: impl Into<String>, share: u8) -> Self {
        Self { head: head.into(), align: Align::Center, share }
    }
}

impl Cell {
    /// Words.
    pub fn text(text: impl Into<String>) -> Self {
        Self { text: text.into(), figure: None }
    }

    /// A number with its unit behind it.
    pub fn amount(amount: &Amount) -> Self {
        Self { text: amount.to_string(), figure: Some(Figure::from(amount)) }
    }

    /// A number whose unit stands at the head of its column.
    pub fn bare(amount: &Amount) -> Self {
        Self { text: amount.number.clone(), figure: Some(Figure::from(amount)) }
    }
}

impl From<&Amount> for Figure {
    fn from(amount: &Amount) -> Self {
        Self { value: amount.value, decimals: amount.decimals, unit: amount.unit.to_owned() }
    }
}
