//! What a file is, told by its content and never by its name.

use std::fmt;

use super::candump;

/// Bytes looked at.
pub const HEAD: usize = 1 << 16;
/// Lines of a text looked at.
const LINES: usize = 200;

/// A format of logs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Format {
    /// The log form or the screen form of candump.
    Candump,
    /// The text of Vector tools.
    Asc,
    /// The binary of Vector tools.
    Blf,
    /// Measurement data format 4 with bus frames.
    Mdf4,
    /// Packet capture, classic or next generation, of `SocketCAN`.
    Pcap,
    /// Comma-separated values with a mapping.
    Csv,
    /// Columns of frames in Parquet.
    Parquet,
}

impl Format {
    /// Every format.
    pub const ALL: [Self; 7] =
        [Self::Candump, Self::Asc, Self::Blf, Self::Mdf4, Self::Pcap, Self::Csv, Self::Parquet];

    /// Short name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Candump => "candump",
            Self::Asc => "asc",
            Self::Blf => "blf",
            Self::Mdf4 => "mdf4",
            Self::Pcap => "pcap",
            Self::Csv => "csv",
            Self::Parquet => "parquet",
        }
    }
}

impl fmt::Display for Format {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

/// The format that the first bytes of a file are of; `None` where they are of none.
pub fn format_of(head: &[u8]) -> Option<Format> {
    const MAGIC: [(&[u8], Format); 9] = [
        (b"LOGG", Format::Blf),
        (b"MDF     ", Format::Mdf4),
        (b"UnFinMF ", Format::Mdf4),
        (b"PAR1", Format::Parquet),
        (&[0xD4, 0xC3, 0xB2, 0xA1], Format::Pcap),
        (&[0xA1, 0xB2, 0xC3, 0xD4], Format::Pcap),
        (&[0x4D, 0x3C, 0xB2, 0xA1], Format::Pcap),
        (&[0xA1, 0xB2, 0x3C, 0x4D], Format::Pcap),
        (&[0x0A, 0x0D, 0x0D, 0x0A], Format::Pcap),
    ];
    if let Some((_, format)) = MAGIC.iter().find(|(magic, _)| head.starts_with(magic)) {
        return Some(*format);
    }
    if head.contains(&0) {
        return None;
    }
    let lines = || {
        let lines = head.split(|byte| *byte == b'\n').map(<[u8]>::trim_ascii);
        lines.filter(|line| !line.is_empty()).take(LINES)
    };
    if lines().any(candump::looks_like) {
        return Some(Format::Candump);
    }
    if lines().any(is_asc_header) {
        return Some(Format::Asc);
    }
    let first = lines().next()?;
    let is_table = [b',', b';', b'\t'].iter().any(|mark| first.contains(mark));
    is_table.then_some(Format::Csv)
}

/// Lines that stand at the head of an ASC file.
fn is_asc_header(line: &[u8]) -> bool {
    let text = line.to_ascii_lowercase();
    text.starts_with(b"base hex")
        || text.starts_with(b"base dec")
        || text.starts_with(b"begin triggerblock")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn content_decides() {
        assert_eq!(format_of(b"LOGG\x90\0\0\0"), Some(Format::Blf));
        assert_eq!(format_of(b"\xD4\xC3\xB2\xA1\x02\0"), Some(Format::Pcap));
        assert_eq!(format_of(b"(0.0) can0 123#00\n"), Some(Format::Candump));
        assert_eq!(format_of(b"date Mon\nbase hex  timestamps absolute\n"), Some(Format::Asc));
        assert_eq!(format_of(b"time,id,data\n1,2,3\n"), Some(Format::Csv));
        assert_eq!(format_of(b"hello\n"), None);
        assert_eq!(format_of(&[0; 64]), None);
    }

    #[test]
    fn a_log_with_a_broken_beginning_is_still_known() {
        assert_eq!(format_of(b"#FF00\n(0.0) can0 18FEF100#00\n"), Some(Format::Candump));
    }
}
