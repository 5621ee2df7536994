//! What a law of physics says where it does not hold, with its numbers in the reader's units.

use language::{Amount, Format, Round};
use quantity::{GaugePressure, Length, Mass, Speed, Temperature, TemperatureDifference};

/// Marks that may follow a unit.
const MARKS: &[char] = &[',', ';', '.', ':', ')'];

/// The words of a refusal, every number with a base unit after it written in the reader's unit, both
/// ends of a range such as `50 to 1000 kPa`; what is no such number stays as it is.
pub fn in_units(reason: &str, format: &Format) -> String {
    let words: Vec<&str> = reason.split(' ').collect();
    let mut told: Vec<String> = Vec::new();
    let mut rest = words.as_slice();
    while let [word, after @ ..] = rest {
        let range = match after {
            ["to", last, unit, after @ ..] => {
                both(word, last, unit, format).map(|range| (range, after))
            }
            _ => None,
        };
        let single = || match after {
            [unit, after @ ..] => one(word, unit, format).map(|amount| (amount, after)),
            [] => None,
        };
        let (text, after) = range.or_else(single).unwrap_or_else(|| ((*word).to_owned(), after));
        told.push(text);
        rest = after;
    }
    told.join(" ")
}

/// `50 to 1000 kPa`.
fn both(first: &str, last: &str, unit: &str, format: &Format) -> Option<String> {
    let bare = unit.trim_end_matches(MARKS);
    let digits = first.trim_start_matches('(');
    let (from, to) = (digits.parse().ok()?, last.parse().ok()?);
    // One unit for both, that of the larger.
    let scale = f64::max(f64::abs(from), f64::abs(to));
    let (from, to) = (amount(from, bare, scale, format)?, amount(to, bare, scale, format)?);
    let (open, marks) = (&first[..first.len() - digits.len()], &unit[bare.len()..]);
    Some(format!("{open}{} to {to}{marks}", from.number))
}

/// `225.75 kg`.
fn one(number: &str, unit: &str, format: &Format) -> Option<String> {
    let bare = unit.trim_end_matches(MARKS);
    let digits = number.trim_start_matches('(');
    let value: f64 = digits.parse().ok()?;
    let shown = amount(value, bare, value.abs(), format)?;
    let (open, marks) = (&number[..number.len() - digits.len()], &unit[bare.len()..]);
    Some(format!("{open}{shown}{marks}"))
}

/// A number in a base unit, in the unit the reader has for numbers of this size.
fn amount(value: f64, unit: &str, size: f64, format: &Format) -> Option<Amount> {
    const LONG: f64 = 1000.0;
    const SHORT: f64 = 5.0;
    let round = Round::Nearest;
    Some(match unit {
        "kPa" => format.pressure(GaugePressure::from_kpa(value), round),
        "kg" => format.load(Mass::from_kg(value), round),
        "m/s" => format.speed(Speed::from_m_per_s(value), round),
        "K" => format.temperature_step(TemperatureDifference::from_kelvin(value), round),
        "°C" => format.temperature(Temperature::from_celsius(value), round),
        "m" if size >= LONG => format.distance(Length::from_m(value), round),
        "m" if size >= SHORT => format.span(Length::from_m(value), round),
        "m" => format.size(Length::from_m(value), round),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use language::UnitProfile;

    use super::*;

    const REASON: &str =
        "225.75 kg at 100 kPa (0.292 m wide) is under 5 m/s; 12 of 3 kg, see table 5";

    #[test]
    fn every_number_with_a_unit_is_in_the_readers() {
        let us = Format::new(UnitProfile::Us, "en-US").unwrap();
        assert_eq!(
            in_units(REASON, &us),
            "498 lb at 15 psi (11.50 in wide) is under 11 mph; 12 of 7 lb, see table 5"
        );
        let bar = Format::new(UnitProfile::MetricBar, "en").unwrap();
        assert!(in_units(REASON, &bar).starts_with("226 kg at 1.00 bar"));
    }

    #[test]
    fn both_ends_of_a_range_are_in_one_unit() {
        let us = Format::new(UnitProfile::Us, "en-US").unwrap();
        for (told, read) in [
            ("1200 kPa is outside 50 to 1000 kPa", "174 psi is outside 7 to 145 psi"),
            ("tire air is outside -60 to 200 °C; wait", "tire air is outside -76 to 392 °F; wait"),
            ("4 to 40 in (0.1 to 1 m)", "4 to 40 in (3.94 to 39.37 in)"),
            ("give a load of 100 to 500", "give a load of 100 to 500"),
            ("0.9 N m/degree is outside 0 to 0.8", "0.9 N m/degree is outside 0 to 0.8"),
        ] {
            assert_eq!(in_units(told, &us), read);
        }
    }

    #[test]
    fn words_without_numbers_stay() {
        let si = Format::new(UnitProfile::Si, "en").unwrap();
        for words in ["", "m", "5", "nothing  stands on the road", "5 kgs"] {
            assert_eq!(in_units(words, &si), words);
        }
    }
}
