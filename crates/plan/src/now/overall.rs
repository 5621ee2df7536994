//! The truck as a whole: the worst of its groups, the trailer, how far.

use quantity::{Length, Speed, Time};

use super::answer::{Answer, Check, GroupAnswer, HowFar, Reason, SetFor, Stance, Verdict};
use super::curve::Curves;
use super::question::{Call, Load, Trailer, Warmth};
use super::subject::Subject;
use crate::window::CellId;

pub(super) fn overall(
    subject: &Subject<'_>,
    curves: &Curves<'_>,
    call: &Call,
    mut groups: Vec<GroupAnswer>,
) -> Answer {
    let mut reasons = Vec::new();
    let mut checks = Vec::new();
    let mut verdict = groups.iter().map(|group| group.verdict).max().unwrap_or(Verdict::Stop);
    readings(subject, call, &mut reasons, &mut checks);
    verdict = verdict.max(trailer(subject, call, &mut reasons, &mut checks));
    let slowest = |speed: fn(&GroupAnswer) -> Option<Speed>| {
        let speeds: Option<Vec<Speed>> = groups.iter().map(speed).collect();
        speeds?.into_iter().min_by(Speed::total_cmp).filter(|_| verdict != Verdict::Stop)
    };
    let (speed, exact) = (slowest(|group| group.speed), slowest(|group| group.exact));
    if speed.is_none() {
        verdict = Verdict::Stop;
    }
    let rungs: Option<Vec<usize>> = groups.iter().map(|group| group.rung).collect();
    let rung = rungs.and_then(|rungs| rungs.into_iter().min()).filter(|_| speed.is_some());
    let how_far = how_far(subject, curves, &groups, speed, rung);
    if let (HowFar::Hold { .. }, Some(rung)) = (how_far, rung) {
        reasons.push(Reason::HeldShortly { rung });
    }
    // Only the slowest groups set the speed.
    for group in &mut groups {
        let sets = group.exact == exact && exact.is_some();
        group.reasons.retain(|reason| sets || !matches!(reason, Reason::SetsTheSpeed { .. }));
    }
    let set_for = match call.trailer {
        Trailer::OtherLoadStateSelected(selected) => set_for(subject, selected),
        _ => Vec::new(),
    };
    Answer {
        verdict,
        speed,
        exact,
        how_far,
        rung,
        load_state: subject.heaviest(),
        groups,
        reasons,
        checks,
        set_for,
    }
}

/// What was not known, and what was done about it.
fn readings(
    subject: &Subject<'_>,
    call: &Call,
    reasons: &mut Vec<Reason>,
    checks: &mut Vec<Check>,
) {
    if call.load == Load::Unknown {
        reasons.push(Reason::LoadUnknown { heaviest: subject.heaviest() });
        checks.push(Check::FindOutLoad);
    }
    if call.readings.iter().any(|reading| reading.warmth == Warmth::NotKnown) {
        reasons.push(Reason::WarmthUnknown);
    }
    let said_cold = call.readings.iter().any(|reading| reading.warmth == Warmth::Cold);
    if call.ran_last_hour && said_cold {
        reasons.push(Reason::RanLastHour);
    }
    if call.with_unapproved {
        reasons.push(Reason::UnapprovedCounted);
    }
}

/// What the trailer makes of the verdict.
fn trailer(
    subject: &Subject<'_>,
    call: &Call,
    reasons: &mut Vec<Reason>,
    checks: &mut Vec<Check>,
) -> Verdict {
    match call.trailer {
        Trailer::AsPlanned | Trailer::None => Verdict::Go,
        Trailer::Unknown => {
            reasons.push(Reason::TrailerUnknown);
            checks.push(Check::ReadSidewalls);
            Verdict::Go
        }
        Trailer::OtherTires(_) => {
            reasons.push(Reason::TrailerOtherTires);
            checks.push(Check::ReadSidewalls);
            Verdict::Go
        }
        Trailer::LeftLow => {
            reasons.push(Reason::TrailerLeftLow);
            checks.extend(raise_trailer(subject, call));
            checks.push(Check::AskAgain);
            Verdict::Stop
        }
        Trailer::LeftShut => {
            reasons.push(Reason::TrailerLeftShut);
            checks.push(Check::OpenWheelEnds);
            checks.extend(raise_trailer(subject, call));
            checks.push(Check::AskAgain);
            Verdict::Stop
        }
        Trailer::OtherLoadStateSelected(selected) => {
            reasons.push(Reason::OtherLoadStateSelected { selected });
            checks.push(Check::SelectLoadState { state: subject.heaviest() });
            Verdict::GoSlow
        }
    }
}

/// Every channel of the trailers raised to plan before they move.
fn raise_trailer(subject: &Subject<'_>, call: &Call) -> Vec<Check> {
    let combination = &subject.haul.combination;
    (0..combination.channels.len())
        .filter(|&channel| {
            combination.groups_of(channel).any(|(group, _)| subject.is_on_trailer(group))
        })
        .filter_map(|channel| {
            let (rung, to) = subject.slowest_settable(channel, call.with_unapproved)?;
            Some(Check::Raise { channel, rung, to })
        })
        .collect()
}

fn how_far(
    subject: &Subject<'_>,
    curves: &Curves<'_>,
    groups: &[GroupAnswer],
    speed: Option<Speed>,
    rung: Option<usize>,
) -> HowFar {
    let Some(speed) = speed else { return HowFar::Nowhere };
    if groups.iter().any(|group| group.stance == Stance::NotGauged) {
        return HowFar::OffTheRoad;
    }
    // Softer than the slowest rung it is held no longer than that.
    let hold = subject.haul.combination.rungs[rung.unwrap_or(0)].hold;
    let index = curves.speeds.iter().rposition(|&known| known <= speed).unwrap_or(0);
    let distances = [hold.map(|hold| hold.distance), curves.row_hold(index)];
    let distance = distances.into_iter().flatten().min_by(Length::total_cmp);
    let time: Option<Time> = hold.map(|hold| hold.time);
    if distance.is_none() && time.is_none() {
        return HowFar::NextStop;
    }
    HowFar::Hold { distance, time }
}

/// What every channel was set to, against what it needs.
fn set_for(subject: &Subject<'_>, selected: usize) -> Vec<SetFor> {
    let combination = &subject.haul.combination;
    let (actual, chain_state) = subject
        .states
        .iter()
        .copied()
        .find(|(state, _)| *state == subject.heaviest())
        .unwrap_or((subject.heaviest(), 0));
    let set = |channel, load_state, chain_state, rung| {
        let cell = subject.ladder.cell(CellId { channel, load_state, chain_state, rung })?;
        Some(cell.set.as_ref()?.as_controller_reads)
    };
    (0..combination.rungs.len())
        .flat_map(|rung| (0..combination.channels.len()).map(move |channel| (rung, channel)))
        .map(|(rung, channel)| SetFor {
            channel,
            rung,
            was_set: set(channel, selected, 0, rung),
            needed: set(channel, actual, chain_state, rung),
        })
        .collect()
}
