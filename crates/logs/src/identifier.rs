//! The 29-bit identifier of J1939: who says what to whom, and how urgent it is.
//!
//! Bits 28 to 26 priority, 25 to 8 the group field (extended page, page, PF, PS), 7 to 0 source. PF
//! below 240 (PDU1): PS is the destination and the group number ends in a zero byte. PF from 240
//! (PDU2): PS belongs to the group number and everyone is addressed.
//!
//! # Source
//! `linux-j1939`, layout of the identifier.

use std::fmt;

use crate::frame::CanId;

/// Number of a parameter group: 18 bits, the low byte zero where the group is addressed (PDU1).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Pgn(u32);

impl Pgn {
    /// Request for a group.
    pub const REQUEST: Self = Self(59904);
    /// Transport: management.
    pub const TRANSPORT_MANAGEMENT: Self = Self(60416);
    /// Transport: data.
    pub const TRANSPORT_DATA: Self = Self(60160);
    /// Extended transport: management.
    pub const EXTENDED_MANAGEMENT: Self = Self(51200);
    /// Extended transport: data.
    pub const EXTENDED_DATA: Self = Self(50944);
    /// Active trouble codes, DM1.
    pub const ACTIVE_CODES: Self = Self(65226);
    /// Vehicle identification.
    pub const VEHICLE_IDENTIFICATION: Self = Self(65260);
    /// Component identification.
    pub const COMPONENT_IDENTIFICATION: Self = Self(65259);

    /// A group number; `None` beyond 18 bits, or where an addressed group has a low byte.
    pub const fn new(number: u32) -> Option<Self> {
        let addressed = (number >> 8) & 0xFF < 240;
        if number < 1 << 18 && !(addressed && number & 0xFF != 0) {
            Some(Self(number))
        } else {
            None
        }
    }

    /// A number of the table, checked when the program is compiled.
    pub(crate) const fn known(number: u32) -> Self {
        match Self::new(number) {
            Some(pgn) => pgn,
            None => panic!("not a group number"),
        }
    }

    /// The number.
    pub const fn number(self) -> u32 {
        self.0
    }

    /// Whether the group is sent to one address (PDU1) rather than to all (PDU2).
    pub const fn is_addressed(self) -> bool {
        (self.0 >> 8) & 0xFF < 240
    }
}

impl fmt::Display for Pgn {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

/// Address of a sender or of a receiver.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SourceAddress(pub u8);

impl SourceAddress {
    /// Everyone.
    pub const ALL: Self = Self(0xFF);
    /// A node without an address.
    pub const NONE: Self = Self(0xFE);
}

impl fmt::Display for SourceAddress {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

/// The parts of an identifier.
///
/// ```
/// use logs::{CanId, Identifier, Pgn};
/// let id = CanId::extended(0x18FEF433).ok_or("29 bits")?;
/// let parts = Identifier::split(id).ok_or("not J1939")?;
/// assert_eq!((parts.priority, parts.pgn.number(), parts.source.0), (6, 65268, 0x33));
/// assert_eq!(parts.join(), id);
/// # Ok::<(), &str>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Identifier {
    /// 0 most urgent, 7 least.
    pub priority: u8,
    /// The group.
    pub pgn: Pgn,
    /// Who sends.
    pub source: SourceAddress,
    /// To whom; [`SourceAddress::ALL`] for groups that are not addressed.
    pub destination: SourceAddress,
}

impl Identifier {
    /// The parts of an identifier of 29 bits; `None` for 11 bits, which J1939 does not use.
    pub const fn split(id: CanId) -> Option<Self> {
        if !id.is_extended() {
            return None;
        }
        let number = id.number();
        let field = (number >> 8) & 0x3_FFFF;
        let addressed = (field >> 8) & 0xFF < 240;
        let (pgn, destination) =
            if addressed { (field & 0x3_FF00, (field & 0xFF) as u8) } else { (field, 0xFF) };
        Some(Self {
            priority: (number >> 26) as u8,
            pgn: Pgn(pgn),
            source: SourceAddress((number & 0xFF) as u8),
            destination: SourceAddress(destination),
        })
    }

    /// The identifier of these parts. Of the priority three bits count; the destination counts only
    /// where the group is addressed.
    pub fn join(self) -> CanId {
        let specific = if self.pgn.is_addressed() { u32::from(self.destination.0) } else { 0 };
        let field = self.pgn.0 | specific;
        let number = (u32::from(self.priority & 7) << 26) | (field << 8) | u32::from(self.source.0);
        // Three, eighteen and eight bits make twenty-nine.
        CanId::extended(number).unwrap_or_else(|| unreachable!("29 bits"))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn table_of_identifiers_with_known_parts() {
        // From open captures and the layout of the identifier: PDU2, PDU1 to all, PDU1 to one.
        for (id, priority, pgn, source, destination) in [
            (0x18FEAE31, 6, 65198, 0x31, 0xFF),
            (0x1CECFF00, 7, 60416, 0x00, 0xFF),
            (0x0C00000B, 3, 0, 0x0B, 0x00),
            (0x18EA0BF9, 6, 59904, 0xF9, 0x0B),
        ] {
            let parts = CanId::extended(id).and_then(Identifier::split).unwrap();
            assert_eq!(parts.priority, priority);
            assert_eq!(parts.pgn.number(), pgn);
            assert_eq!((parts.source.0, parts.destination.0), (source, destination));
        }
        assert_eq!(CanId::standard(0x123).and_then(Identifier::split), None);
    }

    #[test]
    fn an_addressed_group_with_a_low_byte_is_refused() {
        assert_eq!(Pgn::new(0xEA0B), None);
        assert_eq!(Pgn::new(1 << 18), None);
        assert!(Pgn::new(0xFEF4).is_some_and(|pgn| !pgn.is_addressed()));
    }

    proptest! {
        #[test]
        fn split_then_join_gives_the_identifier_back(number in 0_u32..(1 << 29)) {
            let id = CanId::extended(number).unwrap();
            prop_assert_eq!(Identifier::split(id).unwrap().join(), id);
        }
    }
}
