//! What a law of physics says where it does not hold, with its numbers in the reader's units.

use language::{Format, Round};
use quantity::{Force, GaugePressure, Length, Mass, Speed, Temperature, TemperatureDifference};

/// Marks that may follow a unit.
const MARKS: &[char] = &[',', ';', '.', ':', ')'];

/// The words of a refusal, every number with a base unit after it written in the reader's unit; what
/// is no such number stays as it is.
pub fn in_units(reason: &str, format: &Format) -> String {
    let mut told: Vec<String> = Vec::new();
    let mut words = reason.split(' ').peekable();
    while let Some(word) = words.next() {
        let opened = word.trim_start_matches('(');
        let amount = opened.parse::<f64>().ok().zip(words.peek()).and_then(|(number, unit)| {
            let bare = unit.trim_end_matches(MARKS);
            let shown = amount(number, bare, format)?;
            let (open, marks) = (&word[..word.len() - opened.len()], &unit[bare.len()..]);
            Some(format!("{open}{shown}{marks}"))
        });
        if let Some(amount) = amount {
            words.next();
            told.push(amount);
        } else {
            told.push(word.to_owned());
        }
    }
    told.join(" ")
}

/// A number in a base unit, in the reader's.
fn amount(value: f64, unit: &str, format: &Format) -> Option<String> {
    const LONG: f64 = 1000.0;
    const SHORT: f64 = 5.0;
    let round = Round::Nearest;
    let shown = match unit {
        "kPa" => format.pressure(GaugePressure::from_kpa(value), round),
        "kg" => format.load(Mass::from_kg(value), round),
        "m/s" => format.speed(Speed::from_m_per_s(value), round),
        "N" => format.force(Force::from_n(value), round),
        "K" => format.temperature_step(TemperatureDifference::from_kelvin(value), round),
        "°C" => format.temperature(Temperature::from_celsius(value), round),
        "m" if value.abs() >= LONG => format.distance(Length::from_m(value), round),
        "m" if value.abs() >= SHORT => format.span(Length::from_m(value), round),
        "m" => format.size(Length::from_m(value), round),
        _ => return None,
    };
    Some(shown.to_string())
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
    fn words_without_numbers_stay() {
        let si = Format::new(UnitProfile::Si, "en").unwrap();
        for words in ["", "m", "5", "nothing  stands on the road", "5 kgs"] {
            assert_eq!(in_units(words, &si), words);
        }
    }
}
