//! What a log holds, `airtide.logs/1`.

mod import;

pub use import::{ImportDocument, ImportRouteView};

use logs::definitions::Definitions;
use logs::read::senders::Senders;
use logs::read::{Loss, Losses, Place, Tally, Told};
use logs::signal::{Group, Signal};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What logs hold.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LogsDocument {
    /// `airtide.logs/1`.
    pub schema: String,
    /// Frames of all buses, duplicates among them.
    pub frames: u64,
    /// Records that could not be read.
    pub bad_records: u64,
    /// From the earliest to the latest frame.
    pub span_s: f64,
    /// Each file.
    pub files: Vec<LogFileView>,
    /// Groups by number and sender; messages that came in packets are put together.
    pub groups: Vec<LogGroupView>,
    /// Active trouble codes, each once.
    pub trouble_codes: Vec<TroubleCodeView>,
    /// Vehicle identification by sender; only where it was asked for.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub identification: Vec<IdentificationView>,
}

/// One file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LogFileView {
    /// Its name.
    pub file: String,
    /// What it is by its content.
    pub format: String,
    /// Hash of its bytes.
    pub sha256: String,
    /// Frames.
    pub frames: u64,
    /// Names of its buses.
    pub interfaces: Vec<String>,
    /// Earliest time, in seconds since 1970 or since the start.
    pub from_s: Option<f64>,
    /// Latest time.
    pub to_s: Option<f64>,
    /// How often time went back.
    pub clock_steps_back: u64,
    /// How often it jumped by more than five seconds.
    pub gaps: u64,
    /// Messages put together from packets.
    pub packet_messages: u64,
    /// What was lost, by kind.
    pub losses: Vec<LossView>,
    /// The first of the bad records.
    pub bad: Vec<BadRecordView>,
}

/// Losses of one kind.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct LossView {
    /// The kind.
    pub kind: String,
    /// How many.
    pub count: u64,
}

/// A bad record with its place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct BadRecordView {
    /// Why.
    pub kind: String,
    /// Line of a text, from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub line: Option<u64>,
    /// Byte of a binary file, from 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub byte: Option<u64>,
    /// Its beginning.
    pub record: String,
}

/// A group of one sender.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LogGroupView {
    /// Number of the group.
    pub pgn: u32,
    /// Our name for it, where it is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Who sends it.
    pub source_address: u8,
    /// How many messages.
    pub count: u64,
    /// How many of them came in packets.
    pub in_packets: u64,
    /// Bytes of a message; of the longest where they differ.
    pub bytes: usize,
    /// Its signals, where it is known.
    pub signals: Vec<LogSignalView>,
}

/// What a signal did.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LogSignalView {
    /// Number of the signal.
    pub spn: u32,
    /// Our name for it.
    pub name: String,
    /// Unit of the numbers.
    pub unit: String,
    /// How often it had a value.
    pub values: u64,
    /// How often it was not available.
    pub absent: u64,
    /// How often it was an error.
    pub errors: u64,
    /// How often it was a reserved code.
    pub reserved: u64,
    /// Lowest number.
    pub min: Option<f64>,
    /// Highest number.
    pub max: Option<f64>,
    /// Last number.
    pub last: Option<f64>,
}

/// An active trouble code.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct TroubleCodeView {
    /// Who reports it.
    pub source_address: u8,
    /// Number of the signal it is about.
    pub spn: u32,
    /// How it fails (FMI).
    pub failure: u8,
    /// How often it came.
    pub count: Option<u8>,
}

/// Who a vehicle says it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct IdentificationView {
    /// Who sent it.
    pub source_address: u8,
    /// As sent.
    pub text: String,
}

/// Seconds of nanoseconds.
fn seconds(ns: i64) -> f64 {
    ns as f64 / 1e9
}

impl LogFileView {
    /// What one file told; losses of decoding are added.
    pub fn new(told: &Told, decoding: &Losses) -> Self {
        let count = |loss: Loss| told.losses.of(loss) + decoding.of(loss);
        let losses = Loss::ALL.into_iter().filter(|loss| count(*loss) > 0);
        let bad = told.losses.listed().iter().map(|listed| BadRecordView {
            kind: listed.loss.to_string(),
            line: if let Place::Line(line) = listed.place { Some(line) } else { None },
            byte: if let Place::Byte(byte) = listed.place { Some(byte) } else { None },
            record: listed.excerpt.clone(),
        });
        Self {
            file: told.name.clone(),
            format: told.format.to_string(),
            sha256: told.sha256.clone(),
            frames: told.frames,
            interfaces: told.interfaces.names().to_vec(),
            from_s: told.clock.earliest.map(|time| seconds(time.as_ns())),
            to_s: told.clock.latest.map(|time| seconds(time.as_ns())),
            clock_steps_back: told.clock.steps_back,
            gaps: told.clock.gaps,
            packet_messages: told.messages,
            losses: losses
                .map(|loss| LossView { kind: loss.to_string(), count: count(loss) })
                .collect(),
            bad: bad.collect(),
        }
    }
}

impl LogsDocument {
    /// What the files told, and what was found in them together.
    pub fn new(
        files: Vec<LogFileView>,
        tally: &Tally,
        senders: &Senders,
        definitions: &Definitions,
        keep_identification: bool,
    ) -> Self {
        let groups =
            tally.groups(senders, definitions).into_iter().map(|((pgn, source), tally)| {
                let known = definitions.find(pgn).map(|at| &definitions.groups()[at]);
                let signals = known.map_or(&[][..], |group: &Group| &group.signals);
                LogGroupView {
                    pgn: pgn.number(),
                    name: known.map(|group| group.name.to_string()),
                    source_address: source.0,
                    count: tally.count,
                    in_packets: tally.in_packets,
                    bytes: tally.bytes,
                    signals: signals.iter().zip(&tally.signals).map(signal_view).collect(),
                }
            });
        let codes = tally.codes.iter().map(|(source, code)| TroubleCodeView {
            source_address: source.0,
            spn: code.spn,
            failure: code.failure,
            count: code.count,
        });
        let identification = tally.identification.iter().filter(|_| keep_identification);
        Self {
            schema: "airtide.logs/1".to_owned(),
            frames: files.iter().map(|file| file.frames).sum(),
            bad_records: files.iter().flat_map(|file| &file.losses).map(bad_records).sum(),
            span_s: span(&files),
            groups: groups.collect(),
            trouble_codes: codes.collect(),
            identification: identification
                .map(|(source, text)| IdentificationView {
                    source_address: source.0,
                    text: text.clone(),
                })
                .collect(),
            files,
        }
    }
}

fn bad_records(view: &LossView) -> u64 {
    let bad = Loss::ALL.into_iter().any(|loss| loss.is_bad_record() && loss.name() == view.kind);
    if bad { view.count } else { 0 }
}

fn span(files: &[LogFileView]) -> f64 {
    let from = files.iter().filter_map(|file| file.from_s).min_by(f64::total_cmp);
    let to = files.iter().filter_map(|file| file.to_s).max_by(f64::total_cmp);
    from.zip(to).map_or(0.0, |(from, to)| to - from)
}

fn signal_view((signal, tally): (&Signal, &logs::read::SignalTally)) -> LogSignalView {
    LogSignalView {
        spn: signal.spn.0,
        name: signal.name.to_string(),
        unit: signal.unit.sign().to_owned(),
        values: tally.values,
        absent: tally.absent,
        errors: tally.errors,
        reserved: tally.reserved,
        min: tally.range.map(|range| range[0]),
        max: tally.range.map(|range| range[1]),
        last: tally.range.map(|range| range[2]),
    }
}
