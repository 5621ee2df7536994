//! The air in the network at one moment, and what has passed since the start.

use quantity::{AbsolutePressure, GaugePressure, Temperature, Volume};

use super::super::duty::Duty;
use super::super::reference_air::{P0, T0};
use super::{MAX_CHANNELS, Network, NetworkError, Surroundings};

/// Air that has passed since the start, as volumes in the reference atmosphere.
///
/// What the vessels hold has grown by compressed − brakes − vented − lines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Totals {
    pub(super) compressed: f64,
    pub(super) brakes: f64,
    pub(super) into_tires: f64,
    pub(super) vented: f64,
    pub(super) lines: f64,
}

impl Totals {
    const NONE: Self =
        Self { compressed: 0.0, brakes: 0.0, into_tires: 0.0, vented: 0.0, lines: 0.0 };

    /// Air the compressor has delivered.
    pub const fn compressed(&self) -> Volume {
        Volume::from_m3(self.compressed)
    }

    /// Air the brakes and leaks have taken.
    pub const fn brakes(&self) -> Volume {
        Volume::from_m3(self.brakes)
    }

    /// Air put into tires.
    pub const fn into_tires(&self) -> Volume {
        Volume::from_m3(self.into_tires)
    }

    /// Air let out of tires.
    pub const fn vented(&self) -> Volume {
        Volume::from_m3(self.vented)
    }

    /// Air that filled lines before self-closing valves opened; it is let go afterward.
    pub const fn lines(&self) -> Volume {
        Volume::from_m3(self.lines)
    }
}

/// The air in the network at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(clippy::struct_excessive_bools, reason = "independent switches, each its own valve")]
pub struct AirState {
    pub(super) service: f64,
    pub(super) reserve: f64,
    /// Temperature of the air in the reservoirs, K.
    pub(super) temperature: f64,
    /// Tire pressures, referred to the reference temperature: they follow the mass.
    pub(super) tires: [f64; MAX_CHANNELS],
    /// Target last ordered, gauge Pa; NaN while holding.
    pub(super) asked: [f64; MAX_CHANNELS],
    /// Channels that have reached their target, or cannot.
    pub(super) settled: u16,
    /// Channels whose lines are filled.
    pub(super) line_filled: u16,
    /// Channels whose self-closing valves stand shut against the order.
    pub(super) valves_shut: u16,
    pub(super) loading: bool,
    pub(super) protection_open: bool,
    pub(super) gate_open: bool,
    /// Pressure behind the protection valve over the service pressure: a starting guess.
    pub(super) manifold: f64,
    pub(super) has_reserve: bool,
    pub(super) lowest: f64,
    pub(super) closures: u32,
    pub(super) duty: Duty,
    pub(super) totals: Totals,
}

impl AirState {
    /// Pressure of the service reservoirs.
    pub const fn service(&self) -> AbsolutePressure {
        AbsolutePressure::from_pa(self.service)
    }

    /// Pressure of the reserve tank, if one is fitted.
    pub fn reserve(&self) -> Option<AbsolutePressure> {
        self.has_reserve.then(|| AbsolutePressure::from_pa(self.reserve))
    }

    /// Pressure of a channel's tires at this air temperature.
    ///
    /// # Panics
    /// If the network has no such channel number (16 and above).
    pub fn tire(&self, channel: usize, temperature: Temperature) -> AbsolutePressure {
        AbsolutePressure::from_pa(self.tires[channel] * (temperature.as_kelvin() / T0))
    }

    /// Puts a channel's tires at another pressure, as if by hand; no total counts this air.
    ///
    /// # Panics
    /// If the network has no such channel number (16 and above).
    pub fn set_tire(&mut self, channel: usize, p: AbsolutePressure, temperature: Temperature) {
        self.tires[channel] = p.as_pa() * (T0 / temperature.as_kelvin());
    }

    /// Whether the governor has the compressor loading.
    pub const fn compressor_loading(&self) -> bool {
        self.loading
    }

    /// Whether the protection valve is open.
    pub const fn protection_open(&self) -> bool {
        self.protection_open
    }

    /// Whether the controller takes air for tires at this brake pressure.
    pub const fn gate_open(&self) -> bool {
        self.gate_open
    }

    /// Whether the channel's last order is done: reached, or given up at shut wheel valves.
    pub const fn settled(&self, channel: usize) -> bool {
        self.settled & bit(channel) != 0
    }

    /// Whether the channel's self-closing valves stand shut against the order.
    pub const fn wheel_valves_shut(&self, channel: usize) -> bool {
        self.valves_shut & bit(channel) != 0
    }

    /// How long the compressor has been loaded.
    pub const fn duty(&self) -> Duty {
        self.duty
    }

    /// What has passed since the start.
    pub const fn totals(&self) -> Totals {
        self.totals
    }

    /// Lowest service pressure since the start, above the ambient of that moment.
    pub const fn lowest_service(&self) -> GaugePressure {
        GaugePressure::from_kpa(self.lowest / 1e3)
    }

    /// Starts the lowest service pressure and the longest compressor run afresh from here.
    pub fn forget_extremes(&mut self, ambient: AbsolutePressure) {
        self.lowest = self.service - ambient.as_pa();
        self.duty.forget_longest();
    }

    /// How often the protection valve has shut.
    pub const fn protection_closures(&self) -> u32 {
        self.closures
    }

    /// Reservoir air takes another temperature at constant mass.
    pub(super) fn bring_reservoirs_to(&mut self, temperature: f64) {
        #[expect(clippy::float_cmp, reason = "unchanged means the very same number")]
        if temperature != self.temperature {
            let ratio = temperature / self.temperature;
            self.service *= ratio;
            self.reserve *= ratio;
            self.temperature = temperature;
        }
    }
}

/// The channel's bit in a set of channels.
pub(super) const fn bit(channel: usize) -> u16 {
    1 << channel
}

impl Network {
    /// The network at rest: service pressure, reserve if fitted, each channel's tires as
    /// read at their temperature.
    ///
    /// Between its two pressures the governor starts unloaded, the protection valve and
    /// the brake gate start shut.
    ///
    /// # Errors
    /// [`NetworkError`] for pressures under ambient or not one for each channel.
    pub fn start(
        &self,
        service: GaugePressure,
        reserve: Option<GaugePressure>,
        tires: &[GaugePressure],
        around: &Surroundings,
    ) -> Result<AirState, NetworkError> {
        if tires.len() != self.channels.len() {
            let (given, wanted) = (tires.len(), self.channels.len());
            return Err(NetworkError::TireCount { given, wanted });
        }
        if reserve.is_some() != self.reserve_volume.is_some() {
            return Err(NetworkError::Reserve);
        }
        let absolute = |what, pressure: GaugePressure| {
            if pressure.as_kpa() < 0.0 {
                return Err(NetworkError::UnderAmbient { what, pressure });
            }
            Ok(pressure.to_absolute(around.ambient).as_pa())
        };
        let mut referred = [P0; MAX_CHANNELS];
        for (channel, &pressure) in tires.iter().enumerate() {
            let t = around.tire_temperature[channel].as_kelvin();
            referred[channel] = absolute("tire", pressure)? * (T0 / t);
        }
        let gauge = service.as_kpa() * 1e3;
        Ok(AirState {
            service: absolute("service reservoir", service)?,
            reserve: reserve.map_or(Ok(0.0), |p| absolute("reserve tank", p))?,
            temperature: around.temperature.as_kelvin(),
            tires: referred,
            asked: [f64::NAN; MAX_CHANNELS],
            settled: 0,
            line_filled: 0,
            valves_shut: 0,
            loading: gauge <= self.governor.low,
            protection_open: gauge >= self.protection.high,
            gate_open: self.gate.is_none_or(|gate| gauge >= gate.high),
            manifold: 0.9,
            has_reserve: reserve.is_some(),
            lowest: gauge,
            closures: 0,
            duty: Duty::NONE,
            totals: Totals::NONE,
        })
    }

    /// Air held in reservoirs and tires, as volume in the reference atmosphere.
    #[must_use]
    pub fn contents(&self, state: &AirState) -> Volume {
        let cooled = T0 / state.temperature;
        let reserve = self.reserve_volume.map_or(0.0, |volume| state.reserve * volume);
        let tires: f64 =
            self.channels.iter().zip(&state.tires).map(|(c, p)| c.tire_volume * p).sum();
        let reservoirs = (state.service * self.service_volume + reserve) * cooled;
        Volume::from_m3((reservoirs + tires) / P0)
    }
}
