//! A document as data: what stands on the paper and in which order, not how it is drawn.
//!
//! Every number in it has already been rounded on its safe side and written in the reader's
//! form; the writers (HTML and XLSX here, PDF in `press`) only set what they are given.

mod block;
mod sheet;
mod table;

use serde::Serialize;

pub use block::{Blank, Block, Caution, Chart};
pub use sheet::{Sheet, UnknownSheet};
pub use table::{Align, Cell, Column, Figure, Group, Look, Row, Table};

/// One document.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Document {
    /// What it is, for whom.
    pub title: String,
    /// Language tag, such as `fr-CA`.
    pub language: String,
    /// Size of the paper.
    pub sheet: Sheet,
    /// Pages it is meant for: the text is made somewhat smaller to keep to them.
    pub pages: Option<usize>,
    /// What stands on every page.
    pub stamp: Stamp,
    /// What it says, in order.
    pub blocks: Vec<Block>,
    /// Where its numbers come from, for the list of sources.
    pub sources: Vec<Source>,
    /// Words that the writers set around it.
    pub words: Around,
}

/// Words that the writers set around a document.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Around {
    /// Heads the list of sources.
    pub sources: String,
    /// Heads its columns.
    pub source_columns: [String; 3],
    /// Stands for a drawing where none can be set.
    pub drawing: String,
}

/// What stands on every page: which plan, of which day, which page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Stamp {
    /// `Plan 3, issued 2027-03-01`, or that it is a draft.
    pub plan: String,
    /// Haul and combination.
    pub about: String,
    /// The word for page.
    pub page: String,
    /// Whether it is not issued: every page then says so loudly.
    pub draft: bool,
    /// Person who answers for it.
    pub responsible: String,
    /// That nobody who grew up with the language has read its safety texts; empty where one has.
    pub unreviewed: String,
}

/// Where a number comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Source {
    /// What rests on it.
    pub what: String,
    /// Key and place in the source.
    pub source: String,
    /// How well it is known.
    pub standing: String,
}

impl Document {
    /// Every text of the document, for checks and searches.
    ///
    /// Charts give the words written in them.
    pub fn texts(&self) -> Vec<&str> {
        let stamp = &self.stamp;
        let head = [
            &self.title,
            &stamp.plan,
            &stamp.about,
            &stamp.page,
            &stamp.responsible,
            &stamp.unreviewed,
        ];
        let mut texts: Vec<&str> = head.into_iter().map(String::as_str).collect();
        for block in &self.blocks {
            block.texts(&mut texts);
        }
        texts
    }
}
