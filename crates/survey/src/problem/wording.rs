//! Every sentence about a problem with a survey, in English.

use model::tire::Construction;
use quantity::{ColdPressure, GaugePressure, Length, Mass, Speed};

use super::{
    Condition, Ordered, Problem, ProblemKind, Reference, SizeFault, SpacingBasis, UnitSlip,
};

/// What is wrong.
pub(super) fn message(problem: &Problem) -> String {
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
        ProblemKind::NotReadable { message } => format!("cannot be read: {message}"),
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
        ProblemKind::Unreadable { message } => format!("cannot be read: {message}"),
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
        ProblemKind::AboveSpeedSymbol { speed: given, tire, symbol, rated } => format!(
            "{} is above the speed symbol {symbol} ({}) of '{tire}'",
            speed(*given),
            speed(*rated)
        ),
        ProblemKind::SpeedInMilesAnHour { given, .. } => {
            format!("{key} = {value} means {}, an unusual number", speed(*given))
        }
        ProblemKind::GovernorTooLow { cut_out, wanted, target } => format!(
            "the governor cuts out at {}, but '{target}' wants {}",
            gauge(*cut_out),
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
    }
}

/// What to do about it.
pub(super) fn hint(problem: &Problem) -> Option<String> {
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
            None => "survey files stand in tires/, vehicles/, combinations/, routes/ and hauls/".into(),
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
                hint.push_str(&format!(" (or {})", other_units.join(", ")));
            }
            hint
        }
        ProblemKind::Needed { key, because } => return needed_hint(key, *because),
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
        ProblemKind::AboveSpeedSymbol { .. } => {
            "lower the speed, or fit a tire with a faster symbol".into()
        }
        ProblemKind::SpeedInMilesAnHour { key, .. } => format!(
            "if it is miles an hour, write {key} = {}",
            problem.value.as_deref().unwrap_or("…")
        ),
        ProblemKind::GovernorTooLow { .. } => {
            "tires cannot be raised above reservoir pressure: check the governor, or want less".into()
        }
        ProblemKind::WrongOrder { which, .. } => order_hint(*which).into(),
        ProblemKind::Temperatures { .. } => "exchange them, or check their signs".into(),
        ProblemKind::NominalOutside => "give the temperature of an ordinary working day".into(),
        ProblemKind::LegBackwards => "exchange from_km and to_km".into(),
        ProblemKind::RouteStart { .. } => "chainage counts from the start of the route".into(),
        ProblemKind::LegGap { .. } => "let each leg begin where the one before ends".into(),
        ProblemKind::LegOverlap { .. } => "let each leg begin where the one before ends".into(),
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
    }
}

fn needed_hint(key: &str, because: Condition) -> Option<String> {
    let hint = match (key, because) {
        ("wheel_valve", _) => "look at a wheel end and write \"by_hand\" (shut-off opened and shut by hand) or \"self_closing\" (shuts by falling line pressure)".into(),
        ("wheel_valve_closes_below_kpa", _) => "take it from the valve's data sheet or measure it; there is no usual value".into(),
        ("fixed_pressure_kpa", _) => "give the cold pressure the tires are kept at, or a channel".into(),
        ("dual", _) => "add dual = { spacing_mm = …, diameter_difference_mm = …, least_gap_mm = … }".into(),
        ("heavier_side_share" | "heavier_mate_share", _) => format!("weigh each side, or write {key} = 0.5 if it is known to be even"),
        ("air_from", _) => "write air_from = \"tire_line\" if the truck's tire controller feeds it through a line of its own".into(),
        ("approved", _) => "add approved = { document = \"number or title and date\", for_this_fleet = false }; only the tire maker's word makes it true".into(),
        _ => format!("add {key}"),
    };
    Some(hint)
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

fn type_word(name: &str) -> &str {
    match name {
        "string" => "text",
        "boolean" => "true or false",
        "integer" => "whole number",
        "array" => "list",
        "object" => "table",
        "null" => "nothing",
        other => other,
    }
}

fn a(word: &str) -> String {
    match word {
        "text" | "true or false" | "nothing" => word.to_owned(),
        _ => format!("a {word}"),
    }
}

fn slip_hint(slip: Option<&UnitSlip>) -> String {
    match slip {
        Some(UnitSlip { unit, key, value }) => {
            format!("did you mean {}? write {key} = {}", sign(unit), short(*value))
        }
        None => "check the number and its unit".into(),
    }
}

fn name_of(reference: Reference) -> &'static str {
    match reference {
        Reference::Tire => "file in tires/",
        Reference::Vehicle => "file in vehicles/",
        Reference::Combination => "file in combinations/",
        Reference::Route => "file in routes/",
        Reference::Channel => "air channel",
        Reference::LoadState => "load state in the combination",
        Reference::Rung => "rung in the combination",
        Reference::ChainState => "chain state in the combination",
        Reference::Group => "axle group in the combination",
        Reference::File => "file in the survey",
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
        Ordered::ProtectionOpensUnderCutOut => {
            "the protection valve does not open below governor cut-out"
        }
        Ordered::ResumeUnderCutOut => {
            "tire air would be taken again only from above governor cut-out"
        }
    }
}

fn order_hint(which: Ordered) -> &'static str {
    match which {
        Ordered::GovernorCutIn => "exchange cut_in_kpa and cut_out_kpa, or check the unit",
        Ordered::ProtectionShuts => "exchange opens_kpa and shuts_kpa, or check the unit",
        Ordered::BrakeThreshold => "brake_resume_kpa must be at least brake_threshold_kpa",
        Ordered::ProtectionUnderBrakeThreshold => {
            "the controller must let go before the valve does: check brake_threshold_kpa and shuts_kpa"
        }
        Ordered::ProtectionOpensUnderCutOut => {
            "as it stands the tire circuit never gets air: check opens_kpa and cut_out_kpa"
        }
        Ordered::ResumeUnderCutOut => {
            "as it stands tires are never filled: check brake_resume_kpa and cut_out_kpa"
        }
    }
}

fn kpa_psi(kpa: f64, psi: f64) -> String {
    format!("{kpa:.0} kPa ({psi:.0} psi)")
}

fn cold(pressure: ColdPressure) -> String {
    kpa_psi(pressure.as_kpa(), pressure.as_psi())
}

fn gauge(pressure: GaugePressure) -> String {
    kpa_psi(pressure.as_kpa(), pressure.as_psi())
}

fn mass(mass: Mass) -> String {
    format!("{:.0} kg ({:.0} lb)", mass.as_kg(), mass.as_lb())
}

fn speed(speed: Speed) -> String {
    format!("{:.0} km/h ({:.0} mph)", speed.as_kmh(), speed.as_mph())
}

fn size(length: Length) -> String {
    format!(
        "{} mm ({} in)",
        short((length.as_mm() * 10.0).round() / 10.0),
        short((length.as_in() * 100.0).round() / 100.0)
    )
}

fn way(length: Length) -> String {
    format!("{} km", short((length.as_km() * 1000.0).round() / 1000.0))
}

/// A number without digits that say nothing.
fn short(value: f64) -> String {
    let rounded = (value * 1e4).round() / 1e4;
    format!("{rounded}")
}

fn sign(symbol: &str) -> &str {
    match symbol {
        "C" => "°C",
        "F" => "°F",
        other => other,
    }
}

fn entries(count: u64) -> &'static str {
    if count == 1 { "entry" } else { "entries" }
}

fn one_line(text: &str) -> String {
    text.lines().map(str::trim).collect::<Vec<_>>().join("; ")
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
