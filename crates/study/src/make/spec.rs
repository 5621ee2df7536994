//! A fault as it is asked for: `KIND[@PLACE][=SIZE][,from=TIME][,for=TIME]`.

use std::str::FromStr;

use quantity::{Length, PressureDifference, TemperatureDifference, Time, VolumeFlow};

use super::fault::{FaultKind, PlaceKind, SizeKind};

/// Size of a fault.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Size {
    /// None.
    None,
    /// Width of a round hole.
    Hole(Length),
    /// Share left, 0 to 1.
    ShareLeft(f64),
    /// A difference of pressure, or that in every hour.
    Pressure(PressureDifference),
    /// A flow of free air.
    Flow(VolumeFlow),
    /// A difference of temperature.
    Warmer(TemperatureDifference),
    /// A span of time.
    Time(Time),
}

/// A fault as it is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct FaultSpec {
    /// What was written.
    pub text: String,
    /// What.
    pub kind: FaultKind,
    /// Where; empty for faults of the truck as a whole.
    pub place: String,
    /// How big.
    pub size: Size,
    /// From when, by the clock of the day.
    pub from: Time,
    /// For how long; `None` to the end of the day.
    pub lasts: Option<Time>,
}

/// Why a text asks for no fault.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum FaultSpecError {
    /// No such kind.
    #[error("there is no fault '{given}'{}; --list-faults shows them all", hint(.near.as_ref()))]
    Unknown {
        /// What was given.
        given: String,
        /// A name that may be meant.
        near: Option<&'static str>,
    },
    /// A place is missing, or one too many.
    #[error("fault '{given}': {wanted}, such as {example}")]
    Place {
        /// What was given.
        given: String,
        /// What it needs.
        wanted: &'static str,
        /// A call that would do.
        example: String,
    },
    /// The size is missing, or cannot be read.
    #[error("fault '{given}': {why}; write it such as {example}")]
    Size {
        /// What was given.
        given: String,
        /// Why.
        why: String,
        /// A call that would do.
        example: String,
    },
    /// The size is outside its range.
    #[error("fault '{given}': the size must be from {low} to {high} {unit}")]
    Range {
        /// What was given.
        given: String,
        /// Lowest.
        low: f64,
        /// Highest.
        high: f64,
        /// Unit of both.
        unit: &'static str,
    },
    /// A time cannot be read, or is negative.
    #[error("fault '{given}': '{part}' is no time; write from=90min or for=2h")]
    Time {
        /// What was given.
        given: String,
        /// The part.
        part: String,
    },
}

fn hint(near: Option<&&'static str>) -> String {
    near.map_or_else(String::new, |near| format!(" (did you mean '{near}'?)"))
}

impl FaultSpec {
    /// When it ends, if it does.
    pub fn until(&self) -> Option<Time> {
        self.lasts.map(|lasts| self.from + lasts)
    }
}

impl FromStr for FaultSpec {
    type Err = FaultSpecError;

    fn from_str(text: &str) -> Result<Self, FaultSpecError> {
        let given = || text.to_owned();
        let mut parts = text.split(',');
        let head = parts.next().unwrap_or_default().trim();
        let (what, size) = match head.split_once('=') {
            Some((what, size)) => (what, Some(size.trim())),
            None => (head, None),
        };
        let (name, place) = what.split_once('@').unwrap_or((what, ""));
        let (name, place) = (name.trim(), place.trim());
        let kind = kind_of(name)?;
        let wrong_place =
            |wanted| FaultSpecError::Place { given: given(), wanted, example: kind.example() };
        match (kind.place(), place.is_empty()) {
            (PlaceKind::Truck, false) => return Err(wrong_place("it has no place")),
            (PlaceKind::Channel, true) => return Err(wrong_place("it needs an air channel")),
            (PlaceKind::Tire, true) => return Err(wrong_place("it needs a tire")),
            (PlaceKind::WheelEnd, true) => return Err(wrong_place("it needs a wheel end")),
            (PlaceKind::TwoTires, _) if !place.contains('+') => {
                return Err(wrong_place("it needs two tires"));
            }
            _ => {}
        }
        let size = size_of(text, kind, size)?;
        let (mut from, mut lasts) = (Time::ZERO, None);
        for part in parts {
            let wrong = || FaultSpecError::Time { given: given(), part: part.trim().to_owned() };
            let (key, time) = part.split_once('=').ok_or_else(wrong)?;
            let time: Time = time.trim().parse().map_err(|_| wrong())?;
            match key.trim() {
                "from" if time >= Time::ZERO => from = time,
                "for" if time > Time::ZERO => lasts = Some(time),
                _ => return Err(wrong()),
            }
        }
        Ok(Self { text: given(), kind, place: place.to_owned(), size, from, lasts })
    }
}

fn kind_of(name: &str) -> Result<FaultKind, FaultSpecError> {
    let found = FaultKind::ALL.iter().find(|kind| kind.name() == name);
    found.copied().ok_or_else(|| {
        let near = FaultKind::ALL.iter().map(|kind| kind.name());
        let near = near
            .max_by(|a, b| strsim::jaro_winkler(a, name).total_cmp(&strsim::jaro_winkler(b, name)));
        let near = near.filter(|near| strsim::jaro_winkler(near, name) > 0.8);
        FaultSpecError::Unknown { given: name.to_owned(), near }
    })
}

fn size_of(text: &str, kind: FaultKind, size: Option<&str>) -> Result<Size, FaultSpecError> {
    let wrong =
        |why: String| FaultSpecError::Size { given: text.to_owned(), why, example: kind.example() };
    let Some(written) = size else {
        return match kind.size() {
            SizeKind::None => Ok(Size::None),
            _ => Err(wrong("it needs a size".to_owned())),
        };
    };
    let read = |error: quantity::ParseError| wrong(error.to_string());
    let (size, number) = match kind.size() {
        SizeKind::None => return Err(wrong("it has no size".to_owned())),
        SizeKind::Hole => {
            let hole: Length = written.parse().map_err(read)?;
            (Size::Hole(hole), hole.as_mm())
        }
        SizeKind::ShareLeft => {
            let percent = written.strip_suffix('%').and_then(|n| n.trim().parse::<f64>().ok());
            let percent = percent
                .filter(|percent| percent.is_finite())
                .ok_or_else(|| wrong(format!("'{written}' is no share in percent")))?;
            (Size::ShareLeft(percent / 100.0), percent)
        }
        SizeKind::Pressure | SizeKind::PressurePerHour => {
            let by: PressureDifference = written.parse().map_err(read)?;
            (Size::Pressure(by), by.as_kpa())
        }
        SizeKind::Flow => {
            let flow: VolumeFlow = written.parse().map_err(read)?;
            (Size::Flow(flow), flow.as_l_per_min())
        }
        SizeKind::Warmer => {
            let by: TemperatureDifference = written.parse().map_err(read)?;
            (Size::Warmer(by), by.as_kelvin())
        }
        SizeKind::Time => {
            let by: Time = written.parse().map_err(read)?;
            (Size::Time(by), by.as_s())
        }
    };
    let (low, high, unit) = kind.range();
    if (low..=high).contains(&number) {
        Ok(size)
    } else {
        Err(FaultSpecError::Range { given: text.to_owned(), low, high, unit })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<FaultSpec, FaultSpecError> {
        text.parse()
    }

    #[test]
    fn every_example_of_the_list_is_understood() {
        for kind in FaultKind::ALL {
            let spec = read(&kind.example()).unwrap();
            assert_eq!(spec.kind, *kind);
        }
        let names: std::collections::BTreeSet<_> =
            FaultKind::ALL.iter().map(|kind| kind.name()).collect();
        assert_eq!(names.len(), FaultKind::ALL.len());
    }

    #[test]
    fn kind_place_size_and_time_are_kept_apart() {
        let spec = read("tire-leak@drive.1.left.outer = 0.5 mm, from=90min, for=2h").unwrap();
        assert_eq!(spec.kind, FaultKind::TireLeak);
        assert_eq!(spec.place, "drive.1.left.outer");
        assert_eq!(spec.size, Size::Hole(Length::from_mm(0.5)));
        assert_eq!(spec.from, Time::from_min(90.0));
        assert_eq!(spec.until(), Some(Time::from_min(210.0)));
    }

    #[test]
    fn what_is_wrong_is_told_with_what_would_do() {
        let told = |text| read(text).unwrap_err().to_string();
        assert!(told("tire-leek@a=1mm").contains("did you mean 'tire-leak'?"));
        assert!(told("spaghetti").contains("--list-faults"));
        assert!(told("tire-leak=1mm").contains("it needs a tire, such as tire-leak@"));
        assert!(told("weak-compressor@drive=40%").contains("it has no place"));
        assert!(told("tire-leak@a").contains("it needs a size"));
        assert!(told("tire-leak@a=1").contains("no unit"));
        assert!(told("tire-leak@a=40mm").contains("from 0.05 to 20 mm"));
        assert!(told("line-narrowed@drive=0%").contains("from 1 to 100 %"));
        assert!(told("line-narrowed@drive=half").contains("no share"));
        assert!(told("line-shut@drive=5mm").contains("it has no size"));
        assert!(told("line-shut@drive,from=noon").contains("'from=noon' is no time"));
        assert!(told("line-shut@drive,for=-2h").contains("is no time"));
        assert!(told("sensors-swapped@a").contains("two tires"));
    }
}
