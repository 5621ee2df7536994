//! Digits by the eight: one word in, one number out, no loop.

const EACH: u64 = 0x0101_0101_0101_0101;
const HIGH: u64 = 0x80 * EACH;

/// Eight hexadecimal digits to four bytes, the first pair lowest; `None` where one is no digit.
///
/// ```
/// assert_eq!(logs::read::hex::four_bytes(*b"18FEf433"), Some(0x33F4_FE18));
/// assert_eq!(logs::read::hex::four_bytes(*b"18FEg433"), None);
/// ```
pub const fn four_bytes(digits: [u8; 8]) -> Option<u32> {
    let x = u64::from_le_bytes(digits);
    if x & HIGH != 0 {
        return None;
    }
    // A byte's top bit tells whether it is at least the bound that was taken from 0x80.
    let lower = x | (0x20 * EACH);
    let digit = (x + 0x50 * EACH) & !(x + 0x46 * EACH);
    let letter = (lower + 0x1F * EACH) & !(lower + 0x19 * EACH);
    if (digit | letter) & HIGH != HIGH {
        return None;
    }
    let nibbles = (x & (0x0F * EACH)) + 9 * ((letter & HIGH) >> 7);
    let pairs = ((nibbles << 4) | (nibbles >> 8)) & 0x00FF_00FF_00FF_00FF;
    let fours = (pairs | (pairs >> 8)) & 0x0000_FFFF_0000_FFFF;
    Some(((fours | (fours >> 16)) & 0xFFFF_FFFF) as u32)
}

/// Eight decimal digits to a number; `None` where one is no digit.
///
/// ```
/// assert_eq!(logs::read::hex::eight_digits(*b"00123456"), Some(123_456));
/// assert_eq!(logs::read::hex::eight_digits(*b"0012345 "), None);
/// ```
pub const fn eight_digits(digits: [u8; 8]) -> Option<u32> {
    let x = u64::from_le_bytes(digits);
    let digit = (x.wrapping_add(0x50 * EACH)) & !(x.wrapping_add(0x46 * EACH));
    if x & HIGH != 0 || digit & HIGH != HIGH {
        return None;
    }
    let ones = x & (0x0F * EACH);
    let twos = ((ones * 10) + (ones >> 8)) & 0x00FF_00FF_00FF_00FF;
    let fours = ((twos * 100) + (twos >> 16)) & 0x0000_FFFF_0000_FFFF;
    Some((((fours * 10_000) + (fours >> 32)) & 0xFFFF_FFFF) as u32)
}

/// Value of one hexadecimal digit.
pub const fn nibble(digit: u8) -> Option<u8> {
    match digit {
        b'0'..=b'9' => Some(digit - b'0'),
        b'a'..=b'f' => Some(digit - b'a' + 10),
        b'A'..=b'F' => Some(digit - b'A' + 10),
        _ => None,
    }
}

/// One to eight hexadecimal digits as a number.
pub fn number(digits: &[u8]) -> Option<u32> {
    if digits.is_empty() || digits.len() > 8 {
        return None;
    }
    digits.iter().try_fold(0_u32, |sum, digit| Some((sum << 4) | u32::from(nibble(*digit)?)))
}

/// Decimal digits as a number, at most eighteen of them.
pub fn decimal(digits: &[u8]) -> Option<i64> {
    if digits.is_empty() || digits.len() > 18 {
        return None;
    }
    digits.iter().try_fold(0_i64, |sum, digit| {
        digit.is_ascii_digit().then(|| sum * 10 + i64::from(digit - b'0'))
    })
}

/// Seconds with a fraction, such as `1700000000.123456`, in nanoseconds; digits beyond nanoseconds
/// are cut.
pub fn seconds(text: &[u8]) -> Option<i64> {
    let (negative, text) = match text.strip_prefix(b"-") {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let dot = text.iter().position(|byte| *byte == b'.').unwrap_or(text.len());
    let whole = decimal(&text[..dot])?.checked_mul(1_000_000_000)?;
    let mut fraction = 0_i64;
    let mut step = 100_000_000_i64;
    for digit in text.get(dot + 1..).unwrap_or_default() {
        if !digit.is_ascii_digit() {
            return None;
        }
        fraction += i64::from(digit - b'0') * step;
        step /= 10;
    }
    let ns = whole.checked_add(fraction)?;
    Some(if negative { -ns } else { ns })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    proptest! {
        #[test]
        fn digits_by_the_eight_agree_with_the_standard_library(text in "[ -~]{8}", number: u32) {
            let digits: [u8; 8] = text.as_bytes().try_into().unwrap();
            let plain = !text.starts_with('+');
            let expected = u32::from_str_radix(&text, 16).ok().filter(|_| plain);
            prop_assert_eq!(four_bytes(digits).map(u32::swap_bytes), expected);
            let expected = text.parse::<u32>().ok().filter(|_| plain);
            prop_assert_eq!(eight_digits(digits), expected);
            let hex = format!("{number:08x}");
            prop_assert_eq!(
                four_bytes(hex.as_bytes().try_into().unwrap()).map(u32::swap_bytes),
                Some(number)
            );
            let decimal = format!("{:08}", number % 100_000_000);
            prop_assert_eq!(
                eight_digits(decimal.as_bytes().try_into().unwrap()),
                Some(number % 100_000_000)
            );
        }

        #[test]
        fn no_bytes_make_it_panic(digits: [u8; 8], text: Vec<u8>) {
            let standard = std::str::from_utf8(&digits)
                .ok()
                .filter(|text| !text.starts_with('+'))
                .and_then(|text| u32::from_str_radix(text, 16).ok());
            prop_assert_eq!(four_bytes(digits).map(u32::swap_bytes), standard);
            let _ = eight_digits(digits);
            let _ = seconds(&text);
        }
    }

    #[test]
    fn seconds_keep_every_digit_of_a_nanosecond() {
        assert_eq!(seconds(b"1700000000.123456"), Some(1_700_000_000_123_456_000));
        assert_eq!(seconds(b"-0.5"), Some(-500_000_000));
        assert_eq!(seconds(b"12"), Some(12_000_000_000));
        assert_eq!(seconds(b"99999999999999999"), None);
        assert_eq!(seconds(b"1.2.3"), None);
    }
}
