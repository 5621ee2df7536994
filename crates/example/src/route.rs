//! Invented routes.

use model::route::{Jurisdiction, Landmark, LayBy, Leg, Profile, Route, Surface};
use quantity::{Length, Speed};

/// A plain private leg from one kilometer to another.
pub fn leg(name: &str, from_km: f64, to_km: f64, surface: Surface, kmh: f64) -> Leg {
    let rolling_resistance = match surface {
        Surface::Paved | Surface::Sealed => 0.008,
        Surface::Gravel => 0.018,
        Surface::Earth | Surface::Sand => 0.03,
        Surface::SoftGround => 0.035,
        Surface::SnowOrIce => 0.015,
    };
    Leg {
        name: name.into(),
        from: Length::from_km(from_km),
        to: Length::from_km(to_km),
        surface,
        rolling_resistance,
        speed_limit: Speed::from_kmh(kmh),
        crossfall: 0.02,
        curve_radius: None,
        jurisdiction: Jurisdiction::Private,
        rung: None,
        ground_maximum: None,
        raising_allowed: true,
        permit: None,
        ground: None,
    }
}

fn points(list: &[(f64, f64)]) -> Profile {
    Profile::new(list.iter().map(|&(km, m)| (Length::from_km(km), Length::from_m(m))).collect())
        .expect("chainage rises")
}

fn with(name: &str, legs: Vec<Leg>, profile: Profile) -> Route {
    Route {
        name: name.into(),
        legs,
        profile,
        lay_bys: vec![LayBy {
            name: "top pull-out".into(),
            at: Length::from_km(17.5),
            forward_only: None,
        }],
        landmarks: vec![Landmark { name: "bridge".into(), at: Length::from_km(9.0) }],
        descent_grade: 0.05,
        descent_length: Length::from_m(400.0),
        descent_approach: Length::from_m(500.0),
    }
}

/// 40 km: soft spur, gravel with a descent, highway.
pub fn route() -> Route {
    with(
        "spur to mill",
        vec![
            leg("spur", 0.0, 3.0, Surface::SoftGround, 20.0),
            leg("main gravel", 3.0, 18.0, Surface::Gravel, 50.0),
            leg("highway", 18.0, 40.0, Surface::Paved, 85.0),
        ],
        points(&[
            (0.0, 620.0),
            (3.0, 640.0),
            (8.0, 700.0),
            (9.0, 640.0),
            (12.0, 630.0),
            (18.0, 600.0),
            (40.0, 480.0),
        ]),
    )
}

/// 100 km of rolling country.
pub fn long_route() -> Route {
    let hills: Vec<(f64, f64)> = (0..=200)
        .map(|i| (f64::from(i) * 0.5, 400.0 + 25.0 * (f64::from(i) * 0.37).sin()))
        .collect();
    with(
        "long route",
        vec![
            leg("spur", 0.0, 5.0, Surface::SoftGround, 20.0),
            leg("main gravel", 5.0, 35.0, Surface::Gravel, 50.0),
            leg("highway", 35.0, 100.0, Surface::Paved, 85.0),
        ],
        points(&hills),
    )
}
