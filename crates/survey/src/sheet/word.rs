//! What the words of a table say: single or dual, a speed, what a column holds.

use model::tire::Fitment;
use quantity::Speed;

use super::number::{Decimal, read_text};
use super::unit::{DistanceUnit, LoadUnit, PressureUnit, SpeedUnit, words};

const SINGLE: [&str; 9] =
    ["single", "singles", "sgl", "simple", "simples", "einzel", "einzeln", "einfach", "sencilla"];
const DUAL: [&str; 14] = [
    "dual", "duals", "dbl", "double", "doubles", "twin", "twins", "zwilling", "doppelt", "jumelé",
    "jumelés", "jumele", "doble", "gemela",
];

/// Single or dual, if a text says one of them.
pub(super) fn fitment_in(text: &str) -> Option<Fitment> {
    let all: Vec<String> = words(text).collect();
    let says = |known: &[&str], letter: &str| {
        all.iter().any(|word| known.contains(&word.as_str()))
            || (all.len() <= 2 && all.first().is_some_and(|word| word == letter))
    };
    match (says(&SINGLE, "s"), says(&DUAL, "d")) {
        (true, false) => Some(Fitment::Single),
        (false, true) => Some(Fitment::Dual),
        _ => None,
    }
}

/// The highest speed a text names: of `51-65 mph` 65, of `50 mph (80 km/h)` the one in the unit
/// wanted. Numbers without a unit count only where one is given.
pub(super) fn speed_in(text: &str, unit: Option<SpeedUnit>) -> Option<Speed> {
    let lower = text.to_lowercase();
    let open = |word: String| matches!(word.as_str(), "over" | "above" | "more" | "exceeding");
    if lower.contains('>') || words(&lower).any(open) {
        return None;
    }
    let numbers = numbers(&lower);
    let named: Vec<(f64, SpeedUnit)> = numbers
        .iter()
        .filter_map(|(value, follower)| Some((*value, SpeedUnit::named_in(follower)?)))
        .collect();
    let chosen = named.iter().map(|(_, unit)| *unit).find(|named| Some(*named) == unit);
    let highest = |values: &mut dyn Iterator<Item = f64>| values.max_by(f64::total_cmp);
    if let Some(chosen) = chosen.or(named.first().map(|(_, unit)| *unit)) {
        let mut values = named.iter().filter(|(_, unit)| *unit == chosen).map(|(value, _)| *value);
        return chosen.speed(highest(&mut values)?).ok();
    }
    let unit = unit?;
    if numbers.is_empty() && words(&lower).any(|word| ["stationary", "static"].contains(&&*word)) {
        return Some(Speed::ZERO);
    }
    unit.speed(highest(&mut numbers.iter().map(|(value, _)| *value))?).ok()
}

/// Numbers of a text, each with the word right behind it.
fn numbers(text: &str) -> Vec<(f64, String)> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        rest = &rest[start..];
        let length = rest.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(rest.len());
        let (number, behind) = rest.split_at(length);
        let follower = behind.trim_start();
        let end = follower.find(|c: char| c.is_whitespace() || "()[],;".contains(c));
        let follower = &follower[..end.unwrap_or(follower.len())];
        if let Some(written) = read_text(number.trim_end_matches('.'), Decimal::Point) {
            found.push((written.value, follower.to_owned()));
        }
        rest = behind;
    }
    found
}

/// What a column or a run of headings holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Field {
    Load,
    Pressure,
    Speed,
    Fitment,
    HoldDistance,
}

/// Every kind of value a heading names, by word or by unit.
pub(super) fn fields_in(heading: &str) -> Vec<Field> {
    let has =
        |stems: &[&str]| words(heading).any(|word| stems.iter().any(|stem| word.starts_with(stem)));
    let mut fields = Vec::new();
    if has(&["hold", "distance", "strecke", "distancia"]) {
        fields.push(Field::HoldDistance);
    }
    if has(&["speed", "geschwind", "vitesse", "velocidad"])
        || SpeedUnit::named_in(heading).is_some()
    {
        fields.push(Field::Speed);
    }
    if has(&["pressure", "inflation", "druck", "luftdruck", "pression", "presi"])
        || PressureUnit::named_in(heading).is_some()
    {
        fields.push(Field::Pressure);
    }
    if has(&["load", "charge", "last", "traglast", "carga"])
        || LoadUnit::named_in(heading).is_some()
    {
        fields.push(Field::Load);
    }
    let lower = heading.to_lowercase();
    let both = lower.contains("single") && lower.contains("dual");
    if both || has(&["fitment", "mounting", "s/d", "montage", "montaje"]) {
        fields.push(Field::Fitment);
    }
    if fields.contains(&Field::HoldDistance) && DistanceUnit::named_in(heading).is_some() {
        fields.retain(|field| *field == Field::HoldDistance);
    }
    fields
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fitment_is_read_in_words_and_letters() {
        assert_eq!(fitment_in("S"), Some(Fitment::Single));
        assert_eq!(fitment_in("D (kg)"), Some(Fitment::Dual));
        assert_eq!(fitment_in("Loads for DUAL tires at 50 mph"), Some(Fitment::Dual));
        assert_eq!(fitment_in("single and dual"), None);
        assert_eq!(fitment_in("Size D tires of a kind"), None);
    }

    #[test]
    fn the_highest_speed_covered_is_read() {
        let mph = Some(SpeedUnit::MilesPerHour);
        let read =
            |text, unit| speed_in(text, unit).map(|speed| (speed.as_kmh() * 10.0).round() / 10.0);
        assert_eq!(read("51-65", mph), Some(104.6));
        assert_eq!(read("50 mph (80 km/h)", Some(SpeedUnit::KilometersPerHour)), Some(80.0));
        assert_eq!(read("315/80R22.5, table 3: up to 80 km/h", None), Some(80.0));
        assert_eq!(read("up to 15km/h", mph), Some(15.0));
        assert_eq!(read("Stationary", mph), Some(0.0));
        assert_eq!(read("over 65", mph), None);
        assert_eq!(read("creep", mph), None);
        assert_eq!(read("table 3", None), None);
    }

    #[test]
    fn headings_name_what_stands_under_them() {
        assert_eq!(fields_in("Load per tire (kg)"), [Field::Load]);
        assert_eq!(fields_in("Load kg \\ Speed km/h"), [Field::Speed, Field::Load]);
        assert_eq!(fields_in("Cold psi"), [Field::Pressure]);
        assert_eq!(fields_in("Single/Dual"), [Field::Fitment]);
        assert_eq!(fields_in("Hold distance, km"), [Field::HoldDistance]);
        assert_eq!(fields_in("Size"), []);
    }
}
