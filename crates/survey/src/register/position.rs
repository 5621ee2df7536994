//! Where on a unit: an axle group, or one tire of it.

use std::fmt;

use crate::file::{AxleGroupFile, FitmentWord};

/// Side of a vehicle, seen in the direction of travel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Side {
    /// Left.
    Left,
    /// Right.
    Right,
}

/// Which tire of a dual.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Mate {
    /// The one toward the middle of the vehicle.
    Inner,
    /// The one outside.
    Outer,
}

/// One tire of an axle group.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Wheel {
    /// Axle within the group, the foremost is 1.
    pub axle: u32,
    /// Side.
    pub side: Side,
    /// Which tire, where there are two.
    pub mate: Option<Mate>,
}

/// An axle group, or one tire of it.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Position {
    /// Name of the axle group.
    pub group: String,
    /// The tire; `None` means the group as a whole.
    pub wheel: Option<Wheel>,
}

/// `drive`, `steer.1.left` or `drive.2.right.inner`.
impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.group)?;
        let Some(wheel) = self.wheel else { return Ok(()) };
        let side = match wheel.side {
            Side::Left => "left",
            Side::Right => "right",
        };
        write!(f, ".{}.{side}", wheel.axle)?;
        match wheel.mate {
            Some(Mate::Inner) => f.write_str(".inner"),
            Some(Mate::Outer) => f.write_str(".outer"),
            None => Ok(()),
        }
    }
}

/// Every tire of a group.
pub(super) fn positions(group: &AxleGroupFile) -> Vec<Position> {
    let mates: &[Option<Mate>] = match group.fitment {
        FitmentWord::Single => &[None],
        FitmentWord::Dual => &[Some(Mate::Inner), Some(Mate::Outer)],
    };
    let mut found = Vec::new();
    for axle in 1..=group.axles {
        for side in [Side::Left, Side::Right] {
            for &mate in mates {
                let wheel = Some(Wheel { axle, side, mate });
                found.push(Position { group: group.name.clone(), wheel });
            }
        }
    }
    found
}

/// Reads a position of a type.
///
/// # Errors
/// What is wrong with it, in words.
pub(super) fn read(text: &str, groups: &[AxleGroupFile]) -> Result<Position, String> {
    let text = text.trim();
    if let Some(group) = groups.iter().find(|group| group.name == text) {
        return Ok(Position { group: group.name.clone(), wheel: None });
    }
    let within = |group: &&AxleGroupFile| {
        text.strip_prefix(group.name.as_str()).is_some_and(|rest| rest.starts_with('.'))
    };
    let group = groups.iter().filter(within).max_by_key(|group| group.name.len());
    let Some(group) = group else {
        let name = text.split('.').next().unwrap_or(text);
        return Err(format!("it has no axle group '{name}'"));
    };
    let folded = text.to_lowercase();
    let found = positions(group).into_iter().find(|one| one.to_string().to_lowercase() == folded);
    found.ok_or_else(|| wrong(group, &text[group.name.len() + 1..]))
}

/// Why the part of a position behind its group fits no tire.
fn wrong(group: &AxleGroupFile, rest: &str) -> String {
    let parts: Vec<&str> = rest.split('.').collect();
    let axle = parts.first().and_then(|axle| axle.parse::<u32>().ok());
    let wanted = match group.fitment {
        FitmentWord::Single => "axle.side",
        FitmentWord::Dual => "axle.side.mate",
    };
    match (axle, group.fitment, parts.len()) {
        (Some(axle), ..) if axle == 0 || axle > group.axles => {
            format!("'{}' has axles 1 to {}", group.name, group.axles)
        }
        (Some(_), FitmentWord::Single, 3) => format!("'{}' has singles, not duals", group.name),
        (Some(_), FitmentWord::Dual, 2) => {
            format!("'{}' has duals: say inner or outer", group.name)
        }
        _ => format!("behind the group stands {wanted}, or nothing"),
    }
}
