//! Identifiers seen in a log, each with its counts: found again at every frame without searching.

use std::collections::BTreeMap;

use crate::definitions::Definitions;
use crate::frame::{CanId, Frame, Interface};
use crate::identifier::{Identifier, Pgn};

/// Most identifiers that are told apart; a flood of random ones is counted beyond.
pub const MOST: usize = 1 << 15;

/// What is done with the frames of an identifier.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Rows of the group at this place of the definitions.
    Group(usize),
    /// A part of a multi-packet message.
    Transport,
    /// Active trouble codes.
    Codes,
    /// Counted only.
    Counted,
}

/// One identifier on one bus.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sender {
    /// The bus.
    pub interface: Interface,
    /// The identifier.
    pub id: CanId,
    /// What is done with it.
    pub role: Role,
    /// How many frames.
    pub count: u64,
    /// Bytes of its longest frame.
    pub longest: usize,
}

/// Identifiers with their counts.
#[derive(Debug, Clone)]
pub struct Senders {
    senders: Vec<Sender>,
    /// Open addressing: place in `senders` and one, zero for free.
    slots: Vec<u32>,
}

impl Default for Senders {
    fn default() -> Self {
        Self { senders: Vec::new(), slots: vec![0; 512] }
    }
}

impl Senders {
    /// All of them, in the order in which they appeared.
    pub fn all(&self) -> &[Sender] {
        &self.senders
    }

    /// Counts a frame and tells what is done with it; `None` where there are too many identifiers.
    pub fn count(&mut self, frame: &Frame, definitions: &Definitions) -> Option<Role> {
        let at = self.place(frame.interface, frame.id, definitions)?;
        let sender = &mut self.senders[at];
        sender.count += 1;
        sender.longest = sender.longest.max(frame.data.length());
        Some(sender.role)
    }

    /// Adds the counts of a part, its buses numbered as in `interfaces`; gives how many frames found
    /// no place.
    pub fn append(
        &mut self,
        part: &Self,
        interfaces: &[Interface],
        definitions: &Definitions,
    ) -> u64 {
        let mut lost = 0;
        for sender in &part.senders {
            let interface = interfaces.get(usize::from(sender.interface.0)).copied();
            let interface = interface.unwrap_or(sender.interface);
            match self.place(interface, sender.id, definitions) {
                Some(at) => {
                    self.senders[at].count += sender.count;
                    self.senders[at].longest = self.senders[at].longest.max(sender.longest);
                }
                None => lost += sender.count,
            }
        }
        lost
    }

    fn place(
        &mut self,
        interface: Interface,
        id: CanId,
        definitions: &Definitions,
    ) -> Option<usize> {
        let mask = self.slots.len() - 1;
        let mut at = hash(interface, id) & mask;
        loop {
            match self.slots[at] {
                0 => break,
                found => {
                    let found = found as usize - 1;
                    let sender = &self.senders[found];
                    if sender.id == id && sender.interface == interface {
                        return Some(found);
                    }
                }
            }
            at = (at + 1) & mask;
        }
        if self.senders.len() == MOST {
            return None;
        }
        self.senders.push(Sender {
            interface,
            id,
            role: role(id, definitions),
            count: 0,
            longest: 0,
        });
        self.slots[at] = u32::try_from(self.senders.len()).ok()?;
        if self.senders.len() * 2 > self.slots.len() {
            self.grow();
        }
        Some(self.senders.len() - 1)
    }

    fn grow(&mut self) {
        let mask = self.slots.len() * 2 - 1;
        self.slots = vec![0; mask + 1];
        for (number, sender) in (1..).zip(&self.senders) {
            let mut at = hash(sender.interface, sender.id) & mask;
            while self.slots[at] != 0 {
                at = (at + 1) & mask;
            }
            self.slots[at] = number;
        }
    }

    /// Frames by bus.
    pub fn by_interface(&self) -> BTreeMap<Interface, u64> {
        let mut sums = BTreeMap::new();
        for sender in &self.senders {
            *sums.entry(sender.interface).or_insert(0) += sender.count;
        }
        sums
    }
}

/// Fibonacci hashing: the high bits of a product spread best.
#[allow(clippy::cast_possible_truncation, reason = "only the low bits are used after the shift")]
fn hash(interface: Interface, id: CanId) -> usize {
    let key = u64::from(id.number()) | u64::from(interface.0) << 32;
    let key = key | u64::from(id.is_extended()) << 40;
    (key.wrapping_mul(0x9E37_79B9_7F4A_7C15) >> 40) as usize
}

fn role(id: CanId, definitions: &Definitions) -> Role {
    match Identifier::split(id).map(|parts| parts.pgn) {
        Some(
            Pgn::TRANSPORT_MANAGEMENT
            | Pgn::TRANSPORT_DATA
            | Pgn::EXTENDED_MANAGEMENT
            | Pgn::EXTENDED_DATA,
        ) => Role::Transport,
        Some(Pgn::ACTIVE_CODES) => Role::Codes,
        Some(pgn) => definitions.find(pgn).map_or(Role::Counted, Role::Group),
        None => Role::Counted,
    }
}
