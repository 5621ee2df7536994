//! One run of the two: its samples while moving, its change points, where it stands.

use view::{MarkView, RunView, SampleView};

use super::check::CHANGES;

/// Below this a truck stands, km/h.
const STANDING_KMH: f64 = 0.5;
/// Samples of one standing lie no further apart, km.
const SAME_PLACE_KM: f64 = 0.01;
/// Shorter standing is drawn, not noted, s.
const NOTED_S: f64 = 60.0;

/// Why a truck stands, as far as the samples tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Reason {
    Loading,
    WaitingForChange,
    BeforeMovingOff,
    Unloading,
    OnTheWay,
}

/// A time of standing at one place in one load state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Stand {
    pub(crate) reason: Reason,
    pub(crate) km: f64,
    pub(crate) time_s: f64,
}

/// The empty or the laden run.
#[derive(Debug)]
pub(crate) struct Half<'a> {
    pub(crate) laden: bool,
    pub(crate) load_state: &'a str,
    /// Whether it goes toward higher chainage.
    pub(crate) forward: bool,
    pub(crate) moving: Vec<&'a SampleView>,
    pub(crate) changes: Vec<&'a MarkView>,
    pub(crate) stands: Vec<Stand>,
}

impl<'a> Half<'a> {
    /// Both runs of a haul, the empty one first.
    pub(crate) fn both(run: &'a RunView) -> [Self; 2] {
        [false, true].map(|laden| {
            let load_state = run.load_states[usize::from(laden)].as_str();
            let mut half = Self {
                laden,
                load_state,
                forward: (run.laden_direction == "forward") == laden,
                moving: Vec::new(),
                changes: changes(run, load_state),
                stands: Vec::new(),
            };
            half.fill(run);
            half
        })
    }

    fn fill(&mut self, run: &'a RunView) {
        let mut first = 0;
        while first < run.samples.len() {
            let end = first + standing(&run.samples[first..]);
            if end > first && noted(&run.samples, first, end) {
                self.stand(run, first, end);
                first = end;
            } else {
                let drawn = &run.samples[first..end.max(first + 1)];
                self.moving.extend(drawn.iter().filter(|s| s.load_state == self.load_state));
                first += drawn.len();
            }
        }
    }

    /// Notes what of a standing is in this half's load state.
    fn stand(&mut self, run: &RunView, first: usize, end: usize) {
        let samples = &run.samples;
        let own = |index: usize| samples[index].load_state == self.load_state;
        let Some(from) = (first..end).find(|&index| own(index)) else { return };
        let to = (from..end).find(|&index| !own(index)).unwrap_or(end);
        let after = to.min(samples.len() - 1);
        let changing = samples[from..to].iter().any(|sample| sample.changing);
        let last = samples[to..].iter().all(|sample| sample.load_state != self.load_state);
        let begins = from == 0 || !own(from - 1);
        let reason = match (begins && to < samples.len(), last, self.laden) {
            (true, _, _) if changing => Reason::WaitingForChange,
            (true, _, _) => Reason::BeforeMovingOff,
            (false, true, true) => Reason::Unloading,
            (false, true, false) if to < samples.len() => Reason::Loading,
            _ => Reason::OnTheWay,
        };
        let time_s = samples[after].time_s - samples[from].time_s;
        self.stands.push(Stand { reason, km: samples[from].km, time_s });
    }

    /// The sample furthest right on the chart.
    pub(crate) fn rightmost(&self) -> Option<&'a SampleView> {
        self.moving.iter().copied().max_by(|a, b| a.km.total_cmp(&b.km))
    }

    /// Chainages between which something holds, in the order driven.
    pub(crate) fn spans(&self, holds: impl Fn(&SampleView) -> bool) -> Vec<(f64, f64)> {
        let mut spans: Vec<(f64, f64)> = Vec::new();
        let mut open = false;
        for pair in self.moving.windows(2) {
            let now = holds(pair[0]);
            match spans.last_mut() {
                Some(span) if now && open => span.1 = pair[1].km,
                _ if now => spans.push((pair[0].km, pair[1].km)),
                _ => {}
            }
            open = now;
        }
        spans
    }
}

fn changes<'a>(run: &'a RunView, load_state: &str) -> Vec<&'a MarkView> {
    let mut changes: Vec<_> = run
        .marks
        .iter()
        .filter(|mark| CHANGES.contains(&mark.kind.as_str()))
        .filter(|mark| mark.load_state.as_deref() == Some(load_state))
        .collect();
    changes.sort_by(|a, b| a.km.total_cmp(&b.km));
    changes
}

/// How many samples from the first on stand at its place.
fn standing(samples: &[SampleView]) -> usize {
    let place = samples[0].km;
    samples
        .iter()
        .take_while(|s| s.speed_kmh < STANDING_KMH && (s.km - place).abs() < SAME_PLACE_KM)
        .count()
}

fn noted(samples: &[SampleView], first: usize, end: usize) -> bool {
    samples[end.min(samples.len() - 1)].time_s - samples[first].time_s >= NOTED_S
}

#[cfg(test)]
mod tests {
    use super::super::tests::{sample, small};
    use super::*;

    fn stands(run: &RunView, laden: bool) -> Vec<(Reason, f64)> {
        let half = &Half::both(run)[usize::from(laden)];
        half.stands.iter().map(|stand| (stand.reason, stand.time_s)).collect()
    }

    #[test]
    fn loading_ends_where_the_load_state_changes() {
        let run = small();
        assert_eq!(stands(&run, false), [(Reason::Loading, 300.0)]);
        assert_eq!(stands(&run, true), [(Reason::WaitingForChange, 180.0)]);
    }

    #[test]
    fn standing_before_on_and_after_the_way_is_told_apart() {
        let mut run = small();
        run.samples = vec![
            sample(0.0, 10.0, "empty", 0.0),
            sample(120.0, 10.0, "empty", 30.0),
            sample(300.0, 6.0, "empty", 0.0),
            sample(400.0, 5.9, "empty", 30.0),
            sample(900.0, 0.0, "empty", 0.0),
            sample(1000.0, 0.0, "laden", 30.0),
            sample(1500.0, 10.0, "laden", 0.0),
            sample(1600.0, 10.0, "laden", 0.0),
        ];
        let before = (Reason::BeforeMovingOff, 120.0);
        let on_the_way = (Reason::OnTheWay, 100.0);
        assert_eq!(stands(&run, false), [before, on_the_way, (Reason::Loading, 100.0)]);
        assert_eq!(stands(&run, true), [(Reason::Unloading, 100.0)]);
    }

    #[test]
    fn a_stop_shorter_than_a_minute_is_drawn() {
        let mut run = small();
        run.samples = vec![
            sample(0.0, 10.0, "empty", 30.0),
            sample(100.0, 6.0, "empty", 0.0),
            sample(150.0, 5.9, "empty", 30.0),
        ];
        assert!(stands(&run, false).is_empty());
        assert_eq!(Half::both(&run)[0].moving.len(), 3);
    }

    #[test]
    fn spans_join_while_something_holds() {
        let mut run = small();
        for (index, sample) in run.samples.iter_mut().enumerate() {
            sample.compressor_loading = [4, 5].contains(&index);
        }
        assert_eq!(Half::both(&run)[1].spans(|s| s.compressor_loading), [(0.1, 10.0)]);
    }
}
