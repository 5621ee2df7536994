//! How fast the air supply takes every channel from one pressure to another.

use model::air::{ChannelOrder, MAX_CHANNELS, Surroundings};
use quantity::{GaugePressure, Time, VolumeFlow};

use crate::{StepperError, Truck};

/// Pressure of each channel against time, all channels worked as the controller works them.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangeCurve {
    times: Vec<f64>,
    /// By channel, as a vented gauge reads.
    pressures: Vec<Vec<f64>>,
}

/// Longest change that is followed.
const LONGEST: f64 = 4.0 * 3600.0; // s
const STEP: f64 = 2.0; // s

impl Truck {
    /// Follows a change on the road with the engine pulling, from governor cut-in, until every
    /// channel has reached its target or four hours have passed.
    ///
    /// # Errors
    /// [`StepperError::Air`] for pressures under ambient.
    pub fn change_curve(
        &self,
        from: &[GaugePressure],
        to: &[GaugePressure],
        supply: GaugePressure,
    ) -> Result<ChangeCurve, StepperError> {
        let around = Surroundings {
            engine_speed: self.working,
            engine_load: 0.5,
            ambient: self.ambient(),
            temperature: self.weather.ambient,
            brake_draw: VolumeFlow::from_m3_per_s(self.leakage),
            tire_temperature: [self.weather.ambient; MAX_CHANNELS],
        };
        let reserve = self.has_reserve.then_some(supply);
        let mut air = self.network.start(supply, reserve, from, &around)?;
        let mut orders = [ChannelOrder::Hold; MAX_CHANNELS];
        for (order, &target) in orders.iter_mut().zip(to) {
            *order = ChannelOrder::Reach(target);
        }
        let read = |air: &model::air::AirState, channel| {
            let absolute = air.tire(channel, self.weather.ambient);
            absolute.to_gauge(self.ambient()).as_kpa()
        };
        let mut times = vec![0.0];
        let mut pressures: Vec<Vec<f64>> =
            from.iter().map(|pressure| vec![pressure.as_kpa()]).collect();
        let mut t = 0.0;
        while t < LONGEST && (0..from.len()).any(|channel| !air.settled(channel)) {
            let advance = self.network.advance(&mut air, &around, &orders, Time::from_s(STEP));
            t += advance.elapsed.as_s();
            times.push(t);
            for (channel, trace) in pressures.iter_mut().enumerate() {
                trace.push(read(&air, channel));
            }
        }
        Ok(ChangeCurve { times, pressures })
    }
}

impl ChangeCurve {
    /// Time between two pressures of a channel along the curve; `None` where it does not get there.
    pub fn between(&self, channel: usize, a: GaugePressure, b: GaugePressure) -> Option<Time> {
        let at = |pressure: GaugePressure| self.moment(channel, pressure.as_kpa());
        Some(Time::from_s((at(b)? - at(a)?).max(0.0)))
    }

    fn moment(&self, channel: usize, pressure: f64) -> Option<f64> {
        let trace = &self.pressures[channel];
        let rising = trace[trace.len() - 1] >= trace[0];
        let past = |p: f64| if rising { p >= pressure - 0.01 } else { p <= pressure + 0.01 };
        let index = trace.iter().position(|&p| past(p))?;
        if index == 0 {
            return Some(0.0);
        }
        let (p0, p1) = (trace[index - 1], trace[index]);
        let (t0, t1) = (self.times[index - 1], self.times[index]);
        let share = if (p1 - p0).abs() > 0.0 { (pressure - p0) / (p1 - p0) } else { 1.0 };
        Some(t0 + (t1 - t0) * share.clamp(0.0, 1.0))
    }
}
