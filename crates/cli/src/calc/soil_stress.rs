//! Vertical stress in the ground.

use language::{Kind, Round};
use model::ground::soil_stress::{CONCENTRATION, Concentration, Contact, POINT_LOAD};
use quantity::{Length, Stress};

use super::Answer;
use crate::args::SoilStressArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

/// What soils showed.
const SEEN: std::ops::RangeInclusive<f64> = 3.0..=6.0;
/// Above this depth tires press unevenly.
const NEAR_SURFACE: Length = Length::from_m(0.3);

pub(super) fn answer(args: &SoilStressArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("soil-stress");
    let (pressure, kpa) = (&args.contact_pressure, Stress::as_kpa);
    answer.put_in_given(words, "contact-pressure", "kpa", pressure, kpa, Kind::Pressure);
    let mm = Length::as_mm;
    answer.put_in_given(words, "contact-radius", "mm", &args.contact_radius, mm, Kind::Size);
    answer.put_in_given(words, "depth", "mm", &args.depth, mm, Kind::Size);
    answer.put_in_plain("concentration", args.concentration, args.concentration);
    if let Some(spacing) = &args.dual_spacing {
        answer.put_in_given(words, "dual-spacing", "mm", spacing, mm, Kind::Size);
    }

    let nu = Concentration::new(args.concentration).map_err(Failure::input)?;
    let contact = Contact::new(args.contact_pressure.value, args.contact_radius.value)
        .map_err(Failure::input)?;
    let depth = args.depth.value;
    let found = match &args.dual_spacing {
        None => vec![("stress", contact.on_axis(depth, nu).map_err(Failure::input)?)],
        Some(spacing) => {
            let dual = contact.dual(spacing.value, depth, nu).map_err(Failure::input)?;
            vec![
                ("stress", dual.worst()),
                ("stress-under-tire", dual.under_tire),
                ("stress-mid-gap", dual.mid_gap),
            ]
        }
    };
    for (name, stress) in found {
        let shown = fine(&words.format, Kind::Pressure, stress, Round::Nearest);
        answer.result(name, "kpa", stress.as_kpa(), shown);
    }
    if !SEEN.contains(&args.concentration) {
        answer.warn(words.text("calc-warn-concentration"));
    }
    if depth < NEAR_SURFACE {
        answer.warn(words.text("calc-warn-near-surface"));
    }
    answer.cite_key(POINT_LOAD);
    if nu != Concentration::ELASTIC {
        answer.cite_key(CONCENTRATION);
    }
    Ok(answer)
}
