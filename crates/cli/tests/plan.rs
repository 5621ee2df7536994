//! The page of a plan, its document, its chart and its exit codes.

mod common;

use std::path::PathBuf;
use std::process::Command;
use std::sync::LazyLock;

use common::{Ran, airtide, airtide_in, edit, surveys, with_starter};
use serde_json::Value;

const PROFILES: [(&str, f64, f64); 3] =
    [("si", 1.0, 1.0), ("us", 6.894757293168361, 1.609344), ("metric-bar", 100.0, 1.0)];

#[test]
fn regress_the_page_in_every_profile() {
    let folder = with_starter();
    for (profile, ..) in PROFILES {
        let ran = airtide_in(folder.path(), &["plan", "fleet", "--units", profile]);
        insta::assert_snapshot!(format!("page-{profile}"), ran.out);
    }
}

/// Document and pages of every survey, one page a profile.
static PAGES: LazyLock<Vec<(Value, [Ran; 3])>> = LazyLock::new(|| {
    let of = |survey: PathBuf| {
        let survey = survey.to_str().unwrap();
        let page = |(profile, ..): (&str, f64, f64)| airtide(&["plan", survey, "--units", profile]);
        (airtide(&["plan", survey, "--json"]).json(), PROFILES.map(page))
    };
    surveys().into_iter().map(of).collect()
});

#[test]
fn no_page_is_wider_than_100_columns_or_short_of_a_text() {
    let marks = ["[caution-", "[limit-", "[plan-", "[why-", "[cells-", "[unit-", "NaN"];
    for (_, pages) in PAGES.iter() {
        for ran in pages {
            assert!(ran.code < 2, "{}", ran.err);
            for line in ran.out.lines() {
                assert!(line.chars().count() <= 100, "{line}");
                assert!(!marks.iter().any(|mark| line.contains(mark)), "{line}");
            }
        }
    }
}

/// Words in quotes, as the identifiers of documents are written, in lines of code that name them.
fn identifiers(code: &str) -> Vec<&str> {
    let names = code.lines().filter(|line| !line.contains("name(") && !line.contains("number("));
    names
        .flat_map(|line| line.split('"').skip(1).step_by(2))
        .filter(|word| {
            word.contains('-') || ["rollover", "ice", "bead", "deflection"].contains(word)
        })
        .filter(|word| word.chars().all(|c| c.is_ascii_lowercase() || c == '-'))
        .collect()
}

#[test]
fn every_caution_and_limit_of_the_documents_has_words() {
    let texts = language::Texts::new("en").unwrap();
    let keys: Vec<&str> = texts.keys().collect();
    let cautions = identifiers(include_str!("../../view/src/plan/caution.rs"));
    assert!(cautions.len() > 20 && cautions.contains(&"ice"), "{cautions:?}");
    for caution in cautions {
        assert!(keys.contains(&&*format!("caution-{caution}")), "no words for caution {caution}");
    }
    let ladder = include_str!("../../view/src/plan/ladder.rs");
    let (_, limits) = ladder.split_once("fn minimum_name").unwrap();
    let (limits, _) = limits.split_once("fn approval").unwrap();
    let limits = identifiers(limits);
    assert!(limits.len() > 10 && limits.contains(&"deflection"), "{limits:?}");
    for limit in limits {
        for key in [format!("limit-{limit}"), format!("limit-brief-{limit}")] {
            assert!(keys.contains(&key.as_str()), "no text {key}");
        }
    }
}

/// Cells as the page shows them: with a value to set, and not again where a chain state
/// changes nothing.
fn shown_cells(plan: &Value) -> Vec<&Value> {
    let cells: Vec<&Value> = plan["ladder"].as_array().unwrap().iter().collect();
    let mut blocks: Vec<Vec<&Value>> = Vec::new();
    for cell in cells {
        let same = |other: &Value| {
            other["load_state"] == cell["load_state"] && other["chain_state"] == cell["chain_state"]
        };
        match blocks.last_mut() {
            Some(last) if same(last[0]) => last.push(cell),
            _ => blocks.push(vec![cell]),
        }
    }
    let plain = |block: &[&Value]| -> Vec<Value> {
        let mut plain: Vec<Value> = block.iter().map(|cell| (*cell).clone()).collect();
        for cell in &mut plain {
            cell["chain_state"] = Value::Null;
        }
        plain
    };
    let mut kept: Vec<Vec<&Value>> = Vec::new();
    for block in blocks {
        if !kept.iter().any(|other| plain(other) == plain(&block)) {
            kept.push(block);
        }
    }
    kept.concat().into_iter().filter(|cell| !cell["set_kpa"].is_null()).collect()
}

/// Numbers of each line of the ladder that holds a cell with a value to set.
fn ladder_rows(page: &str) -> Vec<Vec<f64>> {
    let ladder = page.lines().skip_while(|line| *line != "Ladder");
    ladder
        .take_while(|line| *line != "What decided each number")
        .filter(|line| !line.trim_start().starts_with('-') && !line.contains('–'))
        .map(|line| {
            line.split("  ").filter_map(|word| word.trim().parse::<f64>().ok()).collect::<Vec<_>>()
        })
        .filter(|numbers| numbers.len() >= 4)
        .collect()
}

#[test]
fn a_shown_minimum_is_never_under_and_a_maximum_or_cap_never_above_the_plan() {
    let mut checked = 0;
    for (document, pages) in PAGES.iter() {
        let plans = document["plans"].as_array().unwrap();
        assert_eq!(plans.len(), 1, "one haul a survey keeps this test simple");
        for ((profile, kpa, kmh), Ran { out: page, .. }) in PROFILES.into_iter().zip(pages) {
            let cells = shown_cells(&plans[0]);
            let rows = ladder_rows(page);
            assert_eq!(rows.len(), cells.len(), "{profile}\n{page}");
            for (row, cell) in rows.iter().zip(cells) {
                let of = |key: &str| cell[key].as_f64().unwrap() / kpa;
                let [.., set, cold, lowest, highest] = row[..] else { unreachable!() };
                assert!(set >= of("set_kpa") * (1.0 - 1e-8), "{row:?} {cell}");
                assert!(cold >= of("pressure_kpa") * (1.0 - 1e-8), "{row:?} {cell}");
                assert!(lowest >= of("min_kpa") * (1.0 - 1e-8), "{row:?} {cell}");
                assert!(highest <= of("max_kpa") * (1.0 + 1e-8), "{row:?} {cell}");
                let own = plans[0]["controller_unit"].as_str().unwrap()
                    != ["kPa", "psi", "bar"][["si", "us", "metric-bar"]
                        .iter()
                        .position(|one| *one == profile)
                        .unwrap()];
                if row.len() == 5 + usize::from(own) {
                    let rungs = plans[0]["rungs"].as_array().unwrap();
                    let rung = rungs.iter().find(|rung| rung["name"] == cell["rung"]).unwrap();
                    let cap = rung["cap_kmh"].as_f64().unwrap() / kmh;
                    assert!(row[0] <= cap * (1.0 + 1e-8), "{row:?} {rung}");
                }
                checked += 1;
            }
        }
    }
    assert!(checked > 100, "only {checked} cells");
}

#[test]
fn the_document_has_the_keys_of_the_design() {
    let folder = with_starter();
    let document = airtide_in(folder.path(), &["plan", "fleet", "--json"]).json();
    assert_eq!(document["schema"], "airtide.plan/1");
    let plan = &document["plans"][0];
    let keys = |value: &Value, keys: &str| {
        for key in keys.split(' ') {
            assert!(value.get(key).is_some(), "no {key} in {value}");
        }
    };
    keys(plan, "haul rungs ladder change_points cycle effects cost cautions");
    keys(&plan["rungs"][0], "name cap_kmh hold_limit_min hold_limit_m");
    keys(
        &plan["ladder"][0],
        "channel load_state chain_state rung pressure_kpa set_kpa min_kpa min_governed_by \
         min_source min_runner_up max_kpa max_governed_by max_source stack approval deflection_pct",
    );
    keys(
        &plan["change_points"][0],
        "km load_state from_rung to_rung action change_time_s change_time_p90_s lead_m \
         reach_by_km cap_kmh",
    );
    keys(&plan["cycle"], "time_s time_added_s fuel_l compressor_loaded_s lowest_supply_kpa");
}

#[test]
fn units_never_change_the_document() {
    let folder = with_starter();
    let plain = airtide_in(folder.path(), &["plan", "fleet", "--json"]).out;
    for (profile, ..) in PROFILES {
        let ran = airtide_in(folder.path(), &["plan", "fleet", "--json", "--units", profile]);
        assert_eq!(ran.out, plain);
    }
}

#[test]
fn a_broken_limit_is_said_at_the_top_and_among_the_cautions_and_exits_1() {
    let quarry = surveys().into_iter().find(|path| path.ends_with("quarry")).unwrap();
    let ran = airtide(&["plan", quarry.to_str().unwrap()]);
    assert_eq!(ran.code, 1);
    assert!(ran.out.contains("DO NOT DRIVE THIS PLAN AS IT STANDS"));
    assert!(ran.out.contains("These break a limit."));
    assert!(ran.out.contains("OVERLOADED") || ran.out.contains("more than the"));
    insta::assert_snapshot!("page-broken", ran.out);
}

#[test]
fn color_adds_nothing_but_color() {
    let folder = with_starter();
    let plain = airtide_in(folder.path(), &["plan", "fleet", "--color", "never"]).out;
    let colored = airtide_in(folder.path(), &["plan", "fleet", "--color", "always"]).out;
    assert!(!plain.contains('\u{1b}'));
    assert!(colored.contains('\u{1b}'));
    let mut stripped = String::new();
    let mut inside = false;
    for c in colored.chars() {
        match c {
            '\u{1b}' => inside = true,
            'm' if inside => inside = false,
            c if !inside => stripped.push(c),
            _ => {}
        }
    }
    assert_eq!(stripped, plain);
    let no_color = Command::new(env!("CARGO_BIN_EXE_airtide"))
        .args(["plan", "fleet"])
        .current_dir(folder.path())
        .env("NO_COLOR", "1")
        .env("CLICOLOR_FORCE", "1")
        .output()
        .unwrap();
    assert!(!no_color.stdout.contains(&0x1b));
}

#[test]
fn a_chart_is_drawn_and_never_written_over_unasked() {
    let folder = with_starter();
    let chart = folder.path().join("run.svg");
    let call = ["plan", "fleet", "--chart", "run.svg", "--every", "30s"];
    let ran = airtide_in(folder.path(), &call);
    assert!(ran.err.contains("run.svg"), "{}", ran.err);
    let drawn = std::fs::read_to_string(&chart).unwrap();
    assert!(drawn.contains("<svg"));
    std::fs::write(&chart, "mine").unwrap();
    let again = airtide_in(folder.path(), &call);
    assert_eq!(again.code, 2);
    assert!(again.err.contains("--force"), "{}", again.err);
    assert_eq!(std::fs::read_to_string(&chart).unwrap(), "mine");
    airtide_in(folder.path(), &[&call[..], &["--force"]].concat());
    assert_eq!(std::fs::read_to_string(&chart).unwrap(), drawn);
    let left: Vec<_> = std::fs::read_dir(folder.path()).unwrap().collect();
    assert_eq!(left.len(), 2, "no temporary file stays behind");
}

#[test]
fn several_hauls_on_one_chart_are_a_wrong_call() {
    let folder = with_starter();
    let hauls = folder.path().join("fleet/hauls");
    std::fs::copy(hauls.join("stone.toml"), hauls.join("gravel.toml")).unwrap();
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--chart", "run.svg"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains("--haul") && ran.err.contains("gravel, stone"), "{}", ran.err);
    assert!(!folder.path().join("run.svg").exists());
    let both = airtide_in(folder.path(), &["plan", "fleet"]).out;
    assert!(both.contains("haul gravel") && both.contains("haul stone"));
    let one = airtide_in(folder.path(), &["plan", "fleet", "--haul", "stone"]).out;
    assert!(!one.contains("haul gravel"));
    let json = airtide_in(folder.path(), &["simulate", "fleet", "--json"]);
    assert_eq!(json.code, 2);
}

#[test]
fn a_haul_with_errors_is_left_out_and_the_others_are_planned() {
    let folder = with_starter();
    let hauls = folder.path().join("fleet/hauls");
    std::fs::copy(hauls.join("stone.toml"), hauls.join("gravel.toml")).unwrap();
    edit(&folder, "hauls/gravel.toml", "tractor-trailer", "tractor-trailor");
    let ran = airtide_in(folder.path(), &["plan", "fleet"]);
    assert_eq!(ran.code, 1);
    assert!(ran.err.contains("hauls/gravel.toml:"), "{}", ran.err);
    assert!(ran.out.contains("haul stone") && !ran.out.contains("haul gravel"));
    let wanted = airtide_in(folder.path(), &["plan", "fleet", "--haul", "gravel", "--json"]);
    assert_eq!(wanted.code, 1);
    assert_eq!(wanted.json()["plans"].as_array().unwrap().len(), 0);
    let unknown = airtide_in(folder.path(), &["plan", "fleet", "--haul", "sand"]);
    assert_eq!(unknown.code, 2);
    assert!(unknown.err.contains("stone"), "{}", unknown.err);
}

#[test]
fn a_language_without_texts_is_a_wrong_call_and_in_a_survey_a_note() {
    let folder = with_starter();
    let ran = airtide_in(folder.path(), &["plan", "fleet", "--language", "tlh"]);
    assert_eq!(ran.code, 2);
    edit(&folder, "survey.toml", "language = \"en\"", "language = \"tlh\"");
    let ran = airtide_in(folder.path(), &["plan", "fleet"]);
    assert!(ran.err.contains("no texts in 'tlh'"), "{}", ran.err);
    assert!(ran.out.contains("Pressure plan"));
}
