//! What a log holds: who sends which group how often, and between which values each signal moved.

use std::collections::{BTreeMap, BTreeSet};

use rayon::prelude::*;

use super::losses::{Loss, Losses};
use super::rows::LongRow;
use super::senders::{Role, Senders};
use super::stretch::Stretch;
use super::transport::Message;
use crate::definitions::Definitions;
use crate::identifier::{Identifier, Pgn, SourceAddress};
use crate::signal::{Group, Signal};
use crate::trouble::{TroubleCode, trouble_codes};
use crate::value::Value;

/// Most trouble codes that are told apart.
const MOST_CODES: usize = 4096;

/// What a signal did.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SignalTally {
    /// How often it had a value.
    pub values: u64,
    /// How often it was not available.
    pub absent: u64,
    /// How often it was an error.
    pub errors: u64,
    /// How often it was a reserved code.
    pub reserved: u64,
    /// Lowest, highest and last number.
    pub range: Option<[f64; 3]>,
}

impl SignalTally {
    fn see(&mut self, value: Value) {
        match value {
            Value::Absent => self.absent += 1,
            Value::Error => self.errors += 1,
            Value::Reserved(_) => self.reserved += 1,
            Value::Text(_) => self.values += 1,
            Value::Number(_) | Value::Code(_) => {
                self.values += 1;
                if let Some(number) = value.number() {
                    let [low, high, _] = self.range.unwrap_or([number; 3]);
                    self.range = Some([low.min(number), high.max(number), number]);
                }
            }
        }
    }
}

/// A group of one sender.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GroupTally {
    /// How many messages; packets put together count once.
    pub count: u64,
    /// How many of them came in packets.
    pub in_packets: u64,
    /// Bytes of the longest.
    pub bytes: usize,
    /// One for each signal of the group, where the group is known.
    pub signals: Vec<SignalTally>,
}

/// What a log holds.
#[derive(Debug, Clone, Default)]
pub struct Tally {
    known: Vec<BTreeMap<SourceAddress, Seen>>,
    others: BTreeMap<(Pgn, SourceAddress), (u64, usize)>,
    /// Trouble codes with who sent them.
    pub codes: BTreeSet<(SourceAddress, TroubleCode)>,
    /// Messages of groups too short for a signal, and trouble codes beyond those told apart.
    pub losses: Losses,
    /// Vehicle identification, as sent; shown only where it was asked for.
    pub identification: BTreeMap<SourceAddress, String>,
}

#[derive(Debug, Clone, Default)]
struct Seen {
    signals: Vec<SignalTally>,
    in_packets: u64,
    longest: usize,
}

impl Tally {
    /// Takes stretches in order.
    pub fn take(&mut self, stretches: &[Stretch], definitions: &Definitions) {
        let groups = definitions.groups();
        self.known.resize(groups.len(), BTreeMap::new());
        let short: u64 = (self.known.par_iter_mut().zip(groups).enumerate())
            .map(|(at, (seen, group))| take_group(seen, group, at, stretches))
            .sum();
        self.losses.count_many(Loss::ShortGroup, short);
        for stretch in stretches {
            stretch.codes.iter().for_each(|row| self.take_codes(row));
            stretch.other.iter().for_each(|message| self.take_other(message));
        }
    }

    fn take_codes(&mut self, row: &LongRow) {
        if row.data.len() > 8 {
            let other = self.others.entry((Pgn::ACTIVE_CODES, row.source)).or_default();
            *other = (other.0 + 1, other.1.max(row.data.len()));
        }
        for code in trouble_codes(&row.data).into_iter().flat_map(|(_, codes)| codes) {
            let code = (row.source, code);
            if self.codes.len() < MOST_CODES {
                self.codes.insert(code);
            } else if !self.codes.contains(&code) {
                self.losses.count(Loss::TooManyCodes);
            }
        }
    }

    fn take_other(&mut self, message: &Message) {
        let other = self.others.entry((message.pgn, message.source)).or_default();
        *other = (other.0 + 1, other.1.max(message.data.len()));
        if message.pgn == Pgn::VEHICLE_IDENTIFICATION {
            let text = String::from_utf8_lossy(&message.data);
            let text = text.trim_end_matches(['*', '\0']).to_owned();
            self.identification.insert(message.source, text);
        }
    }

    /// Groups by number and sender, with the counts of their frames.
    pub fn groups(
        &self,
        senders: &Senders,
        definitions: &Definitions,
    ) -> BTreeMap<(Pgn, SourceAddress), GroupTally> {
        let mut groups: BTreeMap<_, GroupTally> = BTreeMap::new();
        for sender in senders.all().iter().filter(|sender| sender.role != Role::Transport) {
            let Some(id) = Identifier::split(sender.id) else { continue };
            let group = groups.entry((id.pgn, id.source)).or_default();
            group.count += sender.count;
            group.bytes = group.bytes.max(sender.longest);
        }
        for (seen, group) in self.known.iter().zip(definitions.groups()) {
            for (source, seen) in seen {
                let tally = groups.entry((group.pgn, *source)).or_default();
                tally.count += seen.in_packets;
                tally.in_packets = seen.in_packets;
                tally.bytes = tally.bytes.max(seen.longest);
                tally.signals.clone_from(&seen.signals);
            }
        }
        for (key, (count, bytes)) in &self.others {
            let tally = groups.entry(*key).or_default();
            tally.count += count;
            tally.in_packets += count;
            tally.bytes = tally.bytes.max(*bytes);
        }
        groups
    }
}

/// What was seen of a sender, with its longest message.
fn of_source<'a>(
    seen: &'a mut BTreeMap<SourceAddress, Seen>,
    group: &Group,
    source: SourceAddress,
    longest: usize,
) -> &'a mut Seen {
    let seen = seen.entry(source).or_default();
    seen.signals.resize(group.signals.len(), SignalTally::default());
    seen.longest = seen.longest.max(longest);
    seen
}

/// Signals of one group; gives how many messages were too short for one of them.
fn take_group(
    seen: &mut BTreeMap<SourceAddress, Seen>,
    group: &Group,
    at: usize,
    stretches: &[Stretch],
) -> u64 {
    let mut short = 0;
    let needed = group.signals.iter().filter(|signal| signal.when.is_none());
    let needed = needed.map(Signal::bytes_needed).max().unwrap_or(0);
    for lane in stretches.iter().map(|stretch| &stretch.sorted.lanes[at]) {
        for rows in lane.rows.chunk_by(|a, b| a.source == b.source) {
            let lengths = || rows.iter().map(|row| usize::from(row.length));
            short += lengths().filter(|length| *length < needed).count() as u64;
            let seen = of_source(seen, group, rows[0].source, lengths().max().unwrap_or(0));
            for (tally, signal) in seen.signals.iter_mut().zip(group.signals.iter()) {
                let raws = rows.iter().filter_map(|row| signal.raw_of_word(row.word, row.length));
                raws.for_each(|raw| tally.see(signal.value_of(raw)));
            }
        }
        for row in &lane.long {
            short += u64::from(row.data.len() < needed);
            let seen = of_source(seen, group, row.source, row.data.len());
            for (tally, signal) in seen.signals.iter_mut().zip(group.signals.iter()) {
                signal.decode(&row.data).into_iter().for_each(|value| tally.see(value));
            }
        }
    }
    for stretch in stretches {
        for row in &stretch.sorted.lanes[at].long {
            seen.entry(row.source).or_default().in_packets += 1;
        }
    }
    short
}
