//! Layered ground against an independent solution: Love's function with growing waves, one dense
//! system for all layers, solved with as many digits as that takes.
//!
//! `validation/reference/layered_elastic.py` makes the rows, with all their inputs.

use std::fs;
use std::path::Path;

use model::road::layered::{Accuracy, Depth, Layer, Pavement, Point, Response, Wheel, respond};
use model::road::strain::Strain;
use quantity::{Force, Length, Stress};
use serde_json::Value;

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or_else(|| panic!("no number '{key}' in {value}"))
}

fn pavement(layers: &Value) -> Pavement {
    let layer = |parts: &Value| Layer {
        modulus: Stress::from_mpa(parts[0].as_f64().unwrap()),
        poisson: parts[1].as_f64().unwrap(),
        thickness: parts[2].as_f64().map(Length::from_m),
    };
    Pavement::new(layers.as_array().unwrap().iter().map(layer).collect()).unwrap()
}

fn depth(row: &Value) -> Depth {
    let layer = usize::try_from(row["layer"].as_u64().unwrap()).unwrap();
    match row["face"].as_str().unwrap() {
        "bottom" => Depth::BottomOf(layer),
        "top" => Depth::TopOf(layer),
        _ => Depth::At(Length::from_m(number(row, "depth_m"))),
    }
}

/// Ours and theirs in the same units, each kind with its own scale.
fn largest_error(row: &Value, ours: &Response) -> f64 {
    let theirs = |keys: &[&str]| keys.iter().map(|key| number(row, key)).collect::<Vec<_>>();
    let strain = &ours.strain;
    let stress = &ours.stress;
    let groups = [
        (
            theirs(&["exx", "eyy", "ezz", "exy"]),
            [strain.xx, strain.yy, strain.zz, strain.xy].map(Strain::as_ratio).to_vec(),
        ),
        (theirs(&["szz", "sxz"]), [stress.zz, stress.xz].map(Stress::as_mpa).to_vec()),
        (theirs(&["uz"]), vec![ours.displacement[2].as_m()]),
    ];
    let error = |(theirs, ours): &(Vec<f64>, Vec<f64>)| {
        let scale = theirs.iter().fold(0.0_f64, |most, value| most.max(value.abs()));
        let off = theirs.iter().zip(ours).map(|(a, b)| (a - b).abs() / scale);
        off.fold(0.0, f64::max)
    };
    groups.iter().map(error).fold(0.0, f64::max)
}

fn worst(accuracy: Accuracy) -> (usize, f64, String) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../validation/reference/layered_elastic.json");
    let file: Value = serde_json::from_str(&fs::read_to_string(path).unwrap()).unwrap();
    let rows = file["rows"].as_array().unwrap();
    let mut worst = (0.0, String::new());
    for row in rows {
        let pavement = pavement(&file["grounds"][row["ground"].as_str().unwrap()]);
        let wheel = |place: &Value| Wheel {
            x: Length::from_m(place[0].as_f64().unwrap()),
            y: Length::from_m(place[1].as_f64().unwrap()),
            load: Force::from_kn(number(&file, "load_kn")),
            pressure: Stress::from_kpa(number(row, "pressure_kpa")),
        };
        let wheels: Vec<Wheel> = file["wheels_m"].as_array().unwrap().iter().map(wheel).collect();
        let point = Point {
            x: Length::from_m(number(row, "x_m")),
            y: Length::from_m(number(row, "y_m")),
            depth: depth(row),
        };
        let found = respond(&pavement, &wheels, &[point], accuracy).unwrap()[0];
        let error = largest_error(row, &found);
        if error > worst.0 {
            worst = (error, row.to_string());
        }
    }
    (rows.len(), worst.0, worst.1)
}

#[test]
fn every_row_is_met_to_eight_digits() {
    let (rows, error, row) = worst(Accuracy::Fine);
    assert!(rows > 100, "{rows}");
    assert!(error < 1e-8, "{error:e}: {row}");
}

#[test]
fn the_screen_meets_every_row_to_a_ten_thousandth() {
    let (_, error, row) = worst(Accuracy::Screen);
    assert!(error < 1e-4, "{error:e}: {row}");
}
