//! How long each stretch of a run takes when the whole run is driven under one cap.

use quantity::{Length, Speed, Time};

use crate::{
    CappedStretch, Course, DrivingStyle, Envelope, NoRecord, State, Stepper, StepperError, Target,
    Truck,
};

/// Times between places along a run driven at one rung throughout.
///
/// # Errors
/// [`StepperError`] where the truck cannot climb.
pub fn times_between(
    truck: &Truck,
    course: &Course,
    style: DrivingStyle,
    load_state: usize,
    rung: usize,
    places: &[Length],
    start: &State,
) -> Result<Vec<Time>, StepperError> {
    let cap: Speed = truck.cap(rung);
    let whole = CappedStretch { from: Length::ZERO, to: course.length(), cap };
    let envelope = Envelope::new(course, &[whole], &style);
    let stepper = Stepper::new(truck, course, &envelope, style);
    let mut state = start.clone();
    stepper.turn_round(&mut state);
    stepper.load(&mut state, load_state);
    stepper.suppose_held(&mut state, Target { rung, load_state });
    let mut times = Vec::with_capacity(places.len());
    let mut before = state.clock();
    for &place in places {
        stepper.drive_to(&mut state, place, &mut NoRecord)?;
        times.push(state.clock() - before);
        before = state.clock();
    }
    Ok(times)
}
