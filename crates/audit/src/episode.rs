//! Rows that break a rule, joined to one finding.

use quantity::{Length, Time};

use crate::rows::Rows;
use crate::{Evidence, Finding, Rule, Severity};

/// A finding under way, with what was worst so far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Open<Worst> {
    pub start: u64,
    pub last: u64,
    pub rows: u64,
    pub meters: f64,
    pub from_km: f64,
    pub to_km: f64,
    pub load: u8,
    pub worst: Worst,
}

/// The finding a rule may have open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Episode<Worst> {
    pub open: Option<Open<Worst>>,
}

impl<Worst> Default for Episode<Worst> {
    fn default() -> Self {
        Self { open: None }
    }
}

impl<Worst: Copy> Episode<Worst> {
    /// Notes that row `i` breaks the rule; keeps the worse of two.
    pub fn broken(
        &mut self,
        rows: &Rows,
        i: usize,
        now: Worst,
        worse: impl Fn(&Worst, &Worst) -> bool,
    ) {
        let row = rows.first + i as u64;
        let (km, meters) = (rows.km[i], meters(rows, i));
        match &mut self.open {
            Some(open) => {
                open.last = row;
                open.rows += 1;
                open.meters += meters;
                if !km.is_nan() {
                    open.to_km = km;
                    if open.from_km.is_nan() {
                        open.from_km = km;
                    }
                }
                if worse(&now, &open.worst) {
                    open.worst = now;
                }
            }
            None => {
                self.open = Some(Open {
                    start: row,
                    last: row,
                    rows: 1,
                    meters,
                    from_km: km,
                    to_km: km,
                    load: rows.load[i],
                    worst: now,
                });
            }
        }
    }

    /// Takes the open finding if it was last seen longer than `gap_s` rows before `row`.
    #[inline]
    pub fn over(&mut self, row: u64, gap_s: f64) -> Option<Open<Worst>> {
        match &self.open {
            Some(open) if (row - open.last) as f64 > gap_s => self.open.take(),
            _ => None,
        }
    }
}

impl<Worst> Open<Worst> {
    /// The finding it comes to.
    pub fn finding(&self, rule: Rule, severity: Severity, evidence: Evidence) -> Finding {
        let place = |km: f64| (!km.is_nan()).then(|| Length::from_km(km));
        Finding {
            rule,
            severity,
            start: Time::from_s(self.start as f64),
            end: Time::from_s((self.last + 1) as f64),
            lasted: Time::from_s(self.rows as f64),
            from: place(self.from_km),
            to: place(self.to_km),
            distance: Length::from_m(self.meters),
            load_state: usize::from(self.load),
            evidence,
        }
    }
}

/// Road run in a row, m; none where the speed is not known.
#[inline]
pub(crate) fn meters(rows: &Rows, i: usize) -> f64 {
    let kmh = rows.kmh[i];
    if kmh.is_nan() { 0.0 } else { kmh / 3.6 }
}
