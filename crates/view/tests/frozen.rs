//! The frozen document of an issued plan, typed.

use serde_json::Value;
use survey::Folder;
use view::{FrozenPlan, PlanDocument, PlansDocument, frozen};

const GOLDEN: &str = include_str!("../../study/tests/golden/issued-1.json");

fn golden() -> study::Issued {
    let mut folder = Folder::default();
    folder.insert("plans/stone-1.json", GOLDEN);
    study::issued(&folder)
}

#[test]
fn regress_the_first_stored_plan_still_parses_with_every_value_it_had() {
    let plan: FrozenPlan = frozen(&golden().plans[0]).unwrap();
    assert_eq!(plan.plan.schema, "airtide.plan/1");
    assert_eq!(plan.plan.plans[0].haul, "stone");
    let now = serde_json::to_value(&plan).unwrap();
    let stored: Value = serde_json::from_str(GOLDEN).unwrap();
    assert_holds(&now, &stored, "");
}

/// A plan of a demo with what it does and costs, cut to two entries a list.
const PLAN: &str = include_str!("golden/plan-1.json");

#[test]
fn regress_the_first_plan_with_effects_and_cost_still_parses_with_every_value_it_had() {
    let plan: PlanDocument = serde_json::from_str(PLAN).unwrap();
    let first = &plan.plans[0];
    assert!(!first.effects.is_empty() && !first.cost.is_empty() && !first.trials.is_empty());
    let now = serde_json::to_value(&plan).unwrap();
    let stored: Value = serde_json::from_str(PLAN).unwrap();
    assert_holds(&now, &stored, "");
}

/// Keys may have come since; none may have gone or changed.
fn assert_holds(now: &Value, stored: &Value, at: &str) {
    match (now, stored) {
        (Value::Object(now), Value::Object(stored)) => {
            for (key, value) in stored {
                let at = format!("{at}/{key}");
                assert_holds(now.get(key).unwrap_or_else(|| panic!("{at} is gone")), value, &at);
            }
        }
        (Value::Array(now), Value::Array(stored)) => {
            assert_eq!(now.len(), stored.len(), "{at}");
            for (index, (now, stored)) in now.iter().zip(stored).enumerate() {
                assert_holds(now, stored, &format!("{at}/{index}"));
            }
        }
        _ => assert_eq!(now, stored, "{at}"),
    }
}

#[test]
fn a_driver_is_shown_no_unapproved_pressure() {
    let plan = frozen(&golden().plans[0]).unwrap();
    let plan = &plan.plan.plans[0];
    let road = &plan.rungs.last().unwrap().name;
    let mut stood_in = 0;
    for cell in &plan.ladder {
        let same = |other: &&view::CellView| {
            other.rung == *road
                && (&other.channel, &other.load_state, &other.chain_state)
                    == (&cell.channel, &cell.load_state, &cell.chain_state)
        };
        let of_road = plan.ladder.iter().find(same).unwrap();
        match cell.driver.as_str() {
            "set" => {
                assert!(["maker", "standard"].contains(&cell.approval.as_str()));
                assert_eq!(cell.driver_set_kpa, cell.set_kpa);
            }
            "road pressure" => {
                stood_in += 1;
                assert_eq!(cell.approval, "needs approval");
                assert!(["maker", "standard"].contains(&of_road.approval.as_str()));
                assert_eq!(cell.driver_set_kpa, of_road.set_kpa);
                assert!(of_road.pressure_kpa <= cell.max_kpa);
            }
            _ => assert_eq!(cell.driver_set_kpa, None),
        }
    }
    assert!(stood_in > 0);
}

#[test]
fn the_list_tells_what_a_unit_drives_by() {
    let issued = golden();
    let still = study::Staleness { changes: Vec::new(), cause: None };
    let list = |unit: &str, day: &str| {
        let day = day.parse().unwrap();
        PlansDocument::new(&issued, std::slice::from_ref(&still), &[], Some(unit), day).unwrap()
    };
    let drives = list("101", "2027-03-31");
    assert_eq!(drives.plans[0].in_force_for, ["101", "102"]);
    assert_eq!(drives.in_force.unwrap().plan.unwrap().id, "stone-1");
    let after = list("101", "2027-04-01");
    assert_eq!((after.plans.len(), after.plans[0].in_force_for.len()), (1, 0));
    assert!(after.in_force.unwrap().plan.is_none());
    assert!(list("103", "2027-03-31").plans.is_empty());
}
