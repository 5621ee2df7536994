//! Sentences about the ground of a leg and the upkeep of the road.

use crate::problem::GroundFault;

pub(super) fn message(fault: &GroundFault) -> String {
    match fault {
        GroundFault::ToldTwice { other } => {
            format!("the strength of this soil is told by {other} too")
        }
        GroundFault::SeasonAlone => "a season says nothing without soil_class".into(),
        GroundFault::ClassAlone => "a soil class alone has no strength".into(),
        GroundFault::NoNumber => {
            "no published strength of this soil class in this season was read".into()
        }
        GroundFault::AggregateWeaker => {
            "the aggregate is no stronger than the soil under it".into()
        }
        GroundFault::Layers { message } => message.clone(),
        GroundFault::SavingOrder => "least, expected and most saving are not in order".into(),
    }
}

pub(super) fn hint(fault: &GroundFault) -> &'static str {
    match fault {
        GroundFault::ToldTwice { .. } => "keep the one that was measured best",
        GroundFault::SeasonAlone => "name the class, such as soil_class = \"ML\", or leave it out",
        GroundFault::ClassAlone => {
            "add season, or better a measurement: cbr_pct, cone_index_kpa or dcp_mm_per_blow"
        }
        GroundFault::NoNumber => "measure it: cbr_pct, cone_index_kpa or dcp_mm_per_blow",
        GroundFault::AggregateWeaker => {
            "check cbr_top_pct and the strength of the soil; no rut can be told as it stands"
        }
        GroundFault::Layers { .. } => {
            "give the layers from the top down, the last without thickness"
        }
        GroundFault::SavingOrder => {
            "give all three of saving_low_pct, saving_pct, saving_high_pct, rising"
        }
    }
}
