//! Flags of the equations of contact and soft ground.

use clap::{ArgGroup, Args, ValueEnum, value_parser};
use quantity::{ColdPressure, Length, SpecificPower, Stress};

use crate::calc::{Aspect, Given, Ratio, Share, TireLoad, ratio};

/// What a tire's contact pressure follows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum TireKind {
    /// Road-type truck tire
    RoadTruck,
    /// Flotation or agricultural tire
    Flotation,
}

/// The patch a tire stands on, on a hard surface
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc footprint --load 18.9kN --pressure 310kPa \
                  --section-width 279mm --aspect-ratio 86 --diameter 1052mm")]
pub struct FootprintArgs {
    /// Load on the tire
    #[arg(long)]
    pub load: Given<TireLoad>,
    /// Cold pressure
    #[arg(long)]
    pub pressure: Given<ColdPressure>,
    /// Section width
    #[arg(long)]
    pub section_width: Given<Length>,
    /// Section height over section width: 86, 86% or 0.86
    #[arg(long, value_name = "RATIO")]
    pub aspect_ratio: Given<Aspect>,
    /// Overall diameter, new
    #[arg(long)]
    pub diameter: Given<Length>,
    /// Deflection under this load [default: from the dimensions]
    #[arg(long)]
    pub deflection: Option<Given<Length>>,
    /// Kind of tire
    #[arg(long, value_enum, default_value_t = TireKind::RoadTruck)]
    pub tire_kind: TireKind,
}

/// Vertical stress in the ground under a tire or a dual
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc soil-stress --contact-pressure 690kPa \
                  --contact-radius 150mm --depth 150mm --concentration 3")]
pub struct SoilStressArgs {
    /// Mean contact pressure
    #[arg(long)]
    pub contact_pressure: Given<Stress>,
    /// Radius of the circle of the same area as the patch
    #[arg(long)]
    pub contact_radius: Given<Length>,
    /// Depth below the surface
    #[arg(long)]
    pub depth: Given<Length>,
    /// Concentration factor: 3 elastic, 4 hard soil, 5 normal, 6 soft
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub concentration: f64,
    /// Between the tire centers of a dual, each tire pressing as given [default: a single tire]
    #[arg(long)]
    pub dual_spacing: Option<Given<Length>>,
}

/// Cone index that a vehicle with all axles driven needs of soft soil
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc cone-index --gross-weight 39000lb --axles 3 --tires 6 \
                  --tire-width 14in --tire-diameter 49in --clearance 13in \
                  --power-to-weight 12.8hp/ton --automatic --deflection-ratio 0.15"
)]
pub struct ConeIndexArgs {
    /// Gross weight of the vehicle
    #[arg(long)]
    pub gross_weight: Given<TireLoad>,
    /// Axles
    #[arg(long, value_name = "NUMBER", value_parser = value_parser!(u32).range(1..=50))]
    pub axles: u32,
    /// Tires in all
    #[arg(long, value_name = "NUMBER", value_parser = value_parser!(u32).range(1..=400))]
    pub tires: u32,
    /// Nominal tire width
    #[arg(long)]
    pub tire_width: Given<Length>,
    /// Outside diameter of the tires
    #[arg(long)]
    pub tire_diameter: Given<Length>,
    /// Least ground clearance
    #[arg(long)]
    pub clearance: Given<Length>,
    /// Engine power over gross weight: hp/ton (of 2000 lb), hp/t or kW/t
    #[arg(long)]
    pub power_to_weight: Given<SpecificPower>,
    /// Automatic or hydraulic transmission
    #[arg(long)]
    pub automatic: bool,
    /// Deflection over section height, on hard ground: 0.15 or 15%
    #[arg(long, value_name = "RATIO")]
    pub deflection_ratio: Given<Ratio>,
    /// Section height of the tires: gives the limiting cone index of another author beside
    #[arg(long)]
    pub section_height: Option<Given<Length>>,
    /// Driven axles [default: all]
    #[arg(long, value_name = "NUMBER", value_parser = value_parser!(u32).range(0..=50))]
    pub driven_axles: Option<u32>,
    /// Chains are fitted
    #[arg(long)]
    pub chains: bool,
}

/// Net pull and motion resistance of a tire on soft soil, by three models
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc wheel-pull --load 20kN --cone-index 600kPa \
                  --width 279mm --diameter 1050mm --deflection-ratio 0.2 --slip 0.2")]
pub struct WheelPullArgs {
    /// Load on the tire
    #[arg(long)]
    pub load: Given<TireLoad>,
    /// Cone index of the soil; its rating cone index where it remolds
    #[arg(long)]
    pub cone_index: Given<Stress>,
    /// Tire width
    #[arg(long)]
    pub width: Given<Length>,
    /// Overall diameter
    #[arg(long)]
    pub diameter: Given<Length>,
    /// Deflection over section height, on hard ground: 0.2 or 20%
    #[arg(long, value_name = "RATIO")]
    pub deflection_ratio: Given<Ratio>,
    /// Slip of the driven tire: 0.2 or 20%
    #[arg(long, value_name = "RATIO")]
    pub slip: Given<Ratio>,
    /// Section height [default: 0.86 of the width]
    #[arg(long)]
    pub section_height: Option<Given<Length>>,
}

/// Soils that the conversions tell apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum SoilKind {
    /// Low-plasticity clay (CL)
    #[value(alias = "CL")]
    LeanClay,
    /// High-plasticity clay (CH)
    #[value(alias = "CH")]
    FatClay,
    /// Silt and other fine-grained soil
    #[value(alias = "silt")]
    FineGrained,
    /// Sand and gravel
    #[value(aliases = ["sand", "gravel"])]
    CoarseGrained,
}

/// Strength of a soil in every measure, from one of them
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("reading").required(true).args(["dcp", "cbr", "cone_index"])))]
#[command(after_help = "Example:\n  airtide calc strength --dcp 12mm --soil lean-clay")]
pub struct StrengthArgs {
    /// Penetration a blow of the falling-weight cone with the 8 kg hammer
    #[arg(long, value_name = "LENGTH")]
    pub dcp: Option<Given<Length>>,
    /// California bearing ratio in percent
    #[arg(long, value_name = "PERCENT")]
    pub cbr: Option<Given<Share>>,
    /// Cone index of the 30 degree cone of half a square inch
    #[arg(long)]
    pub cone_index: Option<Given<Stress>>,
    /// Kind of soil [default: fine-grained]
    #[arg(long, value_enum, ignore_case = true)]
    pub soil: Option<SoilKind>,
}
