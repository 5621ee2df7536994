//! The columns a drive is judged by: slices of one number and one quality a second.

use series::Quality;

/// Why columns cannot be judged.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ColumnsError {
    /// Columns of unequal length.
    #[error("column '{column}' has {rows} rows, the first has {expected}; give them all as long")]
    Unequal {
        /// The column.
        column: &'static str,
        /// Its rows.
        rows: usize,
        /// Rows of the first.
        expected: usize,
    },
    /// Not as many air channels as the plan has.
    #[error("the columns hold {given} air channels, the plan has {wanted}")]
    Channels {
        /// Given.
        given: usize,
        /// Wanted.
        wanted: usize,
    },
}

/// Numbers with what each is worth.
#[derive(Debug, Clone, Copy)]
pub struct Column<'a> {
    /// The numbers, in the unit its place in [`Columns`] says.
    pub values: &'a [f64],
    /// One for each number.
    pub quality: &'a [Quality],
}

impl Column<'_> {
    /// The number of a row, where it was measured and is new.
    #[inline]
    pub(crate) fn get(&self, row: usize) -> Option<f64> {
        (self.quality[row] == Quality::Value).then_some(self.values[row])
    }
}

/// Index of the load state on the truck in each row.
#[derive(Debug, Clone, Copy)]
pub struct LoadColumn<'a> {
    /// Indices.
    pub values: &'a [u8],
    /// One for each.
    pub quality: &'a [Quality],
}

/// Columns of an air channel.
#[derive(Debug, Clone, Copy)]
pub struct ChannelColumns<'a> {
    /// Tire pressure as a vented gauge reads it, kPa.
    pub pressure_kpa: Column<'a>,
    /// Temperature of the tire air, °C, where it is measured.
    pub temperature_c: Option<Column<'a>>,
}

/// One row a second, without gaps; what was not there in a second has a quality that says so.
#[derive(Debug, Clone, Copy)]
pub struct Columns<'a> {
    /// Chainage along the route of the plan, km.
    pub chainage_km: Column<'a>,
    /// Speed, km/h.
    pub speed_kmh: Column<'a>,
    /// Load state.
    pub load_state: LoadColumn<'a>,
    /// Air channels, in the order of the plan.
    pub channels: &'a [ChannelColumns<'a>],
}

impl Columns<'_> {
    /// How many rows.
    pub fn rows(&self) -> usize {
        self.chainage_km.values.len()
    }

    pub(crate) fn check(&self, channels: usize) -> Result<(), ColumnsError> {
        if self.channels.len() != channels {
            return Err(ColumnsError::Channels { given: self.channels.len(), wanted: channels });
        }
        let expected = self.rows();
        let even = |column: &'static str, lengths: [usize; 2]| match lengths
            .into_iter()
            .find(|rows| *rows != expected)
        {
            Some(rows) => Err(ColumnsError::Unequal { column, rows, expected }),
            None => Ok(()),
        };
        let of = |column: &Column<'_>| [column.values.len(), column.quality.len()];
        even("chainage", of(&self.chainage_km))?;
        even("speed", of(&self.speed_kmh))?;
        even("load state", [self.load_state.values.len(), self.load_state.quality.len()])?;
        for channel in self.channels {
            even("pressure", of(&channel.pressure_kpa))?;
            if let Some(temperature) = &channel.temperature_c {
                even("temperature", of(temperature))?;
            }
        }
        Ok(())
    }
}
