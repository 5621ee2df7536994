//! How much of a log could be judged.

use quantity::Time;

use crate::Rule;

/// What one rule made of the rows it was asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Judged {
    pub(crate) known: u64,
    pub(crate) unknown: u64,
}

impl Judged {
    /// Time it judged.
    pub fn known(&self) -> Time {
        Time::from_s(self.known as f64)
    }

    /// Time it could not judge, because something it needs was not known.
    pub fn unknown(&self) -> Time {
        Time::from_s(self.unknown as f64)
    }
}

/// How much of a log could be judged.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Coverage {
    pub(crate) rows: u64,
    pub(crate) bad_rows: u64,
    pub(crate) unknown_rows: u64,
    pub(crate) rules: [Judged; Rule::ALL.len()],
}

impl Coverage {
    /// Rows seen, one a second.
    pub fn rows(&self) -> u64 {
        self.rows
    }

    /// Rows that hold a number which cannot be, though it is marked as a value.
    pub fn bad_rows(&self) -> u64 {
        self.bad_rows
    }

    /// Time in which any rule that applied could not judge.
    pub fn unknown(&self) -> Time {
        Time::from_s(self.unknown_rows as f64)
    }

    /// What one rule made of it.
    pub fn of(&self, rule: Rule) -> Judged {
        self.rules[rule as usize]
    }
}
