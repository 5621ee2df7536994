//! Text out of bytes of unknown encoding.

use std::borrow::Cow;

/// UTF-8, UTF-16 with a byte-order mark, or else Windows-1252 as western spreadsheets save it.
pub(crate) fn decode(bytes: &[u8]) -> Cow<'_, str> {
    match bytes {
        [0xEF, 0xBB, 0xBF, rest @ ..] => decode(rest),
        [0xFF, 0xFE, rest @ ..] => utf16(rest, u16::from_le_bytes).into(),
        [0xFE, 0xFF, rest @ ..] => utf16(rest, u16::from_be_bytes).into(),
        _ => match std::str::from_utf8(bytes) {
            Ok(text) => text.into(),
            Err(_) => bytes.iter().map(|byte| windows_1252(*byte)).collect::<String>().into(),
        },
    }
}

fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> String {
    let units = bytes.chunks_exact(2).map(|pair| unit([pair[0], pair[1]]));
    let decoded = char::decode_utf16(units);
    decoded.map(|unit| unit.unwrap_or(char::REPLACEMENT_CHARACTER)).collect()
}

/// The few signs of the block 0x80 to 0x9F that tables use; the rest is Latin-1.
fn windows_1252(byte: u8) -> char {
    match byte {
        0x80 => '€',
        0x86 => '†',
        0x87 => '‡',
        0x91 => '‘',
        0x92 => '’',
        0x96 => '–',
        0x97 => '—',
        _ => char::from(byte),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn common_encodings_give_the_same_text() {
        assert_eq!(decode("Größe".as_bytes()), "Größe");
        assert_eq!(decode(b"\xEF\xBB\xBFGr\xC3\xB6\xC3\x9Fe"), "Größe");
        assert_eq!(decode(b"Gr\xF6\xDFe \x96"), "Größe –");
        assert_eq!(decode(b"\xFF\xFEG\x00\xF6\x00"), "Gö");
        assert_eq!(decode(b"\xFE\xFF\x00G\x00\xF6"), "Gö");
    }
}
