//! Laws of the whole chart, tried on small and on extreme runs.

use language::{Format, Texts, UnitProfile};
use proptest::prelude::*;
use roxmltree::{Document, Node};
use view::{LegView, MarkView, RunView, SampleView};

use super::{ChartError, labels, run_strip};
use crate::svg::Frame;

fn draw(run: &RunView) -> Result<String, ChartError> {
    let format = Format::new(UnitProfile::Si, "en").unwrap();
    run_strip(run, &Texts::new("en").unwrap(), &format)
}

pub(crate) fn sample(time_s: f64, km: f64, load_state: &str, speed_kmh: f64) -> SampleView {
    SampleView {
        time_s,
        km,
        load_state: load_state.to_owned(),
        speed_kmh,
        cap_kmh: 60.0,
        grade_pct: 0.0,
        rung: "road".to_owned(),
        changing: false,
        supply_kpa: 800.0,
        compressor_loading: false,
        tire_kpa: vec![500.0],
        tire_minimum_kpa: vec![Some(450.0)],
        tire_c: vec![20.0],
        fuel_l: 0.0,
        compressed_l: 0.0,
    }
}

fn leg(name: &str, from_km: f64, to_km: f64, surface: &str) -> LegView {
    let surface = surface.to_owned();
    LegView {
        name: name.to_owned(),
        from_km,
        to_km,
        surface,
        speed_limit_kmh: 50.0,
        jurisdiction: "private".to_owned(),
        permit: None,
    }
}

fn mark(km: f64, name: &str, kind: &str, change: Option<(&str, f64)>) -> MarkView {
    MarkView {
        km,
        name: name.to_owned(),
        kind: kind.to_owned(),
        load_state: change.map(|(state, _)| state.to_owned()),
        reach_by_km: change.map(|(_, reach)| reach),
    }
}

/// Out empty, five minutes of loading, three of waiting, back laden.
pub(crate) fn small() -> RunView {
    let mut waiting = sample(700.0, 0.0, "laden", 0.0);
    waiting.changing = true;
    RunView {
        schema: "airtide.run/1".to_owned(),
        haul: "pit & mill".to_owned(),
        route: "<north>".to_owned(),
        channels: vec!["drive".to_owned()],
        load_states: ["empty".to_owned(), "laden".to_owned()],
        laden_direction: "forward".to_owned(),
        legs: vec![leg("spur", 0.0, 4.0, "soft ground"), leg("road", 4.0, 10.0, "gravel")],
        elevation_km_m: vec![(0.0, 100.0), (10.0, 160.0)],
        marks: vec![
            mark(2.0, "bridge", "landmark", None),
            mark(5.0, "wide place", "lay-by", None),
            mark(4.5, "spur", "lower", Some(("empty", 4.0))),
            mark(3.0, "road", "raise", Some(("laden", 4.0))),
        ],
        samples: vec![
            sample(0.0, 10.0, "empty", 50.0),
            sample(200.0, 4.0, "empty", 40.0),
            sample(400.0, 0.0, "empty", 0.0),
            waiting,
            sample(880.0, 0.1, "laden", 10.0),
            sample(1000.0, 4.0, "laden", 40.0),
            sample(1200.0, 10.0, "laden", 50.0),
        ],
    }
}

/// Where a text lies, as wide as the widest common face would set it.
fn text_frame(node: Node<'_, '_>) -> Frame {
    let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
    let (x, y, size) = (number("x"), number("y"), number("font-size"));
    let width = labels::width(node.text().unwrap_or(""), size, node.has_attribute("font-weight"));
    let left = match node.attribute("text-anchor") {
        Some("middle") => x - width / 2.0,
        Some("end") => x - width,
        _ => x,
    };
    Frame { left, top: y - 0.75 * size, right: left + width, bottom: y + 0.2 * size }
}

fn extents(document: &Document<'_>) -> Vec<(String, Frame)> {
    let mut frames = Vec::new();
    let root = document.root_element();
    for node in root.children().filter(Node::is_element) {
        let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
        let frame = match node.tag_name().name() {
            "text" => text_frame(node),
            "rect" => {
                let (left, top) = (number("x"), number("y"));
                assert!(number("width") >= 0.0 && number("height") >= 0.0, "{node:?}");
                Frame { left, top, right: left + number("width"), bottom: top + number("height") }
            }
            "polyline" | "polygon" => {
                let points: Vec<f64> = node
                    .attribute("points")
                    .unwrap()
                    .split([' ', ','])
                    .map(|number| number.parse().unwrap())
                    .collect();
                let side = |offset: usize| points.iter().copied().skip(offset).step_by(2);
                Frame {
                    left: side(0).fold(f64::INFINITY, f64::min),
                    top: side(1).fold(f64::INFINITY, f64::min),
                    right: side(0).fold(f64::NEG_INFINITY, f64::max),
                    bottom: side(1).fold(f64::NEG_INFINITY, f64::max),
                }
            }
            "title" | "desc" | "defs" => continue,
            other => panic!("element {other} is not expected"),
        };
        frames.push((format!("{node:?} {:?}", node.text()), frame));
    }
    frames
}

fn assert_laid_out(svg: &str) {
    let document = Document::parse(svg).unwrap();
    let height: f64 = document.root_element().attribute("height").unwrap().parse().unwrap();
    for (what, frame) in extents(&document) {
        let inside = frame.left >= 0.0 && frame.top >= 0.0;
        assert!(inside && frame.right <= 1400.0 && frame.bottom <= height, "{what}: {frame:?}");
    }
    let texts: Vec<_> = document.descendants().filter(|n| n.has_tag_name("text")).collect();
    let frames: Vec<_> = texts.iter().map(|node| (node, text_frame(*node))).collect();
    for (index, (node, a)) in frames.iter().enumerate() {
        assert!(node.attribute("font-size").unwrap().parse::<f64>().unwrap() >= 11.0);
        for (other, b) in &frames[index + 1..] {
            let apart =
                a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
            assert!(apart, "{:?} lies on {:?}: {a:?}, {b:?}", node.text(), other.text());
        }
    }
}

fn count(svg: &str, words: &str) -> usize {
    let document = Document::parse(svg).unwrap();
    let texts = document.descendants().filter(|node| node.has_tag_name("text"));
    texts.filter(|node| node.text().is_some_and(|text| text.contains(words))).count()
}

#[test]
fn a_small_run_as_it_was_looked_at() {
    let svg = draw(&small()).unwrap();
    assert_laid_out(&svg);
    insta::assert_snapshot!(svg);
}

#[test]
fn the_same_run_gives_the_same_bytes() {
    assert_eq!(draw(&small()), draw(&small()));
}

#[test]
fn names_are_escaped_and_read_aloud() {
    let svg = draw(&small()).unwrap();
    let document = Document::parse(&svg).unwrap();
    let title = document.descendants().find(|node| node.has_tag_name("title")).unwrap();
    assert_eq!(title.text(), Some("Run along the route: Haul pit & mill, route <north>"));
    assert!(document.descendants().any(|node| node.has_tag_name("desc")));
}

#[test]
fn each_change_point_is_flagged_once() {
    let mut run = small();
    let svg = draw(&run).unwrap();
    assert_eq!(count(&svg, "START LOWERING ↓ spur"), 1);
    assert_eq!(count(&svg, "START RAISING ↑ road"), 1);
    assert_eq!(count(&svg, "from 4.50 km, complete by 4.00 km"), 1);
    for index in 0..60u8 {
        let km = f64::from(index) / 8.0;
        let name = format!("rung {index:02}");
        run.marks.push(mark(km, &name, "raise", Some(("laden", km + 0.5))));
    }
    let svg = draw(&run).unwrap();
    assert_laid_out(&svg);
    assert_eq!(count(&svg, "START "), 62);
    for index in 0..60 {
        assert_eq!(count(&svg, &format!("rung {index:02}:")), 1);
    }
}

#[test]
fn standing_is_told_not_drawn() {
    let svg = draw(&small()).unwrap();
    assert_eq!(count(&svg, "Standing: 5 min loading"), 1);
    assert_eq!(count(&svg, "waiting 3 min for tire pressures before moving off"), 1);
}

#[test]
fn a_run_that_cannot_be_drawn_is_refused_with_its_place() {
    let refused = |change: fn(&mut RunView)| {
        let mut run = small();
        change(&mut run);
        draw(&run).unwrap_err().to_string()
    };
    let message = refused(|run| run.samples[1].supply_kpa = f64::NAN);
    assert!(message.starts_with("the supply pressure, kPa, of the sample at 200 s is NaN"));
    let message = refused(|run| run.legs[0].surface = "ice".to_owned());
    assert!(message.starts_with("the surface of leg 'spur' is 'ice'; it must be one of: paved,"));
    let message = refused(|run| run.samples[0].tire_kpa.clear());
    assert_eq!(message, "the sample at 0 s has 0 tire pressures for 1 channels");
    let message = refused(|run| run.marks[2].load_state = None);
    assert!(message.starts_with("the load state of mark 'spur' is ''"));
    let message = refused(|run| run.samples.clear());
    assert!(message.starts_with("the run of haul 'pit & mill' has no samples"));
    let message = refused(|run| run.load_states[1] = "empty".to_owned());
    assert!(message.contains("both have the load state 'empty'"));
    let message = refused(|run| run.legs[1].to_km = 3.0);
    assert!(message.contains("the end, km, of leg 'road' is 3"));
}

fn name() -> impl Strategy<Value = String> {
    prop_oneof!["[a-z]{1,8}", ".{0,100}", "[W]{100}", Just("ab <&>\"' \u{0} \u{1f}".to_owned())]
}

fn extreme_mark() -> impl Strategy<Value = MarkView> {
    let kinds = prop::sample::select(vec!["landmark", "lay-by", "raise", "lower"]);
    let states = prop::sample::select(vec!["empty", "laden"]);
    (0.0..60.0f64, name(), kinds, states, prop::option::of(0.0..60.0f64)).prop_map(
        |(km, name, kind, state, reach_by_km)| MarkView {
            km,
            name,
            kind: kind.to_owned(),
            load_state: Some(state.to_owned()),
            reach_by_km,
        },
    )
}

fn extreme_sample(channels: usize) -> impl Strategy<Value = SampleView> {
    let pressures = prop::collection::vec(-100.0..1500.0f64, channels);
    let minima = prop::collection::vec(prop::option::of(0.0..1200.0f64), channels);
    let speeds = prop_oneof![Just(0.0), 0.0..120.0f64];
    let flags = (any::<bool>(), any::<bool>(), any::<bool>());
    (0.0..60.0f64, speeds, 0.0..140.0f64, 0.0..1200.0f64, pressures, minima, flags).prop_map(
        |(km, speed, cap_kmh, supply_kpa, tire_kpa, tire_minimum_kpa, flags)| SampleView {
            cap_kmh,
            changing: flags.0,
            compressor_loading: flags.1,
            supply_kpa,
            tire_kpa,
            tire_minimum_kpa,
            ..sample(0.0, km, if flags.2 { "laden" } else { "empty" }, speed)
        },
    )
}

fn extreme_run() -> impl Strategy<Value = RunView> {
    (0usize..=16).prop_flat_map(|channels| {
        let legs = prop::collection::vec((name(), 0.0..20.0f64, 0usize..7, 0.0..110.0f64), 0..15);
        let elevation = prop::collection::vec(-400.0..5000.0f64, 0..20);
        let marks = prop::collection::vec(extreme_mark(), 0..90);
        let direction = prop::sample::select(vec!["forward", "backward"]);
        let samples = prop::collection::vec(extreme_sample(channels), 1..60);
        let channels = prop::collection::vec(name(), channels);
        (legs, elevation, marks, direction, channels, samples, name()).prop_map(
            |(legs, elevation, marks, direction, channels, mut samples, haul)| {
                for (index, sample) in samples.iter_mut().enumerate() {
                    sample.time_s = 40.0 * index as f64;
                }
                let mut at = 0.0;
                let mut legs_placed = Vec::new();
                for (name, length, surface, limit) in legs {
                    let word = super::surface::SURFACES[surface].word;
                    let leg =
                        LegView { speed_limit_kmh: limit, ..leg(&name, at, at + length, word) };
                    at += length;
                    legs_placed.push(leg);
                }
                let elevation_km_m =
                    elevation.into_iter().enumerate().map(|(i, m)| (i as f64, m)).collect();
                RunView {
                    haul,
                    channels,
                    laden_direction: direction.to_owned(),
                    legs: legs_placed,
                    elevation_km_m,
                    marks,
                    samples,
                    ..small()
                }
            },
        )
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]
    #[test]
    fn nothing_leaves_the_page_and_no_word_lies_on_another(run in extreme_run()) {
        for profile in UnitProfile::ALL {
            let format = Format::new(profile, "en").unwrap();
            assert_laid_out(&run_strip(&run, &Texts::new("en").unwrap(), &format).unwrap());
        }
    }
}
