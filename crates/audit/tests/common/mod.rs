//! A made haul: 20 km from a spur over gravel to a highway, laden that way, empty back.
//!
//! Two channels, three rungs. Every number is invented; what a fault must give is known because it is put in.
#![allow(dead_code, missing_docs, reason = "each test file uses its own part of it")]

use audit::{
    CellLimit, ChangeLimit, ChangeTo, ChannelColumns, ClosedStretch, Column, Columns, Finding,
    Hold, Limits, LimitsGiven, LoadColumn, LoadLimit, RungLimit, Site, State, Tolerance,
};
use quantity::{AbsolutePressure, ColdPressure, GaugePressure, Length, Speed, Temperature, Time};
use series::Quality;

pub const EMPTY: u8 = 0;
pub const LADEN: u8 = 1;
pub const CAPS_KMH: [f64; 3] = [25.0, 40.0, 80.0];
/// Lowest by load and rung, kPa.
pub const LOWEST: [[f64; 3]; 2] = [[150.0, 180.0, 240.0], [350.0, 450.0, 600.0]];
/// What is set above the lowest.
pub const STACK: f64 = 30.0;
/// Ends of the spur and of the gravel, km.
pub const ENDS: [f64; 2] = [5.0, 10.0];

pub fn set(load: u8, rung: usize) -> f64 {
    LOWEST[usize::from(load)][rung] + STACK
}

pub fn limits() -> Limits {
    Limits::new(given()).expect("the tables fit each other")
}

pub fn given() -> LimitsGiven {
    let km = Length::from_km;
    let load = |load: u8, start_rung| LoadLimit {
        cells: (0..3)
            .map(|rung| {
                let minimum = ColdPressure::from_kpa(LOWEST[usize::from(load)][rung]);
                vec![CellLimit { minimum: Some(minimum) }; 2]
            })
            .collect(),
        holds: vec![
            Some(Hold { time: Some(Time::from_min(30.0)), distance: Some(km(8.0)) }),
            None,
            None,
        ],
        start_rung,
    };
    let raise = |rung, reach_by, until| ChangeLimit {
        load_state: usize::from(LADEN),
        rung,
        reach_by: km(reach_by),
        until: km(until),
        to: vec![ChangeTo::Raised(ColdPressure::from_kpa(LOWEST[1][rung])); 2],
    };
    let lower = |rung, reach_by, until| ChangeLimit {
        load_state: usize::from(EMPTY),
        rung,
        reach_by: km(reach_by),
        until: km(until),
        to: vec![ChangeTo::Lowered(GaugePressure::from_kpa(set(EMPTY, rung) + 10.0)); 2],
    };
    LimitsGiven {
        site: Site {
            reference: Temperature::from_celsius(20.0),
            ambient: AbsolutePressure::from_kpa(100.0),
            coldest_tire: Temperature::from_celsius(0.0),
            warmest_tire: Temperature::from_celsius(40.0),
        },
        tolerance: Tolerance::default(),
        route: km(20.0),
        rungs: CAPS_KMH.map(|cap| RungLimit { cap: Speed::from_kmh(cap) }).to_vec(),
        load_states: vec![load(EMPTY, None), load(LADEN, Some(0))],
        changes: vec![
            raise(1, ENDS[0], ENDS[1]),
            raise(2, ENDS[1], 20.0),
            lower(1, ENDS[1], ENDS[0]),
            lower(0, ENDS[0], 0.0),
        ],
        closed: vec![ClosedStretch { load_state: usize::from(LADEN), from: km(6.0), to: km(7.5) }],
    }
}

fn cut<'a>(values: &'a [f64], quality: &'a [Quality], rows: std::ops::Range<usize>) -> Column<'a> {
    Column { values: &values[rows], quality }
}

/// Rows of a drive.
#[derive(Debug, Clone, Default)]
pub struct Drive {
    pub km: Vec<f64>,
    pub kmh: Vec<f64>,
    pub load: Vec<u8>,
    pub kpa: [Vec<f64>; 2],
    pub celsius: Vec<f64>,
    pub quality: Vec<Quality>,
    pub temperature_quality: Vec<Quality>,
}

impl Drive {
    pub fn len(&self) -> usize {
        self.km.len()
    }

    pub fn push(&mut self, km: f64, kmh: f64, load: u8, kpa: [f64; 2]) {
        self.km.push(km);
        self.kmh.push(kmh);
        self.load.push(load);
        self.kpa[0].push(kpa[0]);
        self.kpa[1].push(kpa[1]);
        self.celsius.push(20.0);
        self.quality.push(Quality::Value);
        self.temperature_quality.push(Quality::Value);
    }

    /// Feeds rows `from..to`.
    pub fn feed(
        &self,
        state: &mut State,
        limits: &Limits,
        rows: std::ops::Range<usize>,
        sink: &mut Vec<Finding>,
    ) {
        let quality = &self.quality[rows.clone()];
        let temperature = Column {
            values: &self.celsius[rows.clone()],
            quality: &self.temperature_quality[rows.clone()],
        };
        let channels = [0, 1].map(|channel| ChannelColumns {
            pressure_kpa: cut(&self.kpa[channel], quality, rows.clone()),
            temperature_c: Some(temperature),
        });
        let columns = Columns {
            chainage_km: cut(&self.km, quality, rows.clone()),
            speed_kmh: cut(&self.kmh, quality, rows.clone()),
            load_state: LoadColumn { values: &self.load[rows.clone()], quality },
            channels: &channels,
        };
        audit::feed(state, &columns, limits, sink).expect("the columns are even");
    }

    /// Everything found in the whole drive, in order of time.
    pub fn audit(&self, limits: &Limits) -> (Vec<Finding>, State) {
        self.audit_cut(limits, &[])
    }

    /// The same with the rows fed in pieces.
    pub fn audit_cut(&self, limits: &Limits, cuts: &[usize]) -> (Vec<Finding>, State) {
        let mut state = State::default();
        let mut found = Vec::new();
        let mut from = 0;
        for &to in cuts.iter().chain([&self.len()]) {
            let to = to.clamp(from, self.len());
            self.feed(&mut state, limits, from..to, &mut found);
            from = to;
        }
        audit::finish(&mut state, limits, &mut found);
        found.sort_by(|a, b| (a.start.total_cmp(&b.start)).then(a.rule.cmp(&b.rule)));
        (found, state)
    }
}

/// How a drive goes wrong; zeros keep the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Faults {
    /// Meters that each raise, and each lowering, is called late.
    pub raise_late_m: f64,
    pub lower_late_m: f64,
    /// Speed above the cap held, km/h, on the laden highway.
    pub over_kmh: f64,
    /// Seconds of standing that are missing before the laden truck moves off.
    pub hurry_s: f64,
    /// Minutes stood on the spur, engine running and creeping on.
    pub dawdle_min: f64,
    /// Pressure lost on the first channel at 15 km, kPa.
    pub loss_kpa: f64,
    /// Raise to the gravel rung on the descent.
    pub on_descent: bool,
}

impl Faults {
    pub const NONE: Self = Self {
        raise_late_m: 0.0,
        lower_late_m: 0.0,
        over_kmh: 0.0,
        hurry_s: 0.0,
        dawdle_min: 0.0,
        loss_kpa: 0.0,
        on_descent: false,
    };
}

/// Filling and venting, kPa/s.
const RATE: f64 = 1.0;

struct Truck {
    kpa: f64,
    target: f64,
    km: f64,
    load: u8,
}

impl Truck {
    fn second(&mut self, drive: &mut Drive, kmh: f64, lost: f64) {
        self.kpa += (self.target - self.kpa).clamp(-RATE, RATE);
        let onward = kmh / 3600.0;
        self.km += if self.load == LADEN { onward } else { -onward };
        drive.push(self.km, kmh, self.load, [self.kpa - lost, self.kpa]);
    }

    /// Fastest the pressures held allow.
    fn cap(&self) -> f64 {
        let lowest = &LOWEST[usize::from(self.load)];
        (0..3).rev().find(|&rung| self.kpa >= lowest[rung]).map_or(10.0, |rung| CAPS_KMH[rung])
    }
}

/// A drive out empty and back laden, by the plan but for its faults.
pub fn drive(faults: Faults) -> Drive {
    let mut drive = Drive::default();
    let mut truck = Truck { kpa: set(EMPTY, 2), target: set(EMPTY, 2), km: 20.0, load: EMPTY };
    let lower_at =
        |end: f64, from: f64| end + 0.9 * (from / 3600.0) * 65.0 - faults.lower_late_m / 1e3;
    while truck.km > 0.01 {
        let road = if truck.km > ENDS[1] {
            80.0
        } else if truck.km > ENDS[0] {
            40.0
        } else {
            25.0
        };
        if truck.km < lower_at(ENDS[0], 40.0) {
            truck.target = set(EMPTY, 0);
        } else if truck.km < lower_at(ENDS[1], 80.0) {
            truck.target = set(EMPTY, 1);
        }
        let kmh = truck.cap().min(road);
        truck.second(&mut drive, kmh, 0.0);
    }
    for second in 0..600 {
        if second == 300 {
            truck.load = LADEN;
            truck.target = set(LADEN, 0);
        }
        if f64::from(second) < 600.0 - faults.hurry_s {
            truck.second(&mut drive, 0.0, 0.0);
        }
    }
    let mut dawdled = 0.0;
    while truck.km < 19.99 {
        let road = if truck.km > ENDS[1] {
            80.0
        } else if truck.km > ENDS[0] {
            40.0
        } else {
            25.0
        };
        let late = faults.raise_late_m / 1e3;
        if truck.km > ENDS[1] - 2.2 + late {
            truck.target = set(LADEN, 2);
        } else if truck.km > if faults.on_descent { 6.2 } else { ENDS[0] - 1.2 + late } {
            truck.target = set(LADEN, 1);
        }
        let over = if truck.km > 16.0 && truck.km < 18.0 { faults.over_kmh } else { 0.0 };
        let mut kmh = truck.cap().min(road) + over;
        if truck.km > 2.0 && dawdled < faults.dawdle_min * 60.0 {
            dawdled += 1.0;
            kmh = 2.0;
        }
        let lost = if truck.km > 15.0 { faults.loss_kpa } else { 0.0 };
        truck.second(&mut drive, kmh, lost);
    }
    drive
}
