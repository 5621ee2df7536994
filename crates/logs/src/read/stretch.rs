//! Stretches of a log in order: sorted on all cores, then numbered, put together and handed on.

use rayon::prelude::*;

use super::batch::{Batch, Interfaces};
use super::candump;
use super::error::ReadError;
use super::input::Input;
use super::log::{Log, Options, Source, Timing};
use super::losses::Losses;
use super::open::Format;
use super::rows::{Clock, LongRow, Row, Sorted, sort};
use super::senders::Senders;
use super::tally::Tally;
use super::transport::{Message, Transport};
use crate::definitions::Definitions;
use crate::frame::{Frame, Interface, Timestamp};
use crate::identifier::{Identifier, Pgn, SourceAddress};

/// Blocks that are sorted before they are handed on, for each core.
const AHEAD: usize = 8;

/// What a log told besides its rows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// Name of the file.
    pub name: String,
    /// What it is.
    pub format: Format,
    /// Hash of the file.
    pub sha256: String,
    /// Bytes of the file.
    pub length: u64,
    /// Frames read, duplicates among them.
    pub frames: u64,
    /// Names of the buses.
    pub interfaces: Interfaces,
    /// How time ran.
    pub clock: Clock,
    /// What was lost.
    pub losses: Losses,
    /// Multi-packet messages that became whole.
    pub messages: u64,
}

/// A stretch in order, ready for whoever decodes.
#[derive(Debug, Clone)]
pub struct Stretch {
    /// The rows, buses numbered for the whole log; messages stand in `long` of their group.
    pub sorted: Sorted,
    /// Trouble codes: single frames and messages.
    pub codes: Vec<LongRow>,
    /// Messages of groups that are not known, and of identification.
    pub other: Vec<Message>,
}

/// Reads a log to its end, and hands on its stretches in order while the next are read.
///
/// # Errors
/// Where the file cannot be read on, or where `each` gives up.
pub fn read_all<E>(
    log: Log,
    definitions: &Definitions,
    mut each: impl FnMut(Vec<Stretch>) -> Result<(), E> + Send,
) -> Result<(Told, Senders), E>
where
    E: From<ReadError> + Send,
{
    let Log { name, format, mut source, digest, length } = log;
    let mut order = Order::default();
    let mut since = Timestamp::default();
    let mut next = fetch(&name, &mut source, &mut since, definitions)?;
    while !next.is_empty() {
        let ready: Vec<Stretch> =
            next.into_iter().map(|part| order.put(part, definitions)).collect();
        let (fetched, handed) =
            rayon::join(|| fetch(&name, &mut source, &mut since, definitions), || each(ready));
        handed?;
        next = fetched?;
    }
    order.transport.finish(&mut order.losses);
    let told = Told {
        name,
        format,
        sha256: digest.sha256(),
        length,
        frames: order.frames,
        interfaces: order.interfaces,
        clock: order.clock,
        losses: order.losses,
        messages: order.transport.whole,
    };
    Ok((told, order.senders))
}

/// A sorted stretch that does not know yet what stands before it.
struct Part {
    sorted: Sorted,
    interfaces: Interfaces,
    losses: Losses,
    lines: u64,
}

fn fetch(
    name: &str,
    source: &mut Source,
    since: &mut Timestamp,
    definitions: &Definitions,
) -> Result<Vec<Part>, ReadError> {
    match source {
        Source::Lines(blocks, timing) => {
            let mut texts = Vec::new();
            while texts.len() < AHEAD * rayon::current_num_threads() {
                match blocks.next_block() {
                    Ok(Some(block)) => texts.push(block),
                    Ok(None) => break,
                    Err(error) => return Err(ReadError::io(name, error)),
                }
            }
            let parse = |text: Vec<u8>| candump::read_block(&text, Interfaces::default());
            if *timing == Timing::AsWritten {
                let parts = texts.into_par_iter().map(|text| part(parse(text), definitions));
                return Ok(parts.collect());
            }
            let mut batches: Vec<Batch> = texts.into_par_iter().map(parse).collect();
            for frame in batches.iter_mut().flat_map(|batch| &mut batch.frames) {
                *since = since.after_ns(frame.time.as_ns());
                frame.time = *since;
            }
            Ok(batches.into_par_iter().map(|batch| part(batch, definitions)).collect())
        }
        Source::Frames(frames) => {
            let mut batches = Vec::new();
            while batches.len() < AHEAD {
                match frames.next_batch()? {
                    Some(batch) => batches.push(batch),
                    None => break,
                }
            }
            Ok(batches.into_par_iter().map(|batch| part(batch, definitions)).collect())
        }
    }
}

fn part(batch: Batch, definitions: &Definitions) -> Part {
    let sorted = sort(&batch.frames, definitions);
    Part { sorted, interfaces: batch.interfaces, losses: batch.losses, lines: batch.lines }
}

/// What goes on from one stretch to the next.
#[derive(Default)]
struct Order {
    interfaces: Interfaces,
    senders: Senders,
    transport: Transport,
    clock: Clock,
    losses: Losses,
    frames: u64,
    lines: u64,
}

impl Order {
    fn put(&mut self, part: Part, definitions: &Definitions) -> Stretch {
        let Part { mut sorted, interfaces, losses, lines } = part;
        let numbers = self.interfaces.take_in(&interfaces);
        renumber(&mut sorted, &numbers);
        self.losses.append(losses, self.lines);
        self.losses.append(std::mem::take(&mut sorted.losses), self.lines);
        self.lines += lines;
        self.frames += sorted.frames;
        self.clock.append(&sorted.clock);
        let lost = self.senders.append(&sorted.senders, &numbers, definitions);
        self.losses.count_many(super::Loss::TooManySenders, lost);
        let mut codes: Vec<LongRow> = sorted.codes.iter().map(code).collect();
        let mut other = Vec::new();
        for frame in &sorted.transport {
            let Some(message) = self.transport.take(frame, &mut self.losses) else { continue };
            match definitions.find(message.pgn) {
                Some(at) => sorted.lanes[at].long.push(long(message)),
                None if message.pgn == Pgn::ACTIVE_CODES => codes.push(long(message)),
                None => other.push(message),
            }
        }
        codes.sort_by_key(|row| row.time);
        Stretch { sorted, codes, other }
    }
}

fn renumber(sorted: &mut Sorted, numbers: &[Interface]) {
    if numbers.iter().zip(0..).all(|(number, at)| number.0 == at) {
        return;
    }
    let number = |interface: &mut Interface| {
        *interface = numbers.get(usize::from(interface.0)).copied().unwrap_or(*interface);
    };
    for lane in &mut sorted.lanes {
        lane.rows.iter_mut().for_each(|Row { interface, .. }| number(interface));
    }
    let frames = sorted.transport.iter_mut().chain(&mut sorted.codes);
    frames.for_each(|Frame { interface, .. }| number(interface));
}

fn code(frame: &Frame) -> LongRow {
    LongRow {
        time: frame.time,
        source: Identifier::split(frame.id).map_or(SourceAddress::NONE, |parts| parts.source),
        interface: frame.interface,
        data: frame.data.bytes().to_vec(),
    }
}

fn long(message: Message) -> LongRow {
    let Message { time, interface, source, data, .. } = message;
    LongRow { time, source, interface, data }
}

/// Reads bytes as whatever they look like, to their end: one call for whoever throws bytes at the
/// readers, and the body of their fuzzing.
///
/// # Errors
/// As [`Log::of`] and [`read_all`].
pub fn read_bytes(bytes: Vec<u8>) -> Result<Told, ReadError> {
    let definitions = Definitions::default();
    let log = Log::of("bytes", Input::memory(bytes), &Options::default())?;
    let mut tally = Tally::default();
    let (told, _) = read_all(log, &definitions, |stretches| {
        tally.take(&stretches, &definitions);
        Ok::<_, ReadError>(())
    })?;
    Ok(told)
}
