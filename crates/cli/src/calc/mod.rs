//! One equation at a time: the answer with what went in, where it holds and where it comes from.

mod air;
mod answer;
mod cold_pressure;
mod deflection;
mod given;
mod grade_speed;
mod tire_load;
mod tkph;

pub use answer::{Answer, CalcDocument};
use given::repeated;
pub use given::{Given, Share, TireLoad, ratio};

use crate::args::Topic;
use crate::outcome::Failure;
use crate::words::Words;

/// Works out the answer to a topic.
pub fn answer(topic: &Topic, words: &Words) -> Result<Answer, Failure> {
    match topic {
        Topic::TireLoad(args) => tire_load::answer(args, words),
        Topic::Deflection(args) => deflection::answer(args, words),
        Topic::ColdPressure(args) => cold_pressure::answer(args, words),
        Topic::Tkph(args) => tkph::answer(args, words),
        Topic::Flow(args) => air::flow(args, words),
        Topic::FillTime(args) => air::fill(args, words),
        Topic::VentTime(args) => air::vent(args, words),
        Topic::GradeSpeed(args) => grade_speed::answer(args, words),
    }
}
