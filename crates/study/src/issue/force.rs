//! Which issued plan a unit drives by on a day.

use model::date::Date;

use super::IssuedPlan;

/// The plan in force.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum InForce<'a> {
    /// No plan is.
    None,
    /// This one is.
    One(&'a IssuedPlan),
    /// Two hauls' plans of one day claim the unit.
    Two(&'a IssuedPlan, &'a IssuedPlan),
}

impl InForce<'_> {
    /// Whether it is this plan, alone or with another.
    pub fn holds(&self, plan: &IssuedPlan) -> bool {
        match self {
            Self::None => false,
            Self::One(one) => one.id == plan.id,
            Self::Two(one, other) => one.id == plan.id || other.id == plan.id,
        }
    }
}

/// The plan a unit drives by on a day: of those assigned to it that cover the day, the one issued
/// last. Plans of one haul issued on one day follow each other by number.
pub fn in_force<'a>(plans: &'a [IssuedPlan], unit: &str, day: Date) -> InForce<'a> {
    let assigned =
        || plans.iter().filter(|plan| plan.covers(day) && plan.units.iter().any(|one| one == unit));
    let Some(last) = assigned().max_by_key(|plan| (plan.date, plan.number)) else {
        return InForce::None;
    };
    match assigned().find(|plan| plan.date == last.date && plan.haul != last.haul) {
        Some(other) if other.id < last.id => InForce::Two(other, last),
        Some(other) => InForce::Two(last, other),
        None => InForce::One(last),
    }
}

/// Whether some unit drives by a plan on a day or will later; a plan assigned to no unit counts
/// until another of its haul takes its place.
pub(super) fn is_live(plan: &IssuedPlan, plans: &[IssuedPlan], day: Date) -> bool {
    if plan.valid_until.is_some_and(|last| last < day) {
        return false;
    }
    if plan.units.is_empty() {
        let newer = |other: &IssuedPlan| other.haul == plan.haul && other.number > plan.number;
        return !plans.iter().any(|other| newer(other) && other.covers(day));
    }
    let holds = |unit: &String| {
        days(plans, unit, day).into_iter().any(|day| in_force(plans, unit, day).holds(plan))
    };
    plan.units.iter().any(holds)
}

/// Days from `from` on when the plan of a unit may change: each first day, and each day a plan
/// is left behind stands for those after it.
pub(super) fn days(plans: &[IssuedPlan], unit: &str, from: Date) -> Vec<Date> {
    let of_unit = plans.iter().filter(|plan| plan.units.iter().any(|one| one == unit));
    let after = of_unit.flat_map(|plan| {
        let next = plan.valid_until.and_then(next);
        std::iter::once(plan.valid_from).chain(next)
    });
    let mut days: Vec<Date> = after.filter(|day| *day > from).chain([from]).collect();
    days.sort_unstable();
    days.dedup();
    days
}

fn next(day: Date) -> Option<Date> {
    let (year, month, of_month) = day.parts();
    let (next_month, next_year) = (month % 12 + 1, year.saturating_add(i16::from(month == 12)));
    Date::new(year, month, of_month + 1).or_else(|_| Date::new(next_year, next_month, 1)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_follow_each_other_over_months_and_years() {
        for (day, after) in [
            ("2027-03-01", "2027-03-02"),
            ("2027-02-28", "2027-03-01"),
            ("2028-02-28", "2028-02-29"),
            ("2027-12-31", "2028-01-01"),
        ] {
            assert_eq!(next(day.parse().unwrap()), after.parse().ok());
        }
    }
}
