//! An invented air supply with a compressor of common size.

use model::air::{
    AirSupply, BrakeUse, Compressor, CompressorInlet, Governor, ProtectionValve, Restriction,
};
use quantity::{GaugePressure, SonicConductance, Volume, VolumeFlow};

/// A restriction from a conductance in dm³/(s bar) and a critical ratio.
///
/// # Panics
/// If they are out of range.
pub fn restriction(c: f64, b: f64) -> Restriction {
    Restriction::new(SonicConductance::from_dm3_per_s_bar(c), b).expect("in range")
}

/// Compressor of 636 cm³, governor 100/125 psi, 90 l of reservoirs.
pub fn supply() -> AirSupply {
    let psi = GaugePressure::from_psi;
    AirSupply {
        compressor: Compressor {
            displacement: Volume::from_cm3(636.0),
            speed_ratio: 1.0,
            efficiency: 0.95,
            clearance: 0.05,
            polytropic: 1.3,
            inlet: CompressorInlet::Ambient,
        },
        governor: Governor { cut_in: psi(105.0), cut_out: psi(130.0) },
        service_volume: Volume::from_l(90.0),
        brakes: BrakeUse {
            full_application: Volume::from_l(30.0),
            full_deceleration_g: 0.5,
            descent_applications_per_minute: 1.0,
            leakage: VolumeFlow::from_l_per_min(3.0),
        },
        protection: ProtectionValve {
            opens: psi(90.0),
            shuts: psi(75.0),
            restriction: restriction(6.0, 0.3),
        },
        reserve_volume: None,
        measured_delivery: 1.0,
    }
}
