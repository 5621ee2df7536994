//! The chart of a haul planned and simulated whole.

use language::{Format, Texts, UnitProfile};
use quantity::Time;
use roxmltree::Document;
use study::Planned;

#[test]
fn a_planned_haul_is_drawn_with_its_change_points() {
    let detail = plan::Detail::default();
    let haul = example::haul();
    let plan = plan::Plan::of(&haul, &detail).unwrap();
    let planned = Planned { haul, plan, search: None, planned_for: study::PlannedFor::default() };
    let simulated = study::simulate(&planned, Time::from_s(5.0), &detail).unwrap();
    let run = view::run_view(&planned, &simulated);
    let format = Format::new(UnitProfile::Us, "en").unwrap();
    let svg = report::run_strip(&run, &Texts::new("en").unwrap(), &format).unwrap();
    let document = Document::parse(&svg).unwrap();
    let texts: Vec<_> = document
        .descendants()
        .filter(|node| node.has_tag_name("text"))
        .filter_map(|node| node.text())
        .collect();
    let flagged = |word: &str| texts.iter().filter(|text| text.starts_with(word)).count();
    let planned_changes = |kind: &str| run.marks.iter().filter(|mark| mark.kind == kind).count();
    assert!(planned_changes("raise") > 0 && planned_changes("lower") > 0);
    assert_eq!(flagged("START RAISING ↑"), planned_changes("raise"));
    assert_eq!(flagged("START LOWERING ↓"), planned_changes("lower"));
    for heading in ["Elevation and surface, ft", "Speed, mph", "Tire pressure, psi"] {
        assert_eq!(flagged(heading), 2);
    }
    let standing = texts.iter().find(|text| text.contains("min loading")).unwrap();
    assert_eq!(*standing, "Standing: 30 min loading");
}
