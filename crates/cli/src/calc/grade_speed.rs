//! Highest steady speed on a grade.

use language::{Amount, Round};
use model::motion::{DRY_AIR, ROAD_LOAD, RoadLoad, air_density};
use model::tire::cold_warm::ambient_pressure;

use super::Answer;
use crate::args::GradeSpeedArgs;
use crate::outcome::Failure;
use crate::words::Words;

/// Percent under which a bare number was perhaps meant as a ratio.
const LIKE_A_RATIO: f64 = 0.3;

pub(super) fn answer(args: &GradeSpeedArgs, words: &Words) -> Result<Answer, Failure> {
    let format = &words.format;
    let near = Round::Nearest;
    let (rolling, grade) = (args.rolling_resistance, args.grade.value);
    if !(0.0..=0.5).contains(&rolling) {
        return Err(Failure::input(anyhow::anyhow!(
            "a rolling-resistance coefficient of {rolling} is outside 0 to 0.5; paved roads have \
             about 0.007, soft ground 0.1"
        )));
    }
    let mut answer = Answer::to("grade-speed");
    let mass = &args.mass;
    answer.put_in("mass", "kg", mass, mass.value.as_kg(), &format.load(mass.value, near));
    let power = &args.power;
    answer.put_in("power", "kw", power, power.value.as_kw(), &format.power(power.value, near));
    let shown = format.percent(grade.as_ratio(), 1, near);
    answer.put_in("grade", "pct", &args.grade, grade.as_percent(), &shown);
    answer.put_in_plain("rolling-resistance", rolling, rolling);
    let area = &args.drag_area;
    let square_meters = format.number(area.value.as_m2(), 1, near);
    let shown = Amount { number: square_meters, unit: "m²" };
    answer.put_in("drag-area", "m2", area, area.value.as_m2(), &shown);
    let altitude = &args.altitude;
    let shown = format.span(altitude.value, near);
    answer.put_in("altitude", "m", altitude, altitude.value.as_m(), &shown);
    let temperature = &args.temperature;
    let shown = format.temperature(temperature.value, near);
    answer.put_in("temperature", "c", temperature, temperature.value.as_celsius(), &shown);

    let ambient = ambient_pressure(altitude.value).map_err(Failure::input)?;
    let road = RoadLoad {
        mass: mass.value,
        rolling_resistance: rolling,
        grade: grade.as_ratio(),
        drag_area: area.value,
        air_density: air_density(ambient, temperature.value),
    };
    let found = road.steady_speed(power.value).map_err(Failure::input)?;
    let shown = format.speed(found, Round::Down);
    answer.result("speed", "kmh", found.as_kmh(), shown);
    let bare = !args.grade.text.ends_with('%');
    if bare && grade.as_percent() != 0.0 && grade.as_percent().abs() < LIKE_A_RATIO {
        answer.warn(words.fill("calc-warn-grade-percent", &[("grade", &args.grade.text)]));
    }
    answer.cite_key(ROAD_LOAD);
    answer.cite_key(DRY_AIR);
    Ok(answer)
}
