//! The rules, one file each, under the same headings: what it finds, why it matters, memory, not judged.

pub mod held_too_long;
mod late;
pub mod lowered_late;
pub mod moved_off_before_complete;
pub mod over_cap;
pub mod raised_late;
pub mod raised_on_descent;
pub mod under_minimum;

/// What a rule keeps from row to row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Memory {
    /// Rows it looks back at most, beyond the finding it has open; `None` where it remembers since the load last
    /// changed or a stay began.
    pub looks_back_rows: Option<u32>,
    /// Bytes of its state.
    pub bytes: usize,
}

/// A rule by its stable name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Rule {
    /// [`lowered_late`].
    LoweredLate,
    /// [`raised_late`].
    RaisedLate,
    /// [`over_cap`].
    OverCap,
    /// [`under_minimum`].
    UnderMinimum,
    /// [`held_too_long`].
    HeldTooLong,
    /// [`moved_off_before_complete`].
    MovedOffBeforeComplete,
    /// [`raised_on_descent`].
    RaisedOnDescent,
}

impl Rule {
    /// Every rule, in the order of tables.
    pub const ALL: [Self; 7] = [
        Self::LoweredLate,
        Self::RaisedLate,
        Self::OverCap,
        Self::UnderMinimum,
        Self::HeldTooLong,
        Self::MovedOffBeforeComplete,
        Self::RaisedOnDescent,
    ];

    /// Its name in documents; never changed once released.
    pub const fn code(self) -> &'static str {
        match self {
            Self::LoweredLate => lowered_late::CODE,
            Self::RaisedLate => raised_late::CODE,
            Self::OverCap => over_cap::CODE,
            Self::UnderMinimum => under_minimum::CODE,
            Self::HeldTooLong => held_too_long::CODE,
            Self::MovedOffBeforeComplete => moved_off_before_complete::CODE,
            Self::RaisedOnDescent => raised_on_descent::CODE,
        }
    }

    /// What it keeps from row to row.
    pub const fn memory(self) -> Memory {
        match self {
            Self::LoweredLate => lowered_late::MEMORY,
            Self::RaisedLate => raised_late::MEMORY,
            Self::OverCap => over_cap::MEMORY,
            Self::UnderMinimum => under_minimum::MEMORY,
            Self::HeldTooLong => held_too_long::MEMORY,
            Self::MovedOffBeforeComplete => moved_off_before_complete::MEMORY,
            Self::RaisedOnDescent => raised_on_descent::MEMORY,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Rule;

    #[test]
    fn every_rule_stands_at_its_own_number_under_a_name_of_its_own() {
        let mut codes = std::collections::BTreeSet::new();
        for (index, rule) in Rule::ALL.into_iter().enumerate() {
            assert_eq!(rule as usize, index);
            assert!(codes.insert(rule.code()));
            assert!(rule.memory().bytes < 2048, "{rule:?} keeps {} bytes", rule.memory().bytes);
        }
    }
}
