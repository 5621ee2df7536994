//! A witness that turns the truth into frames and keeps the truth beside them.

use std::io::Write;

use haul::chance::{normal, uniform};
use haul::day::{DayEvent, Moment, Witness};
use logs::encode::EncodeError;
use logs::signal::Spn;
use logs::write::candump_line;
use logs::{Frame, Value};
use model::haul_cycle::HaulCycle;
use quantity::{Length, Temperature, Time};

use super::bus::{Bus, Sent};
use super::clock::LogClock;
use super::instruments::{Said, SensorFault, SensorFaultKind, TireSensor};
use super::moment::Now;
use super::place::{Line, Receiver};
use super::truth::{Told, TruthSample};

/// Time between two true values that are kept, s.
const TRUTH_EVERY: f64 = 10.0;
/// Lag of the pressure switches and sensors of the air supply, s: common practice, no source.
const SUPPLY_LAG: f64 = 0.4;
/// How far nominal senders are off their period, as a share: common practice, no source.
const SENDER_OFF: f64 = 2e-4;
/// Jitter of a sending, as a share of its period, one standard deviation: common practice, no source.
const JITTER: f64 = 0.012;
/// Wheels turn faster by this share when the driven tires are let down to nothing: a third of the
/// deflection, common practice.
const ROLLS_SHORTER: f64 = 0.012;

/// What a recorder knows before the day begins.
pub(super) struct Recorded<'a> {
    pub haul: &'a HaulCycle,
    pub bus: Bus,
    pub line: &'a Line,
    pub seed: u64,
    /// Location of each tire.
    pub locations: Vec<u32>,
    /// Sensors, for tires that have one.
    pub sensors: Vec<Option<TireSensor>>,
    pub sensor_faults: Vec<SensorFault>,
    /// Set pressure of a cell for each channel, kPa.
    pub targets: &'a dyn Fn(haul::Target) -> Vec<Option<f64>>,
    /// Mass on each axle row in each load state, kg.
    pub axle_kg: Vec<Vec<f64>>,
    pub begins: jiff::Timestamp,
    pub progress: &'a (dyn Fn(f64) + Sync),
}

/// The part of a moment that is needed when the next one comes.
#[derive(Debug, Clone, Copy)]
struct Before {
    clock: f64,
    speed: f64,
    rpm: f64,
    load: f64,
    fuel_l: f64,
    chainage: Length,
    forward: bool,
    odometer: f64,
}

struct Due {
    sent: Sent,
    period: f64,
    next: f64,
}

/// The recorder.
pub(super) struct Recorder<'a, W> {
    with: Recorded<'a>,
    pub clock: LogClock,
    receiver: Receiver,
    out: W,
    /// Why writing or encoding failed, if it did.
    pub failed: Option<RecordError>,
    before: Option<Before>,
    due: Vec<Due>,
    sent: usize,
    pending: Vec<(f64, usize, Frame)>,
    queued: usize,
    service: Option<f64>,
    service_off: [f64; 3],
    wheel: f64,
    odometer_starts: f64,
    hours_start: f64,
    pub told: Told,
    pub samples: Vec<TruthSample>,
    next_sample: f64,
    pub frames: usize,
    pub bytes: usize,
    text: Vec<u8>,
}

/// Why a day could not be recorded.
#[derive(Debug, thiserror::Error)]
pub enum RecordError {
    /// The system refuses.
    #[error(transparent)]
    Write(#[from] std::io::Error),
    /// Something does not fit its signal.
    #[error(transparent)]
    Encode(#[from] EncodeError),
}

impl<'a, W: Write> Recorder<'a, W> {
    pub fn new(with: Recorded<'a>, clock: LogClock, out: W) -> Self {
        let seed = with.seed;
        let mut all = vec![
            Sent::Engine,
            Sent::Speed,
            Sent::Fuel,
            Sent::Distance,
            Sent::AirSupply,
            Sent::Outside,
            Sent::Position,
            Sent::Direction,
            Sent::PositionQuality,
            Sent::TroubleCodes,
            Sent::Targets,
            Sent::Readings,
            Sent::ControlState,
            Sent::Hours,
            Sent::TripTimes,
            Sent::Clock,
            Sent::Identification,
        ];
        let sensed = (0..with.sensors.len()).filter(|&tire| with.sensors[tire].is_some());
        all.extend(sensed.map(Sent::Tire));
        let rows = with.axle_kg.first().map_or(0, Vec::len);
        all.extend((0..rows).map(Sent::Weight));
        let due = all
            .into_iter()
            .enumerate()
            .map(|(index, sent)| {
                let off = SENDER_OFF * normal(seed, index, "bus: sender");
                let phase = uniform(seed, index, "bus: phase") * sent.period().min(20.0);
                // The logger asks for what is sent once after it is awake.
                // One sender has one long message under way at a time.
                let first = match sent {
                    Sent::Identification => 12.0,
                    Sent::TripTimes => 30.0,
                    _ => phase,
                };
                Due { sent, period: sent.period() * (1.0 + off), next: first }
            })
            .collect();
        let service_off = [0, 1, 2].map(|index| 4.0 * normal(seed, index, "supply: error"));
        Self {
            receiver: Receiver::new(seed),
            clock,
            out,
            failed: None,
            before: None,
            due,
            sent: 0,
            pending: Vec::new(),
            queued: 0,
            service: None,
            service_off,
            wheel: 1.0 + 0.008 * normal(seed, 0, "wheel: radius"),
            odometer_starts: (100_000.0 + 500_000.0 * uniform(seed, 0, "odometer")) * 1e3,
            hours_start: 4_000.0 + 9_000.0 * uniform(seed, 0, "engine hours"),
            told: Told::default(),
            samples: Vec::new(),
            next_sample: 0.0,
            frames: 0,
            bytes: 0,
            text: Vec::new(),
            with,
        }
    }

    /// Writes what still waits.
    pub fn finish(&mut self) -> Result<(), RecordError> {
        self.flush(f64::INFINITY)?;
        self.out.flush()?;
        match self.failed.take() {
            Some(error) => Err(error),
            None => Ok(()),
        }
    }

    fn flush(&mut self, until: f64) -> Result<(), RecordError> {
        self.pending.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        let ready = self.pending.partition_point(|(time, ..)| *time < until);
        self.text.clear();
        for (time, _, mut frame) in self.pending.drain(..ready) {
            if self.clock.stamp(&mut frame, time) {
                self.frames += 1;
                candump_line(&frame, "can0", &mut self.text);
            }
        }
        self.bytes += self.text.len();
        self.out.write_all(&self.text)?;
        Ok(())
    }

    /// Lets every sensor take in the moment.
    fn follow(&mut self, moment: &Moment<'_>, elapsed: f64) {
        for (tire, sensor) in self.with.sensors.iter_mut().enumerate() {
            if let Some(sensor) = sensor {
                let truth = Said {
                    pressure: moment.air.tire(tire),
                    temperature: moment.air.gas_temperature(tire),
                };
                sensor.follow(truth, Time::from_s(elapsed));
            }
        }
        let service = moment.air.service().as_kpa();
        let before = self.service.unwrap_or(service);
        let share = 1.0 - (-elapsed / SUPPLY_LAG).exp();
        self.service = Some(before + (service - before) * share);
    }

    /// What each tire's sensor says, by location.
    fn said(&mut self, clock: Time) -> (Vec<(u32, Option<Said>)>, usize) {
        let healthy: Vec<Option<Said>> =
            self.with.sensors.iter().map(|one| one.as_ref()?.healthy()).collect();
        let faults = &self.with.sensor_faults;
        let mut source: Vec<usize> = (0..healthy.len()).collect();
        for fault in faults.iter().filter(|fault| fault.is_there(clock)) {
            if let SensorFaultKind::SwappedWith(other) = fault.kind {
                source.swap(fault.tire, other);
            }
        }
        let mut dead = 0;
        let mut all = Vec::with_capacity(healthy.len());
        for (tire, sensor) in self.with.sensors.iter_mut().enumerate() {
            let own: Vec<SensorFault> =
                faults.iter().filter(|fault| fault.tire == tire).copied().collect();
            let said = sensor.as_mut().and_then(|one| one.says(clock, &own, healthy[source[tire]]));
            if sensor.is_some() && said.is_none() {
                dead += 1;
            }
            all.push((self.with.locations[tire], said));
        }
        (all, dead)
    }

    /// Sends everything due between the moment before and this one.
    fn send(&mut self, moment: &Moment<'_>, before: Before) -> Result<(), RecordError> {
        let clock = moment.clock.as_s();
        let mut due: Vec<(f64, usize)> = Vec::new();
        for (index, one) in self.due.iter_mut().enumerate() {
            while one.next <= clock {
                self.sent += 1;
                let jitter = normal(self.with.seed, self.sent, "bus: jitter").clamp(-3.0, 3.0);
                due.push((one.next + JITTER * one.period.min(1.0) * jitter, index));
                one.next += one.period;
            }
        }
        if due.is_empty() {
            return Ok(());
        }
        due.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        let (tires, dead_sensors) = self.said(moment.clock);
        let channels = self.with.haul.combination.channels.len();
        let targets_kpa = (self.with.targets)(moment.ordered);
        let readings_kpa: Vec<Option<f64>> = (0..channels)
            .map(|channel| moment.air.reading(channel).map(|(pressure, _)| pressure.as_kpa()))
            .collect();
        let busy: Vec<bool> = (0..channels).map(|channel| moment.air.is_busy(channel)).collect();
        let utc = self.utc(clock);
        let axle_kg = self.with.axle_kg[moment.load_state].clone();
        let span = (clock - before.clock).max(1e-6);
        let fuel_l_h = (moment.fuel.as_l() - before.fuel_l) / span * 3600.0;
        let flat = self.flatness(moment);
        let service = self.service.unwrap_or(0.0);
        for (time, index) in due {
            let sent = self.due[index].sent;
            let share = ((time - before.clock) / span).clamp(0.0, 1.0);
            let between = |a: f64, b: f64| a + (b - a) * share;
            let speed = between(before.speed, moment.speed.as_kmh());
            let chainage = if before.forward == moment.forward {
                before.chainage + (moment.chainage - before.chainage) * share
            } else {
                moment.chainage
            };
            let at = Time::from_s(time.max(0.0));
            let (fix, height) =
                if matches!(sent, Sent::Position | Sent::Direction | Sent::PositionQuality) {
                    let truth = self.with.line.at(chainage);
                    self.receiver.fix(truth, moment.elevation, at).unzip()
                } else {
                    (None, None)
                };
            let now = Now {
                clock: at,
                speed_kmh: speed,
                wheel_kmh: speed * self.wheel * (1.0 + ROLLS_SHORTER * flat),
                engine_rpm: between(before.rpm, moment.engine_speed.as_rpm()),
                engine_load: between(before.load, moment.engine_load),
                fuel_l_h,
                odometer_m: self.odometer_starts + between(before.odometer, moment.odometer.as_m()),
                service_kpa: self.service_off.map(|off| service + off),
                compressor_loads: moment.air.compressor_loading(),
                ambient_kpa: moment.ambient_pressure.as_kpa(),
                outside_c: moment.ambient.as_celsius(),
                fix,
                fix_height_m: height.map(Length::as_m),
                bearing: self.with.line.bearing(chainage, moment.forward),
                braking: moment.braking,
                parked: speed < 0.05,
                tires: &tires,
                dead_sensors,
                targets_kpa: &targets_kpa,
                readings_kpa: &readings_kpa,
                busy: &busy,
                check_interval_min: self.with.haul.combination.controller.check_interval.as_s()
                    / 60.0,
                axle_kg: &axle_kg,
                engine_h: self.hours_start + clock / 3600.0,
                compressor_h: moment.air.duty().loaded().as_s() / 3600.0,
                utc: &utc,
            };
            for (time, message) in self.with.bus.messages(sent, &now)? {
                for frame in message.frames()? {
                    self.queued += 1;
                    let later = frame.time.as_us() as f64 * 1e-6;
                    self.pending.push((time.as_s() + later, self.queued, frame));
                }
            }
        }
        // Jitter and transport never reach back further than this.
        self.flush(clock - 0.1)
    }

    /// How far the tires that turn the speedometer are let down, 0 for full and 1 for flat.
    fn flatness(&self, moment: &Moment<'_>) -> f64 {
        let combination = &self.with.haul.combination;
        let driven = combination.groups.iter().find(|group| group.driven);
        let Some(driven) = driven else { return 0.0 };
        let full = driven.tire.single.pressure.as_kpa().max(1.0);
        (1.0 - moment.air.tire(0).as_kpa() / full).clamp(0.0, 1.0)
    }

    fn utc(&self, clock: f64) -> Vec<(Spn, Value)> {
        let nanos = super::clock::micros(clock) * 1000;
        let later = jiff::SignedDuration::from_nanos(nanos);
        let now = self.with.begins.checked_add(later).unwrap_or(self.with.begins);
        let now = now.to_zoned(jiff::tz::TimeZone::UTC);
        let number = |value: i16| Value::Number(f64::from(value));
        vec![
            (Spn(959), number(now.second().into())),
            (Spn(960), number(now.minute().into())),
            (Spn(961), number(now.hour().into())),
            (Spn(963), number(now.month().into())),
            (Spn(962), number(now.day().into())),
            (Spn(964), number(now.year())),
            (Spn(1601), Value::Number(0.0)),
            (Spn(1602), Value::Number(0.0)),
        ]
    }

    fn keep_truth(&mut self, moment: &Moment<'_>) {
        let clock = moment.clock.as_s();
        if clock < self.next_sample {
            return;
        }
        self.next_sample = (clock / TRUTH_EVERY).floor() * TRUTH_EVERY + TRUTH_EVERY;
        let tires = 0..self.with.sensors.len();
        self.samples.push(TruthSample {
            clock: moment.clock,
            chainage: moment.chainage,
            service: moment.air.service(),
            ambient: moment.ambient_pressure,
            outside: moment.ambient,
            tires: tires.clone().map(|tire| moment.air.tire(tire)).collect(),
            gas: tires.map(|tire| moment.air.gas_temperature(tire)).collect::<Vec<Temperature>>(),
        });
        let cycles = self.with.haul.cycles_per_day.round().max(1.0);
        (self.with.progress)((moment.cycle as f64 / cycles).min(1.0));
    }
}

impl<W: Write> Witness for Recorder<'_, W> {
    fn moment(&mut self, moment: &Moment<'_>) {
        let clock = moment.clock.as_s();
        let elapsed = self.before.map_or(0.0, |before| clock - before.clock);
        self.follow(moment, elapsed);
        if let Some(before) = self.before
            && self.failed.is_none()
            && let Err(error) = self.send(moment, before)
        {
            self.failed = Some(error);
        }
        self.keep_truth(moment);
        self.before = Some(Before {
            clock,
            speed: moment.speed.as_kmh(),
            rpm: moment.engine_speed.as_rpm(),
            load: moment.engine_load,
            fuel_l: moment.fuel.as_l(),
            chainage: moment.chainage,
            forward: moment.forward,
            odometer: moment.odometer.as_m(),
        });
    }

    fn event(&mut self, clock: Time, chainage: Length, event: DayEvent) {
        let combination = &self.with.haul.combination;
        let name = |target: haul::Target| {
            let rung = combination.rungs[target.rung].name.clone();
            (rung, combination.load_states[target.load_state].name.clone())
        };
        self.told.take((clock, chainage), &event, name);
    }
}
