//! What each effect rests on.

use model::ground::{
    adhesion, gravel, rolling_resistance, rut_soil, soil_stress, washboard, wheel_pull,
};
use model::road::{layered, pavement_life};
use model::source::{Citation, Key, Standing};
use model::tire::{deflection, duals, footprint, ride, stiffness, tkph, warm_up};

/// A kind of effect.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Kind {
    /// Patch and pressure in it.
    Contact,
    /// Stress at 0.3 m.
    StressBelow,
    /// Rut of aggregate.
    Gravel,
    /// Rut in soil.
    Soil,
    /// Gap between duals.
    Gap,
    /// Heat load of a tire against the maker's rating.
    Tkph,
    /// Spread of climb and resistance.
    Spread,
    /// Washboard.
    Washboard,
    /// Strains and life of a pavement.
    Pavement,
    /// Climb by soil and by grip.
    Climb,
    /// Descent by grip.
    Descent,
    /// Rolling resistance and fuel.
    Rolling,
    /// Heat in the tire.
    Heat,
    /// Ride.
    Ride,
    /// Wind-up between driven axles.
    WindUp,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 15] = [
        Self::Contact,
        Self::StressBelow,
        Self::Gravel,
        Self::Soil,
        Self::Gap,
        Self::Tkph,
        Self::Spread,
        Self::Washboard,
        Self::Pavement,
        Self::Climb,
        Self::Descent,
        Self::Rolling,
        Self::Heat,
        Self::Ride,
        Self::WindUp,
    ];

    /// What it rests on, the weakest not left out.
    pub fn citations(self) -> Vec<Citation> {
        use Standing::{CommonPractice, FromMemory, Read};
        let rests = |on: &[(Key, Standing)]| {
            on.iter().map(|(key, standing)| Citation::of(*key, *standing)).collect()
        };
        match self {
            Self::Contact => rests(&[
                (footprint::DIRTY_PRINTS, Read),
                (stiffness::RHYNE, FromMemory),
                (footprint::PATCH_SHAPE, FromMemory),
                (deflection::LOAD_DEFLECTION, Read),
            ]),
            Self::StressBelow => rests(&[
                (soil_stress::POINT_LOAD, Read),
                (soil_stress::CONCENTRATION, FromMemory),
                (footprint::WIDE_TIRES, Read),
            ]),
            Self::Gravel => {
                rests(&[(gravel::AGGREGATE_RUT, FromMemory), (gravel::MEASURED_GAIN, Read)])
            }
            Self::Soil => {
                rests(&[(rut_soil::FIRST_PASS, FromMemory), (rut_soil::PASSES, FromMemory)])
            }
            Self::Gap => rests(&[(duals::BULGE, FromMemory)]),
            Self::Tkph => rests(&[
                (tkph::TKPH, Read),
                (tkph::TKPH_DISTANCE, FromMemory),
                (tkph::TKPH_AMBIENT, Read),
            ]),
            Self::Spread => rests(&[(MOISTURE, FromMemory)]),
            Self::Washboard => {
                rests(&[(washboard::SCREEN, CommonPractice), (washboard::UNLOADED_TRUCKS, Read)])
            }
            Self::Pavement => rests(&[
                (layered::LAYERED, CommonPractice),
                (pavement_life::ASPHALT_INSTITUTE, Read),
                (pavement_life::US_ARMY, Read),
            ]),
            Self::Climb => rests(&[
                (wheel_pull::BRIXIUS, Read),
                (wheel_pull::MACLAURIN, FromMemory),
                (wheel_pull::GEE_CLOUGH, Read),
                (adhesion::GENERAL, Read),
            ]),
            Self::Descent => rests(&[(adhesion::GENERAL, Read), (adhesion::SNOW_AND_ICE, Read)]),
            Self::Rolling => rests(&[
                (warm_up::ROLLING_RESISTANCE_PRESSURE, Read),
                (rolling_resistance::PENETRATION_RULE, Read),
            ]),
            Self::Heat => rests(&[(warm_up::HEAT_BALANCE, CommonPractice)]),
            Self::Ride => rests(&[
                (ride::QUARTER_TRUCK, FromMemory),
                (ride::WEIGHTING, Read),
                (ride::LOG_TRUCKS, Read),
            ]),
            Self::WindUp => rests(&[(WIND_UP, CommonPractice)]),
        }
    }
}

/// Strength over moisture.
pub const MOISTURE: Key = Key("ci-rci-moisture");
/// Rolling radius against deflection.
pub const WIND_UP: Key = Key("rolling-radius-practice");
