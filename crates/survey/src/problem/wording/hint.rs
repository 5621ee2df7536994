//! What a careful colleague would say to do about a problem.

use super::number::{short, sign};
use super::{name_of, type_word};
use crate::problem::{Ordered, Problem, ProblemKind, Reference, SizeFault, UnitSlip};

/// What to do about it.
#[expect(clippy::too_many_lines, reason = "one sentence for each kind")]
pub(in crate::problem) fn hint(problem: &Problem) -> Option<String> {
    let key = problem.key.as_deref().unwrap_or("this key");
    let hint = match &problem.kind {
        ProblemKind::EmptySurvey => {
            "give the folder that holds survey.toml, or start one with 'airtide new DIR'".into()
        }
        ProblemKind::NoSurveyFile => {
            "write one, or take the one that 'airtide new DIR' writes as a pattern".into()
        }
        ProblemKind::NoHauls => "write a file in hauls/ that puts a combination on a route".into(),
        ProblemKind::UnreadFile { nearest } => match nearest {
            Some(nearest) => format!("did you mean {nearest}?"),
            None => "survey files stand in tires/, vehicles/, combinations/, routes/, hauls/, approvals/ and permits/".into(),
        },
        ProblemKind::NotText { .. } => "save the file as UTF-8 in a text editor".into(),
        ProblemKind::TooLarge { .. } => "is it a survey file? move logs and pictures elsewhere".into(),
        ProblemKind::LinkLeaves => "copy the file into the survey".into(),
        ProblemKind::PathLeaves => {
            "write a path inside the survey, from its top, such as 'routes/track.gpx'".into()
        }
        ProblemKind::NotReadable { .. } => "check the permissions of the file".into(),
        ProblemKind::Syntax { .. } => {
            "text stands in quotes, tables in [brackets], and every key once".into()
        }
        ProblemKind::NotFinite => "write the measured number; leave out an optional key that is not known".into(),
        ProblemKind::UnknownKey { nearest, known, .. } => match nearest {
            Some(nearest) => format!("did you mean {nearest}?"),
            None => format!("known keys here: {}", known.join(", ")),
        },
        ProblemKind::MissingKey { key, description, other_units } => {
            let mut hint = if description.is_empty() {
                format!("add {key}")
            } else {
                format!("add it: {}", uncapitalized(first_sentence(description)))
            };
            if !other_units.is_empty() {
                hint += " (or ";
                hint += &other_units.join(", ");
                hint += ")";
            }
            hint
        }
        ProblemKind::Needed { key, .. } => needed_hint(key),
        ProblemKind::OutOfPlace { key, .. } => format!("take {key} out, or change what rules it out"),
        ProblemKind::WrongType { wanted, .. } => return type_hint(key, type_word(wanted)),
        ProblemKind::OutOfRange { slip, .. } => slip_hint(slip.as_ref()),
        ProblemKind::NotOneOf { nearest, options } => match nearest {
            Some(nearest) => format!("did you mean \"{nearest}\"? choices: {}", options.join(", ")),
            None => format!("choices: {}", options.join(", ")),
        },
        ProblemKind::TwoSpellings { first, second } => format!("keep {first} or {second}, not both"),
        ProblemKind::UnknownName { reference, nearest, known } => {
            return Some(name_hint(*reference, nearest.as_deref(), known));
        }
        ProblemKind::DuplicateName { .. } => "give each its own name".into(),
        ProblemKind::NotParsed { example, .. } => format!("write it as molded, such as \"{example}\""),
        ProblemKind::Trucks { .. } => "list exactly one vehicle with kind = \"truck\"".into(),
        ProblemKind::BrakeSupplyLine => "brakes would compete with tires for the same air; give the trailer a tire line of its own, or take its groups off the channel and give them fixed_pressure_kpa".into(),
        ProblemKind::ChannelNotOnTruck { .. } => {
            "add the channel to the truck's file, with its lines up to the coupling".into()
        }
        ProblemKind::ChannelDiffers { .. } => "give the slower one in both, or use two channels".into(),
        ProblemKind::ChannelFeedsNothing { .. } => {
            "name it as channel of an axle group, or take it out".into()
        }
        ProblemKind::LoadMissing { group } => format!(
            "weigh it and add \"{group}\" = {{ mass_kg = …, weighed = \"scale\", uncertainty_pct = … }}"
        ),
        ProblemKind::ZeroLoad { liftable: true, .. } => "right if the axle is lifted in this state".into(),
        ProblemKind::ZeroLoad { .. } => {
            "weigh the group; only a liftable group may carry nothing".into()
        }
        ProblemKind::GrossMass { .. } => {
            "they may differ by 1 %: check for a group weighed twice or left out, or pounds typed as kilograms".into()
        }
        ProblemKind::OverTireRating { .. } => {
            "check the weights and shares; otherwise a tire with a higher load index, or less load".into()
        }
        ProblemKind::OverRimRating { .. } => "check the stamp on the rim and the weights".into(),
        ProblemKind::OverAxleRating { .. } => {
            "check the plate of the axles and the weights; otherwise load less".into()
        }
        ProblemKind::MassInPounds { .. } => match key.strip_suffix("_kg") {
            Some(stem) => format!(
                "did you mean lb? write {stem}_lb = {}",
                problem.value.as_deref().unwrap_or("…")
            ),
            None => "check the unit".into(),
        },
        ProblemKind::RatingAgainstIndex { .. } => {
            "the sidewall shows both: check the load index and the load, or leave the load out".into()
        }
        ProblemKind::NoDualRating { .. } => {
            "fit singles, or give the service description with both indices, such as \"146/143 L\"".into()
        }
        ProblemKind::DualsTooClose { .. } => {
            "measure center to center; if it is right, wider spacers, another rim offset or a narrower tire are needed".into()
        }
        ProblemKind::DualsMismatched { .. } => {
            "pair tires of the same wear, the larger one outside; the larger carries too much".into()
        }
        ProblemKind::Size(SizeFault::Construction { .. }) => {
            "R before the rim diameter is a radial tire, a hyphen or D a bias-ply one".into()
        }
        ProblemKind::Size(_) => "check the number against the maker's data sheet, and mm against inches".into(),
        ProblemKind::OverMaximum { .. } | ProblemKind::UnderMinimum { .. } => {
            "check both numbers; the limit is not to be passed".into()
        }
        ProblemKind::TubeTypeOnChannel { .. } => {
            "a tube creeps and tears at its valve when pressure varies: fit tubeless tires, or take the group off the channel".into()
        }
        ProblemKind::BiasOnChannel { .. } => {
            "bias casings heat up at low pressure: ask the tire maker before lowering them".into()
        }
        ProblemKind::AboveSpeedSymbol { limit_of_road: true, .. } => {
            "right if a rung's speed cap keeps the truck under it there".into()
        }
        ProblemKind::AboveSpeedSymbol { .. } => {
            "lower the speed cap, or fit a tire with a faster symbol".into()
        }
        ProblemKind::SpeedInMilesAnHour { key, .. } => format!(
            "if it is miles an hour, write {key} = {}",
            problem.value.as_deref().unwrap_or("…")
        ),
        ProblemKind::GovernorTooLow { rated: true, .. } => {
            "check the governor and its unit: tires cannot be raised to their rating with it".into()
        }
        ProblemKind::GovernorTooLow { .. } => {
            "tires cannot be raised above reservoir pressure: check the governor, or set less".into()
        }
        ProblemKind::WrongOrder { which, .. } => order_hint(*which).into(),
        ProblemKind::Temperatures { .. } => "exchange them, or check their signs".into(),
        ProblemKind::NominalOutside => "give the temperature of an ordinary working day".into(),
        ProblemKind::LegBackwards => "exchange from_km and to_km".into(),
        ProblemKind::RouteStart { .. } => "chainage counts from the start of the route".into(),
        ProblemKind::LegGap { .. } | ProblemKind::LegOverlap { .. } => {
            "let each leg begin where the one before ends".into()
        }
        ProblemKind::OffRoute { .. } => "check the chainage, and km against m".into(),
        ProblemKind::NoElevation => {
            "give grade_pct on every leg (0 where it is level), or [[elevation]] points, or a track".into()
        }
        ProblemKind::TwoElevations => {
            "keep one: grade_pct on every leg, or [[elevation]] points, or a track".into()
        }
        ProblemKind::NotRising => "sort the points and take out doubles".into(),
        ProblemKind::TrackLength { .. } => {
            "check that the track covers the legs from start to end, in the same direction".into()
        }
        ProblemKind::NoRungForLeg { .. } => {
            "name a rung on the leg, or list its surface with one of the rungs".into()
        }
        ProblemKind::SurfaceTwice { .. } => "leave each surface to one rung".into(),
        ProblemKind::RungsOverStored { .. } => "join rungs until the controller can hold them".into(),
        ProblemKind::CapsNotRising { .. } => "list the rungs from the slowest to the fastest".into(),
        ProblemKind::LadenLighter { .. } => "check which load state is which".into(),
        ProblemKind::WheelEndsShut { .. } => "an axle has two wheel ends".into(),
        ProblemKind::CyclesInDay { .. } => "check cycles_a_day and the standing times".into(),
        ProblemKind::ElevationShort { .. } => "add a point at each end of the route".into(),
        ProblemKind::PressureInPsi { .. } => match key.strip_suffix("_kpa") {
            Some(stem) => format!(
                "did you mean psi? write {stem}_psi = {}",
                problem.value.as_deref().unwrap_or("…")
            ),
            None => "check the unit".into(),
        },
        ProblemKind::MappingMissing { proposal: Some(proposal) } => {
            format!("compare with the document and add: maker_rows_mapping = {{ {proposal} }}")
        }
        ProblemKind::MappingMissing { proposal: None } => {
            "say layout, header_row, the columns and their units in [maker_rows_mapping]".into()
        }
        ProblemKind::Date(fault) => super::date::hint(fault).into(),
        ProblemKind::Approval(fault) => super::approval::hint(fault).into(),
        ProblemKind::Permit(fault) => super::permit::hint(fault).into(),
        ProblemKind::Unit(fault) => return super::unit::hint(fault),
        ProblemKind::State(fault) => super::state::hint(fault).into(),
        ProblemKind::Ladder(fault) => super::ladder::hint(fault).into(),
        ProblemKind::Ground(fault) => super::ground::hint(fault).into(),
        ProblemKind::TooFew { .. }
        | ProblemKind::TooMany { .. }
        | ProblemKind::TextTooShort { .. }
        | ProblemKind::TextTooLong { .. }
        | ProblemKind::Unreadable { .. }
        | ProblemKind::ImportFailed { .. }
        | ProblemKind::ImportFinding { .. } => return None,
    };
    (!hint.is_empty()).then_some(hint)
}

fn needed_hint(key: &str) -> String {
    match key {
        "wheel_valve" => "look at a wheel end and write \"by_hand\" (shut-off opened and shut by hand) or \"self_closing\" (shuts by falling line pressure)".into(),
        "wheel_valve_closes_below_kpa" => "take it from the valve's data sheet or measure it; there is no usual value".into(),
        "fixed_pressure_kpa" => "give the cold pressure the tires are kept at, or a channel".into(),
        "dual" => "add dual = { spacing_mm = …, diameter_difference_mm = …, least_gap_mm = … }".into(),
        "heavier_side_share" | "heavier_mate_share" => format!("weigh each side, or write {key} = 0.5 if it is known to be even"),
        "air_from" => "write air_from = \"tire_line\" if the truck's tire controller feeds it through a line of its own".into(),
        "gross_mass_kg" => "weigh it and add gross_mass_kg, or write unknown = true and treat_as".into(),
        "treat_as" => "name the heavier load state whose pressures are used instead".into(),
        "ladder" => "add [[rungs]] to the combination, or [ladder] to the haul so that rungs are searched for".into(),
        "parked_rung" => "name the rung the tires were parked on".into(),
        "approved" => "add approved = { document = \"number or title and date\", for_this_fleet = false }; only the tire maker's word makes it true".into(),
        _ => format!("add {key}"),
    }
}

fn type_hint(key: &str, wanted: &str) -> Option<String> {
    let hint = match wanted {
        "number" | "whole number" => {
            format!("write the bare number without quotes or unit: {key} = 105")
        }
        "text" => format!("put it in quotes: {key} = \"…\""),
        "true or false" => format!("write {key} = true or {key} = false, without quotes"),
        "list" => format!("write {key} = [ … ] or one [[{key}]] table each"),
        "table" => format!("write [{key}] and its keys under it, or {key} = {{ … }}"),
        _ => return None,
    };
    Some(hint)
}

fn slip_hint(slip: Option<&UnitSlip>) -> String {
    match slip {
        Some(UnitSlip { unit, key, value }) => {
            format!("did you mean {}? write {key} = {}", sign(unit), short(*value))
        }
        None => "check the number and its unit".into(),
    }
}

fn name_hint(reference: Reference, nearest: Option<&str>, known: &[String]) -> String {
    const LISTED: usize = 12;
    if let Some(nearest) = nearest {
        return format!("did you mean \"{nearest}\"?");
    }
    if known.is_empty() {
        return format!("there is no {} at all; add it", name_of(reference));
    }
    let mut names = known[..known.len().min(LISTED)].join(", ");
    if known.len() > LISTED {
        names.push_str(", …");
    }
    format!("there are: {names}")
}

fn order_hint(which: Ordered) -> &'static str {
    match which {
        Ordered::GovernorCutIn => "exchange cut_in_kpa and cut_out_kpa, or check the unit",
        Ordered::ProtectionShuts => "exchange opens_kpa and shuts_kpa, or check the unit",
        Ordered::BrakeThreshold => "brake_resume_kpa must be at least brake_threshold_kpa",
        Ordered::ProtectionUnderBrakeThreshold => {
            "the controller must let go before the valve does: check brake_threshold_kpa and shuts_kpa"
        }
        Ordered::ProtectionOpensUnderCutIn => {
            "between its two pressures the governor leaves the compressor off, so the valve may never open: check opens_kpa and cut_in_kpa"
        }
        Ordered::ResumeUnderCutIn => {
            "between its two pressures the governor leaves the compressor off, so a truck may wait for ever: check brake_resume_kpa and cut_in_kpa"
        }
    }
}

fn first_sentence(text: &str) -> &str {
    let line = text.lines().next().unwrap_or_default();
    line.trim_end_matches('.')
}

fn uncapitalized(text: &str) -> String {
    let mut characters = text.chars();
    match (characters.next(), characters.next()) {
        (Some(first), Some(second)) if !second.is_uppercase() => {
            format!("{}{}", first.to_lowercase(), &text[first.len_utf8()..])
        }
        _ => text.to_owned(),
    }
}
