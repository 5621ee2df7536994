//! The air of a whole truck.

use model::air::{
    AirSupply, BrakeUse, ChannelOrder, ChannelSpec, Compressor, CompressorInlet, Governor,
    MAX_CHANNELS, Network, PathElement, ProtectionValve, Restriction, Surroundings,
};
use quantity::{
    AbsolutePressure, GaugePressure, SonicConductance, Temperature, Time, Volume, VolumeFlow,
};

use crate::CaseError;
use crate::inputs::Inputs;
use crate::outputs::Outputs;

/// Tires behind one restriction, raised from a full reservoir with the compressor unloaded.
pub fn raise(inputs: &Inputs<'_>) -> Result<Outputs, CaseError> {
    let c: SonicConductance = inputs.quantity("conductance")?;
    let path = Restriction::new(c, 0.25).map_err(CaseError::refused)?;
    let channel = ChannelSpec {
        path: vec![PathElement::Part(path)],
        wheel_end: Vec::new(),
        open_wheel_ends: 1,
        exhaust: path,
        tire_volume: inputs.quantity("tire_volume")?,
        closes_below: None,
        line_volume: Volume::ZERO,
        conductance: 1.0,
    };
    let network =
        Network::new(&supply(inputs)?, None, &[channel], true).map_err(CaseError::refused)?;
    let temperature = Temperature::from_kelvin(293.15);
    let around = Surroundings {
        engine_speed: inputs.quantity("engine_speed")?,
        engine_load: 0.0,
        ambient: AbsolutePressure::from_psi(14.696),
        temperature,
        brake_draw: VolumeFlow::ZERO,
        tire_temperature: [temperature; MAX_CHANNELS],
    };
    let full = GaugePressure::from_psi(120.0);
    let mut state = network
        .start(full, None, &[inputs.quantity("from")?], &around)
        .map_err(CaseError::refused)?;
    let mut orders = [ChannelOrder::Hold; MAX_CHANNELS];
    orders[0] = ChannelOrder::Reach(inputs.quantity("to")?);
    let mut time = Time::ZERO;
    while !state.settled(0) {
        if time > Time::from_h(10.0) {
            return Err(CaseError::refused("not reached in ten hours"));
        }
        time += network.advance(&mut state, &around, &orders, Time::from_s(1.0)).elapsed;
    }
    Ok(Outputs::new()
        .quantity("time", time)
        .quantity("lowest_service", state.lowest_service())
        .number("closures", f64::from(state.protection_closures())))
}

fn supply(inputs: &Inputs<'_>) -> Result<AirSupply, CaseError> {
    let psi = GaugePressure::from_psi;
    let wide_open = SonicConductance::from_dm3_per_s_bar(1e6);
    Ok(AirSupply {
        compressor: Compressor {
            displacement: inputs.quantity("displacement")?,
            speed_ratio: 1.0,
            efficiency: 0.95,
            clearance: 0.05,
            polytropic: 1.3,
            inlet: CompressorInlet::Ambient,
        },
        governor: Governor { cut_in: psi(100.0), cut_out: psi(125.0) },
        service_volume: inputs.quantity("service_volume")?,
        brakes: BrakeUse {
            full_application: Volume::from_l(10.0),
            full_deceleration_g: 0.6,
            descent_applications_per_minute: 2.0,
            leakage: VolumeFlow::ZERO,
        },
        protection: ProtectionValve {
            opens: psi(85.0),
            shuts: psi(70.0),
            restriction: Restriction::new(wide_open, 0.5).map_err(CaseError::refused)?,
        },
        reserve_volume: None,
        measured_delivery: 1.0,
    })
}
