//! Single values edited: every other byte stays.

use proptest::prelude::*;
use serde_json::{Value, json};
use survey::{Edit, EditError, edited};

const FILE: &str = "#:schema ../schemas/haul.json\n# the mill road\nroute = \"mill\"   # weighed\n\n[loading]\ntime_min = 35 # loader\nhigh_idle = false\n\n[[legs]]\nname = \"spur\"\nto_km = 4.0\nhold = { time_min = 60, distance_km = 5 }\n\n# between them\n[[legs]]\nname = \"county\" # gravel\nsurfaces = [\"gravel\", \"earth\"]\n[legs.ground]\ncbr_pct = 6\n\n[money]\ncurrency = \"dollars\"\n";

fn set(pointer: &str, value: Value) -> Edit {
    Edit::Set { pointer: pointer.to_owned(), value }
}

fn remove(pointer: &str) -> Edit {
    Edit::Remove { pointer: pointer.to_owned() }
}

fn append(pointer: &str, value: Value) -> Edit {
    Edit::Append { pointer: pointer.to_owned(), value }
}

fn after(edit: Edit) -> String {
    String::from_utf8(edited(FILE.as_bytes(), &[edit]).unwrap()).unwrap()
}

#[test]
fn a_value_is_replaced_and_nothing_else() {
    for (edit, old, new) in [
        (set("/loading/time_min", json!(40.5)), "time_min = 35 #", "time_min = 40.5 #"),
        (set("/route", json!("pit \"A\"")), "\"mill\" ", "'pit \"A\"' "),
        (set("/legs/0/hold/time_min", json!(50)), "time_min = 60", "time_min = 50"),
        (set("/legs/1/ground/cbr_pct", json!(5.0)), "cbr_pct = 6", "cbr_pct = 5.0"),
        (set("/legs/1/surfaces/1", json!("sand")), "\"earth\"", "\"sand\""),
        (set("/loading/high_idle", json!(true)), "high_idle = false", "high_idle = true"),
    ] {
        assert_eq!(after(edit), FILE.replace(old, new));
    }
}

#[test]
fn a_new_key_stands_behind_its_fellows() {
    for (edit, old, new) in [
        (set("/cycles", json!(3)), "# weighed\n", "# weighed\ncycles = 3\n"),
        (set("/loading/x", json!(1)), "idle = false\n", "idle = false\nx = 1\n"),
        (set("/legs/0/hold/x", json!(1)), "km = 5 }", "km = 5, x = 1 }"),
        (set("/legs/1/ground/x", json!(1)), "cbr_pct = 6\n", "cbr_pct = 6\nx = 1\n"),
        (set("/legs/1/rung", json!("a")), "\"earth\"]\n", "\"earth\"]\nrung = \"a\"\n"),
        (set("/legs/0/ground/x", json!(1)), "km = 5 }\n", "km = 5 }\n\n[legs.ground]\nx = 1\n"),
        (set("/unloading/x", json!(1)), "\"dollars\"\n", "\"dollars\"\n\n[unloading]\nx = 1\n"),
        (append("/legs/1/surfaces", json!("sand")), "\"earth\"]", "\"earth\", \"sand\"]"),
        (
            append("/legs", json!({ "name": "mill" })),
            "cbr_pct = 6\n",
            "cbr_pct = 6\n\n[[legs]]\nname = \"mill\"\n",
        ),
        (
            append("/lay_bys", json!({ "name": "top" })),
            "\"dollars\"\n",
            "\"dollars\"\n\n[[lay_bys]]\nname = \"top\"\n",
        ),
    ] {
        assert_eq!(after(edit.clone()), FILE.replace(old, new), "{edit:?}");
    }
}

#[test]
fn what_is_taken_out_takes_its_line_along() {
    for (edit, old, new) in [
        (remove("/loading/time_min"), "time_min = 35 # loader\n", ""),
        (remove("/legs/0/hold/time_min"), "time_min = 60, ", ""),
        (remove("/legs/0/hold/distance_km"), ", distance_km = 5", ""),
        (remove("/legs/1/surfaces/0"), "\"gravel\", ", ""),
        (remove("/legs/1/ground"), "[legs.ground]\ncbr_pct = 6\n", ""),
        (
            remove("/legs/1"),
            "[[legs]]\nname = \"county\" # gravel\nsurfaces = [\"gravel\", \"earth\"]\n[legs.ground]\ncbr_pct = 6\n",
            "",
        ),
    ] {
        assert_eq!(after(edit.clone()), FILE.replace(old, new), "{edit:?}");
    }
}

#[test]
fn what_cannot_be_edited_is_refused_with_the_reason() {
    let refused = |edit| edited(FILE.as_bytes(), &[edit]).unwrap_err();
    assert!(matches!(refused(remove("/nothing")), EditError::NoPlace(_)));
    assert!(matches!(refused(set("/loading", json!(1))), EditError::WholeTable(_)));
    assert!(matches!(refused(set("/route", Value::Null)), EditError::NoValue(_)));
    assert!(matches!(refused(set("/a/b/c", json!(1))), EditError::NoPlace(_)));
    assert!(matches!(edited(b"a = ", &[]), Err(EditError::NotEditable(_))));
    assert!(matches!(edited(b"\xff", &[]), Err(EditError::NotEditable(_))));
}

#[test]
fn a_byte_order_mark_and_line_ends_stay() {
    let file = "\u{feff}a = 1\r\n[b]\r\nc = 2\r\n";
    let edited = edited(file.as_bytes(), &[set("/b/d", json!(3)), set("/a", json!(9))]).unwrap();
    assert_eq!(edited, "\u{feff}a = 9\r\n[b]\r\nc = 2\r\nd = 3\r\n".as_bytes());
}

proptest! {
    #[test]
    fn every_number_comes_back_as_it_was_given(number in proptest::num::f64::NORMAL) {
        let edited = edited(b"a = 1 # kept\n", &[set("/a", json!(number))]).unwrap();
        let values = survey::written_values("x.toml", &edited).unwrap();
        prop_assert_eq!(values["a"].as_f64(), Some(number));
        prop_assert!(edited.ends_with(b" # kept\n"));
    }

    #[test]
    fn every_text_comes_back_as_it_was_given(text in "\\PC*") {
        let edited = edited(b"a = 1 # kept\n", &[set("/a", json!(text))]).unwrap();
        let values = survey::written_values("x.toml", &edited).unwrap();
        prop_assert_eq!(values["a"].as_str(), Some(text.as_str()));
    }
}
