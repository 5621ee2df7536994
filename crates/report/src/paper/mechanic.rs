//! What papers for mechanics have in common: cautions, controller figures, ticks and signatures.

use language::{Amount, Format, Kind};
use view::PlanView;

use super::Material;
use super::driver::controller_format;
use crate::Words;
use crate::document::{Blank, Block, Caution, Cell, Column, Row, Table};

/// What is done before any nut or hose is touched, and to whom the work belongs.
pub(super) fn before_work(words: Words<'_>) -> Block {
    let lines = [
        "caution-mechanic-engine",
        "caution-mechanic-isolate",
        "caution-mechanic-vent",
        "caution-trained-people",
        "caution-loss-stay-away",
        "caution-reads-only",
    ];
    Block::Caution(Caution {
        title: words.text("mechanic-before"),
        lines: lines.map(|key| words.text(key)).to_vec(),
        grave: true,
    })
}

/// Who decides.
pub(super) fn who_decides(words: Words<'_>) -> Block {
    let lines = ["caution-maker-approves", "caution-law-decides", "caution-rollover"];
    Block::Caution(Caution {
        title: String::new(),
        lines: lines.map(|key| words.text(key)).to_vec(),
        grave: false,
    })
}

/// Which truck is on the stand; units of an issued plan are filled in where there is but one.
pub(super) fn which_truck(material: &Material<'_>, words: Words<'_>) -> Block {
    let assigned = material.issue.map(|issue| &*issue.units).unwrap_or_default();
    let unit = if let [one] = assigned { one.clone() } else { String::new() };
    let blank =
        |key: &str, filled: String| Blank { label: words.text(key), unit: String::new(), filled };
    Block::Blanks {
        lines: vec![
            blank("mechanic-unit", unit),
            blank("mechanic-trailers", String::new()),
            blank("mechanic-controller", String::new()),
            blank("mechanic-place", String::new()),
        ],
    }
}

/// Name, day and hand of whoever did it.
pub(super) fn signed(words: Words<'_>) -> Block {
    Block::blanks([
        (words.text("mechanic-name"), ""),
        (words.text("mechanic-date"), ""),
        (words.text("mechanic-signed"), ""),
    ])
}

/// A cell to tick.
pub(super) fn tick() -> Cell {
    Cell::text("☐")
}

/// Numbers of the controller, in its unit first: that one counts.
pub(super) struct Shown<'a> {
    /// The form of the controller's unit.
    pub own: Format,
    words: Words<'a>,
    /// Whether the reader's unit is another one.
    pub differs: bool,
}

impl<'a> Shown<'a> {
    pub(super) fn of(plan: &PlanView, words: Words<'a>) -> Self {
        let own = controller_format(plan, words);
        let differs = own.is_some();
        let own = own.unwrap_or_else(|| words.format.in_profile(words.format.profile()));
        Self { own, words, differs }
    }

    /// `90 psi (620 kPa)`, or one of them where they are the same.
    pub(super) fn both(&self, amount: impl Fn(&Format) -> Amount) -> Cell {
        let own = amount(&self.own);
        let mut cell = Cell::amount(&own);
        if self.differs {
            cell.text = format!("{own} ({})", amount(self.words.format));
        }
        cell
    }

    /// The number in the controller's unit with the reader's under it, both without units.
    pub(super) fn stacked(&self, amount: impl Fn(&Format) -> Amount, mark: &str) -> Cell {
        let own = amount(&self.own);
        let mut cell = Cell::bare(&own);
        cell.text.push_str(mark);
        if self.differs {
            cell.text = format!("{}\n({})", cell.text, amount(self.words.format).number);
        }
        cell
    }

    /// `psi (kPa)`.
    pub(super) fn unit(&self) -> String {
        let own = self.own.unit(Kind::Pressure);
        if self.differs {
            format!("{own} ({})", self.words.format.unit(Kind::Pressure))
        } else {
            own.to_owned()
        }
    }
}

/// A table of facts to tick: what, how it is, and the box.
pub(super) fn facts(
    heads: [&str; 2],
    rows: impl IntoIterator<Item = (String, Cell)>,
    words: Words<'_>,
) -> Table {
    let mut table = Table::new(vec![
        Column::words(words.text(heads[0]), 5),
        Column::words(words.text(heads[1]), 4),
        Column::words(words.text("mechanic-found"), 3),
        Column::centered("☐", 1),
    ]);
    for (what, how) in rows {
        table.rows.push(Row {
            cells: vec![Cell::text(what), how, Cell::default(), tick()],
            strong: false,
        });
    }
    table
}
