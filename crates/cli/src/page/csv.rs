//! Simulated runs as CSV: one line a moment, columns named with their units.

use view::{CycleSpreadView, RunView, SampleView};

/// The runs one after another under one header. Runs with other channels get other columns, so
/// each begins with a header of its own where the channels differ.
pub fn csv_of(runs: &[RunView]) -> anyhow::Result<String> {
    let mut text = Vec::new();
    let mut channels: Option<&[String]> = None;
    for run in runs {
        let mut writer = csv::WriterBuilder::new().flexible(true).from_writer(&mut text);
        if channels != Some(&run.channels) {
            writer.write_record(header(&run.channels))?;
            channels = Some(&run.channels);
        }
        for sample in &run.samples {
            writer.write_record(record(&run.haul, sample))?;
        }
        writer.flush()?;
    }
    Ok(String::from_utf8(text)?)
}

fn header(channels: &[String]) -> Vec<String> {
    let fixed = [
        "haul",
        "time_s",
        "km",
        "load_state",
        "speed_kmh",
        "cap_kmh",
        "grade_pct",
        "rung",
        "changing",
        "supply_kpa",
        "compressor_loading",
        "fuel_l",
        "compressed_l",
    ];
    let mut columns: Vec<String> = fixed.map(str::to_owned).to_vec();
    for channel in channels {
        let name: String =
            channel.chars().map(|c| if c.is_alphanumeric() { c } else { '_' }).collect();
        columns.push(format!("{name}_tire_kpa"));
        columns.push(format!("{name}_tire_minimum_kpa"));
        columns.push(format!("{name}_tire_c"));
    }
    columns
}

fn record(haul: &str, sample: &SampleView) -> Vec<String> {
    let mut fields = vec![
        haul.to_owned(),
        format!("{:.2}", sample.time_s),
        format!("{:.4}", sample.km),
        sample.load_state.clone(),
        format!("{:.2}", sample.speed_kmh),
        format!("{:.2}", sample.cap_kmh),
        format!("{:.2}", sample.grade_pct),
        sample.rung.clone(),
        sample.changing.to_string(),
        format!("{:.2}", sample.supply_kpa),
        sample.compressor_loading.to_string(),
        format!("{:.4}", sample.fuel_l),
        format!("{:.1}", sample.compressed_l),
    ];
    let tires = sample.tire_kpa.iter().zip(&sample.tire_minimum_kpa).zip(&sample.tire_c);
    for ((pressure, minimum), temperature) in tires {
        fields.push(format!("{pressure:.2}"));
        fields.push(minimum.map_or_else(String::new, |minimum| format!("{minimum:.2}")));
        fields.push(format!("{temperature:.2}"));
    }
    fields
}

/// Sampled cycles: one line a cycle.
pub fn csv_of_cycles(views: &[CycleSpreadView]) -> anyhow::Result<String> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record([
        "haul",
        "cycle",
        "time_s",
        "waited_s",
        "fuel_l",
        "compressor_loaded_s",
        "lowest_supply_kpa",
    ])?;
    for view in views {
        for (number, cycle) in view.cycles.iter().enumerate() {
            writer.write_record([
                view.haul.clone(),
                (number + 1).to_string(),
                format!("{:.2}", cycle.time_s),
                format!("{:.2}", cycle.waited_s),
                format!("{:.4}", cycle.fuel_l),
                format!("{:.2}", cycle.compressor_loaded_s),
                format!("{:.2}", cycle.lowest_supply_kpa),
            ])?;
        }
    }
    Ok(String::from_utf8(writer.into_inner()?)?)
}
