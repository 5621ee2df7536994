//! One equation at a time: the answer with what went in, where it holds and where it comes from.

mod air;
mod answer;
mod axle_factor;
mod cold_pressure;
mod cone_index;
mod deflection;
mod footprint;
mod frame;
mod given;
mod grade_speed;
mod gravel;
mod pavement_strain;
mod soil_stress;
mod strength;
mod tire_load;
mod tkph;
mod wheel_pull;

pub use answer::{Answer, CalcDocument};
use given::repeated;
pub use given::{Aspect, Given, Ratio, Share, TireLoad, Weight, ratio};
pub use pavement_strain::RoadLayer;

use crate::args::Topic;
use crate::outcome::Failure;
use crate::words::Words;

/// Works out the answer to a topic.
pub fn answer(topic: &Topic, words: &Words) -> Result<Answer, Failure> {
    match topic {
        Topic::TireLoad(args) => tire_load::answer(args, words),
        Topic::Deflection(args) => deflection::answer(args, words),
        Topic::Footprint(args) => footprint::answer(args, words),
        Topic::ColdPressure(args) => cold_pressure::answer(args, words),
        Topic::Tkph(args) => tkph::answer(args, words),
        Topic::Flow(args) => air::flow(args, words),
        Topic::FillTime(args) => air::fill(args, words),
        Topic::VentTime(args) => air::vent(args, words),
        Topic::SoilStress(args) => soil_stress::answer(args, words),
        Topic::ConeIndex(args) => cone_index::answer(args, words),
        Topic::WheelPull(args) => wheel_pull::answer(args, words),
        Topic::GravelRut(args) => gravel::rut_depth(args, words),
        Topic::GravelThickness(args) => gravel::thickness(args, words),
        Topic::AxleFactor(args) => axle_factor::answer(args, words),
        Topic::PavementStrain(args) => pavement_strain::answer(args, words),
        Topic::GradeSpeed(args) => grade_speed::answer(args, words),
        Topic::Strength(args) => strength::answer(args, words),
        Topic::Frame(args) => frame::answer(args, words),
    }
}
