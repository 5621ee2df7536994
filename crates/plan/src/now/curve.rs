//! What each axle group needs over speed, for the load and chain states that count.

use quantity::{ColdPressure, Length, Speed};

use super::WALKING_PACE;
use super::subject::Subject;
use crate::window::Impossible;
use crate::window::need::{Asked, Need, of_channel, of_fixed};

/// Needs of every group at every speed that may be named.
pub(crate) struct Curves<'a> {
    subject: &'a Subject<'a>,
    /// Speeds that may be named, slowest first; the first is walking pace.
    pub speeds: Vec<Speed>,
    /// By speed, then by group; why not, where no pressure will do.
    needs: Vec<Vec<Result<Option<Need>, Impossible>>>,
}

/// How close the exact speed is found.
const CLOSE: Speed = Speed::from_kmh(0.01);

impl<'a> Curves<'a> {
    pub fn of(subject: &'a Subject<'a>, step: Speed) -> Self {
        let rungs = &subject.haul.combination.rungs;
        let top = rungs.iter().map(|rung| rung.cap).fold(WALKING_PACE, Speed::max);
        let mut speeds: Vec<Speed> = rungs.iter().map(|rung| rung.cap).collect();
        let steps = std::iter::successors(Some(step), |&speed| Some(speed + step));
        for speed in std::iter::once(WALKING_PACE).chain(steps.take_while(|&speed| speed < top)) {
            // A step that meets a rung's cap but for rounding is the cap.
            let known = speeds.iter().any(|known| (known.as_kmh() - speed.as_kmh()).abs() < 1e-6);
            if speed >= WALKING_PACE && !known {
                speeds.push(speed);
            }
        }
        speeds.sort_by(Speed::total_cmp);
        let needs = speeds.iter().map(|&speed| needs_at(subject, speed)).collect();
        Self { subject, speeds, needs }
    }

    /// What a group needs at one of the speeds.
    pub fn need(&self, group: usize, speed: usize) -> Result<&Need, Option<&Impossible>> {
        match &self.needs[speed][group] {
            Ok(Some(need)) => Ok(need),
            Ok(None) => Err(None),
            Err(why) => Err(Some(why)),
        }
    }

    /// What a group needs at the highest cap of the ladder.
    pub fn at_the_top(&self, group: usize) -> Result<&Need, Option<&Impossible>> {
        self.need(group, self.speeds.len() - 1)
    }

    /// Index of the slowest rung's cap among the speeds.
    pub fn slowest_rung(&self) -> usize {
        let slowest = self.subject.haul.combination.rungs[0].cap;
        self.speeds.iter().position(|&speed| speed >= slowest).unwrap_or(0)
    }

    /// The highest of the speeds at which a group passes a test, by index.
    pub fn highest(&self, group: usize, passes: impl Fn(&Need) -> bool) -> Option<usize> {
        (0..self.speeds.len()).rev().find(|&speed| self.need(group, speed).is_ok_and(&passes))
    }

    /// The exact speed up to which a group passes, from one at which it does to the next named one.
    pub fn exact(&self, group: usize, from: usize, passes: impl Fn(&Need) -> bool) -> Speed {
        let Some(&next) = self.speeds.get(from + 1) else { return self.speeds[from] };
        let (mut holds, mut fails) = (self.speeds[from], next);
        while fails - holds > CLOSE {
            let middle = holds + (fails - holds) / 2.0;
            match &needs_at(self.subject, middle)[group] {
                Ok(Some(need)) if passes(need) => holds = middle,
                _ => fails = middle,
            }
        }
        holds
    }

    /// Hold limits at a speed: of the rung it belongs to and of the rows it rests on.
    pub fn row_hold(&self, speed: usize) -> Option<Length> {
        self.needs[speed]
            .iter()
            .filter_map(|need| need.as_ref().ok()?.as_ref()?.hold)
            .min_by(Length::total_cmp)
    }

    /// The lowest of the pressures a group needs at any of the speeds, and the highest.
    pub fn band(&self, group: usize) -> Option<(ColdPressure, ColdPressure)> {
        let needs: Vec<&Need> =
            (0..self.speeds.len()).filter_map(|speed| self.need(group, speed).ok()).collect();
        let lowest = needs.iter().map(|need| need.service).min_by(ColdPressure::total_cmp)?;
        let highest =
            needs.iter().map(|need| need.highest.pressure).max_by(ColdPressure::total_cmp)?;
        Some((lowest, highest))
    }
}

/// What every group needs at a speed, in the worst of the states that count.
fn needs_at(subject: &Subject<'_>, speed: Speed) -> Vec<Result<Option<Need>, Impossible>> {
    let combination = &subject.haul.combination;
    let mut found: Vec<Result<Option<Need>, Impossible>> = vec![Ok(None); combination.groups.len()];
    for &which in &subject.states {
        let (state, chains) = subject.state_of(which);
        // A speed belongs to the slowest rung whose cap covers it, and is run where that rung is.
        let rung = combination.rungs.iter().position(|rung| speed <= rung.cap);
        let rung = rung.unwrap_or(combination.rungs.len() - 1);
        let asked = Asked {
            haul: &subject.haul,
            site: &subject.site,
            used: subject.ladder.uses[rung],
            state,
            chains,
            speed,
            ran_at: combination.rungs[rung].cap,
        };
        let lines = (0..combination.channels.len()).map(|channel| {
            let groups: Vec<usize> =
                combination.standing_groups_of(channel, state).map(|(index, _)| index).collect();
            (groups, of_channel(asked, channel))
        });
        let fixed = (0..combination.groups.len())
            .filter(|&index| combination.groups[index].channel.is_none() && !state.is_lifted(index))
            .map(|index| (vec![index], of_fixed(asked, index)));
        for (groups, needs) in lines.chain(fixed) {
            for group in groups {
                let need = match &needs {
                    Ok(needs) => Ok(needs.iter().find(|need| need.group == group).cloned()),
                    Err(why) => Err(why.clone()),
                };
                found[group] = match (std::mem::replace(&mut found[group], Ok(None)), need) {
                    (Ok(Some(one)), Ok(Some(other))) => Ok(Some(one.worse(&other))),
                    (Err(why), _) | (_, Err(why)) => Err(why),
                    (Ok(one), Ok(other)) => Ok(one.or(other)),
                };
            }
        }
    }
    found
}
