//! A stretch of a log as frames, before anything is decoded.

use super::losses::Losses;
use crate::frame::{Frame, Interface};

/// Names of the buses of a log, in the order in which they appear.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Interfaces {
    names: Vec<String>,
}

impl Interfaces {
    /// Most buses that are told apart.
    const MOST: usize = 255;

    /// Number of a bus; a new name gets the next one. `None` where there are too many.
    pub fn number(&mut self, name: &[u8]) -> Option<Interface> {
        let known = self.names.iter().position(|known| known.as_bytes() == name);
        let at = known.or_else(|| {
            (self.names.len() < Self::MOST).then(|| {
                self.names.push(String::from_utf8_lossy(name).into_owned());
                self.names.len() - 1
            })
        })?;
        u8::try_from(at).ok().map(Interface)
    }

    /// Name of a bus.
    pub fn name(&self, interface: Interface) -> &str {
        self.names.get(usize::from(interface.0)).map_or("", String::as_str)
    }

    /// All names.
    pub fn names(&self) -> &[String] {
        &self.names
    }

    /// Numbers here for the numbers of a part of the same log.
    pub fn take_in(&mut self, part: &Self) -> Vec<Interface> {
        let last = Interface(254);
        part.names.iter().map(|name| self.number(name.as_bytes()).unwrap_or(last)).collect()
    }
}

/// A stretch of a log.
#[derive(Debug, Clone, Default)]
pub struct Batch {
    /// Its frames in order.
    pub frames: Vec<Frame>,
    /// What it did not give.
    pub losses: Losses,
    /// The buses named so far.
    pub interfaces: Interfaces,
    /// How many lines it has, for text.
    pub lines: u64,
}
