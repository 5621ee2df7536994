//! Flags of the equations of gravel and paved roads.

use clap::{Args, ValueEnum};
use quantity::{ColdPressure, GaugePressure, Length};

use crate::calc::{Given, RoadLayer, Share, TireLoad, Weight, ratio};

/// Rut that a wheel makes in an aggregate layer on soil
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc gravel-rut --wheel-load 9kip --pressure 80psi \
                  --thickness 10in --cbr-top 60 --cbr-bottom 5 --passes 10000")]
pub struct GravelRutArgs {
    /// Load of a wheel, a dual taken as one
    #[arg(long)]
    pub wheel_load: Given<TireLoad>,
    /// Cold pressure
    #[arg(long)]
    pub pressure: Given<ColdPressure>,
    /// Thickness of the aggregate
    #[arg(long)]
    pub thickness: Given<Length>,
    /// CBR of the aggregate in percent
    #[arg(long, value_name = "PERCENT")]
    pub cbr_top: Given<Share>,
    /// CBR of the soil below in percent
    #[arg(long, value_name = "PERCENT")]
    pub cbr_bottom: Given<Share>,
    /// Passes of the wheel
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub passes: f64,
}

/// Thickness of aggregate that a soft subgrade needs under a wheel
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc gravel-thickness --wheel-load 40kN --pressure 550kPa \
                  --passes 5000 --rut 75mm --cbr 2 --bearing-capacity-factor 3.14"
)]
pub struct GravelThicknessArgs {
    /// Load of a wheel, a dual taken as one
    #[arg(long)]
    pub wheel_load: Given<TireLoad>,
    /// Cold pressure
    #[arg(long)]
    pub pressure: Given<ColdPressure>,
    /// Axle passes
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub passes: f64,
    /// Rut that is allowed
    #[arg(long)]
    pub rut: Given<Length>,
    /// CBR of the subgrade in percent
    #[arg(long, value_name = "PERCENT")]
    pub cbr: Given<Share>,
    /// 3.14 bare, 5.14 geotextile, 5.71 geogrid [default: 3.14]
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub bearing_capacity_factor: Option<f64>,
    /// CBR of the aggregate in percent [default: 15]
    #[arg(long, value_name = "PERCENT")]
    pub aggregate_cbr: Option<Given<Share>>,
    /// Aperture stability of a geogrid in N m/degree [default: 0, no geogrid]
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub aperture_stability: Option<f64>,
}

/// Tires on an axle end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum WheelFitment {
    /// One
    Single,
    /// Two
    Dual,
}

/// Wear of a paved road by one pass of an axle group, as standard axles of 18 kip
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc axle-factor --axle-load 40kip --axles 2 \
                  --structural-number 5 --terminal 2.5")]
pub struct AxleFactorArgs {
    /// Load of the whole axle group
    #[arg(long)]
    pub axle_load: Given<Weight>,
    /// Axles in the group
    #[arg(long, value_name = "NUMBER")]
    pub axles: u8,
    /// Structural number, inches [default: 5]
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub structural_number: Option<f64>,
    /// Terminal serviceability [default: 2.5]
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub terminal: Option<f64>,
    /// Tires on each axle end: shows the fourth power beside
    #[arg(long, value_enum)]
    pub fitment: Option<WheelFitment>,
}

/// The two strains that wear out a pavement
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc pavement-strain --wheel-load 20kN --pressure 690kPa \
                  --dual-spacing 340mm --layer 3000MPa,0.35,75mm --layer 200MPa,0.35,250mm \
                  --layer 50MPa,0.4"
)]
pub struct PavementStrainArgs {
    /// Load on one tire
    #[arg(long)]
    pub wheel_load: Given<Weight>,
    /// Pressure of the rolling tire, taken as its contact pressure
    #[arg(long)]
    pub pressure: Given<GaugePressure>,
    /// Between the tire centers of a dual, each tire loaded as given [default: a single tire]
    #[arg(long)]
    pub dual_spacing: Option<Given<Length>>,
    /// Modulus, Poisson's ratio and thickness of a layer, from the top down; the last without
    /// thickness
    #[arg(long = "layer", required = true, value_name = "E,NU,H")]
    pub layers: Vec<Given<RoadLayer>>,
}
