//! What the rules share: rows made ready once, a few hundred at a time.

use crate::limits::Load;
use crate::places::{NO_CHANGE, Place};
use crate::{Columns, Limits, MAX_RUNGS};

/// Rows made ready together: they stay in the cache near the core.
pub(crate) const CHUNK: usize = 256;
/// No rung.
pub(crate) const NO_RUNG: u8 = u8::MAX;
/// No load state known.
pub(crate) const NO_LOAD: u8 = u8::MAX;

const ZERO_CELSIUS: f64 = 273.15;
/// Tire air, °C, and readings, kPa, that can be.
const CREDIBLE_C: std::ops::RangeInclusive<f64> = -60.0..=200.0;
const CREDIBLE_KPA: std::ops::RangeInclusive<f64> = -5.0..=1500.0;

/// Rows made ready. What is not known is NaN, or the widest interval.
#[derive(Debug, Clone)]
pub(crate) struct Rows {
    pub len: usize,
    /// Number of the first among all rows of the log.
    pub first: u64,
    pub load: [u8; CHUNK],
    pub km: [f64; CHUNK],
    pub kmh: [f64; CHUNK],
    pub place: [Place; CHUNK],
    /// Fastest rung held for sure, and fastest that may be held.
    pub held_surely: [u8; CHUNK],
    pub held_maybe: [u8; CHUNK],
    /// By channel: as read; cold at the lowest and at the highest.
    pub read: Vec<[f64; CHUNK]>,
    pub cold_low: Vec<[f64; CHUNK]>,
    pub cold_high: Vec<[f64; CHUNK]>,
    /// Whether a rule that applied could not judge the row.
    pub unknown: [bool; CHUNK],
    pub bad: u64,
}

impl Rows {
    pub fn new(channels: usize) -> Self {
        Self {
            len: 0,
            first: 0,
            load: [NO_LOAD; CHUNK],
            km: [f64::NAN; CHUNK],
            kmh: [f64::NAN; CHUNK],
            place: [Place { change: NO_CHANGE, closed: false }; CHUNK],
            held_surely: [NO_RUNG; CHUNK],
            held_maybe: [NO_RUNG; CHUNK],
            read: vec![[f64::NAN; CHUNK]; channels],
            cold_low: vec![[f64::NEG_INFINITY; CHUNK]; channels],
            cold_high: vec![[f64::INFINITY; CHUNK]; channels],
            unknown: [false; CHUNK],
            bad: 0,
        }
    }

    /// Takes `len` rows of the columns from `from` on.
    pub fn fill(&mut self, columns: &Columns<'_>, from: usize, len: usize, limits: &Limits) {
        self.len = len;
        self.unknown[..len].fill(false);
        self.bad = 0;
        let mut bad = [false; CHUNK];
        for (i, bad) in bad[..len].iter_mut().enumerate() {
            let row = from + i;
            self.km[i] = credible(columns.chainage_km.get(row), &(-1e4..=1e4), bad);
            self.kmh[i] = credible(columns.speed_kmh.get(row), &(0.0..=250.0), bad);
            let load = columns.load_state.values[row];
            let known = columns.load_state.quality[row] == series::Quality::Value;
            *bad |= known && usize::from(load) >= limits.loads.len();
            self.load[i] =
                if known && usize::from(load) < limits.loads.len() { load } else { NO_LOAD };
        }
        for (channel, of) in columns.channels.iter().enumerate() {
            self.fill_channel(channel, of, from, limits, &mut bad);
        }
        for i in 0..len {
            self.place[i] = match self.load[i] {
                NO_LOAD => Place { change: NO_CHANGE, closed: false },
                load => limits.places.at(usize::from(load), self.km[i]),
            };
        }
        self.hold(limits);
        self.bad = bad[..len].iter().filter(|bad| **bad).count() as u64;
    }

    fn fill_channel(
        &mut self,
        channel: usize,
        of: &crate::ChannelColumns<'_>,
        from: usize,
        limits: &Limits,
        bad: &mut [bool; CHUNK],
    ) {
        let site = &limits.given.site;
        let ambient = site.ambient.as_kpa();
        let reference = site.reference.as_celsius() + ZERO_CELSIUS;
        let cold = |read: f64, c: f64| (read + ambient) * reference / (c + ZERO_CELSIUS) - ambient;
        let (coldest, warmest) = (site.coldest_tire.as_celsius(), site.warmest_tire.as_celsius());
        for (i, bad) in bad[..self.len].iter_mut().enumerate() {
            let read = credible(of.pressure_kpa.get(from + i), &CREDIBLE_KPA, bad);
            let celsius = of
                .temperature_c
                .map_or(f64::NAN, |column| credible(column.get(from + i), &CREDIBLE_C, bad));
            self.read[channel][i] = read;
            let (low, high) = if read.is_nan() {
                (f64::NEG_INFINITY, f64::INFINITY)
            } else if celsius.is_nan() {
                (cold(read, warmest), cold(read, coldest))
            } else {
                let cold = cold(read, celsius);
                (cold, cold)
            };
            self.cold_low[channel][i] = low;
            self.cold_high[channel][i] = high;
        }
    }

    /// The fastest rung whose lowest pressures every channel holds.
    fn hold(&mut self, limits: &Limits) {
        let rungs = limits.given.rungs.len();
        for i in 0..self.len {
            let load = self.load[i];
            if load == NO_LOAD {
                (self.held_surely[i], self.held_maybe[i]) = (NO_RUNG, NO_RUNG);
                continue;
            }
            let of = &limits.loads[usize::from(load)];
            let (mut surely, mut maybe) = (u16::MAX, u16::MAX);
            for channel in 0..limits.channels {
                surely &= held(&of.minimum[channel], self.cold_low[channel][i], rungs);
                maybe &= held(&of.minimum[channel], self.cold_high[channel][i], rungs);
            }
            (self.held_surely[i], self.held_maybe[i]) = (fastest(surely), fastest(maybe));
        }
    }

    /// The channel furthest below the lowest of a rung, with its highest credible cold pressure and that lowest, kPa.
    pub fn furthest_below(&self, i: usize, load: &Load, rung: usize) -> Below {
        let mut worst = Below { channel: 0, rung, cold: f64::INFINITY, minimum: f64::NAN };
        let mut ratio = f64::INFINITY;
        for (channel, minimum) in load.minimum.iter().enumerate() {
            let (cold, minimum) = (self.cold_high[channel][i], minimum[rung]);
            if cold / minimum < ratio {
                ratio = cold / minimum;
                worst = Below { channel, rung, cold, minimum };
            }
        }
        worst
    }
}

/// A channel below the lowest of a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Below {
    pub channel: usize,
    pub rung: usize,
    pub cold: f64,
    pub minimum: f64,
}

impl Below {
    /// Pressure as a share of the lowest.
    pub fn share(&self) -> f64 {
        self.cold / self.minimum
    }
}

/// A bit for each rung whose lowest pressure is reached; one that is not possible never is.
#[inline]
fn held(minimum: &[f64; MAX_RUNGS], cold: f64, rungs: usize) -> u16 {
    let mut bits = 0;
    for (rung, minimum) in minimum[..rungs].iter().enumerate() {
        bits |= u16::from(cold >= *minimum) << rung;
    }
    bits
}

#[expect(clippy::cast_possible_truncation, reason = "fewer than sixteen bits lead a u16")]
#[inline]
fn fastest(bits: u16) -> u8 {
    if bits == 0 { NO_RUNG } else { 15 - bits.leading_zeros() as u8 }
}

/// The number, or NaN; one marked as a value that cannot be makes its row bad.
#[inline]
fn credible(value: Option<f64>, range: &std::ops::RangeInclusive<f64>, bad: &mut bool) -> f64 {
    match value {
        Some(value) if range.contains(&value) => value,
        Some(_) => {
            *bad = true;
            f64::NAN
        }
        None => f64::NAN,
    }
}
