//! Load and cold pressure of a tire, at its rated speed or under a speed cap.

use language::{Kind, Round};
use model::source::{Citation, Standing};
use model::tire::load_inflation::{
    Exponent, LoadInflationError, TRA_RADIAL, carried_load, required_pressure,
};
use model::tire::low_speed::{restricted_speed_load, restricted_speed_pressure};
use model::tire::r54::{MAKER_NEEDED_UNDER, load_only_backwards, r54_load};
use model::tire::{Construction, RatedPoint, SizeClass, StandardsBody};
use quantity::{ColdPressure, Mass, PressureDifference, Speed};

use super::{Answer, Given, TireLoad, repeated};
use crate::args::{LoadRule, TireLoadArgs};
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

/// What the restricted-speed rules look up besides load and pressure.
enum Rule {
    None,
    Tra { class: SizeClass, cap: Speed },
    R54 { load_index: u16, symbol: String, cap: Speed },
}

struct Request {
    rated: RatedPoint,
    exponent: Exponent,
    rule: Rule,
}

/// An answer from one of the rules.
struct Found {
    pressure: ColdPressure,
    load: Mass,
    allowance_pct: f64,
    addition: PressureDifference,
    under_usual_tables: bool,
    citation: Option<Citation>,
}

pub(super) fn answer(args: &TireLoadArgs, words: &Words) -> Result<Answer, Failure> {
    let request = Request::checked(args)?;
    let format = &words.format;
    let mut answer = Answer::to("tire-load");
    note_inputs(args, words, &mut answer);
    let found = match (&args.load, &args.pressure) {
        (Some(load), _) => request.pressure_for(load.value.0)?,
        (None, Some(pressure)) => request.load_at(pressure.value)?,
        (None, None) => return Err(Failure::call(anyhow::anyhow!("give --pressure or --load"))),
    };
    if args.load.is_some() {
        let shown = fine(format, Kind::Pressure, found.pressure, Round::Up);
        answer.result("pressure", "kpa", found.pressure.as_kpa(), shown);
    } else {
        let shown = fine(format, Kind::Load, found.load, Round::Down);
        answer.result("load", "kg", found.load.as_kg(), shown);
    }
    if !matches!(request.rule, Rule::None) {
        let pct = format.number(found.allowance_pct, 1, Round::Nearest);
        answer.result("load-allowance", "pct", found.allowance_pct, format!("{pct} %"));
        let shown = fine(format, Kind::Pressure, found.addition, Round::Up);
        answer.result("pressure-addition", "kpa", found.addition.as_kpa(), shown);
    }
    answer.cite(request.exponent.citation().clone());
    if let Some(citation) = found.citation {
        answer.cite(citation);
    }
    if found.under_usual_tables {
        answer.warn(words.text("calc-warn-under-tables"));
    }
    match &request.rule {
        Rule::Tra { cap, .. } if *cap > Speed::from_mph(65.0) => {
            answer.warn(words.text("calc-warn-faster-than-rated"));
        }
        Rule::R54 { cap, .. } => {
            answer.warn(words.text("calc-warn-load-only"));
            if *cap < MAKER_NEEDED_UNDER {
                answer.warn(words.text("calc-warn-maker-needed"));
            }
        }
        Rule::None | Rule::Tra { .. } => {}
    }
    Ok(answer)
}

fn note_inputs(args: &TireLoadArgs, words: &Words, answer: &mut Answer) {
    let shown = |load: &Given<TireLoad>| repeated(words, &load.text, load.value.0, Kind::Load);
    let load = &args.rated_load;
    answer.put_in("rated-load", "kg", load.value.0.as_kg(), shown(load));
    let pressure = &args.rated_pressure;
    let text = repeated(words, &pressure.text, pressure.value, Kind::Pressure);
    answer.put_in("rated-pressure", "kpa", pressure.value.as_kpa(), text);
    answer.put_in_plain("exponent", args.exponent, args.exponent);
    if let Some(load) = &args.load {
        answer.put_in("load", "kg", load.value.0.as_kg(), shown(load));
    }
    if let Some(pressure) = &args.pressure {
        let text = repeated(words, &pressure.text, pressure.value, Kind::Pressure);
        answer.put_in("pressure", "kpa", pressure.value.as_kpa(), text);
    }
    if let Some(speed) = &args.speed {
        let text = repeated(words, &speed.text, speed.value, Kind::Speed);
        answer.put_in("speed", "kmh", speed.value.as_kmh(), text);
    }
    if let Some(rule) = args.allowance {
        let name = match rule {
            LoadRule::TraConventional => "tra-conventional",
            LoadRule::TraMetric => "tra-metric",
            LoadRule::UnR54 => "un-r54",
        };
        answer.put_in_plain("allowance", name, name);
    }
    if let Some(symbol) = &args.speed_symbol {
        answer.put_in_plain("speed-symbol", symbol.as_str(), symbol);
    }
    if let Some(index) = args.load_index {
        answer.put_in_plain("load-index", index, index);
    }
}

impl Request {
    fn checked(args: &TireLoadArgs) -> Result<Self, Failure> {
        let wrong = |text: &str| Failure::call(anyhow::anyhow!("{text}"));
        let r54 = args.allowance == Some(LoadRule::UnR54);
        if !r54 && (args.speed_symbol.is_some() || args.load_index.is_some()) {
            return Err(wrong("--speed-symbol and --load-index belong to --allowance un-r54"));
        }
        let rule = match (args.allowance, &args.speed) {
            (Some(LoadRule::UnR54), Some(cap)) => match (&args.speed_symbol, args.load_index) {
                (Some(symbol), Some(load_index)) => {
                    Rule::R54 { load_index, symbol: symbol.clone(), cap: cap.value }
                }
                _ => {
                    return Err(wrong(
                        "--allowance un-r54 needs --speed-symbol and --load-index, as molded on \
                         the tire: for 154/150 K they are K and 154",
                    ));
                }
            },
            (Some(rule), Some(cap)) => {
                let class = match rule {
                    LoadRule::TraMetric => SizeClass::MetricOrWide,
                    _ => SizeClass::Conventional,
                };
                Rule::Tra { class, cap: cap.value }
            }
            _ => Rule::None,
        };
        let rated =
            RatedPoint { load: args.rated_load.value.0, pressure: args.rated_pressure.value };
        Ok(Self { rated, exponent: exponent(args.exponent).map_err(Failure::input)?, rule })
    }

    fn pressure_for(&self, load: Mass) -> Result<Found, Failure> {
        let (rated, exponent) = (self.rated, &self.exponent);
        match &self.rule {
            Rule::None => {
                let found = required_pressure(rated, load, exponent).map_err(Failure::input)?;
                Ok(Found::plain(found.pressure, load, found.under_usual_tables))
            }
            Rule::Tra { class, cap } => {
                let found = restricted_speed_pressure(rated, load, exponent, *class, *cap)
                    .map_err(Failure::input)?;
                Ok(Found {
                    allowance_pct: found.load_allowance_pct,
                    addition: found.pressure_addition,
                    citation: Some(found.citation),
                    ..Found::plain(found.pressure, load, found.under_usual_tables)
                })
            }
            Rule::R54 { load_index, symbol, cap } => {
                let found = load_only_backwards(rated, load, exponent, *load_index, symbol, *cap)
                    .map_err(Failure::input)?;
                Ok(Found {
                    allowance_pct: found.allowance.load_pct,
                    citation: Some(found.allowance.citation),
                    ..Found::plain(found.pressure, load, found.under_usual_tables)
                })
            }
        }
    }

    fn load_at(&self, pressure: ColdPressure) -> Result<Found, Failure> {
        let (rated, exponent) = (self.rated, &self.exponent);
        match &self.rule {
            Rule::None => {
                let found = carried_load(rated, pressure, exponent).map_err(Failure::input)?;
                Ok(Found::plain(pressure, found.load, found.under_usual_tables))
            }
            Rule::Tra { class, cap } => {
                let found = restricted_speed_load(rated, pressure, exponent, *class, *cap)
                    .map_err(Failure::input)?;
                Ok(Found {
                    allowance_pct: found.load_allowance_pct,
                    addition: found.pressure_addition,
                    citation: Some(found.citation),
                    ..Found::plain(pressure, found.load, found.under_usual_tables)
                })
            }
            Rule::R54 { load_index, symbol, cap } => {
                let found = r54_load(rated, pressure, exponent, *load_index, symbol, *cap)
                    .map_err(Failure::input)?;
                Ok(Found {
                    allowance_pct: found.allowance.load_pct,
                    citation: Some(found.allowance.citation),
                    ..Found::plain(pressure, found.load, found.under_usual_tables)
                })
            }
        }
    }
}

impl Found {
    fn plain(pressure: ColdPressure, load: Mass, under_usual_tables: bool) -> Self {
        Self {
            pressure,
            load,
            allowance_pct: 0.0,
            addition: PressureDifference::ZERO,
            under_usual_tables,
            citation: None,
        }
    }
}

/// The standards body's exponent where the number is one, else the number as given.
fn exponent(n: f64) -> Result<Exponent, LoadInflationError> {
    use Construction::{Bias, Radial};
    use StandardsBody::{Etrto, Tra};
    let known = [(Tra, Radial), (Tra, Bias), (Etrto, Radial)]
        .map(|(body, construction)| Exponent::of(body, construction));
    if let Some(known) = known.into_iter().find(|known| (known.n() - n).abs() < 1e-9) {
        return Ok(known);
    }
    let citation = Citation::of(TRA_RADIAL, Standing::Given);
    Exponent::given(n, citation.at("form of the law; the exponent is the one given"))
}
