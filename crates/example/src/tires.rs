//! Two invented tire models with ratings of common sizes.

use model::tire::{AirRetention, Construction, RatedPoint, Rim, SizeClass, StandardsBody, Tire};
use quantity::{ColdPressure, Length, Mass, Speed, Volume};

/// A TRA-rated 11R22.5, load range G (ratings as in the trade's tables).
pub fn us_dual() -> Tire {
    Tire {
        name: "Example 11R22.5".into(),
        size: "11R22.5".into(),
        body: StandardsBody::Tra,
        size_class: SizeClass::Conventional,
        construction: Construction::Radial,
        air_retention: AirRetention::Tubeless,
        single: RatedPoint { load: Mass::from_lb(6175.0), pressure: ColdPressure::from_psi(105.0) },
        dual: Some(RatedPoint {
            load: Mass::from_lb(5840.0),
            pressure: ColdPressure::from_psi(105.0),
        }),
        load_index: 144,
        rated_speed: Speed::from_kmh(120.0),
        speed_symbol: "L".into(),
        diameter: Length::from_mm(1052.0),
        section_width: Length::from_mm(279.0),
        rim_diameter: Length::from_mm(571.5),
        static_loaded_radius: Some(Length::from_mm(493.0)),
        molded_maximum: ColdPressure::from_psi(105.0),
        rim: Rim {
            maximum_pressure: ColdPressure::from_psi(120.0),
            maximum_load: Mass::from_lb(7400.0),
        },
        air_volume: Volume::from_l(112.0),
        lowest_table_pressure: Some(ColdPressure::from_psi(70.0)),
        bead_minimum: None,
        maker_table: None,
        rolling_resistance: 0.0065,
    }
}

/// An ETRTO-rated 385/65R22.5 single.
pub fn metric_single() -> Tire {
    Tire {
        name: "Example 385/65R22.5".into(),
        size: "385/65R22.5".into(),
        body: StandardsBody::Etrto,
        size_class: SizeClass::MetricOrWide,
        single: RatedPoint { load: Mass::from_kg(4500.0), pressure: ColdPressure::from_kpa(900.0) },
        dual: None,
        load_index: 160,
        rated_speed: Speed::from_kmh(110.0),
        speed_symbol: "K".into(),
        diameter: Length::from_mm(1072.0),
        section_width: Length::from_mm(389.0),
        static_loaded_radius: Some(Length::from_mm(499.0)),
        molded_maximum: ColdPressure::from_kpa(900.0),
        rim: Rim {
            maximum_pressure: ColdPressure::from_kpa(1000.0),
            maximum_load: Mass::from_kg(5000.0),
        },
        air_volume: Volume::from_l(166.0),
        ..us_dual()
    }
}
