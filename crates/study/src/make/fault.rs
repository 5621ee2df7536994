//! Faults that can be asked for, by name, place and size.

use haul::day::{TimedFault, TrueFault};
use haul::{TrueTruck, line_bore};
use model::air::AirFault;
use model::vehicle::Combination;
use quantity::{Length, PressureDifference, Temperature, TemperatureDifference, Time, VolumeFlow};

use super::instruments::{SensorFault, SensorFaultKind};
use super::spec::{FaultSpec, Size};

/// What a place of a fault is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlaceKind {
    /// The truck as a whole, or its log: no place is named.
    Truck,
    /// An air channel by its name.
    Channel,
    /// A tire, such as `drive.1.left.outer`.
    Tire,
    /// A wheel end, such as `drive.1.left`.
    WheelEnd,
    /// Two tires, such as `drive.1.left.outer+drive.2.left.outer`.
    TwoTires,
}

/// What a size of a fault is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SizeKind {
    /// None is given.
    None,
    /// Width of a round hole.
    Hole,
    /// Share left, such as `40%`.
    ShareLeft,
    /// A difference of pressure, either way.
    Pressure,
    /// A difference of pressure in every hour, either way.
    PressurePerHour,
    /// A flow of free air.
    Flow,
    /// A difference of temperature.
    Warmer,
    /// A span of time, either way.
    Time,
}

macro_rules! faults {
    ($($kind:ident $name:literal $place:ident $size:ident $low:literal $high:literal $unit:literal;)*) => {
        /// A kind of fault.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[expect(missing_docs, reason = "docs/made-logs.md says what each is")]
        pub enum FaultKind { $($kind),* }

        impl FaultKind {
            /// All of them, in the order of their list.
            pub const ALL: &[Self] = &[$(Self::$kind),*];

            /// The name it is asked for by.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$kind => $name),* }
            }

            /// What its place is.
            pub const fn place(self) -> PlaceKind {
                match self { $(Self::$kind => PlaceKind::$place),* }
            }

            /// What its size is.
            pub const fn size(self) -> SizeKind {
                match self { $(Self::$kind => SizeKind::$size),* }
            }

            /// Lowest and highest size, in the unit that follows.
            pub const fn range(self) -> (f64, f64, &'static str) {
                match self { $(Self::$kind => ($low, $high, $unit)),* }
            }
        }
    };
}

faults! {
    TireLeak "tire-leak" Tire Hole 0.05 20.0 "mm";
    LineLeak "line-leak" Channel Hole 0.1 30.0 "mm";
    LineOff "line-off" Channel None 0.0 0.0 "";
    LineNarrowed "line-narrowed" Channel ShareLeft 1.0 100.0 "%";
    LineShut "line-shut" Channel None 0.0 0.0 "";
    FillStuckShut "fill-stuck-shut" Channel None 0.0 0.0 "";
    FillSlow "fill-slow" Channel ShareLeft 1.0 100.0 "%";
    ExhaustStuckShut "exhaust-stuck-shut" Channel None 0.0 0.0 "";
    ExhaustStuckOpen "exhaust-stuck-open" Channel None 0.0 0.0 "";
    ExhaustSlow "exhaust-slow" Channel ShareLeft 1.0 100.0 "%";
    ExhaustFrozen "exhaust-frozen" Channel None 0.0 0.0 "";
    WheelEndShut "wheel-end-shut" WheelEnd None 0.0 0.0 "";
    CoreLeftIn "core-left-in" Tire ShareLeft 1.0 100.0 "%";
    WeakCompressor "weak-compressor" Truck ShareLeft 5.0 100.0 "%";
    CutIn "cut-in-off" Truck Pressure -400.0 400.0 "kPa";
    CutOut "cut-out-off" Truck Pressure -400.0 400.0 "kPa";
    Protection "protection-off" Truck Pressure -400.0 400.0 "kPa";
    BrakeLeak "brake-leak" Truck Flow 0.5 1000.0 "l/min";
    GaugeOff "gauge-off" Channel Pressure -300.0 300.0 "kPa";
    GaugeOtherKind "gauge-other-kind" Channel None 0.0 0.0 "";
    HotWheel "hot-wheel" WheelEnd Warmer 1.0 150.0 "K";
    SensorOff "sensor-off" Tire Pressure -400.0 400.0 "kPa";
    SensorDrift "sensor-drift" Tire PressurePerHour -100.0 100.0 "kPa";
    SensorStuck "sensor-stuck" Tire None 0.0 0.0 "";
    SensorDead "sensor-dead" Tire None 0.0 0.0 "";
    SensorsSwapped "sensors-swapped" TwoTires None 0.0 0.0 "";
    LogGap "log-gap" Truck None 0.0 0.0 "";
    ClockOff "clock-off" Truck Time -86400.0 86400.0 "s";
}

impl FaultKind {
    /// A call that asks for it.
    pub fn example(self) -> String {
        let place = match self.place() {
            PlaceKind::Truck => "",
            PlaceKind::Channel => "@drive",
            PlaceKind::Tire => "@drive.1.left.outer",
            PlaceKind::WheelEnd => "@drive.1.left",
            PlaceKind::TwoTires => "@drive.1.left.outer+drive.2.left.outer",
        };
        let size = match self.size() {
            SizeKind::None => "",
            SizeKind::Hole => "=0.8mm",
            SizeKind::ShareLeft => "=40%",
            SizeKind::Pressure => "=-30kPa",
            SizeKind::PressurePerHour => "=4kPa",
            SizeKind::Flow => "=20l/min",
            SizeKind::Warmer => "=40K",
            SizeKind::Time => "=90s",
        };
        let time = if self == Self::LogGap { ",from=2h,for=5min" } else { "" };
        format!("{}{place}{size}{time}", self.name())
    }
}

/// A fault of the recording.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum RecordingFault {
    Gap { from: Time, until: Time },
    Clock { from: Time, until: Option<Time>, by: Time },
}

/// A fault put where it belongs.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Placed {
    Truth(TimedFault),
    Sensor(SensorFault),
    Recording(RecordingFault),
}

/// Why a fault cannot be put on a truck.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum PlacingError {
    /// There is no such air channel.
    #[error("fault '{fault}': there is no air channel '{place}'; there are: {}", known.join(", "))]
    NoChannel {
        /// The fault as asked for.
        fault: String,
        /// Its place.
        place: String,
        /// What there is.
        known: Vec<String>,
    },
    /// There is no such tire or wheel end.
    #[error("fault '{fault}': there is no {what} '{place}'; there are: {}", known.join(", "))]
    NoTire {
        /// The fault as asked for.
        fault: String,
        /// `tire` or `wheel end`.
        what: &'static str,
        /// Its place.
        place: String,
        /// What there is.
        known: Vec<String>,
    },
    /// The wheel end hangs on no channel.
    #[error("fault '{fault}': no air channel feeds '{place}', so it cannot be shut off from one")]
    NotFed {
        /// The fault as asked for.
        fault: String,
        /// Its place.
        place: String,
    },
    /// The line of the channel has no tube, so nobody knows how wide it is.
    #[error("fault '{fault}': the path of the channel has no tube; use line-leak with a size")]
    NoBore {
        /// The fault as asked for.
        fault: String,
    },
    /// No sensor there.
    #[error("fault '{fault}': the tire '{place}' has no sensor by the register of units")]
    NoSensor {
        /// The fault as asked for.
        fault: String,
        /// Its place.
        place: String,
    },
    /// A gap without an end.
    #[error("fault '{fault}': a gap needs its length; add for=, such as for=5min")]
    NoEnd {
        /// The fault as asked for.
        fault: String,
    },
    /// The air model refuses it.
    #[error("fault '{fault}': {error}")]
    Refused {
        /// The fault as asked for.
        fault: String,
        /// Why.
        error: model::air::AirFaultError,
    },
}

/// Water in a valve freezes under this.
const FREEZES: Temperature = Temperature::from_celsius(0.0);

/// Puts a fault on a truck; `sensed` says which tires have a sensor.
pub(super) fn place(
    spec: &FaultSpec,
    combination: &Combination,
    truck: &TrueTruck,
    sensed: &[bool],
) -> Result<Placed, PlacingError> {
    let at = Site { spec, combination, truck, sensed };
    let kind = spec.kind;
    let truth = |fault| {
        Ok(Placed::Truth(TimedFault {
            fault,
            from: spec.from,
            until: spec.until(),
            only_below: (kind == FaultKind::ExhaustFrozen).then_some(FREEZES),
        }))
    };
    let air = |fault: AirFault| {
        truck
            .air()
            .afflicted(&[fault])
            .map_err(|error| PlacingError::Refused { fault: spec.text.clone(), error })?;
        truth(TrueFault::Air(fault))
    };
    let sensor = |tire: usize, kind| {
        let (from, until) = (spec.from, spec.until());
        Ok(Placed::Sensor(SensorFault { tire, kind, from, until }))
    };
    match kind {
        FaultKind::TireLeak => air(AirFault::TireLeak { tire: at.tire()?, hole: spec.length() }),
        FaultKind::LineLeak => {
            air(AirFault::LineLeak { channel: at.channel()?, hole: spec.length() })
        }
        FaultKind::LineOff => {
            let channel = at.channel()?;
            let no_bore = || PlacingError::NoBore { fault: spec.text.clone() };
            let hole = line_bore(combination, channel).ok_or_else(no_bore)?;
            air(AirFault::LineLeak { channel, hole })
        }
        FaultKind::LineNarrowed => {
            air(AirFault::LineNarrowed { channel: at.channel()?, left: spec.share() })
        }
        FaultKind::LineShut => air(AirFault::LineShut { channel: at.channel()? }),
        FaultKind::FillStuckShut => air(AirFault::FillStuckShut { channel: at.channel()? }),
        FaultKind::FillSlow => {
            air(AirFault::FillSlow { channel: at.channel()?, left: spec.share() })
        }
        FaultKind::ExhaustStuckShut | FaultKind::ExhaustFrozen => {
            air(AirFault::ExhaustStuckShut { channel: at.channel()? })
        }
        FaultKind::ExhaustStuckOpen => air(AirFault::ExhaustStuckOpen { channel: at.channel()? }),
        FaultKind::ExhaustSlow => {
            air(AirFault::ExhaustSlow { channel: at.channel()?, left: spec.share() })
        }
        FaultKind::WheelEndShut => {
            let tires = at.wheel_end()?;
            let not_fed =
                || PlacingError::NotFed { fault: spec.text.clone(), place: spec.place.clone() };
            let end = truck.tires()[tires[0]].end.ok_or_else(not_fed)?;
            air(AirFault::WheelEndShut { end })
        }
        FaultKind::CoreLeftIn => {
            air(AirFault::TireNarrowed { tire: at.tire()?, left: spec.share() })
        }
        FaultKind::WeakCompressor => air(AirFault::WeakCompressor { left: spec.share() }),
        FaultKind::CutIn => air(AirFault::CutIn { by: spec.pressure() }),
        FaultKind::CutOut => air(AirFault::CutOut { by: spec.pressure() }),
        FaultKind::Protection => air(AirFault::Protection { by: spec.pressure() }),
        FaultKind::BrakeLeak => air(AirFault::BrakeLeak { flow: spec.flow() }),
        FaultKind::GaugeOff => {
            air(AirFault::GaugeOff { channel: at.channel()?, by: spec.pressure() })
        }
        FaultKind::GaugeOtherKind => air(AirFault::GaugeOtherKind { channel: at.channel()? }),
        FaultKind::HotWheel => {
            truth(TrueFault::HotWheel { tires: at.wheel_end()?, rise: spec.warmer() })
        }
        FaultKind::SensorOff => sensor(at.sensor()?, SensorFaultKind::Off(spec.pressure())),
        FaultKind::SensorDrift => {
            sensor(at.sensor()?, SensorFaultKind::DriftEachHour(spec.pressure()))
        }
        FaultKind::SensorStuck => sensor(at.sensor()?, SensorFaultKind::Stuck),
        FaultKind::SensorDead => sensor(at.sensor()?, SensorFaultKind::Dead),
        FaultKind::SensorsSwapped => {
            let (one, other) = at.two_sensors()?;
            sensor(one, SensorFaultKind::SwappedWith(other))
        }
        FaultKind::LogGap => match spec.until() {
            Some(until) => Ok(Placed::Recording(RecordingFault::Gap { from: spec.from, until })),
            None => Err(PlacingError::NoEnd { fault: spec.text.clone() }),
        },
        FaultKind::ClockOff => Ok(Placed::Recording(RecordingFault::Clock {
            from: spec.from,
            until: spec.until(),
            by: spec.time(),
        })),
    }
}

/// Where a fault is looked for.
struct Site<'a> {
    spec: &'a FaultSpec,
    combination: &'a Combination,
    truck: &'a TrueTruck,
    sensed: &'a [bool],
}

impl Site<'_> {
    fn channel(&self) -> Result<usize, PlacingError> {
        let channels = &self.combination.channels;
        let found = channels.iter().position(|channel| channel.name == self.spec.place);
        found.ok_or_else(|| PlacingError::NoChannel {
            fault: self.spec.text.clone(),
            place: self.spec.place.clone(),
            known: channels.iter().map(|channel| channel.name.clone()).collect(),
        })
    }

    fn tire_named(&self, place: &str) -> Result<usize, PlacingError> {
        let tires = self.truck.tires();
        let named = |tire: &haul::TireOnTruck| tire.name == place || tire.full_name == place;
        tires.iter().position(named).ok_or_else(|| PlacingError::NoTire {
            fault: self.spec.text.clone(),
            what: "tire",
            place: place.to_owned(),
            known: tires.iter().map(|tire| tire.name.clone()).collect(),
        })
    }

    fn tire(&self) -> Result<usize, PlacingError> {
        self.tire_named(&self.spec.place)
    }

    fn sensor_named(&self, place: &str) -> Result<usize, PlacingError> {
        let tire = self.tire_named(place)?;
        let no_sensor =
            || PlacingError::NoSensor { fault: self.spec.text.clone(), place: place.to_owned() };
        self.sensed[tire].then_some(tire).ok_or_else(no_sensor)
    }

    fn sensor(&self) -> Result<usize, PlacingError> {
        self.sensor_named(&self.spec.place)
    }

    fn two_sensors(&self) -> Result<(usize, usize), PlacingError> {
        let (one, other) =
            self.spec.place.split_once('+').unwrap_or((self.spec.place.as_str(), ""));
        Ok((self.sensor_named(one.trim())?, self.sensor_named(other.trim())?))
    }

    fn wheel_end(&self) -> Result<Vec<usize>, PlacingError> {
        let found = self.truck.tires_at(&self.spec.place);
        if found.is_empty() {
            let mut known: Vec<String> =
                self.truck.tires().iter().map(|tire| tire.end_name.clone()).collect();
            known.dedup();
            return Err(PlacingError::NoTire {
                fault: self.spec.text.clone(),
                what: "wheel end",
                place: self.spec.place.clone(),
                known,
            });
        }
        Ok(found)
    }
}

impl FaultSpec {
    fn length(&self) -> Length {
        match self.size {
            Size::Hole(hole) => hole,
            _ => Length::ZERO,
        }
    }

    fn share(&self) -> f64 {
        match self.size {
            Size::ShareLeft(share) => share,
            _ => 1.0,
        }
    }

    fn pressure(&self) -> PressureDifference {
        match self.size {
            Size::Pressure(by) => by,
            _ => PressureDifference::ZERO,
        }
    }

    fn flow(&self) -> VolumeFlow {
        match self.size {
            Size::Flow(flow) => flow,
            _ => VolumeFlow::ZERO,
        }
    }

    fn warmer(&self) -> TemperatureDifference {
        match self.size {
            Size::Warmer(by) => by,
            _ => TemperatureDifference::ZERO,
        }
    }

    fn time(&self) -> Time {
        match self.size {
            Size::Time(by) => by,
            _ => Time::ZERO,
        }
    }
}
