//! Vertical stress in the ground.

use language::Kind;
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
    let at = |nu| -> Result<Vec<(&'static str, Stress)>, Failure> {
        Ok(match &args.dual_spacing {
            None => vec![("stress", contact.on_axis(depth, nu).map_err(Failure::input)?)],
            Some(spacing) => {
                let dual = contact.dual(spacing.value, depth, nu).map_err(Failure::input)?;
                vec![
                    ("stress", dual.worst()),
                    ("stress-under-tire", dual.under_tire),
                    ("stress-mid-gap", dual.mid_gap),
                ]
            }
        })
    };
    // The state of the soil is known to a class at best: one class firmer, one softer.
    let [softer, firmer] = [1.0, -1.0].map(|class| {
        let seen = (args.concentration + class).clamp(*SEEN.start(), *SEEN.end());
        Concentration::new(seen)
    });
    let (softer, firmer) =
        (at(softer.map_err(Failure::input)?)?, at(firmer.map_err(Failure::input)?)?);
    for (index, (name, stress)) in at(nu)?.into_iter().enumerate() {
        let ends = [firmer[index].1, softer[index].1];
        let (low, high) = (ends[0].min(ends[1]).min(stress), ends[0].max(ends[1]).max(stress));
        let shown = |stress, round| fine(&words.format, Kind::Pressure, stress, round).to_string();
        let band = [stress, low, high];
        answer.result_band(words, (name, "kpa"), band, Stress::as_kpa, shown);
    }
    answer.warn(words.text("calc-warn-soil-state"));
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
