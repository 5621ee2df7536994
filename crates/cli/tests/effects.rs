//! What a plan does and costs: the page, the document, and what is said of wrong or missing inputs.

mod common;

use std::path::{Path, PathBuf};

use common::{airtide, airtide_in, edit, with_starter};
use serde_json::Value;

fn demo(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn page(survey: &Path, flags: &[&str]) -> String {
    let ran = airtide(&[&["plan", survey.to_str().unwrap()], flags].concat());
    assert!(ran.code < 2, "{}", ran.err);
    let from = ran.out.find("What it changes").unwrap();
    let to = ran.out.find("\nCautions").unwrap();
    ran.out[from..to].to_owned()
}

fn plan(survey: &Path) -> Value {
    airtide(&["plan", survey.to_str().unwrap(), "--json"]).json()["plans"][0].clone()
}

#[test]
fn regress_effects_and_cost_of_the_demos() {
    insta::assert_snapshot!("windfarm", page(&demo("windfarm-rock"), &[]));
    insta::assert_snapshot!("ridge-logs", page(&demo("ridge-logs"), &[]));
}

#[test]
fn regress_the_whole_page_of_the_starter() {
    let folder = with_starter();
    insta::assert_snapshot!("starter-full", page(&folder.path().join("fleet"), &["--full"]));
}

/// Calls `look` for every band in a document.
fn bands(value: &Value, at: &str, look: &mut dyn FnMut(&str, [f64; 3])) {
    match value {
        Value::Object(map) => {
            let number = |key: &str| map.get(key).and_then(Value::as_f64);
            if let (Some(low), Some(middle), Some(high)) =
                (number("low"), number("middle"), number("high"))
            {
                look(at, [low, middle, high]);
            }
            for (key, value) in map {
                bands(value, key, look);
            }
        }
        Value::Array(list) => list.iter().for_each(|value| bands(value, at, look)),
        _ => {}
    }
}

#[test]
fn bands_of_the_document_keep_their_order_and_carry_their_unit() {
    for name in ["windfarm-rock", "ridge-logs"] {
        let plan = plan(&demo(name));
        let mut seen = 0;
        for part in ["effects", "effect_totals", "cost", "cost_rivals"] {
            assert!(!plan[part].as_array().unwrap().is_empty(), "{name}: {part}");
            bands(&plan[part], part, &mut |at, [low, middle, high]| {
                seen += 1;
                assert!(low <= middle && middle <= high, "{at}: {low} {middle} {high}");
                let unit = ["_ratio", "_pct", "_kpa", "_cm2", "_mm", "_l", "per_year", "capital"];
                let told = unit.iter().any(|end| at.ends_with(end)) || at == "present_value";
                assert!(told, "{at} has no unit");
            });
        }
        assert!(seen > 100, "{name}: {seen}");
    }
}

#[test]
fn rivals_stand_beside_the_plan_on_every_leg_and_in_total() {
    let plan = plan(&demo("windfarm-rock"));
    let ways = ["plan", "full-pressure", "constant-reduced", "less-load"];
    let of = |list: &Value| -> Vec<String> {
        list.as_array().unwrap().iter().map(|way| way["way"].as_str().unwrap().into()).collect()
    };
    assert_eq!(of(&plan["effect_totals"]), ways);
    for leg in plan["effects"].as_array().unwrap() {
        assert_eq!(of(&leg["ways"]), ways);
    }
}

#[test]
fn trials_that_found_nothing_stand_on_the_page_and_ride_is_in_percent_alone() {
    for name in ["windfarm-rock", "ridge-logs"] {
        let page = page(&demo(name), &[]);
        assert!(page.contains("no difference"), "{page}");
        assert!(page.contains("% less body vibration"), "{page}");
        assert!(!page.contains("m/s²"), "{page}");
        assert!(page.contains("no one percentage"), "{page}");
    }
}

#[test]
fn what_is_missing_is_named_with_file_and_key_and_goes_when_filled_in() {
    let folder = with_starter();
    let before = plan(&folder.path().join("fleet"));
    let missing = before["missing_inputs"].as_array().unwrap();
    let inputs: Vec<&str> = missing.iter().map(|one| one["input"].as_str().unwrap()).collect();
    assert_eq!(inputs, ["soil-strength", "pavement-layers", "money"]);
    for one in missing {
        assert!(folder.path().join("fleet").join(one["file"].as_str().unwrap()).is_file());
    }
    let uncomment = |file: &str, lines: &[&str]| {
        for line in lines {
            edit(&folder, file, &format!("# {line}"), line);
        }
    };
    let route = "routes/pit-to-yard.toml";
    uncomment(route, &["cone_index_kpa", "layers = [", "    { modulus", "]\n"]);
    let haul = format!("hauls/{}.toml", before["haul"].as_str().unwrap());
    // Without the commented season, payload and road, which are not of every haul.
    let path = folder.path().join("fleet").join(&haul);
    let text = std::fs::read_to_string(&path).unwrap();
    let (others, money) = text.split_once("# [money]").unwrap();
    let (needed, _) = money.split_once("# tire_saving").unwrap();
    std::fs::write(&path, format!("{others}[money]{}", needed.replace("\n# ", "\n"))).unwrap();
    let checked = airtide_in(folder.path(), &["check", "fleet"]);
    assert_eq!(checked.code, 0, "{}{}", checked.out, checked.err);
    let after = plan(&folder.path().join("fleet"));
    let asked: Vec<&str> = after["missing_inputs"]
        .as_array()
        .unwrap()
        .iter()
        .map(|one| one["input"].as_str().unwrap())
        .collect();
    assert!(!asked.iter().any(|one| inputs.contains(one)), "{asked:?}");
    assert!(asked.contains(&"road-cost"), "{asked:?}");
    assert!(after["effect_totals"][0]["fuel_l"]["middle"].as_f64().unwrap() > 1.0);
}

#[test]
fn wrong_ground_and_money_are_told_with_their_line() {
    let tells = |file: &str, from: &str, to: &str, words: &[&str]| {
        let folder = with_starter();
        edit(&folder, file, from, to);
        let ran = airtide_in(folder.path(), &["check", "fleet"]);
        assert_eq!(ran.code, 1, "{}", ran.out);
        let said = ran.out + &ran.err;
        for word in words.iter().chain([&file]) {
            assert!(said.contains(word), "no '{word}' in {said}");
        }
    };
    let route = "routes/pit-to-yard.toml";
    tells(route, "# cone_index_kpa = 900", "cone_index_kpa = 0 #", &["cone_index_kpa", "10"]);
    let negative = "layers = [{ modulus_mpa = 3000, poisson = 0.35, thickness_mm = -80 }, \
                    { modulus_mpa = 50, poisson = 0.4 }]\n# layers = [";
    tells(route, "# layers = [", negative, &["thickness_m"]);
    let haul = "hauls/stone.toml";
    let money = "[money]\ncurrency = \"EUR\"\ncapex = 1\nlife_years = 8\ninterest_pct = 8\n\
                 service_per_year = 1\ntrips_per_year = 1\ntruck_hours = 95\n\n# [money] ";
    tells(haul, "# [money] ", money, &["truck_hours", "truck_hour"]);
}

#[test]
fn the_chart_of_effects_is_drawn_and_never_written_over_unasked() {
    let folder = with_starter();
    let chart = folder.path().join("effects.svg");
    let call = ["plan", "fleet", "--effects-chart", "effects.svg"];
    let ran = airtide_in(folder.path(), &call);
    assert!(ran.code < 2, "{}", ran.err);
    let drawn = std::fs::read_to_string(&chart).unwrap();
    for word in ["What the plan changes", "one reduced pressure", "not told", "gravel road"] {
        assert!(drawn.contains(word), "no '{word}'");
    }
    std::fs::write(&chart, "mine").unwrap();
    assert_eq!(airtide_in(folder.path(), &call).code, 2);
    assert_eq!(std::fs::read_to_string(&chart).unwrap(), "mine");
    let forced = airtide_in(folder.path(), &[&call[..], &["--force"]].concat());
    assert!(forced.code < 2 && std::fs::read_to_string(&chart).unwrap() == drawn);
    let png = airtide_in(folder.path(), &["plan", "fleet", "--effects-chart", "effects.png"]);
    assert!(png.code == 2 && png.err.contains("--effects-chart"), "{}", png.err);
}
