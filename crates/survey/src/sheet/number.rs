//! Numbers as people write them in tables: thousands, decimal commas, units, footnote marks.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::cell::Cell;

/// The sign before the decimals; the other signs group thousands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum Decimal {
    /// `6,175.5`
    #[default]
    Point,
    /// `6.175,5`
    Comma,
}

/// A number with what stands behind it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Written {
    pub value: f64,
    /// What follows, such as a unit.
    pub rest: String,
    /// Whether a footnote mark is attached.
    pub marked: bool,
}

/// Reads a cell that begins with a number.
pub(super) fn read(cell: &Cell, decimal: Decimal) -> Option<Written> {
    match cell {
        // A range such as 6-10 that the spreadsheet took for a day is no number.
        Cell::Blank | Cell::Day(_) => None,
        Cell::Number(value) => {
            value.is_finite().then(|| Written { value: *value, rest: String::new(), marked: false })
        }
        Cell::Text(text) => read_text(text, decimal),
    }
}

/// Reads a text that begins with a number.
pub(super) fn read_text(text: &str, decimal: Decimal) -> Option<Written> {
    let text = text.trim();
    let end = extent(text);
    let value = value(&text[..end], decimal)?;
    let rest = text[end..].trim();
    let bare = rest.trim_end_matches(is_mark).trim_end();
    let marked = bare.len() < rest.len();
    Some(Written { value, rest: bare.to_owned(), marked })
}

fn is_mark(c: char) -> bool {
    matches!(c, '*' | '†' | '‡' | '¹' | '²' | '³' | '⁴')
}

fn is_group(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\'' | '’')
}

/// Bytes at the front that belong to the number: separators only between digits, blanks only
/// before exactly three of them.
fn extent(text: &str) -> usize {
    let mut end = 0;
    for (at, c) in text.char_indices() {
        let after = &text[at + c.len_utf8()..];
        let digits = after.chars().take_while(char::is_ascii_digit).count();
        let belongs = match c {
            '0'..='9' => true,
            '+' | '-' => at == 0,
            '.' | ',' => digits > 0,
            c if is_group(c) => end > 0 && digits == 3,
            _ => false,
        };
        if !belongs {
            break;
        }
        end = at + c.len_utf8();
    }
    end
}

fn value(token: &str, decimal: Decimal) -> Option<f64> {
    let (point, thousand) = match decimal {
        Decimal::Point => ('.', ','),
        Decimal::Comma => (',', '.'),
    };
    let (sign, digits) = match token.strip_prefix('-') {
        Some(rest) => (-1.0, rest),
        None => (1.0, token.strip_prefix('+').unwrap_or(token)),
    };
    let (whole, fraction) = digits.split_once(point).unwrap_or((digits, ""));
    if fraction.contains(|c: char| !c.is_ascii_digit()) {
        return None;
    }
    let groups: Vec<&str> = whole.split(|c| c == thousand || is_group(c)).collect();
    let grouped = groups.len() > 1;
    let sound = groups.iter().enumerate().all(|(i, group)| match i {
        0 => !grouped || (1..=3).contains(&group.len()),
        _ => group.len() == 3,
    });
    let number = format!("{}.{fraction}0", groups.concat());
    number.parse::<f64>().ok().filter(|_| sound && !groups.concat().is_empty()).map(|n| sign * n)
}

/// Which decimal sign the texts of a sheet can only mean; the point if nothing tells.
pub(super) fn guess<'a>(cells: impl Iterator<Item = &'a Cell>) -> Decimal {
    let mut commas = 0_i32;
    for cell in cells {
        let Cell::Text(text) = cell else { continue };
        let token = &text.trim()[..extent(text.trim())];
        let (point, comma) = (value(token, Decimal::Point), value(token, Decimal::Comma));
        commas += match (point, comma) {
            (Some(_), None) => -1,
            (None, Some(_)) => 1,
            _ => 0,
        };
    }
    if commas > 0 { Decimal::Comma } else { Decimal::Point }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn read(text: &str, decimal: Decimal) -> Option<(f64, String, bool)> {
        read_text(text, decimal).map(|w| (w.value, w.rest, w.marked))
    }

    #[test]
    fn thousands_and_decimals_follow_the_convention_named() {
        let plain = |value| Some((value, String::new(), false));
        assert_eq!(read("6,175", Decimal::Point), plain(6175.0));
        assert_eq!(read("6,175", Decimal::Comma), plain(6.175));
        assert_eq!(read("1.234,5", Decimal::Comma), plain(1234.5));
        assert_eq!(read("6 175", Decimal::Point), plain(6175.0));
        assert_eq!(read("6\u{a0}175,25", Decimal::Comma), plain(6175.25));
        assert_eq!(read("6'175.5", Decimal::Point), plain(6175.5));
        assert_eq!(read("-3.5", Decimal::Point), plain(-3.5));
        assert_eq!(read("7,9", Decimal::Point), None);
        assert_eq!(read("1,2345", Decimal::Point), None);
        assert_eq!(read("psi 80", Decimal::Point), None);
    }

    #[test]
    fn units_and_footnote_marks_are_kept_apart() {
        assert_eq!(read("6,175 lb*", Decimal::Point), Some((6175.0, "lb".into(), true)));
        assert_eq!(read("80psi", Decimal::Point), Some((80.0, "psi".into(), false)));
        assert_eq!(read("2430†", Decimal::Point), Some((2430.0, String::new(), true)));
        assert_eq!(read("80 2", Decimal::Point), Some((80.0, "2".into(), false)));
    }

    #[test]
    fn the_convention_is_told_from_what_cannot_be_read_otherwise() {
        let cells =
            |texts: &[&str]| texts.iter().map(|t| Cell::Text((*t).to_owned())).collect::<Vec<_>>();
        assert_eq!(guess(cells(&["6,175", "x"]).iter()), Decimal::Point);
        assert_eq!(guess(cells(&["6.175", "7,9"]).iter()), Decimal::Comma);
    }

    proptest! {
        #[test]
        fn written_numbers_come_back(whole in 0_u32..2_000_000, cents in 0_u32..100) {
            let value = f64::from(whole) + f64::from(cents) / 100.0;
            let mut grouped = String::new();
            for (i, digit) in whole.to_string().chars().rev().enumerate() {
                if i > 0 && i % 3 == 0 {
                    grouped.insert(0, '.');
                }
                grouped.insert(0, digit);
            }
            let text = format!("{grouped},{cents:02} kPa");
            let back = read_text(&text, Decimal::Comma).unwrap();
            prop_assert!((back.value - value).abs() < 1e-6);
            prop_assert_eq!(back.rest, "kPa");
        }
    }
}
