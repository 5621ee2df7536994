//! The groups on the bus of a made log: who sends them, how often, and what stands in them.

use logs::encode::{EncodeError, Message, data_of};
use logs::signal::Spn;
use logs::{Group, Identifier, Interface, Pgn, SourceAddress, Timestamp, Value, table};
use model::vehicle::Combination;
use quantity::Time;

use super::moment::Now;

/// Senders; the numbers of the standard's list of addresses, from memory.
pub(super) const ENGINE: SourceAddress = SourceAddress(0x00);
const AIR: SourceAddress = SourceAddress(0x30);
/// Address of the tire pressure controller where the register of units names none.
pub(super) const TIRES: SourceAddress = SourceAddress(0x33);
const NAVIGATION: SourceAddress = SourceAddress(0x4A);
/// Who asks for groups that are sent on request only: a tool, by the logger's side.
const ASKER: SourceAddress = SourceAddress(0xF9);

/// What is written where a vehicle identification number would stand: it is none.
const NO_NUMBER: &[u8] = b"MADE-LOG-NOT-REAL*";

/// Something sent again and again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sent {
    Engine,
    Speed,
    Fuel,
    Distance,
    AirSupply,
    Outside,
    Position,
    Direction,
    PositionQuality,
    TroubleCodes,
    Tire(usize),
    /// Asked for by the logger, and answered.
    Targets,
    Readings,
    ControlState,
    Weight(usize),
    Hours,
    TripTimes,
    Clock,
    Identification,
}

impl Sent {
    pub fn group(self) -> u32 {
        match self {
            Self::Engine => 61444,
            Self::Speed => 65265,
            Self::Fuel => 65266,
            Self::Distance => 65217,
            Self::AirSupply => 65198,
            Self::Outside => 65269,
            Self::Position => 65267,
            Self::Direction => 65256,
            Self::PositionQuality => 64502,
            Self::TroubleCodes => 65226,
            Self::Tire(_) => 65268,
            Self::Targets => 65145,
            Self::Readings => 65146,
            Self::ControlState => 65144,
            Self::Weight(_) => 65258,
            Self::Hours => 65253,
            Self::TripTimes => 65200,
            Self::Clock => 65254,
            Self::Identification => 65260,
        }
    }

    /// Time between two, s.
    pub fn period(self) -> f64 {
        match self {
            Self::Engine => 0.05,
            Self::Speed | Self::Fuel => 0.1,
            Self::Distance
            | Self::AirSupply
            | Self::Outside
            | Self::Position
            | Self::Direction
            | Self::TroubleCodes => 1.0,
            Self::PositionQuality => 5.0,
            Self::Tire(_) | Self::Targets | Self::Readings => 10.0,
            Self::ControlState | Self::Weight(_) | Self::Clock => 60.0,
            Self::Hours => 300.0,
            Self::TripTimes => 600.0,
            Self::Identification => 1e9,
        }
    }

    fn sender(self, tires: SourceAddress) -> SourceAddress {
        match self {
            Self::Tire(_)
            | Self::Targets
            | Self::Readings
            | Self::ControlState
            | Self::TroubleCodes => tires,
            Self::AirSupply | Self::Weight(_) => AIR,
            Self::Position | Self::Direction | Self::PositionQuality => NAVIGATION,
            _ => ENGINE,
        }
    }

    /// Whether it is sent only when somebody asks.
    fn is_asked_for(self) -> bool {
        matches!(
            self,
            Self::Targets
                | Self::Readings
                | Self::ControlState
                | Self::Weight(_)
                | Self::Hours
                | Self::TripTimes
                | Self::Clock
                | Self::Identification
        )
    }

    fn priority(self) -> u8 {
        match self {
            Self::Engine => 3,
            _ => 6,
        }
    }
}

/// The messages of a made bus.
#[derive(Debug, Clone)]
pub(super) struct Bus {
    tires: SourceAddress,
    interface: Interface,
    /// Which of steer, drive and trailer each channel is shown as.
    slots: Vec<Slot>,
}

/// Where the request-only groups of a pressure controller show a channel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Slot {
    Steer,
    Drive,
    Trailer,
}

impl Bus {
    pub fn new(combination: &Combination, tires: SourceAddress) -> Self {
        let slot = |channel: usize| {
            let mut groups = combination.groups_of(channel).map(|(_, group)| group);
            let first = groups.next();
            match first {
                Some(group) if !combination.vehicles[group.vehicle].is_truck => Slot::Trailer,
                Some(group) if group.steered => Slot::Steer,
                _ => Slot::Drive,
            }
        };
        let slots = (0..combination.channels.len()).map(slot).collect();
        Self { tires, interface: Interface(0), slots }
    }

    /// The messages of one sending: a request before it where it is sent on request only.
    pub fn messages(&self, sent: Sent, now: &Now<'_>) -> Result<Vec<(Time, Message)>, EncodeError> {
        let Some(data) = self.data(sent, now)? else { return Ok(Vec::new()) };
        let unknown = || EncodeError::UnknownGroup(Pgn::REQUEST);
        let pgn = Pgn::new(sent.group()).ok_or_else(unknown)?;
        let source = sent.sender(self.tires);
        let identifier =
            Identifier { priority: sent.priority(), pgn, source, destination: SourceAddress::ALL };
        let (time, interface) = (Timestamp::default(), self.interface);
        let answer = Message { time, interface, identifier, data };
        if !sent.is_asked_for() {
            return Ok(vec![(now.clock, answer)]);
        }
        let asked = Message::request(time, interface, pgn, ASKER, source);
        Ok(vec![(now.clock, asked), (now.clock + Time::from_s(0.02), answer)])
    }

    fn data(&self, sent: Sent, now: &Now<'_>) -> Result<Option<Vec<u8>>, EncodeError> {
        let values = match sent {
            Sent::Engine => engine(now),
            Sent::Speed => speed(now),
            Sent::Fuel => fuel(now),
            Sent::Distance => vec![(Spn(917), Value::Number(now.odometer_m))],
            Sent::AirSupply => air_supply(now),
            Sent::Outside => vec![
                (Spn(108), Value::Number(now.ambient_kpa)),
                (Spn(171), Value::Number(now.outside_c)),
            ],
            Sent::Position => position(now),
            Sent::Direction => direction(now),
            Sent::PositionQuality => position_quality(now),
            Sent::TroubleCodes => return Ok(Some(trouble_codes(now.dead_sensors))),
            Sent::Tire(tire) => match tire_condition(now, tire) {
                Some(values) => values,
                None => return Ok(None),
            },
            Sent::Targets => self.by_slot([143, 142, 141], now.targets_kpa),
            Sent::Readings => self.by_slot([146, 145, 144], now.readings_kpa),
            Sent::ControlState => self.control_state(now),
            Sent::Weight(row) => vec![
                (Spn(928), Value::Code(location(row, 0))),
                (Spn(582), held(now.axle_kg.get(row).copied().unwrap_or(0.0), 32_000.0)),
            ],
            Sent::Hours => vec![(Spn(247), Value::Number(now.engine_h))],
            Sent::TripTimes => vec![(Spn(1038), Value::Number(now.compressor_h))],
            Sent::Clock => now.utc.to_vec(),
            Sent::Identification => return Ok(Some(NO_NUMBER.to_vec())),
        };
        Ok(Some(data_of(group(sent)?, &values)?))
    }

    /// Values of the channels at the signals for steer, drive and trailer.
    fn by_slot(&self, spns: [u32; 3], values: &[Option<f64>]) -> Vec<(Spn, Value)> {
        let mut shown = Vec::with_capacity(3);
        for (slot, spn) in [Slot::Steer, Slot::Drive, Slot::Trailer].into_iter().zip(spns) {
            let channel = self.slots.iter().position(|own| *own == slot);
            let value = channel.and_then(|channel| values.get(channel).copied().flatten());
            if let Some(kpa) = value {
                shown.push((Spn(spn), held(kpa, 32_000.0)));
            }
        }
        shown
    }

    fn control_state(&self, now: &Now<'_>) -> Vec<(Spn, Value)> {
        let mut values = vec![(Spn(39), held(now.check_interval_min, 250.0))];
        for (slot, spn) in [(Slot::Steer, 1470), (Slot::Drive, 1469), (Slot::Trailer, 1475)] {
            let channel = self.slots.iter().position(|own| *own == slot);
            if let Some(busy) = channel.and_then(|channel| now.busy.get(channel)) {
                values.push((Spn(spn), Value::Code(u32::from(*busy))));
            }
        }
        values
    }
}

fn group(sent: Sent) -> Result<&'static Group, EncodeError> {
    let pgn = Pgn::new(sent.group()).ok_or(EncodeError::UnknownGroup(Pgn::REQUEST))?;
    table::group(pgn).ok_or(EncodeError::UnknownGroup(pgn))
}

/// A number not below zero and not above the end of its range.
fn held(number: f64, top: f64) -> Value {
    Value::Number(number.clamp(0.0, top))
}

/// Row in the high nibble, position in the low one.
pub(super) fn location(row: usize, position: usize) -> u32 {
    let nibble = |number: usize| u32::try_from(number.min(15)).unwrap_or(15);
    nibble(row) << 4 | nibble(position)
}

fn engine(now: &Now<'_>) -> Vec<(Spn, Value)> {
    let torque = now.engine_load * 100.0;
    vec![
        (Spn(190), held(now.engine_rpm, 8000.0)),
        (Spn(512), Value::Number(torque.clamp(-125.0, 125.0))),
        (Spn(513), Value::Number((torque * 0.97).clamp(-125.0, 125.0))),
    ]
}

fn speed(now: &Now<'_>) -> Vec<(Spn, Value)> {
    vec![
        (Spn(84), held(now.wheel_kmh, 250.0)),
        (Spn(70), Value::Code(u32::from(now.parked))),
        (Spn(597), Value::Code(u32::from(now.braking))),
    ]
}

fn fuel(now: &Now<'_>) -> Vec<(Spn, Value)> {
    let economy =
        if now.fuel_l_h > 0.05 { (now.wheel_kmh / now.fuel_l_h).min(125.0) } else { 125.0 };
    vec![(Spn(183), held(now.fuel_l_h, 3212.0)), (Spn(184), held(economy, 125.0))]
}

fn air_supply(now: &Now<'_>) -> Vec<(Spn, Value)> {
    let [supply, first, second] = now.service_kpa.map(|kpa| held(kpa, 2000.0));
    vec![
        (Spn(46), supply),
        (Spn(1087), first),
        (Spn(1088), second),
        (Spn(1351), Value::Code(u32::from(now.compressor_loads))),
    ]
}

fn position(now: &Now<'_>) -> Vec<(Spn, Value)> {
    match now.fix {
        Some(fix) => {
            vec![(Spn(584), Value::Number(fix.latitude)), (Spn(585), Value::Number(fix.longitude))]
        }
        None => Vec::new(),
    }
}

fn direction(now: &Now<'_>) -> Vec<(Spn, Value)> {
    let mut values = vec![(Spn(517), held(now.speed_kmh, 250.0))];
    if let Some(height) = now.fix_height_m {
        values.push((Spn(165), Value::Number(now.bearing)));
        values.push((Spn(580), Value::Number(height)));
    }
    values
}

fn position_quality(now: &Now<'_>) -> Vec<(Spn, Value)> {
    let (satellites, dilution) = if now.fix.is_some() { (11.0, 0.9) } else { (2.0, 12.0) };
    vec![(Spn(8128), Value::Number(satellites)), (Spn(8129), Value::Number(dilution))]
}

/// Pressure that the first tire group can say, kPa.
const TIRE_GROUP_TOP: f64 = 1000.0;

fn tire_condition(now: &Now<'_>, tire: usize) -> Option<Vec<(Spn, Value)>> {
    let (at, said) = now.tires.get(tire)?;
    let mut values = vec![(Spn(929), Value::Code(*at))];
    if let Some(said) = said {
        let kpa = said.pressure.as_kpa();
        let fits = kpa <= TIRE_GROUP_TOP;
        values.push((Spn(241), if fits { held(kpa, TIRE_GROUP_TOP) } else { Value::Error }));
        values.push((Spn(242), Value::Number(said.temperature.as_celsius())));
        values.push((Spn(1697), Value::Code(0)));
    } else {
        values.push((Spn(241), Value::Error));
        values.push((Spn(242), Value::Error));
        values.push((Spn(1697), Value::Code(1)));
    }
    values.push((Spn(1699), Value::Code(1)));
    Some(values)
}

/// Active trouble codes: lamps, then four bytes a code; one code of zeros means none.
///
/// A silent sensor shows as two codes, for its pressure and its temperature, with the failure mode
/// for an update that does not come (9, from memory).
fn trouble_codes(dead_sensors: usize) -> Vec<u8> {
    const NO_UPDATE: u8 = 9;
    if dead_sensors == 0 {
        return vec![0x00, 0xFF, 0, 0, 0, 0, 0xFF, 0xFF];
    }
    let count = u8::try_from(dead_sensors.min(126)).unwrap_or(126);
    let code = |spn: u32| {
        let [low, middle, high, _] = spn.to_le_bytes();
        [low, middle, (high & 7) << 5 | NO_UPDATE, count]
    };
    let mut data = vec![0x04, 0xFF];
    data.extend(code(241));
    data.extend(code(242));
    data
}
