//! From planned hauls to the plan document.

use model::haul_cycle::LadenDirection;
use plan::Detail;
use study::{Assessed, Planned, assess};

use super::{MeasuredView, PlanDocument, PlanView, caution, change, cost, effect, ladder, search};

impl PlanDocument {
    /// Makes the document; effects and cost are worked out here, at the usual detail.
    pub fn new(planned: &[Planned]) -> Self {
        Self {
            schema: "airtide.plan/1".to_owned(),
            plans: planned.iter().map(PlanView::from).collect(),
        }
    }
}

impl From<&Planned> for PlanView {
    fn from(planned: &Planned) -> Self {
        Self::new(planned, Some(&assess(planned, &Detail::default())))
    }
}

impl PlanView {
    /// The view of a plan with what it does and costs; lists of effects and cost stay empty where
    /// nobody worked them out.
    pub fn new(planned: &Planned, assessed: Option<&Assessed>) -> Self {
        let effects = assessed.map(|assessed| &assessed.effects);
        let costs = assessed.and_then(|assessed| assessed.costs.as_ref().ok());
        let (haul, plan) = (&planned.haul, &planned.plan);
        let combination = &haul.combination;
        let driven = plan.driven.as_ref().ok();
        Self {
            haul: haul.name.clone(),
            combination: combination.name.clone(),
            route: haul.route.name.clone(),
            route_km: haul.route.length().as_km(),
            laden_direction: match haul.laden_direction {
                LadenDirection::Forward => "forward",
                LadenDirection::Backward => "backward",
            }
            .to_owned(),
            units: planned.planned_for.units.clone(),
            measured: planned.planned_for.measured.iter().map(MeasuredView::from).collect(),
            empty_state: combination.load_states[haul.empty_state].name.clone(),
            laden_state: combination.load_states[haul.laden_state].name.clone(),
            breaks_a_limit: plan.breaks_a_limit(),
            reference_temperature_c: haul.weather.reference.as_celsius(),
            coldest_c: haul.weather.coldest.as_celsius(),
            warmest_c: haul.weather.warmest.as_celsius(),
            controller_unit: combination.controller.unit.to_owned(),
            channels: combination.channels.iter().map(|channel| channel.name.clone()).collect(),
            axle_groups: combination
                .groups
                .iter()
                .enumerate()
                .map(|(index, group)| ladder::axle_group(haul, index, group))
                .collect(),
            rungs: combination.rungs.iter().map(ladder::rung).collect(),
            ladder: plan
                .ladder
                .cells()
                .iter()
                .map(|cell| ladder::cell(haul, &plan.ladder, cell))
                .collect(),
            ladder_search: planned.search.as_ref().map(search::search),
            fixed_groups: plan.fixed.iter().map(|group| ladder::fixed(haul, group)).collect(),
            morning_after: plan
                .morning
                .iter()
                .map(|channel| ladder::morning(haul, channel))
                .collect(),
            change_points: driven
                .iter()
                .flat_map(|driven| &driven.points)
                .map(|point| change::point(haul, point))
                .collect(),
            laden_change: driven
                .iter()
                .flat_map(|driven| {
                    let choice = &driven.laden_change;
                    choice
                        .options
                        .iter()
                        .map(|option| change::laden_option(haul, option, choice.chosen))
                })
                .collect(),
            cycle: driven.map(|driven| change::cycle(haul, driven)),
            effects: effects
                .map(|all| all.legs.iter().map(|one| effect::leg(haul, one)).collect())
                .unwrap_or_default(),
            effect_totals: effects
                .map(|all| all.totals.iter().map(|one| effect::total(haul, one)).collect())
                .unwrap_or_default(),
            stress_profiles: effects
                .map(|all| all.profiles.iter().map(|one| effect::profile(haul, one)).collect())
                .unwrap_or_default(),
            effect_sources: assessed.map(|_| effect::sources()).unwrap_or_default(),
            trials: effects
                .map(|all| all.trials.iter().map(effect::trial).collect())
                .unwrap_or_default(),
            missing_inputs: assessed
                .map(|all| effect::missing(haul, &all.effects, &all.costs))
                .unwrap_or_default(),
            cost: costs.map(cost::results).unwrap_or_default(),
            cost_decided_by: costs.map(cost::decides).unwrap_or_default(),
            cost_rivals: costs.map(cost::rivals).unwrap_or_default(),
            cautions: plan.cautions.iter().map(|caution| caution::caution(haul, caution)).collect(),
        }
    }
}
