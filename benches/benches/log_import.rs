//! Candump text to decoded signals and to Parquet, with python-can and cantools beside on the same text.
//!
//!     cargo bench -p benches --bench log_import -- 20000000
//!
//! The number is how many frames, four million without it. The peer is run by `python3`, or by the
//! interpreter that `PEER_PYTHON` names.

use std::fmt::Write as _;
use std::fs::File;
use std::io::{BufWriter, Write as _};
use std::path::Path;
use std::process::{Command, ExitCode};
use std::time::Instant;

use anyhow::{Context as _, Result, bail};
use logs::read::{Interfaces, Log, Options, ReadError, Tally, candump, read_all};
use logs::signal::Coding;
use logs::store::{Choice, Import};
use logs::write::candump_line;
use logs::{CanId, Data, Definitions, Frame, Identifier, Interface, Timestamp};

const FRAMES: u64 = 4_000_000;
/// Frames for the peer: it is slow, and its speed does not hang on the length.
const PEER_FRAMES: u64 = 100_000;
const RUNS: usize = 5;
/// What is to be reached, in frames a second; the peer by its multiple.
const DECODE: f64 = 30e6;
const WHOLE: f64 = 12e6;
const TIMES_PEER: f64 = 200.0;

/// Invented senders: identifiers with their interval in milliseconds. Two in five frames are of groups of
/// the table, a little more than in an open log of a truck.
const SENDERS: [(u32, u64); 28] = [
    (0x0CF0_0203, 10),
    (0x0CF0_0300, 20),
    (0x0CF0_0400, 20),
    (0x18FE_DF00, 20),
    (0x0CF0_0331, 50),
    (0x0CF0_0A00, 50),
    (0x18F0_0E00, 50),
    (0x18F0_0F00, 50),
    (0x0C01_0305, 50),
    (0x18F0_0503, 100),
    (0x18F0_0100, 100),
    (0x18F0_010B, 100),
    (0x18FE_BF0B, 100),
    (0x18FE_F100, 100),
    (0x18FE_F131, 100),
    (0x18FE_F200, 100),
    (0x18FE_E000, 100),
    (0x18FC_F200, 100),
    (0x10FD_A300, 100),
    (0x18FE_9200, 100),
    (0x18FE_EE00, 1000),
    (0x18FE_F500, 1000),
    (0x18FE_AE31, 1000),
    (0x18FE_EA31, 1000),
    (0x18FE_F331, 1000),
    (0x18FE_F433, 833),
    (0x18FE_FC00, 1000),
    (0x18FE_E900, 1000),
];

fn main() -> Result<ExitCode> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    // A run of tests over all targets is no place for a bench.
    if !arguments.iter().any(|argument| argument == "--bench") {
        return Ok(ExitCode::SUCCESS);
    }
    let count = arguments.iter().find(|argument| !argument.starts_with('-'));
    let count = match count {
        Some(text) => text.parse().with_context(|| format!("'{text}' is no number of frames"))?,
        None => FRAMES,
    };
    let folder = tempfile::tempdir()?;
    let text = folder.path().join("made.log");
    write_text(&text, count)?;
    let mut out = anstream::stdout();
    let cores = std::thread::available_parallelism()?;
    let bytes = std::fs::metadata(&text)?.len();
    writeln!(
        out,
        "{count} made frames, {bytes} bytes of candump text, {cores} cores, median of {RUNS}"
    )?;
    let definitions = Definitions::default();
    let parse = median(|| parse_alone(&text))?;
    let decode = median(|| decode_alone(&text, &definitions))?;
    let whole = median(|| import(&text, folder.path(), &definitions))?;
    let peer = match peer(folder.path(), &definitions) {
        Ok(peer) => Some(peer),
        Err(problem) => {
            writeln!(out, "THE PEER IS MISSING, no ratio is told: {problem:#}")?;
            None
        }
    };
    let mut row = |what: &str, speed: f64, target: Option<f64>| {
        let times = peer.map_or_else(String::new, |peer| format!("{:8.0} x peer", speed / peer));
        let target = target.map_or_else(String::new, |target| {
            let met = if speed >= target { "reached" } else { "missed" };
            format!("  {:.0} M {met}", target / 1e6)
        });
        writeln!(out, "{what:42} {:8.2} M frames/s {times}{target}", speed / 1e6)
    };
    row("text to frames, one core", parse, None)?;
    row("text to decoded signals, nothing written", decode, Some(DECODE))?;
    row("whole import, native samples and grid", whole, Some(WHOLE))?;
    if let Some(peer) = peer {
        row(&format!("python-can + cantools, {PEER_FRAMES} frames"), peer, None)?;
        let met = if whole >= TIMES_PEER * peer { "reached" } else { "missed" };
        writeln!(out, "whole import at least {TIMES_PEER:.0} x the peer: {met}")?;
    }
    Ok(ExitCode::SUCCESS)
}

/// Median frames a second.
fn median(mut run: impl FnMut() -> Result<u64>) -> Result<f64> {
    let mut speeds = Vec::new();
    for _ in 0..RUNS {
        let start = Instant::now();
        let frames = run()?;
        speeds.push(frames as f64 / start.elapsed().as_secs_f64());
    }
    speeds.sort_by(f64::total_cmp);
    Ok(speeds[RUNS / 2])
}

fn parse_alone(text: &Path) -> Result<u64> {
    let mut blocks = logs::read::blocks::Blocks::of(File::open(text)?);
    let mut frames = 0;
    while let Some(block) = blocks.next_block()? {
        frames += candump::read_block(&block, Interfaces::default()).frames.len() as u64;
    }
    Ok(frames)
}

fn decode_alone(text: &Path, definitions: &Definitions) -> Result<u64> {
    let mut tally = Tally::default();
    let log = Log::open(text, &Options::default())?;
    let (told, _) = read_all(log, definitions, |stretches| {
        tally.take(&stretches, definitions);
        Ok::<_, ReadError>(())
    })?;
    Ok(told.frames)
}

fn import(text: &Path, folder: &Path, definitions: &Definitions) -> Result<u64> {
    let out = folder.join("series");
    let mut import = Import::start(&out, "1", definitions, Choice::default())?;
    import.log(Log::open(text, &Options::default())?)?;
    let frames = import.finish()?.logs.iter().map(|told| told.frames).sum();
    std::fs::remove_dir_all(&out)?;
    Ok(frames)
}

/// Frames a second of the peer on a text and a DBC of the same frames and groups.
fn peer(folder: &Path, definitions: &Definitions) -> Result<f64> {
    let (text, groups) = (folder.join("peer.log"), folder.join("peer.dbc"));
    write_text(&text, PEER_FRAMES)?;
    std::fs::write(&groups, dbc(definitions)?)?;
    let python = std::env::var("PEER_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("log_import.py");
    let output = Command::new(&python).arg(script).arg(&text).arg(&groups).output();
    let output = output.with_context(|| format!("{python} cannot be run"))?;
    if !output.status.success() {
        bail!("{python}: {}, {}", output.status, String::from_utf8_lossy(&output.stderr).trim());
    }
    let mut speeds: Vec<f64> = Vec::new();
    for line in String::from_utf8_lossy(&output.stdout).lines() {
        speeds.push(line.parse().with_context(|| format!("'{line}' is no speed"))?);
    }
    speeds.sort_by(f64::total_cmp);
    speeds.get(speeds.len() / 2).copied().context("no speed was printed")
}

/// Frames in order of time; of each sender one byte moves by a step from message to message.
fn write_text(path: &Path, count: u64) -> Result<()> {
    let mut out = BufWriter::new(File::create(path)?);
    let mut due: Vec<u64> = (0..).step_by(137).take(SENDERS.len()).collect();
    let mut data = [[0x40_u8; 8]; SENDERS.len()];
    let mut chance = 0x9E37_79B9_7F4A_7C15_u64;
    let mut line = Vec::new();
    for _ in 0..count {
        let next = (0..SENDERS.len()).min_by_key(|at| due[*at]).context("there are senders")?;
        let (id, every_ms) = SENDERS[next];
        chance ^= chance << 13;
        chance ^= chance >> 7;
        chance ^= chance << 17;
        // The first byte says which tire in some groups.
        let moved = &mut data[next][1 + (chance >> 8) as usize % 7];
        // They stay under the codes that are no value.
        *moved = if chance & 8 == 0 { (*moved + 1).min(0xF0) } else { moved.saturating_sub(1) };
        let frame = Frame {
            time: Timestamp::from_us(1_700_000_000_000_000 + i64::try_from(due[next])?),
            interface: Interface(0),
            id: CanId::extended(id).context("29 bits")?,
            data: Data::padded(data[next], 8),
        };
        due[next] += every_ms * 1000;
        line.clear();
        candump_line(&frame, "can0", &mut line);
        out.write_all(&line)?;
    }
    Ok(out.flush()?)
}

/// The groups of the senders as the peer reads them, with the same signals.
fn dbc(definitions: &Definitions) -> Result<String> {
    let mut text = "VERSION \"\"\nNS_ :\nBS_:\nBU_: V\n".to_owned();
    for (id, _) in SENDERS {
        let parts = CanId::extended(id).and_then(Identifier::split).context("29 bits")?;
        let Some(at) = definitions.find(parts.pgn) else { continue };
        writeln!(text, "BO_ {} M{id:X}: 8 V", u64::from(id) | 1 << 31)?;
        for signal in definitions.groups()[at].signals.iter() {
            let (scale, offset) = match signal.coding {
                Coding::Number { scale, offset } | Coding::Signed { scale, offset } => {
                    (scale, offset)
                }
                _ => (1.0, 0.0),
            };
            let (name, start, bits) = (&signal.name, signal.start, signal.bits);
            writeln!(text, " SG_ {name} : {start}|{bits}@1+ ({scale},{offset}) [0|0] \"\" V")?;
        }
    }
    Ok(text)
}
