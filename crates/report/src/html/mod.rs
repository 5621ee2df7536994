//! A document as one HTML page that stands alone: no other file, no script, nothing fetched.

use std::fmt::Write;

use quick_xml::escape::escape;

use crate::document::{Align, Blank, Block, Caution, Cell, Column, Document, Look, Sheet, Table};

#[cfg(test)]
pub(crate) mod tests;

const STYLE: &str = include_str!("style.css");

/// Adds to a page in memory.
macro_rules! put {
    ($page:expr, $($text:tt)*) => {
        write!($page, $($text)*).expect("writing to memory does not fail")
    };
}

/// Writes the page.
///
/// # Panics
/// Never: it writes to memory.
pub fn html(document: &Document) -> String {
    let page = &mut String::new();
    let stamp = &document.stamp;
    let (width, height) = document.sheet.size_mm();
    put!(
        page,
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{} – {}</title>\n<style>\n@page {{ size: {width}mm {height}mm; }}\n{STYLE}</style>\n\
         </head>\n<body class=\"{}\">\n<header>\n<p class=\"stamp{}\">{}</p>\n<h1>{}</h1>\n\
         <p>{}</p>\n</header>\n<main>\n",
        escape(&document.language),
        escape(&document.title),
        escape(&stamp.about),
        body_class(document.sheet),
        if stamp.draft { " draft" } else { "" },
        escape(&stamp.plan),
        escape(&document.title),
        escape(&stamp.about),
    );
    for part in &document.blocks {
        block(page, part);
    }
    sources(page, document);
    put!(
        page,
        "</main>\n<footer><p>{} · {} · {}</p><p>{}</p></footer>\n</body>\n</html>\n",
        escape(&stamp.plan),
        escape(&stamp.about),
        escape(&stamp.responsible),
        escape(&stamp.unreviewed)
    );
    std::mem::take(page)
}

fn body_class(sheet: Sheet) -> &'static str {
    if sheet.is_card() { "card" } else { "report" }
}

fn block(page: &mut String, block: &Block) {
    match block {
        Block::Heading { level, text } => {
            let level = level + 1;
            put!(page, "<h{level}>{}</h{level}>\n", lines(text));
        }
        Block::Paragraph { text, strong: true } => {
            put!(page, "<p><strong>{}</strong></p>\n", lines(text));
        }
        Block::Paragraph { text, .. } => put!(page, "<p>{}</p>\n", lines(text)),
        Block::Table(table) => self::table(page, table),
        Block::Chart(chart) => {
            put!(page, "<figure>\n{}</figure>\n", chart.svg);
        }
        Block::Caution(caution) => self::caution(page, caution),
        Block::Ticks { lines } => list(page, "ul class=\"ticks\"", "ul", lines),
        Block::Steps { lines } => list(page, "ol", "ol", lines),
        Block::Points { lines } => list(page, "ul", "ul", lines),
        Block::Blanks { lines } => blanks(page, lines),
        Block::PageBreak => page.push_str("<div class=\"break\"></div>\n"),
    }
}

fn list(page: &mut String, open: &str, close: &str, items: &[String]) {
    put!(page, "<{open}>\n");
    for item in items {
        put!(page, "<li>{}</li>\n", lines(item));
    }
    put!(page, "</{close}>\n");
}

fn caution(page: &mut String, caution: &Caution) {
    let class = if caution.grave { "caution grave" } else { "caution" };
    put!(page, "<section class=\"{class}\" role=\"note\">\n");
    if !caution.title.is_empty() {
        put!(page, "<p><strong>⚠ {}</strong></p>\n", lines(&caution.title));
    }
    if !caution.lines.is_empty() {
        list(page, "ul", "ul", &caution.lines);
    }
    page.push_str("</section>\n");
}

fn blanks(page: &mut String, blanks: &[Blank]) {
    page.push_str("<dl class=\"blanks\">\n");
    for blank in blanks {
        put!(
            page,
            "<div><dt>{}</dt><dd><span>{}</span> {}</dd></div>\n",
            lines(&blank.label),
            lines(&blank.filled),
            escape(&blank.unit)
        );
    }
    page.push_str("</dl>\n");
}

fn table(page: &mut String, table: &Table) {
    let look = match table.look {
        Look::Plain => "",
        Look::Big => " class=\"big\"",
        Look::Small => " class=\"small\"",
    };
    put!(page, "<div class=\"wide\"><table{look}>\n");
    if !table.caption.is_empty() {
        put!(page, "<caption>{}</caption>\n", lines(&table.caption));
    }
    page.push_str("<thead>\n");
    if !table.groups.is_empty() {
        page.push_str("<tr>");
        for group in &table.groups {
            let (tag, scope) =
                if group.head.is_empty() { ("td", "") } else { ("th", " scope=\"colgroup\"") };
            put!(page, "<{tag}{scope} colspan=\"{}\">{}</{tag}>", group.span, lines(&group.head));
        }
        page.push_str("</tr>\n");
    }
    if table.columns.iter().any(|column| !column.head.is_empty()) {
        page.push_str("<tr>");
        for column in &table.columns {
            put!(page, "<th scope=\"col\"{}>{}</th>", align(column), lines(&column.head));
        }
        page.push_str("</tr>\n");
    }
    page.push_str("</thead>\n<tbody>\n");
    for row in &table.rows {
        page.push_str(if row.strong { "<tr class=\"strong\">" } else { "<tr>" });
        for (index, (cell, column)) in row.cells.iter().zip(&table.columns).enumerate() {
            self::cell(page, cell, column, index == 0);
        }
        page.push_str("</tr>\n");
    }
    page.push_str("</tbody>\n</table></div>\n");
}

fn cell(page: &mut String, cell: &Cell, column: &Column, heads: bool) {
    let (tag, scope) = if heads { ("th", " scope=\"row\"") } else { ("td", "") };
    put!(page, "<{tag}{scope}{}>{}</{tag}>", align(column), lines(&cell.text));
}

fn align(column: &Column) -> &'static str {
    match column.align {
        Align::Left => "",
        Align::Center => " class=\"center\"",
        Align::Right => " class=\"right\"",
    }
}

fn sources(page: &mut String, document: &Document) {
    if document.sources.is_empty() {
        return;
    }
    let words = &document.words;
    put!(page, "<h2>{}</h2>\n", escape(&words.sources));
    let heads = words.source_columns.clone();
    let mut table = Table::new(heads.map(|head| Column::words(head, 1)).to_vec());
    table.look = Look::Small;
    for source in &document.sources {
        let cells = [&source.what, &source.source, &source.standing];
        table.row(cells.map(Cell::text).to_vec());
    }
    self::table(page, &table);
}

/// Escaped, with its line breaks kept.
fn lines(text: &str) -> String {
    escape(text).replace('\n', "<br>")
}
