//! Engine, air supply and controller of the truck.

use model::air::{
    AirSupply, BrakeUse, Compressor, CompressorInlet, Governor, ProtectionValve, Restriction,
};
use model::vehicle::{Controller, GaugeKind, Powertrain};
use quantity::{
    GaugePressure, Power, PressureDifference, RotationalSpeed, SonicConductance, Time, Volume,
    VolumeFlow,
};

use crate::file::{
    AirFile, ControllerFile, EngineFile, GaugeWord, InletWord, PressureUnitWord, RestrictionFile,
};

const SECONDS_AN_HOUR: f64 = 3600.0;

pub(super) fn powertrain(engine: &EngineFile) -> Powertrain {
    Powertrain {
        rated_power: Power::from_kw(engine.rated_power_kw),
        accessory_power: Power::from_kw(engine.accessory_power_kw),
        efficiency: engine.driveline_efficiency,
        working_speed: RotationalSpeed::from_rpm(engine.working_speed_rpm),
        descent_speed: RotationalSpeed::from_rpm(engine.descent_speed_rpm),
        idle_speed: RotationalSpeed::from_rpm(engine.idle_speed_rpm),
        high_idle_speed: RotationalSpeed::from_rpm(engine.high_idle_speed_rpm),
        fuel_l_per_kwh: engine.fuel_l_per_kwh,
        idle_fuel: VolumeFlow::from_l_per_s(engine.idle_fuel_l_h / SECONDS_AN_HOUR),
    }
}

pub(super) fn restriction(part: &RestrictionFile) -> Restriction {
    Restriction::new(SonicConductance::from_dm3_per_s_bar(part.c_dm3_s_bar), part.b)
        .expect("the schema holds C and b within the range of ISO 6358")
}

/// The supply; boost without a number was already reported and counts as none.
pub(super) fn supply(air: &AirFile) -> AirSupply {
    let compressor = &air.compressor;
    let inlet = match (compressor.inlet, compressor.boost_kpa) {
        (InletWord::Boosted, Some(boost)) => {
            CompressorInlet::Boosted { at_full_power: PressureDifference::from_kpa(boost) }
        }
        _ => CompressorInlet::Ambient,
    };
    AirSupply {
        compressor: Compressor {
            displacement: Volume::from_cm3(compressor.displacement_cm3),
            speed_ratio: compressor.speed_ratio,
            efficiency: compressor.efficiency,
            clearance: compressor.clearance,
            polytropic: compressor.polytropic,
            inlet,
        },
        governor: Governor {
            cut_in: GaugePressure::from_kpa(air.governor.cut_in_kpa),
            cut_out: GaugePressure::from_kpa(air.governor.cut_out_kpa),
        },
        service_volume: Volume::from_l(air.service_volume_l),
        brakes: BrakeUse {
            full_application: Volume::from_l(air.brakes.full_application_l),
            full_deceleration_g: air.brakes.full_deceleration_g,
            descent_applications_per_minute: air.brakes.descent_applications_a_minute,
            leakage: VolumeFlow::from_l_per_min(air.brakes.leakage_l_min),
        },
        protection: ProtectionValve {
            opens: GaugePressure::from_kpa(air.protection.opens_kpa),
            shuts: GaugePressure::from_kpa(air.protection.shuts_kpa),
            restriction: restriction(&RestrictionFile {
                c_dm3_s_bar: air.protection.c_dm3_s_bar,
                b: air.protection.b,
            }),
        },
        reserve_volume: air.reserve_volume_l.map(Volume::from_l),
        measured_delivery: 1.0,
    }
}

pub(super) fn controller(file: &ControllerFile) -> Controller {
    Controller {
        step: PressureDifference::from_kpa(file.step_kpa),
        unit: match file.unit {
            PressureUnitWord::Kpa => "kPa",
            PressureUnitWord::Psi => "psi",
            PressureUnitWord::Bar => "bar",
        },
        deadband: PressureDifference::from_kpa(file.deadband_kpa),
        gauge_error: PressureDifference::from_kpa(file.gauge_error_kpa),
        stored_rungs: file.stored_rungs,
        check_interval: Time::from_min(file.check_interval_min),
        gauge: match file.gauge {
            GaugeWord::Vented => GaugeKind::Vented,
            GaugeWord::Sealed => GaugeKind::Sealed,
        },
        brake_threshold: GaugePressure::from_kpa(file.brake_threshold_kpa),
        brake_resume: GaugePressure::from_kpa(file.brake_resume_kpa),
        channels_together: file.channels_together,
        compressor_limit: Time::from_min(file.compressor_limit_min),
    }
}
