//! The groups that a reading knows: the table of this program, and what a user's files add to it.

use std::collections::BTreeMap;

use crate::identifier::Pgn;
use crate::signal::Group;
use crate::table;

/// Groups by number.
#[derive(Debug, Clone)]
pub struct Definitions {
    groups: Vec<Group>,
    by_pgn: BTreeMap<Pgn, usize>,
}

impl Default for Definitions {
    fn default() -> Self {
        Self::of(table::GROUPS.iter().map(|group| (*group).clone()).collect())
    }
}

impl Definitions {
    /// These groups; of two with one number the later counts.
    pub fn of(groups: Vec<Group>) -> Self {
        let by_pgn = groups.iter().enumerate().map(|(at, group)| (group.pgn, at)).collect();
        Self { groups, by_pgn }
    }

    /// The same with groups of the user's own: a group the table has too is replaced whole.
    #[must_use]
    pub fn with(self, own: Vec<Group>) -> Self {
        let mut groups = self.groups;
        groups.retain(|group| !own.iter().any(|other| other.pgn == group.pgn));
        groups.extend(own);
        groups.sort_by_key(|group| group.pgn);
        Self::of(groups)
    }

    /// All groups.
    pub fn groups(&self) -> &[Group] {
        &self.groups
    }

    /// Place of a group in [`Definitions::groups`].
    pub fn find(&self, pgn: Pgn) -> Option<usize> {
        self.by_pgn.get(&pgn).copied()
    }
}

/// Bytes that a group must have for all its signals.
pub fn bytes_needed(group: &Group) -> usize {
    group.signals.iter().map(crate::signal::Signal::bytes_needed).max().unwrap_or(0)
}
