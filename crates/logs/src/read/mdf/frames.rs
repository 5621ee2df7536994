//! The frames of a measurement file, groups merged by time.

use super::block::{Fault, File};
use super::channels::{Contents, Records, contents, told};
use super::stream::{Stream, Undone};
use crate::frame::Timestamp;
use crate::read::Frames;
use crate::read::batch::{Batch, Interfaces};
use crate::read::digest::{Digested, Sought};
use crate::read::error::ReadError;
use crate::read::input::Input;
use crate::read::losses::{Loss, Losses, Place};
use crate::read::open::Format;

/// Frames of a batch.
const BATCH: usize = 1 << 15;
/// Most bytes of data that all groups hold at a time.
const MOST_HELD: usize = 1 << 28;
/// Where the header stands.
const HEADER: u64 = 64;

/// Frames of a measurement file.
pub struct Mdf {
    name: String,
    file: File,
    streams: Vec<Stream>,
    interfaces: Interfaces,
    /// What was lost before the first frame.
    losses: Losses,
    ended: bool,
}

impl Mdf {
    /// A measurement file of version 4.
    ///
    /// # Errors
    /// Where its header is broken, or it holds no CAN frames.
    pub fn open(name: &str, input: Input) -> Result<Self, ReadError> {
        Self::follow(name, Digested::default().follow(input))
    }

    pub(in crate::read) fn follow(name: &str, input: Sought) -> Result<Self, ReadError> {
        let mut file = File::of(input);
        let mut losses = Losses::default();
        let streams = streams(&mut file, &mut losses).map_err(|fault| error(name, fault))?;
        let interfaces = Interfaces::default();
        Ok(Self { name: name.to_owned(), file, streams, interfaces, losses, ended: false })
    }

    /// Frames in order of time until the batch is full.
    fn merge(&mut self, batch: &mut Batch) -> Result<(), Fault> {
        let Self { file, streams, interfaces, .. } = self;
        while batch.frames.len() < BATCH {
            let mut first: Option<(Timestamp, usize)> = None;
            let mut second = Timestamp::from_ns(i64::MAX);
            let mut held = 0;
            for (at, stream) in streams.iter_mut().enumerate() {
                let time = stream.time(file, interfaces, &mut batch.losses)?;
                held += stream.held();
                if held > MOST_HELD {
                    return Err(Fault::Refused(format!(
                        "its groups hold more than {MOST_HELD} bytes at the same time; save it again \
                         with fewer groups, or with blocks of 4 MB or less"
                    )));
                }
                let Some(time) = time else { continue };
                match first {
                    Some((earliest, _)) if time >= earliest => second = second.min(time),
                    _ => {
                        second = first.map_or(second, |(earliest, _)| earliest);
                        first = Some((time, at));
                    }
                }
            }
            let Some((_, at)) = first else {
                self.ended = true;
                return Ok(());
            };
            let stream = &mut streams[at];
            while batch.frames.len() < BATCH {
                match stream.time(file, interfaces, &mut batch.losses)? {
                    Some(time) if time <= second => batch.frames.extend(stream.take()),
                    _ => break,
                }
            }
        }
        Ok(())
    }
}

impl Frames for Mdf {
    fn next_batch(&mut self) -> Result<Option<Batch>, ReadError> {
        if self.ended {
            return Ok(None);
        }
        let mut batch = Batch { losses: std::mem::take(&mut self.losses), ..Batch::default() };
        self.merge(&mut batch).map_err(|fault| error(&self.name, fault))?;
        if self.ended {
            self.file.finish().map_err(|problem| ReadError::io(&self.name, problem))?;
        }
        batch.interfaces = self.interfaces.clone();
        Ok(Some(batch))
    }
}

fn error(name: &str, fault: Fault) -> ReadError {
    match fault {
        Fault::Io(error) => ReadError::io(name, error),
        Fault::Broken { at, what, .. } => {
            ReadError::format(name, Format::Mdf4, format!("at byte {at} {what}"))
        }
        Fault::Refused(problem) => ReadError::format(name, Format::Mdf4, problem),
    }
}

/// The streams of a file that hold frames, or frames of other kinds to count.
fn streams(file: &mut File, losses: &mut Losses) -> Result<Vec<Stream>, Fault> {
    let short = |_| Fault::Refused("it ends inside its header".to_owned());
    let head = file.bytes(0, 64).map_err(short)?;
    let word = |at: usize| u16::from_le_bytes([head[at], head[at + 1]]);
    let (version, flags) = (word(28), word(60));
    if !(400..500).contains(&version) {
        return Err(Fault::Refused(format!(
            "it is of version {}.{:02}; version 4 is read: save it again as 4.1",
            version / 100,
            version % 100
        )));
    }
    let header = file.block(HEADER, *b"HD").map_err(short)?;
    let start = i64::try_from(header.u64(0)?).map_or(0, |ns| ns);
    let undone = if head.starts_with(b"UnFinMF ") {
        let what = b"never finished by its writer; read as far as it goes";
        losses.list(Loss::Truncated, Place::Byte(0), what);
        Undone { counts: true, last_length: flags & 4 != 0, places: flags & 64 != 0 }
    } else {
        Undone::default()
    };
    let Contents { data_groups, others, names } = contents(file, header.link(0), losses)?;
    let holds = |wanted: fn(&Records) -> bool| {
        let mut groups = data_groups.iter().flat_map(|group| &group.groups);
        groups.any(|group| wanted(&group.records))
    };
    if !holds(|records| matches!(records, Records::Frames(_) | Records::Lost(_))) {
        return Err(Fault::Refused(without_frames(others, &names, losses)));
    }
    let mut streams = Vec::new();
    for group in data_groups {
        let ours = |group: &super::channels::Group| {
            matches!(group.records, Records::Frames(_) | Records::Lost(_))
        };
        if group.groups.iter().any(ours) {
            let stream = Stream::of(file, group, undone, Timestamp::from_ns(start));
            streams.extend(told(stream, losses)?);
        }
    }
    Ok(streams)
}

/// What to say of a file without frames.
fn without_frames(others: usize, names: &[String], losses: &Losses) -> String {
    let broken = losses.listed().iter().find(|listed| listed.loss.is_bad_record());
    if let Some(broken) = broken.filter(|broken| broken.place != Place::Byte(0)) {
        let (Place::Byte(at) | Place::Line(at)) = broken.place;
        return format!("at byte {at} {}, and no CAN frames are found beside it", broken.excerpt);
    }
    let holds = match others {
        0 => "it holds no channels".to_owned(),
        1 => format!("it holds one group of signals ({})", names.join(", ")),
        _ => format!("it holds {others} groups of signals (such as {})", names.join(", ")),
    };
    format!(
        "{holds} and no CAN frames (CAN_DataFrame); frames cannot be had from signals: record or export \
         the bus itself"
    )
}
