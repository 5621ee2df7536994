//! A tire for the tests of this crate: 11R22.5 with recalled catalog dimensions.

use quantity::{ColdPressure, Length, Mass, Speed, Volume};

use super::{AirRetention, Construction, RatedPoint, Rim, SizeClass, StandardsBody, Tire};

pub(crate) fn tire_11r22_5() -> Tire {
    Tire {
        name: "drive".into(),
        size: "11R22.5".into(),
        body: StandardsBody::Tra,
        size_class: SizeClass::Conventional,
        construction: Construction::Radial,
        air_retention: AirRetention::Tubeless,
        single: RatedPoint { load: Mass::from_kg(2800.0), pressure: ColdPressure::from_kpa(720.0) },
        dual: Some(RatedPoint {
            load: Mass::from_kg(2650.0),
            pressure: ColdPressure::from_kpa(720.0),
        }),
        load_index: 144,
        rated_speed: Speed::from_kmh(120.0),
        speed_symbol: "L".into(),
        diameter: Length::from_mm(1052.0),
        section_width: Length::from_mm(279.0),
        rim_diameter: Length::from_mm(571.5),
        static_loaded_radius: Some(Length::from_mm(493.0)),
        molded_maximum: ColdPressure::from_kpa(720.0),
        rim: Rim {
            maximum_pressure: ColdPressure::from_kpa(830.0),
            maximum_load: Mass::from_kg(3300.0),
        },
        air_volume: Volume::from_l(112.0),
        lowest_table_pressure: Some(ColdPressure::from_psi(70.0)),
        bead_minimum: None,
        maker_table: None,
        rolling_resistance: 0.0065,
    }
}
