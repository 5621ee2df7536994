//! Highest steady speed on a grade.

use language::{Kind, Round};
use model::motion::{DRY_AIR, ROAD_LOAD, RoadLoad, air_density};
use model::tire::cold_warm::ambient_pressure;

use super::{Answer, repeated};
use crate::args::GradeSpeedArgs;
use crate::outcome::Failure;
use crate::page::fine;
use crate::words::Words;

/// Percent under which a bare number was perhaps meant as a ratio.
const LIKE_A_RATIO: f64 = 0.3;

pub(super) fn answer(args: &GradeSpeedArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let (rolling, grade) = (args.rolling_resistance, args.grade.value);
    if !(0.0..=0.5).contains(&rolling) {
        return Err(Failure::input(anyhow::anyhow!(
            "a rolling-resistance coefficient of {rolling} is outside 0 to 0.5; paved roads have \
             about 0.007, soft ground 0.1"
        )));
    }
    let mut answer = Answer::to("grade-speed");
    let mass = &args.mass;
    let shown = repeated(words, &mass.text, mass.value, Kind::Load);
    answer.put_in("mass", "kg", mass.value.as_kg(), shown);
    let power = &args.power;
    let shown = repeated(words, &power.text, power.value, Kind::Power);
    answer.put_in("power", "kw", power.value.as_kw(), shown);
    let shown = format.percent(grade.as_ratio(), 1, Round::Nearest).to_string();
    answer.put_in("grade", "pct", grade.as_percent(), shown);
    answer.put_in_plain("rolling-resistance", rolling, rolling);
    let area = &args.drag_area;
    answer.put_in("drag-area", "m2", area.value.as_m2(), area.text.clone());
    let altitude = &args.altitude;
    let shown = repeated(words, &altitude.text, altitude.value, Kind::Span);
    answer.put_in("altitude", "m", altitude.value.as_m(), shown);
    let temperature = &args.temperature;
    let shown = repeated(words, &temperature.text, temperature.value, Kind::Temperature);
    answer.put_in("temperature", "c", temperature.value.as_celsius(), shown);

    let ambient = ambient_pressure(altitude.value).map_err(Failure::input)?;
    let road = RoadLoad {
        mass: mass.value,
        rolling_resistance: rolling,
        grade: grade.as_ratio(),
        drag_area: area.value,
        air_density: air_density(ambient, temperature.value),
    };
    let found = road.steady_speed(power.value).map_err(Failure::input)?;
    let shown = fine(format, Kind::Speed, found, Round::Down);
    answer.result("speed", "kmh", found.as_kmh(), shown);
    let bare = !args.grade.text.ends_with('%');
    if bare && grade.as_percent() != 0.0 && grade.as_percent().abs() < LIKE_A_RATIO {
        answer.warn(words.fill("calc-warn-grade-percent", &[("grade", &args.grade.text)]));
    }
    answer.cite_key(ROAD_LOAD);
    answer.cite_key(DRY_AIR);
    Ok(answer)
}
