//! Long series over time, looked at through a window without losing a peak.

mod pyramid;
mod read;

use std::ops::Range;

pub use read::SeriesError;

use pyramid::Pyramid;

use crate::Simulated;
use model::haul_cycle::HaulCycle;

/// One column.
#[derive(Debug, Clone)]
pub struct Column {
    /// Name, with its unit as a suffix: `supply_kpa`.
    pub name: String,
    pyramid: Pyramid,
}

/// Columns over one clock.
#[derive(Debug, Clone)]
pub struct Series {
    time_s: Vec<f64>,
    columns: Vec<Column>,
}

/// Part of a series as a screen can show it: each bucket holds the lowest and the highest of
/// all its samples, so that the shortest peak is seen.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Window {
    /// First sample of each bucket.
    pub first: Vec<usize>,
    /// Its time, in seconds.
    pub time_s: Vec<f64>,
    /// Lowest of each bucket, by column; not a number where nothing is known.
    pub low: Vec<Vec<f32>>,
    /// Highest.
    pub high: Vec<Vec<f32>>,
}

impl Series {
    /// A series of columns as long as its clock.
    ///
    /// # Errors
    /// [`SeriesError`] for a clock that runs back and for columns of another length.
    pub fn new(time_s: Vec<f64>, columns: Vec<(String, Vec<f32>)>) -> Result<Self, SeriesError> {
        if let Some(row) = time_s.windows(2).position(|pair| pair[0].is_nan() || pair[1] < pair[0])
        {
            return Err(SeriesError::ClockRunsBack { row: row + 2 });
        }
        if let Some((name, _)) = columns.iter().find(|(_, values)| values.len() != time_s.len()) {
            return Err(SeriesError::Uneven { column: name.clone() });
        }
        let columns = columns
            .into_iter()
            .map(|(name, values)| Column { name, pyramid: Pyramid::new(values) });
        Ok(Self { columns: columns.collect(), time_s })
    }

    /// The run of a simulated haul.
    ///
    /// # Errors
    /// As [`Self::new`].
    pub fn of_run(haul: &HaulCycle, simulated: &Simulated) -> Result<Self, SeriesError> {
        let samples = simulated.trace.samples();
        #[expect(clippy::cast_possible_truncation, reason = "a screen shows no more digits")]
        let column = |name: String, value: &dyn Fn(&haul::Sample) -> f64| {
            (name, samples.iter().map(|sample| value(sample) as f32).collect::<Vec<f32>>())
        };
        let mut columns = vec![
            column("speed_kmh".into(), &|sample| sample.speed.as_kmh()),
            column("cap_kmh".into(), &|sample| sample.cap.as_kmh()),
            column("supply_kpa".into(), &|sample| sample.supply.as_kpa()),
            column("compressor_loading".into(), &|sample| f64::from(u8::from(sample.loading))),
            column("place_km".into(), &|sample| sample.chainage.as_km()),
            column("grade_pct".into(), &|sample| sample.grade * 100.0),
        ];
        for (index, channel) in haul.combination.channels.iter().enumerate() {
            let name = &channel.name;
            let pressure = column(format!("{name}_kpa"), &|sample| sample.tires[index].as_kpa());
            columns.push(pressure);
            columns.push(column(format!("{name}_c"), &|sample| {
                sample.tire_temperatures[index].as_celsius()
            }));
        }
        Self::new(samples.iter().map(|sample| sample.time.as_s()).collect(), columns)
    }

    /// Reads a table of comma-separated numbers whose first column is `time_s`.
    ///
    /// An empty field is a value that is not known. Columns that hold words are left out.
    ///
    /// # Errors
    /// [`SeriesError`] naming the line.
    pub fn read_csv(bytes: &[u8]) -> Result<Self, SeriesError> {
        let (time_s, columns) = read::csv(bytes)?;
        Self::new(time_s, columns)
    }

    /// Samples.
    pub fn len(&self) -> usize {
        self.time_s.len()
    }

    /// Whether it holds nothing.
    pub fn is_empty(&self) -> bool {
        self.time_s.is_empty()
    }

    /// Names of the columns.
    pub fn columns(&self) -> impl Iterator<Item = &str> {
        self.columns.iter().map(|column| column.name.as_str())
    }

    /// First and last time, in seconds.
    pub fn span_s(&self) -> Option<(f64, f64)> {
        Some((*self.time_s.first()?, *self.time_s.last()?))
    }

    /// Some columns between two times, in at most `buckets` buckets.
    ///
    /// One sample on either side goes along, so that lines reach the edges. Columns that are not
    /// there are left out.
    pub fn window(&self, columns: &[usize], from_s: f64, to_s: f64, buckets: usize) -> Window {
        let samples = self.between(from_s, to_s);
        let columns: Vec<&Column> =
            columns.iter().filter_map(|&index| self.columns.get(index)).collect();
        let buckets = buckets.clamp(1, samples.len().max(1));
        let mut window = Window {
            low: vec![Vec::with_capacity(buckets); columns.len()],
            high: vec![Vec::with_capacity(buckets); columns.len()],
            ..Window::default()
        };
        let edge = |bucket: usize| samples.start + samples.len() * bucket / buckets;
        for bucket in 0..buckets {
            let part = edge(bucket)..edge(bucket + 1);
            if part.is_empty() {
                continue;
            }
            window.first.push(part.start);
            window.time_s.push(self.time_s[part.start]);
            for (column, (low, high)) in
                columns.iter().zip(window.low.iter_mut().zip(window.high.iter_mut()))
            {
                let (lowest, highest) = column.pyramid.extremes(part.clone());
                low.push(lowest);
                high.push(highest);
            }
        }
        window
    }

    fn between(&self, from_s: f64, to_s: f64) -> Range<usize> {
        let start = self.time_s.partition_point(|&time| time < from_s).saturating_sub(1);
        let end = (self.time_s.partition_point(|&time| time <= to_s) + 1).min(self.time_s.len());
        start..end.max(start)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_single_sample_is_seen_from_a_million() {
        let count = 1_000_000;
        let mut values = vec![1.0f32; count];
        values[654_321] = 9.0;
        values[123_456] = -9.0;
        let time = (0..count).map(|index| index as f64).collect();
        let series = Series::new(time, vec![("supply_kpa".into(), values)]).unwrap();
        let whole = series.window(&[0], 0.0, 1e6, 900);
        assert_eq!(whole.first.len(), 900);
        assert!(whole.high[0].contains(&9.0) && whole.low[0].contains(&-9.0));
        let near = series.window(&[0], 654_320.0, 654_322.0, 900);
        assert_eq!(near.first, [654_319, 654_320, 654_321, 654_322, 654_323]);
        assert_eq!(near.high[0], [1.0, 1.0, 9.0, 1.0, 1.0]);
    }

    #[test]
    fn an_empty_series_has_an_empty_window() {
        let series = Series::new(Vec::new(), vec![("a".into(), Vec::new())]).unwrap();
        assert_eq!(series.window(&[0, 7], 0.0, 1.0, 10).first, Vec::<usize>::new());
        assert_eq!(series.span_s(), None);
    }
}
