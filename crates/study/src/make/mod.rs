//! Logs made from hauls driven on the true air, with everything that truly happened beside them.

mod bus;
mod clock;
mod fault;
mod fleet;
mod instruments;
mod moment;
mod place;
mod recorder;
mod spec;
mod truth;

use std::io::BufWriter;
use std::path::{Path, PathBuf};

use haul::chance::{normal, seed_of};
use haul::day::{Day, DayEnd, DayError, TimedFault};
use haul::{
    Course, CourseError, DayWeather, Driver, DriverHabit, DrivingStyle, TruckError, TrueTruck,
    Variation,
};
use logs::SourceAddress;
use model::date::Date;
use model::haul_cycle::HaulCycle;
use quantity::{Length, Time};
use rayon::prelude::*;
use tempfile::NamedTempFile;

use crate::{Opened, Planned, route_track};

use self::bus::{Bus, TIRES, location};
use self::clock::LogClock;
use self::fault::{Placed, RecordingFault};
use self::fleet::Hauling;
use self::instruments::{SensorFault, TireSensor};
use self::place::Line;
use self::recorder::{Recorded, Recorder};

pub use clock::{ClockStep, Gap};
pub use fault::{FaultKind, PlaceKind, PlacingError, SizeKind};
pub use fleet::FleetError;
pub use recorder::RecordError;
pub use spec::{FaultSpec, FaultSpecError, Size};
pub use truth::{Truth, TruthChange, TruthFault, TruthPhase, TruthSample, TruthTire};

/// What logs to make.
#[derive(Debug, Clone, PartialEq)]
pub struct MakeOrder {
    /// Folder they are written to.
    pub folder: PathBuf,
    /// Fleet numbers of the trucks; none means the first one of the register.
    pub units: Vec<String>,
    /// First day.
    pub first_day: Date,
    /// How many days.
    pub days: u32,
    /// Time of day at which the shift starts, UTC.
    pub starts: Time,
    /// Who drives.
    pub driver: DriverHabit,
    /// Cycles of a day; `None` as the haul says.
    pub cycles: Option<usize>,
    /// What goes wrong, on every one of these days and units.
    pub faults: Vec<FaultSpec>,
    /// Seed of all draws.
    pub seed: u64,
}

/// A log that was made.
#[derive(Debug, Clone, PartialEq)]
pub struct MadeLog {
    /// Its file.
    pub file: PathBuf,
    /// File for its truth, which is not written yet.
    pub truth_file: PathBuf,
    /// Frames in it.
    pub frames: usize,
    /// Frames that fell into gaps.
    pub lost: usize,
    /// Bytes of it.
    pub bytes: usize,
    /// What truly happened.
    pub truth: Truth,
}

/// Why logs were not made.
#[derive(Debug, thiserror::Error)]
pub enum MakeError {
    /// The plan itself says why.
    #[error("haul '{haul}' cannot be driven: {why}")]
    NotDriven {
        /// The haul.
        haul: String,
        /// The plan's reason.
        why: plan::NotDriven,
    },
    /// Something about the units.
    #[error(transparent)]
    Fleet(#[from] FleetError),
    /// A fault does not fit the truck.
    #[error(transparent)]
    Placing(#[from] PlacingError),
    /// A day is outside the calendar.
    #[error("day {0} of the order is outside the calendar; begin earlier or make fewer days")]
    Calendar(u32),
    /// A file is there already.
    #[error("'{}' is there already and was left as it is; choose another folder", .0.display())]
    Exists(PathBuf),
    /// A file or folder cannot be written.
    #[error("'{}' cannot be written: {source}", path.display())]
    Refused {
        /// Which.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The truck cannot be made ready.
    #[error(transparent)]
    Truck(#[from] TruckError),
    /// The track of the route cannot be read.
    #[error(transparent)]
    Track(#[from] survey::track::TrackError),
    /// The route cannot be cut into cells.
    #[error(transparent)]
    Course(#[from] CourseError),
    /// The day cannot be driven.
    #[error("log '{}': {error}", path.display())]
    Day {
        /// The log.
        path: PathBuf,
        /// Why.
        error: DayError,
    },
    /// The day cannot be recorded.
    #[error("log '{}': {error}", path.display())]
    Record {
        /// The log.
        path: PathBuf,
        /// Why.
        error: RecordError,
    },
}

impl MakeError {
    /// Whether the call asked for something that is not there, or for a place that is taken.
    pub fn is_wrong_call(&self) -> bool {
        matches!(self, Self::Fleet(_) | Self::Placing(_) | Self::Exists(_) | Self::Calendar(_))
    }
}

/// Longest cell of the road.
const CELL: Length = Length::from_m(20.0);

/// Makes logs of a planned haul, one for each unit and day, on as many threads as there are.
///
/// The same order gives the same bytes, whatever the number of threads. `progress` is told the number
/// of a log and the share of it that is done.
///
/// # Errors
/// [`MakeError`] with the first thing that stands in the way; no file is left half written.
pub fn make_logs(
    opened: &Opened,
    planned: &Planned,
    order: &MakeOrder,
    progress: &(dyn Fn(usize, f64) + Sync),
) -> Result<Vec<MadeLog>, MakeError> {
    let survey = opened.survey.as_ref();
    let haul = &planned.haul;
    let hauling = fleet::hauling(survey, haul, &order.units)?;
    let mut jobs = Vec::new();
    for one in &hauling {
        for day in 0..order.days {
            jobs.push(Job::new(one, order, day)?);
        }
    }
    for job in &jobs {
        for file in [&job.file, &job.truth_file] {
            if file.symlink_metadata().is_ok() {
                return Err(MakeError::Exists(file.clone()));
            }
        }
    }
    let line = Line::of_route(route_track(&opened.folder, &haul.route.name)?, haul.route.length());
    let courses = Course::of_haul(haul, CELL, &DrivingStyle::default())?;
    let maker = Maker { planned, order, line: &line, courses: &courses };
    // Every fault finds its place before anything is written.
    jobs.iter().try_for_each(|job| maker.prepared(job).map(drop))?;
    std::fs::create_dir_all(&order.folder)
        .map_err(|source| MakeError::Refused { path: order.folder.clone(), source })?;
    jobs.par_iter()
        .enumerate()
        .map(|(number, job)| maker.make(job, &|share| progress(number, share)))
        .collect()
}

/// A truck made ready for one log.
struct Prepared {
    truck: TrueTruck,
    variation: Variation,
    sensed: Vec<bool>,
    sorted: Sorted,
}

/// One log to make.
struct Job<'a> {
    hauling: &'a Hauling,
    begins: jiff::Timestamp,
    file: PathBuf,
    truth_file: PathBuf,
    seed: u64,
}

impl<'a> Job<'a> {
    fn new(hauling: &'a Hauling, order: &MakeOrder, day: u32) -> Result<Self, MakeError> {
        let first = order.first_day;
        let outside = |_| MakeError::Calendar(day + 1);
        let midnight = first
            .to_string()
            .parse::<jiff::civil::Date>()
            .and_then(|date| date.checked_add(jiff::Span::new().try_days(i64::from(day))?))
            .and_then(|date| date.to_zoned(jiff::tz::TimeZone::UTC))
            .map_err(outside)?;
        let starts = jiff::SignedDuration::from_micros(clock::micros(order.starts.as_s()));
        let begins = midnight.timestamp().checked_add(starts).map_err(outside)?;
        let name = format!("{}-{}", file_safe(&hauling.unit), midnight.date());
        let seed = seed_of(order.seed, &format!("{}/{}", hauling.unit, midnight.date()));
        let file = order.folder.join(format!("{name}.log"));
        let truth_file = order.folder.join(format!("{name}.truth.json"));
        Ok(Self { hauling, begins, file, truth_file, seed })
    }
}

/// A fleet number as part of a file name.
fn file_safe(unit: &str) -> String {
    unit.chars().map(|c| if c.is_alphanumeric() || "-_.".contains(c) { c } else { '_' }).collect()
}

struct Maker<'a> {
    planned: &'a Planned,
    order: &'a MakeOrder,
    line: &'a Line,
    courses: &'a (Course, Course),
}

/// Faults where they belong.
#[derive(Default)]
struct Sorted {
    truth: Vec<TimedFault>,
    /// Place of each in the list of faults asked for.
    truth_from: Vec<usize>,
    sensors: Vec<SensorFault>,
    gaps: Vec<Gap>,
    steps: Vec<ClockStep>,
}

/// A day that is over.
struct Went<'a> {
    sorted: &'a Sorted,
    variation: &'a Variation,
    weather: &'a DayWeather,
    tires: Vec<TruthTire>,
    end: DayEnd,
}

impl Maker<'_> {
    fn make(&self, job: &Job<'_>, progress: &(dyn Fn(f64) + Sync)) -> Result<MadeLog, MakeError> {
        let (haul, plan, order) = (&self.planned.haul, &self.planned.plan, self.order);
        let driven = plan
            .driven
            .as_ref()
            .map_err(|why| MakeError::NotDriven { haul: haul.name.clone(), why: why.clone() })?;
        let set = plan.ladder.set_pressures(haul);
        let Prepared { truck, variation, sensed, sorted } = self.prepared(job)?;
        let run = &haul.spread.run;
        let driver = Driver {
            habit: order.driver,
            reaction: run.reaction,
            speed_spread: run.road_speed,
            held: run.held_pressure * 0.5,
            seed: seed_of(job.seed, "driver"),
        };
        let seed = job.seed;
        let weather =
            DayWeather::of_day(&haul.weather, &haul.route, order.starts, variation.ambient, seed);
        let gauge_error = haul.combination.controller.gauge_error;
        let unit_seed = seed_of(order.seed, &job.hauling.unit);
        let sensors: Vec<Option<TireSensor>> = sensed
            .iter()
            .enumerate()
            .map(|(tire, &has)| has.then(|| TireSensor::drawn(unit_seed, tire, gauge_error)))
            .collect();
        let tires = truth_tires(haul, &truck, &sensors);
        let channels = haul.combination.channels.len();
        let targets = |at: haul::Target| {
            let of = |channel| Some(set.get(channel, at.load_state, at.rung).as_kpa());
            (0..channels).map(of).collect()
        };
        let address = job.hauling.controller_address.map_or(TIRES, SourceAddress);
        let recorded = Recorded {
            haul,
            bus: Bus::new(&haul.combination, address),
            line: self.line,
            seed,
            locations: truck.tires().iter().map(|tire| location(tire.row, tire.position)).collect(),
            sensors,
            sensor_faults: sorted.sensors.clone(),
            targets: &targets,
            axle_kg: fleet::axle_masses(haul, unit_seed),
            begins: job.begins,
            progress,
        };
        let clock = LogClock::new(
            seed,
            job.begins.as_microsecond(),
            sorted.gaps.clone(),
            sorted.steps.clone(),
        );
        let (temporary, out) = started(&order.folder, &job.file)?;
        let mut recorder = Recorder::new(recorded, clock, out);
        let cycles = order.cycles.unwrap_or_else(|| cycles_of(haul));
        let day = Day {
            haul,
            truck: &truck,
            courses: (&self.courses.0, &self.courses.1),
            plan: &driven.plan,
            driver: &driver,
            weather: &weather,
            faults: &sorted.truth,
            cycles,
        };
        let end = day
            .drive(&mut recorder)
            .map_err(|error| MakeError::Day { path: job.file.clone(), error })?;
        recorder.finish().map_err(|error| MakeError::Record { path: job.file.clone(), error })?;
        let went = Went { sorted: &sorted, variation: &variation, weather: &weather, tires, end };
        let truth = self.truth(job, &mut recorder, went);
        let (frames, lost, bytes) = (recorder.frames, recorder.clock.lost, recorder.bytes);
        drop(recorder);
        temporary
            .persist_noclobber(&job.file)
            .map_err(|error| MakeError::Refused { path: job.file.clone(), source: error.error })?;
        progress(1.0);
        let (file, truth_file) = (job.file.clone(), job.truth_file.clone());
        Ok(MadeLog { file, truth_file, frames, lost, bytes, truth })
    }

    fn truth<W: std::io::Write>(
        &self,
        job: &Job<'_>,
        recorder: &mut Recorder<'_, W>,
        went: Went<'_>,
    ) -> Truth {
        Truth {
            haul: self.planned.haul.name.clone(),
            unit: job.hauling.unit.clone(),
            trailers: job.hauling.trailers.clone(),
            begins_unix: job.begins.as_second(),
            seed: self.order.seed,
            driver: match self.order.driver {
                DriverHabit::Good => "good",
                DriverHabit::Late { .. } => "late",
                DriverHabit::Forgetful { .. } => "forgetful",
            },
            surveyed_track: self.line.is_surveyed(),
            clock_drift: recorder.clock.drift,
            clock_steps: recorder.clock.steps.clone(),
            gaps: ended(&recorder.clock.gaps, went.end.clock),
            delivery: went.variation.delivery,
            wet: went.weather.wet_spell().filter(|(from, _)| *from < went.end.clock),
            tires: went.tires,
            faults: self.order.faults.iter().map(told).collect(),
            active: recorder
                .told
                .active
                .iter()
                .map(|&(index, from, until)| (went.sorted.truth_from[index], from, until))
                .collect(),
            changes: std::mem::take(&mut recorder.told.changes),
            phases: std::mem::take(&mut recorder.told.phases),
            samples: std::mem::take(&mut recorder.samples),
            ends: went.end.clock,
            driven: went.end.driven,
        }
    }

    /// How this unit differs from its type, and this day from others.
    fn variation(&self, job: &Job<'_>) -> Variation {
        let spread = &self.planned.haul.spread;
        let unit = seed_of(self.order.seed, &job.hauling.unit);
        let factor = |seed, sigma: f64, input| (1.0 + sigma * normal(seed, 0, input)).max(0.3);
        let truck = &spread.truck;
        Variation {
            delivery: job
                .hauling
                .delivery
                .unwrap_or_else(|| factor(unit, truck.delivery, "truck: delivery")),
            conductance: factor(unit, truck.conductance, "truck: conductance"),
            tire_volume: factor(unit, truck.tire_volume, "truck: tire volume"),
            engine_speed: factor(job.seed, spread.run.engine_speed, "run: engine speed"),
            ambient: spread.run.ambient * normal(job.seed, 0, "run: ambient"),
        }
    }

    /// The truck of a job, which of its tires have sensors, and its faults in their places.
    fn prepared(&self, job: &Job<'_>) -> Result<Prepared, MakeError> {
        let (haul, plan) = (&self.planned.haul, &self.planned.plan);
        let variation = self.variation(job);
        let truck = TrueTruck::new(haul, &plan.ladder.set_pressures(haul), &variation)?;
        let sensed = job.hauling.sensed(&haul.combination, &truck);
        let sorted = self.sorted(&truck, &sensed)?;
        Ok(Prepared { truck, variation, sensed, sorted })
    }

    fn sorted(&self, truck: &TrueTruck, sensed: &[bool]) -> Result<Sorted, PlacingError> {
        let mut sorted = Sorted::default();
        for (index, spec) in self.order.faults.iter().enumerate() {
            let combination = &self.planned.haul.combination;
            match fault::place(spec, combination, truck, sensed)? {
                Placed::Truth(fault) => {
                    sorted.truth.push(fault);
                    sorted.truth_from.push(index);
                }
                Placed::Sensor(fault) => sorted.sensors.push(fault),
                Placed::Recording(RecordingFault::Gap { from, until }) => {
                    sorted.gaps.push(Gap { from, until, asked_for: true });
                }
                Placed::Recording(RecordingFault::Clock { from, until, by }) => {
                    sorted.steps.push(ClockStep { from, until, by });
                }
            }
        }
        Ok(sorted)
    }
}

fn cycles_of(haul: &HaulCycle) -> usize {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a few a day")]
    let cycles = haul.cycles_per_day.round().max(1.0) as usize;
    cycles
}

fn started(
    folder: &Path,
    file: &Path,
) -> Result<(NamedTempFile, BufWriter<std::fs::File>), MakeError> {
    let refused = |source| MakeError::Refused { path: file.to_owned(), source };
    let temporary = survey::readable(folder).map_err(refused)?;
    let out = temporary.reopen().map_err(refused)?;
    Ok((temporary, BufWriter::with_capacity(1 << 20, out)))
}

/// The tires of a truck with their sensors.
fn truth_tires(
    haul: &HaulCycle,
    truck: &TrueTruck,
    sensors: &[Option<TireSensor>],
) -> Vec<TruthTire> {
    truck
        .tires()
        .iter()
        .zip(sensors)
        .map(|(tire, sensor)| TruthTire {
            name: tire.name.clone(),
            location: u8::try_from(location(tire.row, tire.position)).unwrap_or(0xFF),
            channel: tire.channel.map(|at| haul.combination.channels[at].name.clone()),
            sensor_off: sensor.as_ref().map(|sensor| sensor.off),
        })
        .collect()
}

/// Gaps that lie within the day.
fn ended(gaps: &[Gap], end: Time) -> Vec<Gap> {
    gaps.iter().filter(|gap| gap.from < end).copied().collect()
}

fn told(spec: &FaultSpec) -> TruthFault {
    let size = spec.text.split(',').next().and_then(|head| head.split_once('='));
    TruthFault {
        asked: spec.text.clone(),
        kind: spec.kind.name(),
        place: spec.place.clone(),
        size: size.map_or_else(String::new, |(_, size)| size.trim().to_owned()),
        from: spec.from,
        until: spec.until(),
    }
}
