//! Each axle group by its own pressure.

use model::tire::duals::MATE_PRESSURE;
use model::tire::roadside::SERVICE_SHARE;
use model::vehicle::WheelValve;
use quantity::{
    ColdPressure, GaugePressure, PressureDifference, Temperature, TemperatureDifference,
};

use super::WALKING_PACE;
use super::answer::{Check, GroupAnswer, Reason, Stance, Verdict};
use super::curve::Curves;
use super::question::{Call, Gauged, Reading, Trailer, Warmth};
use super::slip::slip;
use super::subject::Subject;
use crate::window::need::overload;
use crate::window::{Impossible, Need};

/// Less than float noise of a pressure decides nothing.
const NOISE: PressureDifference = PressureDifference::from_kpa(1e-6);

/// What is known of a group's pressure.
enum Held {
    /// Softest and hardest reading, and whether the tires count as warm.
    Read { softest: GaugePressure, hardest: GaugePressure, warm: bool },
    /// Kept at a cold pressure.
    Kept(ColdPressure),
    /// Nothing.
    Unknown,
}

impl Held {
    /// The cold pressure a need is held against, and the temperature it was taken at.
    fn cold(&self, need: &Need, subject: &Subject<'_>) -> Option<(ColdPressure, Temperature)> {
        match *self {
            Self::Read { softest, warm, .. } => {
                let at = if warm { warm_tire(need, subject) } else { subject.ambient };
                Some((subject.site.cold_of(softest, at), at))
            }
            Self::Kept(cold) => Some((cold, subject.site.reference.temperature())),
            Self::Unknown => None,
        }
    }
}

/// Air in the warmest credible tire, on a day that may be warmer than planned for.
fn warm_tire(need: &Need, subject: &Subject<'_>) -> Temperature {
    let warmer = subject.ambient - subject.site.warmest;
    need.warmest_tire + warmer.max(TemperatureDifference::ZERO)
}

/// Judges every group that stands on the road.
pub(super) fn groups(subject: &Subject<'_>, curves: &Curves<'_>, call: &Call) -> Vec<GroupAnswer> {
    let judge = Judge { subject, curves, call };
    subject.groups(&call.trailer).into_iter().map(|group| judge.group(group)).collect()
}

struct Judge<'a> {
    subject: &'a Subject<'a>,
    curves: &'a Curves<'a>,
    call: &'a Call,
}

impl Judge<'_> {
    fn group(&self, index: usize) -> GroupAnswer {
        let group = &self.subject.haul.combination.groups[index];
        let readings = self.subject.readings(self.call, index);
        let held = self.held(index, &readings);
        let mut found = GroupAnswer {
            group: index,
            channel: group.channel,
            stance: match held {
                Held::Read { .. } => Stance::Gauged,
                Held::Kept(_) => Stance::Kept,
                Held::Unknown => Stance::NotGauged,
            },
            reading: None,
            cold: None,
            taken_at: None,
            speed: None,
            exact: None,
            rung: None,
            next: None,
            verdict: Verdict::Go,
            reasons: Vec::new(),
            checks: Vec::new(),
        };
        match held {
            Held::Unknown => {
                found.verdict = Verdict::GoSlow;
                found.speed = Some(WALKING_PACE);
                found.exact = Some(WALKING_PACE);
                found.reasons.push(Reason::NotGauged { group: index });
                found.checks.push(Check::Gauge { group: index });
            }
            Held::Kept(pressure) => {
                found.reasons.push(Reason::KeptAsSurveyed { group: index, pressure });
                found.checks.push(Check::Gauge { group: index });
                self.by_pressure(&mut found, &held);
            }
            Held::Read { softest, .. } => {
                found.reading = Some(softest);
                self.by_pressure(&mut found, &held);
                Self::mates(&mut found, &readings);
                self.wheel_valve(&mut found, softest);
                self.slip(&mut found, &readings);
            }
        }
        self.load(&mut found);
        if group.wheel_ends_shut > 0 {
            found.checks.push(Check::WheelEndsShut { group: index, count: group.wheel_ends_shut });
        }
        found
    }

    fn held(&self, index: usize, readings: &[&Reading]) -> Held {
        let fixed = self.subject.haul.combination.groups[index].fixed_pressure;
        let softest =
            readings.iter().map(|one| one.gauged.softer()).min_by(GaugePressure::total_cmp);
        let hardest =
            readings.iter().map(|one| one.gauged.harder()).max_by(GaugePressure::total_cmp);
        match (softest, hardest, fixed) {
            (Some(softest), Some(hardest), _) => {
                let cold = readings.iter().all(|one| one.warmth == Warmth::Cold);
                Held::Read { softest, hardest, warm: !cold || self.call.ran_last_hour }
            }
            // What a strange trailer is kept at, nobody knows.
            (_, _, Some(kept)) if !self.is_strange(index) => Held::Kept(kept),
            _ => Held::Unknown,
        }
    }

    /// Whether a group belongs to a trailer other than the planned one.
    fn is_strange(&self, index: usize) -> bool {
        matches!(self.call.trailer, Trailer::Unknown | Trailer::OtherTires(_))
            && self.subject.is_on_trailer(index)
    }

    /// The pressure that counts at a need: with somebody behind it, unless the specialist asks.
    fn wanted(&self, need: &Need) -> Option<ColdPressure> {
        if self.call.with_unapproved { Some(need.lowest) } else { need.approved }
    }

    /// The need that counts: a trailer nobody knows needs road pressure at every speed.
    fn need<'n>(&'n self, index: usize, need: &'n Need) -> Option<&'n Need> {
        let unknown = self.call.trailer == Trailer::Unknown && self.subject.is_on_trailer(index);
        if unknown { self.curves.at_the_top(index).ok() } else { Some(need) }
    }

    fn passes(&self, held: &Held, index: usize, need: &Need) -> bool {
        let Some(counted) = self.need(index, need) else { return false };
        let wanted = self.wanted(counted);
        let cold = held.cold(counted, self.subject);
        wanted.zip(cold).is_some_and(|(wanted, (cold, _))| cold + NOISE >= wanted)
    }

    fn by_pressure(&self, found: &mut GroupAnswer, held: &Held) {
        let (index, curves) = (found.group, self.curves);
        let rungs = &self.subject.haul.combination.rungs;
        let passes = |need: &Need| self.passes(held, index, need);
        let highest = curves.highest(index, passes);
        let judged = highest.unwrap_or(curves.slowest_rung());
        if let Some(need) = curves.need(index, judged).ok().and_then(|need| self.need(index, need))
            && let Some((cold, at)) = held.cold(need, self.subject)
        {
            found.cold = Some(cold);
            found.taken_at = Some(at);
        }
        match highest {
            Some(speed) => {
                found.speed = Some(curves.speeds[speed]);
                found.exact = Some(curves.exact(index, speed, passes));
                found.rung = rungs.iter().rposition(|rung| rung.cap <= curves.speeds[speed]);
                if speed + 1 < curves.speeds.len()
                    && let Ok(next) = curves.need(index, speed + 1)
                {
                    let governed_by = next.governs.kind;
                    found.next = Some(governed_by);
                    found.reasons.push(Reason::SetsTheSpeed { group: index, governed_by });
                }
                if found.rung.is_none() {
                    found.verdict = Verdict::GoSlow;
                    self.raise(found);
                }
            }
            None => self.too_soft(found, held),
        }
        self.service_share(found, held);
        self.too_hard(found, held);
    }

    /// No speed at all: how much is missing, and to what it is raised before it moves.
    fn too_soft(&self, found: &mut GroupAnswer, held: &Held) {
        found.verdict = Verdict::Stop;
        let index = found.group;
        let counted: Vec<&Need> = (0..self.curves.speeds.len())
            .filter_map(|speed| self.need(index, self.curves.need(index, speed).ok()?))
            .collect();
        let least = counted.iter().filter_map(|need| self.wanted(need));
        let needed = least.min_by(ColdPressure::total_cmp);
        let softly = |need: &&Need| {
            held.cold(need, self.subject).is_some_and(|(cold, _)| cold + NOISE >= need.lowest)
        };
        let unapproved = counted.iter().any(softly);
        if let Some(cold) = found.cold {
            found.reasons.push(Reason::TooSoft { group: index, cold, needed, unapproved });
        }
        self.raise(found);
    }

    /// At or under 80 % of what its load needs at walking pace, at the warmest credible tire.
    fn service_share(&self, found: &mut GroupAnswer, held: &Held) {
        let index = found.group;
        let Ok(walking) = self.curves.need(index, 0) else { return };
        let needs = (0..self.curves.speeds.len()).filter_map(|v| self.curves.need(index, v).ok());
        let warmest =
            needs.map(|need| need.warmest_tire).fold(walking.warmest_tire, Temperature::max);
        let warmest = Need { warmest_tire: warmest, ..walking.clone() };
        let Some((cold, _)) = held.cold(&warmest, self.subject) else { return };
        let needed = walking.service;
        if cold > needed.scaled(SERVICE_SHARE) {
            let by_table = walking.recommended.filter(|by| cold <= by.scaled(SERVICE_SHARE));
            if let Some(recommended) = by_table {
                found.checks.push(Check::DeflateBeforeService { group: index, recommended });
            }
            return;
        }
        found.verdict = Verdict::Stop;
        (found.speed, found.exact, found.rung, found.next) = (None, None, None, None);
        found.checks.retain(|check| !matches!(check, Check::Raise { .. }));
        found.reasons.retain(|reason| {
            !matches!(reason, Reason::TooSoft { .. } | Reason::SetsTheSpeed { .. })
        });
        found.reasons.push(Reason::UnderServiceShare { group: index, cold, needed });
        found.checks.push(Check::LeaveToTrainedPeople { group: index });
    }

    /// Above the highest: surely so, even if the tire is as warm as it can be.
    fn too_hard(&self, found: &mut GroupAnswer, held: &Held) {
        let index = found.group;
        let slowest = self.curves.need(index, self.curves.slowest_rung());
        let Some(need) = self.curves.at_the_top(index).or(slowest).ok() else { return };
        let cold = match *held {
            Held::Read { hardest, warm: true, .. } => {
                self.subject.site.cold_of(hardest, warm_tire(need, self.subject))
            }
            // A tire filled cold holds what was filled in, whatever the day.
            Held::Read { hardest, .. } => ColdPressure::read_at_reference(hardest),
            Held::Kept(cold) => cold,
            Held::Unknown => return,
        };
        let highest = need.highest.pressure;
        if cold > highest + NOISE {
            found.verdict = Verdict::Stop;
            let by = need.highest.kind;
            found.reasons.push(Reason::AboveHighest { group: index, cold, highest, by });
            found.checks.push(Check::Lower { group: index, to: highest });
        }
    }

    fn mates(found: &mut GroupAnswer, readings: &[&Reading]) {
        let differ = readings.iter().filter_map(|one| match one.gauged {
            Gauged::Mates(a, b) => Some((a - b).abs()),
            Gauged::One(_) => None,
        });
        let Some(difference) = differ.max_by(PressureDifference::total_cmp) else { return };
        if difference > MATE_PRESSURE + NOISE {
            found.verdict = found.verdict.max(Verdict::GoSlow);
            found.reasons.push(Reason::MatesDiffer { group: found.group, difference });
            found.checks.push(Check::FindWhySofter { group: found.group });
        }
    }

    fn wheel_valve(&self, found: &mut GroupAnswer, reading: GaugePressure) {
        let group = &self.subject.haul.combination.groups[found.group];
        let Some(WheelValve::SelfClosing { closes_below }) = group.wheel_valve else { return };
        if reading <= closes_below {
            found.verdict = found.verdict.max(Verdict::GoSlow);
            found.checks.retain(|check| !matches!(check, Check::Raise { .. }));
            found.reasons.push(Reason::CannotBeReached {
                group: found.group,
                reading,
                closes_below,
            });
            found.checks.push(Check::LeaveToTrainedPeople { group: found.group });
            return;
        }
        let site = &self.subject.site;
        let at_the_coldest = found.cold.map(|cold| site.read_at(cold, site.coldest));
        if at_the_coldest.is_some_and(|reading| reading <= closes_below) {
            found.checks.push(Check::RaiseBeforeParking { group: found.group });
        }
    }

    fn slip(&self, found: &mut GroupAnswer, readings: &[&Reading]) {
        let Some(band) = self.curves.band(found.group) else { return };
        for reading in readings {
            let Some(typed) = reading.typed_in else { continue };
            let seen = [reading.gauged.softer(), reading.gauged.harder()]
                .into_iter()
                .find_map(|gauge| Some((gauge, slip(gauge, typed, band)?)));
            if let Some((reading, slip)) = seen {
                found.reasons.push(Reason::UnitSlip { group: found.group, reading, slip });
                found.checks.push(Check::ReadUnitAgain { group: found.group });
            }
        }
    }

    /// Overload, and rungs that no pressure makes possible.
    fn load(&self, found: &mut GroupAnswer) {
        let index = found.group;
        let group = &self.subject.haul.combination.groups[index];
        let on_axles = self.subject.states.iter().find_map(|&(state, _)| {
            overload(index, group, &self.subject.haul.combination.load_states[state])
        });
        let slowest = self.curves.need(index, self.curves.slowest_rung()).err().flatten();
        let on_tires = match slowest {
            Some(&Impossible::Overloaded { load, highest, .. }) => Some((load, highest)),
            _ => None,
        };
        let reason = match (on_axles.or(on_tires), slowest) {
            (Some((load, highest)), _) => Reason::Overloaded { group: index, load, highest },
            (None, Some(why)) => Reason::Impossible { group: index, why: why.clone() },
            (None, None) => return,
        };
        if matches!(reason, Reason::Overloaded { .. }) {
            found.checks.push(Check::TakeLoadOff { group: index });
        }
        found.verdict = Verdict::Stop;
        (found.speed, found.exact, found.rung, found.next) = (None, None, None, None);
        found.reasons.push(reason);
    }

    /// To the slowest rung that somebody stands behind and that asks for more than there is.
    fn raise(&self, found: &mut GroupAnswer) {
        let Some(channel) = found.channel else { return };
        let settable = self.subject.slowest_settable(channel, self.call.with_unapproved);
        found.checks.push(match settable {
            Some((rung, to)) => Check::Raise { channel, rung, to },
            None => Check::AskMaker { channel },
        });
    }
}
