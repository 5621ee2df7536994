//! One combination over one route, step by step.
//!
//! A [`Stepper`] carries a [`State`] along a [`Course`]: speed from power, grade,
//! rolling resistance, limits and speed caps with braking in advance; air from the
//! compressor through the whole network; tire temperature and fuel. Somebody else
//! decides: [`Controls`] say when a change of rung is ordered. The planner, the late
//! driver and the printed cycle all drive this one stepper, and a state may be
//! copied and resumed anywhere.

mod breathing;
pub mod chance;
mod change_curve;
mod controls;
mod course;
mod cycle;
pub mod day;
mod day_weather;
mod driver;
mod driving;
mod envelope;
mod leg_times;
mod moved_call;
mod on_board;
pub mod practice;
mod state;
mod stepper;
mod trace;
mod truck;
mod true_truck;

pub use change_curve::ChangeCurve;
pub use controls::{Controls, Decision, Late, PlannedChange, Schedule, Target};
pub use course::{Course, CourseError, Descent, Direction};
pub use cycle::{Cycle, CyclePlan, LadenChange, Phase, PhaseKind};
pub use day_weather::{DayWeather, WeatherNow};
pub use driver::{Call, Called, Driver, DriverHabit, DriversCycle};
pub use driving::DrivingStyle;
pub use envelope::{CappedStretch, Envelope};
pub use leg_times::times_between;
pub use moved_call::RunOf;
pub use state::{State, Totals};
pub use stepper::{StandUntil, Stepper, StepperError};
pub use trace::{NoRecord, Record, Sample, Trace};
pub use truck::{SetPressures, Truck, TruckError, Variation};
pub use true_truck::{TireOnTruck, TrueTruck, line_bore};
