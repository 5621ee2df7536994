//! What the survey would have to tell, and in which file.

use std::collections::BTreeSet;

use model::haul_cycle::HaulCycle;
use plan::cost::Costs;
use plan::effect::{Effects, Finding, Input, LegWay, NotAssessed, Way};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::band::input_name;

/// Something to fill in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct MissingInputView {
    /// What, such as `soil-strength`.
    pub input: String,
    /// File of the survey.
    pub file: String,
    /// Leg it belongs to, where it belongs to one.
    pub leg: Option<String>,
    /// Keys any one of which, or all with a `+` between, would do.
    pub keys: Vec<String>,
    /// What it decides, such as `climb`.
    pub decides: Vec<String>,
}

/// Inputs that legs and costs lack, legs first, in the order of the route.
pub(in crate::plan) fn missing(
    haul: &HaulCycle,
    effects: &Effects,
    costs: &Finding<Costs>,
) -> Vec<MissingInputView> {
    let mut found: Vec<MissingInputView> = Vec::new();
    for leg in &effects.legs {
        let name = &haul.route.legs[leg.leg].name;
        for way in leg.ways.iter().filter(|way| way.way == Way::Plan) {
            for (effect, input) in of_leg(way) {
                note(&mut found, haul, input, Some(name), effect);
            }
        }
    }
    match costs {
        Err(NotAssessed::Give(input)) => note(&mut found, haul, *input, None, "cost"),
        Err(_) => {}
        Ok(costs) => {
            let lines = costs.lines.iter().filter_map(|line| match &line.per_year {
                Err(NotAssessed::Give(input)) if !of_a_leg(*input) => Some(*input),
                _ => None,
            });
            for input in lines.collect::<BTreeSet<_>>() {
                note(&mut found, haul, input, None, "cost-item");
            }
        }
    }
    found
}

fn of_a_leg(input: Input) -> bool {
    matches!(input, Input::Strength | Input::Layers | Input::Grip)
}

/// Every input an effect of the leg asks for.
fn of_leg(way: &LegWay) -> Vec<(&'static str, Input)> {
    fn asked<T>(found: &Finding<T>) -> Option<Input> {
        match found {
            Err(NotAssessed::Give(input)) => Some(*input),
            _ => None,
        }
    }
    let mut all = vec![
        ("climb", asked(&way.grades.climb)),
        ("descent", asked(&way.grades.descent)),
        ("rolling", asked(&way.resistance)),
    ];
    for group in &way.groups {
        all.push(("soil-rut", group.soil.as_ref().and_then(asked)));
        all.push(("pavement", group.pavement.as_ref().and_then(asked)));
        all.push(("dual-gap", group.tire.gap.as_ref().and_then(asked)));
    }
    all.into_iter().filter_map(|(effect, input)| Some((effect, input?))).collect()
}

fn note(
    found: &mut Vec<MissingInputView>,
    haul: &HaulCycle,
    input: Input,
    leg: Option<&String>,
    decides: &str,
) {
    let name = input_name(input);
    let same = |one: &&mut MissingInputView| one.input == name && one.leg.as_ref() == leg;
    if let Some(known) = found.iter_mut().find(same) {
        if !known.decides.iter().any(|one| one == decides) {
            known.decides.push(decides.to_owned());
        }
        return;
    }
    let file = if of_a_leg(input) {
        format!("routes/{}.toml", haul.route.name)
    } else if input == Input::DualSpacing {
        format!("combinations/{}.toml", haul.combination.name)
    } else {
        format!("hauls/{}.toml", haul.name)
    };
    found.push(MissingInputView {
        input: name.to_owned(),
        file,
        leg: leg.cloned(),
        keys: keys(input).iter().map(|key| (*key).to_owned()).collect(),
        decides: vec![decides.to_owned()],
    });
}

/// Keys of the survey that tell an input.
fn keys(input: Input) -> &'static [&'static str] {
    match input {
        Input::Strength => &["cbr_pct", "cone_index_kpa", "dcp_mm_per_blow", "soil_class + season"],
        Input::Layers => &["layers"],
        Input::Grip => &["grip"],
        Input::DualSpacing => &["dual_spacing_mm"],
        Input::Money => &["[money]"],
        Input::FuelPrice => &["money.fuel_price_per_l"],
        Input::Season => &["money.season"],
        Input::Payload => &["money.payload"],
        Input::TireSaving => &["money.tire_saving_per_year"],
        Input::RepairSaving => &["money.repair_saving_per_year"],
        Input::RoadCost => &["[money.road] pass_cost_per_km"],
        Input::RoadSaving => &["[money.road] saving_low_pct + saving_pct + saving_high_pct"],
    }
}
