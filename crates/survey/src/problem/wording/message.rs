//! What is wrong, in one sentence.

use model::tire::Construction;

use super::number::{cold, gauge, mass, short, sign, size, speed, way};
use super::{name_of, type_word};
use crate::problem::{Condition, Ordered, Problem, ProblemKind, SizeFault, SpacingBasis};

/// What is wrong.
#[expect(clippy::too_many_lines, reason = "one sentence for each kind")]
pub(in crate::problem) fn message(problem: &Problem) -> String {
    let key = problem.key.as_deref().unwrap_or("this entry");
    let value = problem.value.as_deref().unwrap_or("this");
    match &problem.kind {
        ProblemKind::EmptySurvey => "there is no survey here: no .toml file in the folder".into(),
        ProblemKind::NoSurveyFile => "survey.toml is missing".into(),
        ProblemKind::NoHauls => "there is no haul to plan: hauls/ holds no .toml file".into(),
        ProblemKind::UnreadFile { .. } => "nothing reads this file".into(),
        ProblemKind::NotText { offset, .. } => {
            format!("this is not UTF-8 text: byte {offset} belongs to no character")
        }
        ProblemKind::TooLarge { bytes, limit } => {
            format!("{} MB is too large; at most {} MB are read", bytes >> 20, limit >> 20)
        }
        ProblemKind::LinkLeaves => "this link leads out of the survey and was not followed".into(),
        ProblemKind::PathLeaves => format!("{key} = {value} leads out of the survey"),
        ProblemKind::Syntax { message } => format!("not valid TOML: {}", one_line(message)),
        ProblemKind::NotFinite => format!("{key} = {value} is not a number that can be used"),
        ProblemKind::UnknownKey { key, .. } => format!("unknown key {key}"),
        ProblemKind::MissingKey { key, .. } => format!("{key} is missing"),
        ProblemKind::Needed { key, because } => {
            format!("{key} is missing: {}", needed(*because))
        }
        ProblemKind::OutOfPlace { key, because } => {
            format!("{key} has no place here: {}", needed(*because))
        }
        ProblemKind::WrongType { wanted, found } => {
            format!("{key} = {value} is {}, not {}", a(type_word(found)), a(type_word(wanted)))
        }
        ProblemKind::OutOfRange { low, high, unit, .. } => {
            let range = match (low, high) {
                (Some(low), Some(high)) => format!("{} to {}", short(*low), short(*high)),
                (Some(low), None) => format!("{} or more", short(*low)),
                (None, Some(high)) => format!("{} or less", short(*high)),
                (None, None) => "its range".into(),
            };
            let unit = if unit.is_empty() { String::new() } else { format!(" {}", sign(unit)) };
            format!("{key} = {value} is outside {range}{unit}")
        }
        ProblemKind::NotOneOf { .. } => format!("{key} = {value} is not one of the choices"),
        ProblemKind::TooFew { least } => {
            format!("{key} needs at least {least} {}", entries(*least))
        }
        ProblemKind::TooMany { most } => format!("{key} has more than {most} {}", entries(*most)),
        ProblemKind::TextTooShort { least: 1 } => format!("{key} is empty"),
        ProblemKind::TextTooShort { least } => {
            format!("{key} = {value} is shorter than {least} characters")
        }
        ProblemKind::TextTooLong { most } => format!("{key} is longer than {most} characters"),
        ProblemKind::TwoSpellings { first, second } => {
            format!("{second} says again what {first} says")
        }
        ProblemKind::NotReadable { message } | ProblemKind::Unreadable { message } => {
            format!("cannot be read: {message}")
        }
        ProblemKind::UnknownName { reference, .. } => {
            format!("{key} = {value}: there is no such {}", name_of(*reference))
        }
        ProblemKind::DuplicateName { name } => format!("the name '{name}' is used twice"),
        ProblemKind::NotParsed { message, .. } => format!("{key} = {value}: {message}"),
        ProblemKind::Trucks { count: 0 } => "the combination has no truck".into(),
        ProblemKind::Trucks { count } => format!("the combination has {count} trucks"),
        ProblemKind::BrakeSupplyLine => {
            "trailer tires fed from the brake supply line are not modeled".into()
        }
        ProblemKind::ChannelNotOnTruck { channel } => {
            format!("the truck has no air channel '{channel}' for this trailer to add to")
        }
        ProblemKind::ChannelDiffers { channel, key } => {
            format!("two vehicles give a different {key} for the air channel '{channel}'")
        }
        ProblemKind::ChannelFeedsNothing { channel } => {
            format!("the air channel '{channel}' feeds no axle group of this combination")
        }
        ProblemKind::LoadMissing { group } => format!("no load is given for '{group}'"),
        ProblemKind::ZeroLoad { group, .. } => format!("'{group}' carries no load"),
        ProblemKind::GrossMass { sum, declared } => {
            format!("the groups add up to {}, the gross mass says {}", mass(*sum), mass(*declared))
        }
        ProblemKind::OverTireRating { group, load_state, load, rating, dual } => format!(
            "'{group}', {load_state}: the worst tire carries {}, its {} rating is {}",
            mass(*load),
            if *dual { "dual" } else { "single" },
            mass(*rating)
        ),
        ProblemKind::OverRimRating { group, load_state, load, rating } => format!(
            "'{group}', {load_state}: the worst wheel carries {}, its rim is stamped {}",
            mass(*load),
            mass(*rating)
        ),
        ProblemKind::OverAxleRating { group, load_state, load, rating } => format!(
            "'{group}', {load_state}: the group carries {}, its axles may carry {}",
            mass(*load),
            mass(*rating)
        ),
        ProblemKind::MassInPounds { given, expected } => {
            format!(
                "{key} = {value} means {}, where about {} is usual",
                mass(*given),
                mass(*expected)
            )
        }
        ProblemKind::RatingAgainstIndex { given, expected } => format!(
            "{key} = {value} means {}, the load index says {}",
            mass(*given),
            mass(*expected)
        ),
        ProblemKind::NoDualRating { tire } => {
            format!("'{tire}' has no dual rating, so it may not be fitted as duals")
        }
        ProblemKind::DualsTooClose { spacing, least, basis } => format!(
            "duals {} apart are too close: {} needs {}",
            size(*spacing),
            match basis {
                SpacingBasis::SizeTable => "this size",
                SpacingBasis::SectionWidth => "the section width with the gap wanted",
            },
            size(*least)
        ),
        ProblemKind::DualsMismatched { difference, most } => format!(
            "the duals differ by {} in diameter; at most {} is allowed",
            size(*difference),
            size(*most)
        ),
        ProblemKind::Size(fault) => size_fault(*fault),
        ProblemKind::OverMaximum { pressure, maximum, limit } => {
            format!("{} is above {limit}, {}", cold(*pressure), cold(*maximum))
        }
        ProblemKind::UnderMinimum { pressure, minimum, limit } => {
            format!("{} is under {limit}, {}", cold(*pressure), cold(*minimum))
        }
        ProblemKind::TubeTypeOnChannel { tire } => {
            format!("'{tire}' is a tube-type tire on an air channel")
        }
        ProblemKind::BiasOnChannel { tire } => {
            format!("'{tire}' is a bias-ply tire on an air channel")
        }
        ProblemKind::AboveSpeedSymbol { speed: given, tire, symbol, rated, .. } => format!(
            "{} is above the speed symbol {symbol} ({}) of '{tire}'",
            speed(*given),
            speed(*rated)
        ),
        ProblemKind::SpeedInMilesAnHour { given, .. } => {
            format!("{key} = {value} means {}, an unusual number", speed(*given))
        }
        ProblemKind::GovernorTooLow { cut_out, wanted, target, rated } => format!(
            "the governor cuts out at {}, but '{target}' {} {}",
            gauge(*cut_out),
            if *rated { "is rated at" } else { "is set to" },
            cold(*wanted)
        ),
        ProblemKind::WrongOrder { which, low, high } => {
            format!("{}: {} against {}", order(*which), gauge(*low), gauge(*high))
        }
        ProblemKind::Temperatures { coldest, warmest } => {
            format!("coldest {coldest} is not below warmest {warmest}")
        }
        ProblemKind::NominalOutside => {
            "the ordinary day's temperature is not between coldest and warmest".into()
        }
        ProblemKind::LegBackwards => "the leg ends before it begins".into(),
        ProblemKind::RouteStart { at } => format!("the first leg begins at {}, not at 0", way(*at)),
        ProblemKind::LegGap { from, to } => {
            format!("no leg covers {} to {}", way(*from), way(*to))
        }
        ProblemKind::LegOverlap { from, to } => {
            format!("two legs cover {} to {}", way(*from), way(*to))
        }
        ProblemKind::OffRoute { at, length } => {
            format!("{} lies beyond the route, which is {} long", way(*at), way(*length))
        }
        ProblemKind::NoElevation => "the route has no elevation".into(),
        ProblemKind::TwoElevations => {
            "the route takes its elevation from more than one source, or only in part".into()
        }
        ProblemKind::NotRising => "chainage must rise from point to point".into(),
        ProblemKind::TrackLength { track, legs } => {
            format!("the track is {} long, the legs {}", way(*track), way(*legs))
        }
        ProblemKind::NoRungForLeg { leg } => format!("no rung is meant for the leg '{leg}'"),
        ProblemKind::SurfaceTwice { other } => {
            format!("{value} is already a surface of the rung '{other}'")
        }
        ProblemKind::RungsOverStored { rungs, stored } => {
            format!("{rungs} rungs, but the controller stores {stored}")
        }
        ProblemKind::CapsNotRising { before, cap } => format!(
            "speed caps must rise from rung to rung: {} after {}",
            speed(*cap),
            speed(*before)
        ),
        ProblemKind::LadenLighter { empty, laden } => {
            format!("laden ({}) is not heavier than empty ({})", mass(*laden), mass(*empty))
        }
        ProblemKind::WheelEndsShut { shut, all } => {
            format!("{shut} wheel ends shut, but the group has {all}")
        }
        ProblemKind::CyclesInDay { hours } => {
            format!(
                "the cycles of a day stand {} hours at loading and unloading alone",
                short(*hours)
            )
        }
        ProblemKind::ElevationShort { from, to, length } => format!(
            "the elevation points reach from {} to {}, the route from 0 to {}",
            way(*from),
            way(*to),
            way(*length)
        ),
        ProblemKind::PressureInPsi { given, rated } => {
            format!("{key} = {value} means {}, for a tire rated at {}", cold(*given), cold(*rated))
        }
        ProblemKind::ImportFailed { message } | ProblemKind::ImportFinding { message, .. } => {
            message.clone()
        }
        ProblemKind::MappingMissing { .. } => {
            "maker_rows_mapping is missing: nothing says how the table is to be read".into()
        }
        ProblemKind::Date(fault) => super::date::message(fault, key, value),
        ProblemKind::Approval(fault) => super::approval::message(fault),
        ProblemKind::Permit(fault) => super::permit::message(fault),
        ProblemKind::Unit(fault) => super::unit::message(fault, key, value),
        ProblemKind::State(fault) => super::state::message(fault),
        ProblemKind::Ladder(fault) => super::ladder::message(fault),
        ProblemKind::Ground(fault) => super::ground::message(fault),
    }
}

fn needed(because: Condition) -> &'static str {
    match because {
        Condition::OnChannel => "the group is on an air channel",
        Condition::WithoutChannel => "the group is on no air channel",
        Condition::SelfClosing => "the wheel valve is self-closing",
        Condition::NotSelfClosing => "the wheel valve is not self-closing",
        Condition::Dual => "the group has duals",
        Condition::Single => "the group has singles",
        Condition::Truck => "the vehicle is a truck",
        Condition::Trailer => "the vehicle is a trailer",
        Condition::TrailerWithChannels => "the trailer has air channels",
        Condition::Boosted => "the compressor breathes boost",
        Condition::NotBoosted => "the compressor breathes ambient air",
        Condition::Tube => "a tube has a bore and a length",
        Condition::Part => "a part has a conductance and a critical ratio",
        Condition::NoDefaultShare => "neither the load state nor the group gives it",
        Condition::ChannelNeedsIt => "no vehicle of the combination gives it for this channel",
        Condition::RowsGiven => "there are maker's rows",
        Condition::RowsInline => "the maker's rows stand in this file already",
        Condition::NoRowsFile => "there is no maker_rows_file",
        Condition::NoTrack => "there is no track",
        Condition::LoadsKnown => "the loads of this state are known",
        Condition::LoadsUnknown => "the loads of this state are not known",
        Condition::WithoutRungs => "the combination has no [[rungs]]",
        Condition::WithRungs => "the combination has [[rungs]]",
    }
}

fn a(word: &str) -> String {
    match word {
        "text" | "true or false" | "nothing" => word.to_owned(),
        _ => format!("a {word}"),
    }
}

fn size_fault(fault: SizeFault) -> String {
    match fault {
        SizeFault::Diameter { given, expected } => {
            format!(
                "an overall diameter of {} does not fit the designation, about {}",
                size(given),
                size(expected)
            )
        }
        SizeFault::RimDiameter { given, expected } => {
            format!(
                "a rim diameter of {} does not fit the designation, {}",
                size(given),
                size(expected)
            )
        }
        SizeFault::SectionWidth { given, expected } => {
            format!(
                "a section width of {} does not fit the designation, about {}",
                size(given),
                size(expected)
            )
        }
        SizeFault::LoadedRadius { given, free } => {
            format!(
                "a loaded radius of {} is not under half the diameter, {}",
                size(given),
                size(free)
            )
        }
        SizeFault::LoadedRadiusUnderRim { given, rim } => {
            format!("a loaded radius of {} is under that of the rim, {}", size(given), size(rim))
        }
        SizeFault::RimOverDiameter { rim, diameter } => {
            format!("a rim of {} does not go into a tire of {}", size(rim), size(diameter))
        }
        SizeFault::AirVolume { given, expected } => format!(
            "an air volume of {:.0} l does not fit the dimensions, about {:.0} l",
            given.as_l(),
            expected.as_l()
        ),
        SizeFault::Construction { molded } => format!(
            "the designation is that of a {} tire",
            match molded {
                Construction::Radial => "radial",
                Construction::Bias => "bias-ply",
            }
        ),
    }
}

fn order(which: Ordered) -> &'static str {
    match which {
        Ordered::GovernorCutIn => "governor cut-in is not below cut-out",
        Ordered::ProtectionShuts => {
            "the protection valve does not shut below the pressure at which it opens"
        }
        Ordered::BrakeThreshold => {
            "the brake threshold is above the pressure at which tire air is taken again"
        }
        Ordered::ProtectionUnderBrakeThreshold => {
            "the brake threshold is under the pressure at which the protection valve shuts"
        }
        Ordered::ProtectionOpensUnderCutIn => {
            "the protection valve opens only from above governor cut-in"
        }
        Ordered::ResumeUnderCutIn => {
            "tire air would be taken again only from above governor cut-in"
        }
    }
}

fn entries(count: u64) -> &'static str {
    if count == 1 { "entry" } else { "entries" }
}

fn one_line(text: &str) -> String {
    text.lines().map(str::trim).collect::<Vec<_>>().join("; ")
}
