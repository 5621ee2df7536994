//! Flags of `airtide calc`: one equation a topic.

mod frame;
mod ground;
mod road;

use clap::{ArgGroup, Args, Subcommand, ValueEnum};
use quantity::{
    AbsolutePressure, Area, ColdPressure, GaugePressure, Length, Power, SonicConductance, Speed,
    Temperature, Time, Volume,
};

use crate::calc::{Given, Share, TireLoad, ratio};

pub use frame::FrameArgs;
pub use ground::{
    ConeIndexArgs, FootprintArgs, SoilKind, SoilStressArgs, StrengthArgs, TireKind, WheelPullArgs,
};
pub use road::{
    AxleFactorArgs, GravelRutArgs, GravelThicknessArgs, PavementStrainArgs, WheelFitment,
};

/// Work out one equation, with its source, where it holds, and the numbers put in
///
/// Values carry their unit; an absolute pressure has a flag that ends in -abs, every other
/// pressure is above ambient. A load on a tire may be a mass or a force.
#[derive(Debug, Args)]
#[command(
    after_help = "Exit code 1 if the equation has no answer for these numbers.\n\nExample:\n  \
                  airtide calc tire-load --rated-load 6005lb --rated-pressure 105psi \
                  --exponent 0.7 --load 5500lb"
)]
pub struct CalcArgs {
    /// Which equation.
    #[command(subcommand)]
    pub topic: Topic,
}

/// The equations.
#[derive(Debug, Subcommand)]
pub enum Topic {
    TireLoad(TireLoadArgs),
    Deflection(DeflectionArgs),
    Footprint(FootprintArgs),
    ColdPressure(ColdPressureArgs),
    Tkph(TkphArgs),
    Flow(FlowArgs),
    FillTime(FillTimeArgs),
    VentTime(VentTimeArgs),
    SoilStress(SoilStressArgs),
    ConeIndex(ConeIndexArgs),
    WheelPull(WheelPullArgs),
    GravelRut(GravelRutArgs),
    GravelThickness(GravelThicknessArgs),
    AxleFactor(AxleFactorArgs),
    PavementStrain(PavementStrainArgs),
    GradeSpeed(GradeSpeedArgs),
    Strength(StrengthArgs),
    Frame(FrameArgs),
}

/// A table that grants load at restricted speed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum LoadRule {
    /// US table, inch sizes such as 11R22.5
    TraConventional,
    /// US table, metric and wide-base sizes such as 315/80R22.5
    TraMetric,
    /// UN Regulation 54, which grants load and says nothing about pressure
    UnR54,
}

/// Load a tire carries at a cold pressure, or the cold pressure a load needs
///
/// Exponents: 0.7 US radial, 0.585 US bias, 0.8 European. Gives either number from the other; with
/// --speed and --allowance under a speed cap.
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("asked").required(true).args(["pressure", "load"])))]
#[command(after_help = "Example:\n  airtide calc tire-load --rated-load 6005lb \
                  --rated-pressure 105psi --exponent 0.7 --load 5500lb --speed 35mph \
                  --allowance tra-conventional --units us")]
pub struct TireLoadArgs {
    /// Rated load of one tire in this fitment
    #[arg(long)]
    pub rated_load: Given<TireLoad>,
    /// Cold pressure of the rated load
    #[arg(long)]
    pub rated_pressure: Given<ColdPressure>,
    /// Exponent n of load over pressure
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub exponent: f64,
    /// Cold pressure, to get the load
    #[arg(long)]
    pub pressure: Option<Given<ColdPressure>>,
    /// Load on the worst tire, to get the cold pressure
    #[arg(long)]
    pub load: Option<Given<TireLoad>>,
    /// Speed cap
    #[arg(long, requires = "allowance")]
    pub speed: Option<Given<Speed>>,
    /// Table of restricted speed
    #[arg(long, value_enum, requires = "speed")]
    pub allowance: Option<LoadRule>,
    /// Speed symbol molded on the tire, for un-r54
    #[arg(long, value_name = "LETTERS")]
    pub speed_symbol: Option<String>,
    /// Load index of single fitment, for un-r54
    #[arg(long, value_name = "NUMBER")]
    pub load_index: Option<u16>,
}

/// How far a tire is pressed in under a load, or the cold pressure for a deflection
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("asked").required(true).args(["pressure", "deflection_pct"])))]
#[command(after_help = "Example:\n  airtide calc deflection --rated-load 2800kg \
                  --rated-pressure 720kPa --diameter 1052mm --rim-diameter 571.5mm \
                  --loaded-radius 493mm --load 18.9kN --pressure 310kPa")]
pub struct DeflectionArgs {
    /// Rated load of a single tire
    #[arg(long)]
    pub rated_load: Given<TireLoad>,
    /// Cold pressure of the rated load
    #[arg(long)]
    pub rated_pressure: Given<ColdPressure>,
    /// Overall diameter, new
    #[arg(long)]
    pub diameter: Given<Length>,
    /// Bead-seat diameter of the rim
    #[arg(long)]
    pub rim_diameter: Given<Length>,
    /// Static loaded radius at the rated load and pressure
    #[arg(long)]
    pub loaded_radius: Given<Length>,
    /// Load on the tire
    #[arg(long)]
    pub load: Given<TireLoad>,
    /// Cold pressure, to get the deflection
    #[arg(long)]
    pub pressure: Option<Given<ColdPressure>>,
    /// Deflection in percent of section height, to get the least cold pressure
    #[arg(long, value_name = "PERCENT")]
    pub deflection_pct: Option<Given<Share>>,
}

/// What a vented gauge reads on the same air at another temperature and altitude
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc cold-pressure --pressure 620kPa \
                  --from-temperature 65C --to-temperature 20C --from-altitude 300m --to-altitude 300m")]
pub struct ColdPressureArgs {
    /// Reading of the gauge
    #[arg(long)]
    pub pressure: Given<GaugePressure>,
    /// Temperature of the air in the tire at the reading
    #[arg(long, allow_hyphen_values = true)]
    pub from_temperature: Given<Temperature>,
    /// Temperature wanted
    #[arg(long, allow_hyphen_values = true)]
    pub to_temperature: Given<Temperature>,
    /// Altitude of the reading
    #[arg(long, allow_hyphen_values = true, default_value = "0m")]
    pub from_altitude: Given<Length>,
    /// Altitude wanted [default: the same]
    #[arg(long, allow_hyphen_values = true)]
    pub to_altitude: Option<Given<Length>>,
}

/// Heat load of an earthmover tire on a haul, to compare with its rating
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc tkph --empty-load 14480kg --laden-load 25320kg \
                  --cycle-length 6.45km --cycles 52 --hours 24h --ambient 38C")]
pub struct TkphArgs {
    /// Load on the worst tire, empty
    #[arg(long)]
    pub empty_load: Given<TireLoad>,
    /// Load on the worst tire, laden
    #[arg(long)]
    pub laden_load: Given<TireLoad>,
    /// Length of a cycle, out and back
    #[arg(long)]
    pub cycle_length: Given<Length>,
    /// Cycles in the shift
    #[arg(long, value_name = "NUMBER", value_parser = ratio)]
    pub cycles: f64,
    /// Length of the shift with its normal stops
    #[arg(long, value_name = "TIME")]
    pub hours: Given<Time>,
    /// Highest ambient temperature of the shift
    #[arg(long, allow_hyphen_values = true)]
    pub ambient: Given<Temperature>,
}

/// Air through a restriction given by its sonic conductance and critical pressure ratio
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc flow --conductance 2.0dm3/s/bar \
                  --critical-ratio 0.3 --upstream-abs 9.5bar --downstream-abs 5.5bar --temperature 20C")]
pub struct FlowArgs {
    /// Sonic conductance C
    #[arg(long)]
    pub conductance: Given<SonicConductance>,
    /// Critical pressure ratio b
    #[arg(long, value_name = "RATIO", value_parser = ratio)]
    pub critical_ratio: f64,
    /// Absolute pressure before it
    #[arg(long)]
    pub upstream_abs: Given<AbsolutePressure>,
    /// Absolute pressure behind it
    #[arg(long)]
    pub downstream_abs: Given<AbsolutePressure>,
    /// Temperature of the air before it
    #[arg(long, allow_hyphen_values = true, default_value = "20C")]
    pub temperature: Given<Temperature>,
}

/// Time to fill a volume from a steady supply
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc fill-time --volume 110l --conductance 1.5dm3/s/bar \
                  --critical-ratio 0.25 --supply-abs 9.3bar --from-abs 4bar --to-abs 7.5bar"
)]
pub struct FillTimeArgs {
    /// Volume to fill
    #[arg(long)]
    pub volume: Given<Volume>,
    /// Sonic conductance C of the way to it
    #[arg(long)]
    pub conductance: Given<SonicConductance>,
    /// Critical pressure ratio b of the way to it
    #[arg(long, value_name = "RATIO", value_parser = ratio)]
    pub critical_ratio: f64,
    /// Absolute pressure of the supply
    #[arg(long)]
    pub supply_abs: Given<AbsolutePressure>,
    /// Absolute pressure at the start
    #[arg(long)]
    pub from_abs: Given<AbsolutePressure>,
    /// Absolute pressure wanted
    #[arg(long)]
    pub to_abs: Given<AbsolutePressure>,
}

/// Time to vent a volume into the open
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc vent-time --volume 110l --conductance 1.5dm3/s/bar \
                  --critical-ratio 0.25 --ambient-abs 1.013bar --from-abs 8.2bar --to-abs 3.1bar"
)]
pub struct VentTimeArgs {
    /// Volume to vent
    #[arg(long)]
    pub volume: Given<Volume>,
    /// Sonic conductance C of the way out
    #[arg(long)]
    pub conductance: Given<SonicConductance>,
    /// Critical pressure ratio b of the way out
    #[arg(long, value_name = "RATIO", value_parser = ratio)]
    pub critical_ratio: f64,
    /// Absolute pressure of the open air
    #[arg(long)]
    pub ambient_abs: Given<AbsolutePressure>,
    /// Absolute pressure at the start
    #[arg(long)]
    pub from_abs: Given<AbsolutePressure>,
    /// Absolute pressure wanted
    #[arg(long)]
    pub to_abs: Given<AbsolutePressure>,
}

/// Highest steady speed that a power at the wheels holds on a grade
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  airtide calc grade-speed --mass 63t --power 330kW --grade 6% \
                  --rolling-resistance 0.012 --drag-area 8m2")]
pub struct GradeSpeedArgs {
    /// Mass of the combination
    #[arg(long)]
    pub mass: Given<quantity::Mass>,
    /// Power at the wheels
    #[arg(long)]
    pub power: Given<Power>,
    /// Rise over run in percent, uphill positive
    #[arg(long, value_name = "PERCENT", allow_hyphen_values = true)]
    pub grade: Given<Share>,
    /// Rolling-resistance coefficient
    #[arg(long, value_name = "RATIO", value_parser = ratio)]
    pub rolling_resistance: f64,
    /// Drag coefficient times frontal area
    #[arg(long)]
    pub drag_area: Given<Area>,
    /// Altitude, for the density of the air
    #[arg(long, allow_hyphen_values = true, default_value = "0m")]
    pub altitude: Given<Length>,
    /// Ambient temperature, for the density of the air
    #[arg(long, allow_hyphen_values = true, default_value = "15C")]
    pub temperature: Given<Temperature>,
}
