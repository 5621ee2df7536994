//! The parts a document is made of.

use serde::Serialize;

use super::Table;

/// One part.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "block", rename_all = "kebab-case")]
pub enum Block {
    /// A heading; level 1 begins a part, 2 a section.
    Heading {
        /// 1 or 2.
        level: u8,
        /// What it says.
        text: String,
    },
    /// A paragraph.
    Paragraph {
        /// What it says.
        text: String,
        /// Whether it must be seen first.
        strong: bool,
    },
    /// A table.
    Table(Table),
    /// A drawing.
    Chart(Chart),
    /// What protects people, framed.
    Caution(Caution),
    /// Lines to tick.
    Ticks {
        /// One each.
        lines: Vec<String>,
    },
    /// What to do, one after the other.
    Steps {
        /// One each.
        lines: Vec<String>,
    },
    /// Points of a list.
    Points {
        /// One each.
        lines: Vec<String>,
    },
    /// Lines to write on.
    Blanks {
        /// One each.
        lines: Vec<Blank>,
    },
    /// What follows begins a page.
    PageBreak,
}

/// A drawing.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Chart {
    /// The SVG document, with its own title and description.
    pub svg: String,
    /// What it shows, for who cannot see it.
    pub described: String,
}

/// A framed caution.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Caution {
    /// Said first; empty where the lines speak for themselves.
    pub title: String,
    /// One thing a line.
    pub lines: Vec<String>,
    /// Whether it stands out from the other cautions.
    pub grave: bool,
}

/// A line to write on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Blank {
    /// What to write.
    pub label: String,
    /// Unit it is written in; empty for words.
    pub unit: String,
    /// What is known already; empty to be filled by hand.
    pub filled: String,
}

impl Block {
    /// A heading that begins a part.
    pub fn part(text: impl Into<String>) -> Self {
        Self::Heading { level: 1, text: text.into() }
    }

    /// A heading of a section.
    pub fn section(text: impl Into<String>) -> Self {
        Self::Heading { level: 2, text: text.into() }
    }

    /// A paragraph.
    pub fn paragraph(text: impl Into<String>) -> Self {
        Self::Paragraph { text: text.into(), strong: false }
    }

    /// A paragraph that must be seen first.
    pub fn strong(text: impl Into<String>) -> Self {
        Self::Paragraph { text: text.into(), strong: true }
    }

    /// A line to write on, with the unit it is written in or an empty text.
    pub fn blanks<'a>(lines: impl IntoIterator<Item = (String, &'a str)>) -> Self {
        let blank = |(label, unit): (String, &str)| Blank {
            label,
            unit: unit.to_owned(),
            filled: String::new(),
        };
        Self::Blanks { lines: lines.into_iter().map(blank).collect() }
    }

    pub(super) fn texts<'a>(&'a self, texts: &mut Vec<&'a str>) {
        match self {
            Self::Heading { text, .. } | Self::Paragraph { text, .. } => texts.push(text),
            Self::Table(table) => table.texts(texts),
            Self::Chart(chart) => {
                texts.push(&chart.described);
                texts.push(&chart.svg);
            }
            Self::Caution(caution) => {
                texts.push(&caution.title);
                texts.extend(caution.lines.iter().map(String::as_str));
            }
            Self::Ticks { lines } | Self::Steps { lines } | Self::Points { lines } => {
                texts.extend(lines.iter().map(String::as_str));
            }
            Self::Blanks { lines } => {
                texts
                    .extend(lines.iter().flat_map(|line| [&*line.label, &line.unit, &line.filled]));
            }
            Self::PageBreak => {}
        }
    }
}
