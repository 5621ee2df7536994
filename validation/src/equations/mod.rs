//! The equations under test, by id.

mod air;
mod road;
mod rules;
mod tire;
mod truck;

use crate::CaseError;
use crate::inputs::Inputs;
use crate::outputs::Outputs;

/// Takes the inputs of a case to the function under test and hands back its results.
pub type Evaluate = fn(&Inputs<'_>) -> Result<Outputs, CaseError>;

/// An equation of the project.
#[derive(Debug, Clone, Copy)]
pub struct Equation {
    /// Its name in case files.
    pub id: &'static str,
    /// What it is, for the page.
    pub name: &'static str,
    /// The way to the function.
    pub evaluate: Evaluate,
}

const fn equation(id: &'static str, name: &'static str, evaluate: Evaluate) -> Equation {
    Equation { id, name, evaluate }
}

/// Every equation under test, in the order of the page.
pub const EQUATIONS: &[Equation] = &[
    equation("tire-power-law", "load a pressure carries (power law)", tire::power_law),
    equation("tire-required-pressure", "pressure a load needs (power law)", tire::required),
    equation(
        "low-speed-allowance",
        "load allowance at restricted speed",
        tire::low_speed_allowance,
    ),
    equation("low-speed-pressure", "least pressure at restricted speed", tire::low_speed_pressure),
    equation("isa-pressure", "ambient pressure at an altitude", tire::isa_pressure),
    equation(
        "cold-warm-pressure",
        "gauge reading after a change of temperature or altitude",
        tire::carried_over,
    ),
    equation("rhyne-stiffness", "tire stiffness from tread width", tire::rhyne_stiffness),
    equation("hadekel-stiffness", "tire stiffness of a membrane", tire::hadekel_stiffness),
    equation("deflection", "static deflection from one data-sheet point", tire::deflection),
    equation("deflection-pressure", "pressure for a wanted deflection", tire::deflection_pressure),
    equation("load-index", "load of a load index", rules::load_index),
    equation("speed-symbol", "speed of a speed symbol", rules::speed_symbol),
    equation("r54-allowance", "load allowance of UN R54 at a speed", rules::r54),
    equation("nominal-diameter", "diameter from the size designation", rules::nominal_diameter),
    equation("site-tkph", "heat load of a site", rules::site),
    equation("tkph-k1", "distance factor of the heat load", rules::distance_factor),
    equation(
        "dual-spacing-estimate",
        "least dual spacing from the section width",
        rules::spacing_estimate,
    ),
    equation("flat-rule", "reading under which a tire counts as flat", rules::flat),
    equation("hot-allowance", "roadside allowance for a hot tire", rules::hot),
    equation("service-rule", "80 % rule for inflating on the truck", rules::service_rule),
    equation("restriction-flow", "flow through a restriction", air::restriction_flow),
    equation("orifice-conductance", "sonic conductance of a hole", air::orifice),
    equation("tube-conductance", "sonic conductance of a tube", air::tube),
    equation("series-flow", "flow through restrictions in series", air::series_flow),
    equation("fill-time", "time to fill a volume", air::fill),
    equation("adiabatic-fill-time", "time to fill a volume without heat", air::fill_without_heat),
    equation("vent-time", "time to vent a volume", air::vent),
    equation("adiabatic-vent", "time to vent a volume without heat", air::vent_without_heat),
    equation(
        "volumetric-efficiency",
        "volumetric efficiency of a compressor",
        air::volumetric_efficiency,
    ),
    equation("compressor-rating", "swept volume from a compressor's rating", air::rating),
    equation("free-air-mass", "mass of free air", air::free_air_mass),
    equation("water-taken-in", "water that comes in with free air", air::water),
    equation("whole-truck-raise", "raising the tires of a whole truck", truck::raise),
    equation("road-load", "force to hold a speed", road::force),
    equation("grade-speed", "steady speed a power holds on a grade", road::steady_speed),
    equation("air-density", "density of air", road::air_density),
    equation("curve-speed", "speed at which a curve uses up its side friction", road::curve_speed),
    equation("unit-factor", "conversion of units", road::unit_factor),
];

/// The equation with this id.
pub fn find(id: &str) -> Option<&'static Equation> {
    EQUATIONS.iter().find(|equation| equation.id == id)
}
