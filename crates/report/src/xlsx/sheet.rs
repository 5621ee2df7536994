//! The blocks of a document down one sheet.

use rust_xlsxwriter::{Format, FormatAlign, FormatBorder, Worksheet, XlsxError};

use crate::document::{Block, Cell, Document, Figure, Table};

/// Columns that words run over.
const WIDTH: u16 = 10;
/// A sheet name holds so many characters.
const LONGEST_NAME: usize = 31;

/// A text as the name of a sheet.
pub(super) fn name(text: &str) -> String {
    let kept = text.chars().map(|c| if "[]:*?/\\'".contains(c) { ' ' } else { c });
    kept.take(LONGEST_NAME).collect()
}

pub(super) fn document(sheet: &mut Worksheet, document: &Document) -> Result<(), XlsxError> {
    sheet.set_name(name(&document.title))?;
    sheet.set_column_width(0, 28)?;
    let stamp = &document.stamp;
    let foot = format!("&L{}&R{} &P/&N", escaped(&stamp.plan), escaped(&stamp.page));
    sheet.set_footer(foot);
    let mut sheet = Down { sheet, row: 0 };
    let title = Format::new().set_bold().set_font_size(16);
    sheet.line(&document.title, &title)?;
    sheet.line(&stamp.plan, &Format::new().set_bold())?;
    sheet.line(&stamp.about, &Format::new())?;
    sheet.line(&stamp.responsible, &Format::new())?;
    sheet.line(&stamp.unreviewed, &Format::new())?;
    sheet.row += 1;
    for block in &document.blocks {
        sheet.block(block, &document.words.drawing)?;
    }
    Ok(())
}

/// A header takes at most so many characters, and `&` begins a command in it.
fn escaped(text: &str) -> String {
    text.chars().take(100).collect::<String>().replace('&', "&&")
}

/// Writes from the top down.
struct Down<'a> {
    sheet: &'a mut Worksheet,
    row: u32,
}

impl Down<'_> {
    fn line(&mut self, text: &str, format: &Format) -> Result<(), XlsxError> {
        self.sheet.write_string_with_format(self.row, 0, text, format)?;
        self.row += 1;
        Ok(())
    }

    fn lines(&mut self, lines: &[String], before: &str) -> Result<(), XlsxError> {
        for line in lines {
            self.line(&format!("{before}{line}"), &Format::new())?;
        }
        self.row += 1;
        Ok(())
    }

    fn block(&mut self, block: &Block, drawing: &str) -> Result<(), XlsxError> {
        let bold = Format::new().set_bold();
        match block {
            Block::Heading { level, text } => {
                let size = if *level == 1 { 14 } else { 12 };
                self.line(text, &bold.set_font_size(size))
            }
            Block::Paragraph { text, strong } => {
                self.line(text, &if *strong { bold } else { Format::new() })?;
                self.row += 1;
                Ok(())
            }
            Block::Table(table) => self.table(table),
            Block::Chart(chart) => {
                let told = format!("{drawing}: {}", chart.described);
                self.line(&told, &Format::new().set_italic())
            }
            Block::Caution(caution) => {
                if !caution.title.is_empty() {
                    self.line(&format!("⚠ {}", caution.title), &bold)?;
                }
                self.lines(&caution.lines, "⚠ ")
            }
            Block::Ticks { lines } => self.lines(lines, "☐ "),
            Block::Points { lines } => self.lines(lines, "• "),
            Block::Steps { lines } => {
                let numbered: Vec<String> = lines
                    .iter()
                    .zip(1..)
                    .map(|(line, number)| format!("{number}. {line}"))
                    .collect();
                self.lines(&numbered, "")
            }
            Block::Blanks { lines } => {
                let line = Format::new().set_border_bottom(FormatBorder::Thin);
                for blank in lines {
                    self.sheet.write_string(self.row, 0, &blank.label)?;
                    self.sheet.write_string_with_format(self.row, 1, &blank.filled, &line)?;
                    self.sheet.write_string(self.row, 2, &blank.unit)?;
                    self.row += 1;
                }
                self.row += 1;
                Ok(())
            }
            Block::PageBreak => Ok(()),
        }
    }

    fn table(&mut self, table: &Table) -> Result<(), XlsxError> {
        let head = Format::new().set_bold().set_text_wrap().set_border(FormatBorder::Thin);
        if !table.caption.is_empty() {
            self.line(&table.caption, &Format::new().set_bold())?;
        }
        if !table.groups.is_empty() {
            let mut column = 0;
            for group in &table.groups {
                let span = u16::try_from(group.span.max(1)).unwrap_or(u16::MAX);
                self.sheet.write_string_with_format(self.row, column, &group.head, &head)?;
                column += span;
            }
            self.row += 1;
        }
        for (index, column) in (0..).zip(&table.columns) {
            self.sheet.write_string_with_format(self.row, index, &column.head, &head)?;
            if index > 0 && index < WIDTH {
                self.sheet.set_column_width(index, 14)?;
            }
        }
        self.row += 1;
        for row in &table.rows {
            for (index, cell) in (0..).zip(&row.cells) {
                self.cell(index, cell, row.strong)?;
            }
            self.row += 1;
        }
        self.row += 1;
        Ok(())
    }

    fn cell(&mut self, column: u16, cell: &Cell, strong: bool) -> Result<(), XlsxError> {
        let format = Format::new().set_border(FormatBorder::Thin).set_align(FormatAlign::Top);
        let format = if strong { format.set_bold() } else { format };
        if let Some(figure) = &cell.figure {
            let format = format.set_num_format(number_format(figure, &cell.text));
            self.sheet.write_number_with_format(self.row, column, figure.value, &format)?;
        } else {
            let format = format.set_text_wrap();
            self.sheet.write_string_with_format(self.row, column, &cell.text, &format)?;
        }
        Ok(())
    }
}

/// Digits as printed, and the unit behind them; marks of the printed text are kept.
fn number_format(figure: &Figure, text: &str) -> String {
    let digits = match usize::from(figure.decimals) {
        0 => "0".to_owned(),
        decimals => format!("0.{}", "0".repeat(decimals)),
    };
    let mark = if text.contains('*') { "\"*\"" } else { "" };
    format!("{digits}{mark} \"{}\"", figure.unit)
}
