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

/// Document and pages of every survey, as usual and in full, a pair a profile.
static PAGES: LazyLock<Vec<(Value, [[Ran; 2]; 3])>> = LazyLock::new(|| {
    let of = |survey: PathBuf| {
        let survey = survey.to_str().unwrap();
        let page = |(profile, ..): (&str, f64, f64)| {
            [&["--units", profile][..], &["--units", profile, "--full"]]
                .map(|flags| airtide(&[&["plan", survey], flags].concat()))
        };
        (airtide(&["plan", survey, "--json"]).json(), PROFILES.map(page))
    };
    surveys().into_iter().map(of).collect()
});

#[test]
fn no_page_is_wider_than_100_columns_or_short_of_a_text() {
    let marks = [
        "[caution-",
        "[limit-",
        "[plan-",
        "[why-",
        "[cells-",
        "[unit-",
        "[effects-",
        "[cost-",
        "NaN",
    ];
    for (_, pages) in PAGES.iter() {
        for ran in pages.iter().flatten() {
            assert!(ran.code < 2, "{}", ran.err);
            for line in ran.out.lines() {
                assert!(line.chars().count() <= 100, "{line}");
                assert!(!marks.iter().any(|mark| line.contains(mark)), "{line}");
            }
        }
    }
}

/// Words in quotes that a piece of the view's code maps kinds to, after `=>` or in a tuple.
fn identifiers(code: &str) -> Vec<&str> {
    let names = code.lines().filter(|line| !line.contains("name(") && !line.contains("number("));
    names
        .flat_map(|line| line.split('"').skip(1).step_by(2))
        .filter(|word| word.chars().all(|c| c.is_ascii_lowercase() || c == '-'))
        .collect()
}

/// The body of a function in the view's code.
fn body<'a>(code: &'a str, name: &str) -> &'a str {
    let start = code.find(&format!("fn {name}")).unwrap_or_else(|| panic!("no fn {name}"));
    let end = code[start..].find("\n}").unwrap();
    &code[start..start + end]
}

#[test]
fn every_identifier_of_the_documents_has_words() {
    let texts = language::Texts::new("en").unwrap();
    let keys: Vec<&str> = texts.keys().collect();
    let cautions = include_str!("../../view/src/plan/caution.rs");
    let ladder = include_str!("../../view/src/plan/ladder.rs");
    let change = include_str!("../../view/src/plan/change.rs");
    let leg = include_str!("../../view/src/plan/effect/leg.rs");
    let band = include_str!("../../view/src/plan/effect/band.rs");
    let trial = include_str!("../../view/src/plan/effect/trial.rs");
    let cost = include_str!("../../view/src/plan/cost.rs");
    let cases = [
        (cautions, "fill", "caution-", 28),
        (ladder, "minimum_name", "limit-", 13),
        (ladder, "minimum_name", "limit-brief-", 13),
        (ladder, "maximum_name", "limit-", 5),
        (ladder, "added", "plan-stack-", 7),
        (ladder, "impossible", "why-", 10),
        (ladder, "impossible", "why-brief-", 10),
        (change, "refused", "plan-refused-", 2),
        (change, "laden_refused", "plan-laden-", 3),
        (leg, "way_name", "effects-way-", 4),
        (leg, "verdict_name", "effects-", 3),
        (leg, "uncertain_name", "effects-uncertain-", 5),
        (band, "input_name", "effects-give-", 12),
        (band, "kind_name", "effects-of-", 14),
        (trial, "effect", "effects-trial-of-", 8),
        (trial, "ground", "effects-trial-on-", 7),
        (cost, "payer", "cost-payer-", 3),
        (cost, "item", "cost-item-", 11),
        (cost, "figure", "cost-figure-", 17),
    ];
    for (code, function, prefix, least) in cases {
        let found = identifiers(body(code, function));
        assert!(found.len() >= least, "{function}: {found:?}");
        for identifier in found {
            let key = format!("{prefix}{identifier}");
            assert!(keys.contains(&key.as_str()), "no text {key}");
        }
    }
}

/// Cells in the order of the page in full: load and chain state that the haul drives first, rungs
/// it uses first; with a value to set, and not again where a chain state changes nothing.
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
    blocks.sort_by_key(|block| !driven(plan, block[0]));
    for block in &mut blocks {
        block.sort_by_key(|cell| cell["used"] != true);
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

/// Whether the haul drives in the load and chain state of a cell.
fn driven(plan: &Value, cell: &Value) -> bool {
    let state = &cell["load_state"];
    let usual = plan["ladder"]
        .as_array()
        .unwrap()
        .iter()
        .find(|other| other["load_state"] == *state)
        .unwrap();
    [&plan["empty_state"], &plan["laden_state"]].contains(&state)
        && usual["chain_state"] == cell["chain_state"]
}

/// Numbers of each line of the ladder that holds a cell with a value to set.
fn ladder_rows(page: &str) -> Vec<Vec<f64>> {
    let ladder = page.lines().skip_while(|line| *line != "Ladder");
    ladder
        .take_while(|line| *line != "Morning after")
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
        for ((profile, kpa, kmh), [brief, full]) in PROFILES.into_iter().zip(pages) {
            let cells = shown_cells(&plans[0]);
            let (page, rows) = (&full.out, ladder_rows(&full.out));
            assert_eq!(rows.len(), cells.len(), "{profile}\n{page}");
            let shown = |cell: &Value| driven(&plans[0], cell) && cell["used"] == true;
            let few: Vec<Vec<f64>> = rows
                .iter()
                .zip(&cells)
                .filter(|(_, cell)| shown(cell))
                .map(|(row, _)| row.clone())
                .collect();
            assert_eq!(ladder_rows(&brief.out), few, "{profile}\n{}", brief.out);
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
fn the_page_tells_how_many_cells_it_leaves_out_and_which_of_them_are_not_possible() {
    for (document, pages) in PAGES.iter() {
        let plan = &document["plans"][0];
        let cells = plan["ladder"].as_array().unwrap();
        let shown = |cell: &&Value| driven(plan, cell) && cell["used"] == true;
        let left_out = cells.iter().filter(|cell| !shown(cell)).count();
        let impossible =
            cells.iter().filter(|cell| !shown(cell) && cell["set_kpa"].is_null()).count();
        let [brief, full] = &pages[0];
        let flat = |page: &str| page.split_whitespace().collect::<Vec<_>>().join(" ");
        let told = flat(&brief.out);
        assert!(told.contains(&format!("{left_out} more cells are not shown")), "{told}");
        let possible = told.contains("All of them are possible.");
        assert_eq!(possible, impossible == 0, "{told}");
        assert!(possible || told.contains(&format!("{impossible} of them are not possible – ")));
        assert!(!flat(&full.out).contains("not shown"));
        assert!(full.out.lines().count() > brief.out.lines().count());
    }
}

#[test]
fn broken_limits_stand_under_the_title_and_among_the_cautions() {
    for (document, pages) in PAGES.iter() {
        let broken = document["plans"][0]["breaks_a_limit"] == true;
        let page = &pages[0][0].out;
        let (before, after) = page.split_once("\nAxle groups").unwrap();
        let at_top: Vec<&str> =
            before.lines().skip_while(|line| !line.starts_with("DO NOT DRIVE")).skip(1).collect();
        assert_eq!(!at_top.is_empty(), broken, "{page}");
        let cautions = after.split_once("\nCautions\n").unwrap().1;
        for line in at_top {
            assert!(cautions.lines().any(|caution| caution == line), "{line}");
        }
    }
}

#[test]
fn the_demos_end_as_their_stories_say() {
    let broken = |name: &str| -> Vec<String> {
        let survey = surveys().into_iter().position(|path| path.ends_with(name)).unwrap();
        let (document, pages) = &PAGES[survey];
        let cautions = document["plans"][0]["cautions"].as_array().unwrap();
        let broken = cautions.iter().filter(|caution| caution["breaks_a_limit"] == true);
        let broken: Vec<String> =
            broken.map(|caution| caution["caution"].as_str().unwrap().to_owned()).collect();
        assert_eq!(pages[0][0].code, i32::from(!broken.is_empty()));
        broken
    };
    assert!(broken("windfarm-rock").is_empty());
    assert_eq!(broken("ridge-logs"), ["lead-does-not-fit"]);
}

#[test]
fn noise_of_sums_is_zero_in_the_document() {
    fn small(value: &Value, key: &str, found: &mut Vec<String>) {
        match value {
            Value::Number(number) => {
                let x = number.as_f64().unwrap();
                if (x != 0.0 && x.abs() < 1e-6) || (x == 0.0 && x.is_sign_negative()) {
                    found.push(format!("{key}: {number}"));
                }
            }
            Value::Array(values) => values.iter().for_each(|value| small(value, key, found)),
            Value::Object(values) => {
                values.iter().for_each(|(key, value)| small(value, key, found));
            }
            _ => {}
        }
    }
    for (document, _) in PAGES.iter() {
        let mut found = Vec::new();
        for part in ["change_points", "laden_change", "cycle"] {
            small(&document["plans"][0][part], part, &mut found);
        }
        assert!(found.is_empty(), "{found:?}");
    }
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
