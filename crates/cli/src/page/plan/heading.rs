//! What the plan is for: haul, combination, route, temperatures, and the axle groups with loads.

use view::{MeasuredView, PlanView};

use super::head;
use crate::page::quantities::{chainage, load, temperature};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{labelled, line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;
use language::Round;
use report::cells::load_states;

/// Title, and what the plan is for.
pub fn heading(plan: &PlanView, words: &Words) -> String {
    let format = &words.format;
    let near = |km: f64| chainage(format, km, Round::Nearest);
    let route = match plan.laden_direction.as_str() {
        "backward" => "plan-route-backward",
        _ => "plan-route-forward",
    };
    let unit = format.unit(language::Kind::Pressure);
    let controller = if plan.controller_unit == unit {
        words.fill("plan-controller-unit", &[("unit", &plan.controller_unit)])
    } else {
        words.fill("plan-controller-other-unit", &[("unit", &plan.controller_unit)])
    };
    let facts = [
        ("plan-combination", plan.combination.clone()),
        (
            "plan-route",
            words.fill(route, &[("route", &plan.route), ("length", &near(plan.route_km))]),
        ),
        (
            "plan-cold-named-at",
            words.fill(
                "plan-temperatures",
                &[
                    ("reference", &temperature(format, plan.reference_temperature_c)),
                    ("coldest", &temperature(format, plan.coldest_c)),
                    ("warmest", &temperature(format, plan.warmest_c)),
                ],
            ),
        ),
        ("plan-controller", controller),
    ];
    let mut facts = facts.to_vec();
    if !plan.units.is_empty() {
        facts.insert(1, ("plan-for-units", plan.units.join(", ")));
    }
    let title = words.fill("plan-for-haul", &[("haul", &plan.haul)]);
    let facts: Vec<(String, String)> =
        facts.into_iter().map(|(key, fact)| (words.text(key), fact)).collect();
    let mut text = line(HEADING, "", &title);
    text.push_str(&paragraph(&words.text("plan-draft"), "", ""));
    text.push_str(&labelled(&facts));
    for measured in &plan.measured {
        text.push_str(&paragraph(&told(measured, words), "  ", "    "));
    }
    if plan.breaks_a_limit {
        let broken = report::cautions::broken(plan, words.of_paper());
        let warning = words.count("plan-breaks-limits", broken.len());
        text.push_str(&line(WRONG, "", &warning));
        for told in broken {
            text.push_str(&paragraph(&told, "  ! ", "    "));
        }
        text.push_str(&unreviewed(words, "  "));
    }
    text
}

/// A value measured on a unit, and whether the plan counts it.
fn told(measured: &MeasuredView, words: &Words) -> String {
    let channel = measured.channel.clone().unwrap_or_default();
    let what = words.fill(&format!("plan-measured-{}", measured.what), &[("channel", &channel)]);
    let share = words.format.number(measured.share_pct, 0, Round::Nearest);
    let key = if measured.counted { "plan-measured-counted" } else { "plan-measured-not-counted" };
    let (unit, date) = (&measured.unit, &measured.date);
    words.fill(key, &[("unit", unit), ("what", &what), ("share", &share), ("date", date)])
}

/// Axle groups with their tires, channels and loads.
pub fn axle_groups(plan: &PlanView, words: &Words) -> String {
    let format = &words.format;
    let unit = format.unit(language::Kind::Load);
    let mut headings = vec![
        (words.text("plan-axle-group"), Side::Left),
        (words.text("plan-tire"), Side::Left),
        (words.text("plan-tires"), Side::Left),
        (words.text("plan-channel"), Side::Left),
    ];
    headings
        .extend(load_states(plan).iter().map(|state| (format!("{state}\n{unit}"), Side::Right)));
    let mut sheet = Sheet::new(headings);
    for group in &plan.axle_groups {
        let fitment = words.text(match group.fitment.as_str() {
            "dual" => "plan-dual",
            _ => "plan-single",
        });
        let channel = group.channel.clone().unwrap_or_else(|| words.text("plan-fixed-pressure"));
        let mut row = vec![
            group.name.clone(),
            group.tire.clone(),
            format!("{} {fitment}", group.tires),
            channel,
        ];
        row.extend(group.loads_kg.iter().map(|kg| load(format, *kg).number));
        sheet.row(row);
    }
    head(words, "plan-axle-groups") + &sheet.lines()
}
