//! Whether everything written on the charts can be read: in each language, unit and number of legs.

use language::{Format, Texts, UnitProfile};
use roxmltree::{Document, Node};
use study::{Planned, PlannedFor};
use view::PlanView;

use super::{effects_bars, effects_chart};
use crate::strip::{Reader, width};
use crate::svg::Frame;

const LANGUAGES: [&str; 7] = ["en", "fr", "de", "es", "sv", "fi", "pt"];

/// The invented haul, its legs told of as often as it takes, under names of any length.
fn plan_of(legs: usize) -> PlanView {
    let haul = example::haul();
    let detail = plan::Detail { samples: 0, ..plan::Detail::default() };
    let plan = plan::Plan::of(&haul, &detail).unwrap();
    let planned = Planned { haul, plan, search: None, planned_for: PlannedFor::default() };
    let mut plan = PlanView::from(&planned);
    let once = plan.effects.clone();
    plan.effects = once.iter().cycle().take(2 * legs).cloned().collect();
    for (index, leg) in plan.effects.iter_mut().enumerate() {
        leg.leg = format!("{} {}", "the long way round the hill ".repeat(index % 4), index / 2);
    }
    plan
}

/// Where a text stands, by the width of its letters.
fn place(node: &Node<'_, '_>) -> (Frame, String) {
    let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
    let text = node.text().unwrap_or_default().to_owned();
    let (x, y, size) = (number("x"), number("y"), number("font-size"));
    let long = width(&text, size, node.attribute("font-weight").is_some());
    let left = match node.attribute("text-anchor") {
        Some("end") => x - long,
        Some("middle") => x - long / 2.0,
        _ => x,
    };
    (Frame { left, top: y - 0.72 * size, right: left + long, bottom: y + 0.2 * size }, text)
}

fn check(svg: &str, across: f64, told: &str) {
    let document = Document::parse(svg).unwrap();
    let texts: Vec<_> = document.descendants().filter(|node| node.has_tag_name("text")).collect();
    let texts: Vec<(Frame, String)> = texts.iter().map(place).collect();
    assert!(texts.len() > 10, "{told}: next to nothing is written");
    for (at, text) in &texts {
        assert!(at.left >= 0.0 && at.right <= across, "{told}: '{text}' passes the edge");
    }
    for (index, (a, one)) in texts.iter().enumerate() {
        for (b, other) in &texts[index + 1..] {
            let apart =
                a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
            assert!(apart, "{told}: '{one}' and '{other}' lie over each other");
        }
    }
}

#[test]
fn nothing_written_lies_over_another_or_past_the_edge_in_any_language() {
    for legs in [1, 3, 12] {
        let plan = plan_of(legs);
        for language in LANGUAGES {
            let texts = Texts::new(language).unwrap();
            for profile in [UnitProfile::Si, UnitProfile::MetricBar, UnitProfile::Us] {
                let format = Format::new(profile, language).unwrap();
                let told = format!("{language}, {profile:?}, {legs} legs");
                check(&effects_chart(&plan, &texts, &format).unwrap(), 1200.0, &told);
                let reader = Reader { texts: &texts, format: &format };
                check(&effects_bars(&plan, reader).unwrap(), 800.0, &format!("{told}, paper"));
            }
        }
    }
}

#[test]
fn only_names_of_legs_are_ever_cut_short() {
    let plan = plan_of(2);
    for language in LANGUAGES {
        let texts = Texts::new(language).unwrap();
        let format = Format::new(UnitProfile::Us, language).unwrap();
        let reader = Reader { texts: &texts, format: &format };
        let charts =
            [effects_chart(&plan, &texts, &format).unwrap(), effects_bars(&plan, reader).unwrap()];
        for svg in charts {
            let document = Document::parse(&svg).unwrap();
            let texts = document.descendants().filter_map(|node| node.text());
            let cut: Vec<&str> = texts.filter(|text| text.ends_with('…')).collect();
            let stray = cut.iter().find(|text| !text.starts_with("the long way"));
            assert_eq!(stray, None, "{language}");
        }
    }
}
