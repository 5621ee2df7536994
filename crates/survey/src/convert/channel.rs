//! Air channels of a combination: the truck's lines, prolonged by those of its trailers.

use model::air::{PathElement, Restriction};
use model::vehicle::{AirChannel, MeasuredAir};
use quantity::Length;

use super::Loaded;
use super::powertrain::restriction;
use crate::document::Document;
use crate::file::{ElementFile, RestrictionFile, VehicleFile, VehicleKindWord};
use crate::problem::{Condition, Problem, ProblemKind};

/// A channel while vehicles are being added to it.
struct Draft {
    name: String,
    path: Vec<PathElement>,
    wheel_end: Option<Vec<PathElement>>,
    exhaust: Option<Restriction>,
    /// File and pointer of the truck's entry.
    first: (Document, String),
}

/// Joins the channels of the vehicles, truck first.
///
/// One channel has one path in the model: where it feeds groups of several vehicles, all of them
/// are reckoned at the far end of its line, which is the slow side.
pub(super) fn channels(
    vehicles: &[&Loaded<VehicleFile>],
    problems: &mut Vec<Problem>,
) -> Option<Vec<AirChannel>> {
    let mut drafts: Vec<Draft> = Vec::new();
    let mut whole = true;
    let of_kind = |kind| vehicles.iter().filter(move |vehicle| vehicle.data.kind == kind);
    for vehicle in of_kind(VehicleKindWord::Truck).chain(of_kind(VehicleKindWord::Trailer)) {
        for (index, channel) in vehicle.data.channels.iter().enumerate() {
            let at = format!("/channels/{index}");
            let Some(path) = elements(&channel.path) else {
                whole = false;
                continue;
            };
            let wheel_end = match channel.wheel_end.as_deref().map(elements) {
                Some(None) => {
                    whole = false;
                    continue;
                }
                Some(found) => found,
                None => None,
            };
            let exhaust = channel.exhaust.as_ref().map(|part: &RestrictionFile| restriction(part));
            match drafts.iter_mut().find(|draft| draft.name == channel.name) {
                Some(draft) => {
                    draft.path.extend(path);
                    let differs =
                        |key| ProblemKind::ChannelDiffers { channel: channel.name.clone(), key };
                    if !settle(&mut draft.wheel_end, wheel_end) {
                        problems.push(
                            vehicle.problem(&format!("{at}/wheel_end"), differs("wheel_end")),
                        );
                        whole = false;
                    }
                    if !settle(&mut draft.exhaust, exhaust) {
                        problems
                            .push(vehicle.problem(&format!("{at}/exhaust"), differs("exhaust")));
                        whole = false;
                    }
                }
                None if vehicle.data.kind == VehicleKindWord::Truck => drafts.push(Draft {
                    name: channel.name.clone(),
                    path,
                    wheel_end,
                    exhaust,
                    first: (vehicle.document.clone(), at),
                }),
                None => {
                    let kind = ProblemKind::ChannelNotOnTruck { channel: channel.name.clone() };
                    problems.push(vehicle.problem(&format!("{at}/name"), kind));
                    whole = false;
                }
            }
        }
    }
    let mut channels = Vec::with_capacity(drafts.len());
    for draft in drafts {
        match finish(draft, problems) {
            Some(channel) => channels.push(channel),
            None => whole = false,
        }
    }
    whole.then_some(channels)
}

fn finish(draft: Draft, problems: &mut Vec<Problem>) -> Option<AirChannel> {
    let (document, at) = draft.first;
    let mut needed = |key| {
        let kind = ProblemKind::Needed { key, because: Condition::ChannelNeedsIt };
        problems.push(document.problem(&at, kind));
    };
    if draft.wheel_end.is_none() {
        needed("wheel_end");
    }
    if draft.exhaust.is_none() {
        needed("exhaust");
    }
    let line_length = draft
        .path
        .iter()
        .map(|element| match element {
            PathElement::Tube { length, .. } => *length,
            PathElement::Part(_) => Length::ZERO,
        })
        .sum();
    Some(AirChannel {
        name: draft.name,
        path: draft.path,
        wheel_end: draft.wheel_end?,
        exhaust: draft.exhaust?,
        line_length,
        measured: MeasuredAir::AS_THE_TYPE,
    })
}

/// Takes a later vehicle's value into an earlier one's; false if they contradict.
fn settle<T: PartialEq>(known: &mut Option<T>, new: Option<T>) -> bool {
    match (&known, new) {
        (_, None) => true,
        (None, new) => {
            *known = new;
            true
        }
        (Some(before), Some(new)) => *before == new,
    }
}

/// The elements, if each is a whole part or a whole tube; others were reported with the vehicle.
fn elements(files: &[ElementFile]) -> Option<Vec<PathElement>> {
    files
        .iter()
        .map(|element| match (element.c_dm3_s_bar, element.b, element.bore_mm, element.length_m) {
            (Some(c_dm3_s_bar), Some(b), None, None) => {
                Some(PathElement::Part(restriction(&RestrictionFile { c_dm3_s_bar, b })))
            }
            (None, None, Some(bore), Some(length)) => Some(PathElement::Tube {
                bore: Length::from_mm(bore),
                length: Length::from_m(length),
            }),
            _ => None,
        })
        .collect()
}
