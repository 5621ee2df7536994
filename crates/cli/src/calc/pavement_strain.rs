//! The strains that wear out a pavement.

use std::str::FromStr;

use language::{Kind, Round};
use model::road::layered::{HALF_SPACE, LAYERED, Layer, Pavement};
use model::road::pavement_strain::{Place, pavement_strain};
use quantity::{Force, GaugePressure, Length};
use serde_json::{Value, json};

use super::{Answer, Given, ratio};
use crate::args::PavementStrainArgs;
use crate::outcome::Failure;
use crate::words::Words;

/// A layer typed as modulus, Poisson's ratio and thickness, parted by commas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoadLayer(Layer);

impl FromStr for RoadLayer {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let parts: Vec<&str> = text.split(',').collect();
        let (modulus, poisson, thickness) = match parts[..] {
            [modulus, poisson] => (modulus, poisson, None),
            [modulus, poisson, thickness] => (modulus, poisson, Some(thickness)),
            _ => {
                return Err(format!(
                    "'{text}' is not a layer; write modulus, Poisson's ratio and thickness like \
                     3000MPa,0.35,0.15m, the last layer like 50MPa,0.4"
                ));
            }
        };
        let size = |text: &str| text.parse::<Length>().map_err(|error| error.to_string());
        Ok(Self(Layer {
            modulus: modulus.parse().map_err(|error: quantity::ParseError| error.to_string())?,
            poisson: ratio(poisson)?,
            thickness: thickness.map(size).transpose()?,
        }))
    }
}

pub(super) fn answer(args: &PavementStrainArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("pavement-strain");
    let load = args.wheel_load.value.0;
    let given = Given { text: args.wheel_load.text.clone(), value: load };
    answer.put_in_given(words, "wheel-load", "kn", &given, Force::as_kn, Kind::Force);
    let (pressure, kpa) = (&args.pressure, GaugePressure::as_kpa);
    answer.put_in_given(words, "pressure", "kpa", pressure, kpa, Kind::Pressure);
    if let Some(spacing) = &args.dual_spacing {
        answer.put_in_given(words, "dual-spacing", "mm", spacing, Length::as_mm, Kind::Size);
    }
    let typed: Vec<&str> = args.layers.iter().map(|layer| layer.text.as_str()).collect();
    let layers: Value = args.layers.iter().map(|layer| as_json(layer.value.0)).collect();
    answer.put_in_plain("layers", layers, typed.join("; "));

    let layers = args.layers.iter().map(|layer| layer.value.0).collect();
    let pavement = Pavement::new(layers).map_err(Failure::input)?;
    let dual = args.dual_spacing.as_ref().map(|spacing| spacing.value);
    let found =
        pavement_strain(load, args.pressure.value, dual, &pavement).map_err(Failure::input)?;
    for (name, worst) in [("asphalt-strain", found.asphalt), ("subgrade-strain", found.subgrade)] {
        let place = match worst.place {
            Place::UnderTire => words.text("calc-place-under-tire"),
            Place::MidGap => words.text("calc-place-mid-gap"),
        };
        let strain = worst.strain.as_microstrain();
        let number = words.format.number(strain, 1, Round::Nearest);
        answer.result(name, "ue", strain, format!("{number} µε, {place}"));
    }
    if found.overlapping {
        answer.warn(words.text("calc-warn-circles-overlap"));
    }
    answer.cite_key(LAYERED);
    answer.cite_key(HALF_SPACE);
    Ok(answer)
}

fn as_json(layer: Layer) -> Value {
    json!({
        "modulus_mpa": layer.modulus.as_mpa(),
        "poisson": layer.poisson,
        "thickness_mm": layer.thickness.map(Length::as_mm),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_layer_is_read_and_a_broken_one_explained() {
        let RoadLayer(layer) = "3000MPa, 0.35, 0.15m".parse().unwrap();
        assert!((layer.modulus.as_mpa() - 3000.0).abs() < 1e-9);
        assert!(layer.thickness.is_some_and(|h| (h.as_mm() - 150.0).abs() < 1e-9));
        assert!("50MPa,0.4".parse::<RoadLayer>().is_ok_and(|last| last.0.thickness.is_none()));
        for (text, says) in [
            ("3000MPa", "like 3000MPa,0.35,0.15m"),
            ("3000,0.35,0.15m", "no unit"),
            ("3000MPa,0.35,0.15", "no unit"),
            ("3000MPa,stiff,0.15m", "not a number"),
            ("3000MPa,0.35,0.15m,", "like 3000MPa"),
        ] {
            let error = text.parse::<RoadLayer>().unwrap_err();
            assert!(error.contains(says), "{text}: {error}");
        }
    }
}
