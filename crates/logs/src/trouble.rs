//! Active trouble codes (DM1): lamps, then four bytes a code.
//!
//! # Source
//! `j1939-dm1`

/// State of a lamp.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lamp {
    /// Off.
    Off,
    /// On.
    On,
    /// Reserved.
    Reserved,
    /// Not available.
    Absent,
}

/// The four lamps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Lamps {
    /// Malfunction indicator.
    pub malfunction: Lamp,
    /// Red: stop.
    pub red: Lamp,
    /// Amber: warning.
    pub amber: Lamp,
    /// Protect.
    pub protect: Lamp,
}

/// One trouble code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct TroubleCode {
    /// Number of the signal it is about.
    pub spn: u32,
    /// How it fails (FMI).
    pub failure: u8,
    /// How often it came; `None` where that is not known.
    pub count: Option<u8>,
    /// Whether the signal's number is put together in one of the older ways.
    pub older_form: bool,
}

/// Lamps and codes of a message; `None` where it is too short for the lamps.
///
/// ```
/// use logs::trouble::trouble_codes;
/// let (_, codes) = trouble_codes(&[0x00, 0xFF, 0xD0, 0x07, 0x09, 0x7F, 0xFF, 0xFF]).ok_or("lamps")?;
/// assert_eq!((codes[0].spn, codes[0].failure), (2000, 9));
/// # Ok::<(), &str>(())
/// ```
pub fn trouble_codes(data: &[u8]) -> Option<(Lamps, Vec<TroubleCode>)> {
    let [lamps, _flash, codes @ ..] = data else { return None };
    let lamp = |shift: u8| match lamps >> shift & 3 {
        0 => Lamp::Off,
        1 => Lamp::On,
        2 => Lamp::Reserved,
        _ => Lamp::Absent,
    };
    let lamps = Lamps { malfunction: lamp(6), red: lamp(4), amber: lamp(2), protect: lamp(0) };
    let codes = codes.chunks_exact(4).filter_map(|bytes| {
        let spn = u32::from(bytes[0]) | u32::from(bytes[1]) << 8 | u32::from(bytes[2] >> 5) << 16;
        let failure = bytes[2] & 0x1F;
        let none = spn == 0 && failure == 0;
        let padding = bytes.iter().all(|byte| *byte == 0xFF);
        (!none && !padding).then(|| TroubleCode {
            spn,
            failure,
            count: Some(bytes[3] & 0x7F).filter(|count| *count != 0x7F),
            older_form: bytes[3] & 0x80 != 0,
        })
    });
    Some((lamps, codes.collect()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn worked_messages_of_open_logs() {
        // Frames of an open research-truck log as independent readers decode them.
        let none = [0x00, 0xFF, 0x00, 0x00, 0x00, 0x00, 0xFF, 0xFF];
        let (lamps, codes) = trouble_codes(&none).unwrap();
        assert_eq!((lamps.red, codes.len()), (Lamp::Off, 0));
        let amber = [0xC4, 0xFF, 0xCB, 0x05, 0x09, 0x7E, 0xFF, 0xFF];
        let (lamps, codes) = trouble_codes(&amber).unwrap();
        assert_eq!(
            lamps,
            Lamps {
                malfunction: Lamp::Absent,
                red: Lamp::Off,
                amber: Lamp::On,
                protect: Lamp::Off
            }
        );
        let code = TroubleCode { spn: 1483, failure: 9, count: Some(126), older_form: false };
        assert_eq!(codes, [code]);
        let three =
            [0x43, 0xFF, 0xBF, 0x00, 0x09, 0x08, 0x54, 0x00, 0x09, 0x08, 0xED, 0x14, 0x1F, 0x01];
        let (_, codes) = trouble_codes(&three).unwrap();
        let found: Vec<_> = codes.iter().map(|c| (c.spn, c.failure, c.count)).collect();
        assert_eq!(found, [(191, 9, Some(8)), (84, 9, Some(8)), (5357, 31, Some(1))]);
    }
}
