//! The signals that this program knows: positions, widths, scales and rates.
//!
//! Numbers only, under names of our own. A user's own DBC file adds to it or replaces it.
//!
//! # Source
//! `j1939-signals`: read in an open extract of the digital annex of October 2020, the positions of
//! tire, air, speed and weight groups also in a second open table; the standard itself was not opened.
//! Codes of the cruise state (SPN 527) are from memory. Codes of the channel modes (SPN 1466 to 1468)
//! were found nowhere and stay raw.

mod air;
mod engine;
mod load;
mod motion;
mod tire;

use std::borrow::Cow;
use std::sync::LazyLock;

use crate::identifier::Pgn;
use crate::signal::{Coding, Group, Order, Signal, Spn, Unit};

/// Every group of the table, by number.
pub static GROUPS: LazyLock<Vec<&'static Group>> = LazyLock::new(|| {
    let parts = [tire::GROUPS, air::GROUPS, motion::GROUPS, engine::GROUPS, load::GROUPS];
    let mut all: Vec<&Group> = parts.into_iter().flatten().collect();
    all.sort_by_key(|group| group.pgn);
    all
});

/// The group with a number.
///
/// ```
/// use logs::{Pgn, table};
/// let group = Pgn::new(65268).and_then(table::group).ok_or("tire condition is known")?;
/// assert_eq!(group.signals[1].name, "tire_pressure");
/// # Ok::<(), &str>(())
/// ```
pub fn group(pgn: Pgn) -> Option<&'static Group> {
    let at = GROUPS.binary_search_by_key(&pgn, |group| group.pgn).ok()?;
    Some(GROUPS[at])
}

/// The signal with a number, and its group.
pub fn signal(spn: Spn) -> Option<(&'static Group, &'static Signal)> {
    GROUPS.iter().find_map(|group| Some((*group, group.signal(spn)?)))
}

const fn signal_of(
    spn: u32,
    name: &'static str,
    (start, bits): (u16, u8),
    coding: Coding,
    unit: Unit,
) -> Signal {
    let name = Cow::Borrowed(name);
    Signal { spn: Spn(spn), name, start, bits, order: Order::Intel, coding, unit, when: None }
}

const fn number(
    spn: u32,
    name: &'static str,
    start: u16,
    bits: u8,
    scale: f64,
    offset: f64,
    unit: Unit,
) -> Signal {
    signal_of(spn, name, (start, bits), Coding::Number { scale, offset }, unit)
}

const fn state(spn: u32, name: &'static str, start: u16, bits: u8) -> Signal {
    signal_of(spn, name, (start, bits), Coding::State, Unit::None)
}

const fn bits(spn: u32, name: &'static str, start: u16, bits: u8) -> Signal {
    signal_of(spn, name, (start, bits), Coding::Bits, Unit::None)
}

const fn address(spn: u32, name: &'static str, start: u16) -> Signal {
    signal_of(spn, name, (start, 8), Coding::Address, Unit::Address)
}

const fn text(spn: u32, name: &'static str, start: u16, bits: u8) -> Signal {
    signal_of(spn, name, (start, bits), Coding::Text, Unit::None)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn no_two_signals_of_a_group_share_a_bit_and_none_shares_number_or_name() {
        let (mut numbers, mut names) = (BTreeSet::new(), BTreeSet::new());
        for group in GROUPS.iter() {
            let mut taken = BTreeSet::new();
            for signal in group.signals.iter() {
                assert!(numbers.insert(signal.spn), "{}", signal.spn);
                assert!(names.insert(signal.name.clone()), "{}", signal.name);
                for bit in signal.start..signal.start + u16::from(signal.bits) {
                    assert!(taken.insert(bit), "{} bit {bit}", signal.spn);
                }
            }
            assert_eq!(group.location.is_some(), group.location_signal().is_some());
        }
    }
}
