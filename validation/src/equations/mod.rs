//! The equations under test, by id.

mod air;
mod cost;
mod gravel;
mod ground;
mod pavement;
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
    equation("contact-pressure", "mean contact pressure of a tire", ground::contact_pressure),
    equation("soil-stress-axis", "stress under the axis of a wheel", ground::stress_on_axis),
    equation("soil-stress-beside", "stress beside the axis of a wheel", ground::stress_beside),
    equation("soil-stress-dual", "stress under a dual", ground::stress_under_dual),
    equation("soil-stress-point", "stress under a point load", ground::stress_under_point),
    equation("rating-cone-index", "rating cone index of a soil", ground::rating_cone_index),
    equation("soil-strength", "strength of a soil in other measures", ground::soil_strength),
    equation("vehicle-cone-index", "cone index a vehicle needs", ground::vehicle_cone_index),
    equation("mobility-index", "mobility index of a vehicle", ground::mobility_index),
    equation("limiting-cone-index", "limiting cone index of wheels", ground::limiting_cone_index),
    equation("wheel-pull-gee-clough", "pull on soil, field tests", ground::gee_clough),
    equation("wheel-pull-brixius", "pull on soil, bias tires", ground::brixius),
    equation("wheel-pull-maclaurin", "pull and sinkage on soil", ground::maclaurin),
    equation("soil-rut", "rut in soil after passes", ground::soil_rut),
    equation("plate-sinkage", "sinkage by terrain values", ground::plate_sinkage),
    equation("ride-change", "change of ride with tire stiffness", ground::ride),
    equation("gravel-rut", "rut of an aggregate road", gravel::rut),
    equation(
        "gravel-saving",
        "aggregate saved by lower pressure at the same rut",
        gravel::thickness_for_same_rut,
    ),
    equation("giroud-han", "thickness of aggregate on weak soil", gravel::giroud_han),
    equation(
        "permissible-stress-thickness",
        "thickness of aggregate by permissible stress",
        gravel::permissible_stress,
    ),
    equation("unsurfaced-thickness", "thickness over unsurfaced soil", gravel::unsurfaced),
    equation("haul-road-resistance", "rolling resistance of a haul road", gravel::haul_road),
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
    equation("axle-factor", "wear by an axle group as standard axles", pavement::axle_factor),
    equation("layered-response", "layered elastic ground at a point", pavement::layered_response),
    equation("pavement-strain", "strains that wear out a pavement", pavement::pavement_strain),
    equation(
        "capital-recovery",
        "even yearly payments that recover a price",
        cost::capital_recovery,
    ),
    equation("unit-factor", "conversion of units", road::unit_factor),
];

/// The equation with this id.
pub fn find(id: &str) -> Option<&'static Equation> {
    EQUATIONS.iter().find(|equation| equation.id == id)
}
