//! Values held against one another.

mod quarry_edits;

use quarry_edits::*;

#[test]
fn temperatures_stand_in_order() {
    one_problem(SURVEY, "coldest_c = -12", "coldest_c = 40", "is not below warmest", "exchange");
    one_problem(SURVEY, "nominal_c = 18", "nominal_c = -20", "ordinary day", "");
    let weather = "\n[weather]\nwarmest_c = -20\n";
    let mut folder = quarry();
    let text = format!("{}{weather}", folder.text(HAUL).unwrap());
    folder.insert(HAUL, text);
    tells(&folder, "hauls/aggregate.toml:23:1: coldest -12 °C is not below warmest -20 °C");
}

#[test]
fn loads_stay_under_tire_rim_and_axle() {
    let mut folder = edited(COMBINATION, "mass_kg = 5400", "mass_kg = 6200");
    edit(&mut folder, COMBINATION, "gross_mass_kg = 40800", "gross_mass_kg = 41600");
    tells(&folder, "'tractor.steer', laden: the worst tire carries 3224 kg");
    tells(&folder, "its single rating is 2998 kg");
    let mut folder = edited(COMBINATION, "mass_kg = 5400", "mass_kg = 6700");
    edit(&mut folder, COMBINATION, "gross_mass_kg = 40800", "gross_mass_kg = 42100");
    tells(&folder, "the group carries 6700 kg (14771 lb), its axles may carry 6600 kg");
    let folder = edited(STEER_TIRE, "maximum_load_lb = 7300", "maximum_load_lb = 5000");
    tells(&folder, "the worst wheel carries 2808 kg (6191 lb), its rim is stamped 2268 kg");
}

#[test]
fn loads_add_up_to_the_gross_mass() {
    one_problem(
        COMBINATION,
        "gross_mass_kg = 40800",
        "gross_mass_kg = 41800",
        "the groups add up to 40800 kg (89949 lb), the gross mass says 41800 kg",
        "1 %",
    );
    let near = edited(COMBINATION, "gross_mass_kg = 40800", "gross_mass_kg = 41100");
    assert!(problems(&near).is_empty());
}

#[test]
fn a_group_without_load_is_lifted_or_forgotten() {
    let mut folder = edited(COMBINATION, "mass_kg = 5900", "mass_kg = 0");
    edit(&mut folder, COMBINATION, "gross_mass_kg = 16000", "gross_mass_kg = 10100");
    tells(&folder, "'tipper.tridem' carries no load — weigh the group");
    edit(&mut folder, TRAILER, "axles = 3", "axles = 3\nliftable = true");
    tells(&folder, "warning: 'tipper.tridem' carries no load — right if the axle is lifted");
}

#[test]
fn shares_are_given_somewhere() {
    let folder = edited(COMBINATION, "heavier_mate_share = 0.52\n", "");
    tells(&folder, "heavier_mate_share is missing: neither the load state nor the group gives it");
}

#[test]
fn laden_is_heavier_than_empty() {
    one_problem(
        HAUL,
        "laden_state = \"laden\"",
        "laden_state = \"empty\"",
        "laden (16000 kg (35274 lb)) is not heavier than empty",
        "",
    );
}

#[test]
fn duals_have_room_and_match() {
    one_problem(
        TRUCK,
        "dual = { spacing_mm = 343",
        "dual = { spacing_mm = 300",
        "duals 300 mm (11.81 in) apart are too close: this size needs 317.5 mm (12.5 in)",
        "center to center",
    );
    one_problem(
        TRUCK,
        "dual = { spacing_mm = 343, diameter_difference_mm = 3, least_gap_mm = 10",
        "dual = { spacing_mm = 343, diameter_difference_mm = 3, least_gap_mm = 80",
        "the section width with the gap wanted needs 359 mm",
        "",
    );
    one_problem(
        TRUCK,
        "dual = { spacing_mm = 343, diameter_difference_mm = 3",
        "dual = { spacing_mm = 343, diameter_difference_mm = 8",
        "differ by 8 mm (0.31 in) in diameter; at most 6.4 mm (0.25 in)",
        "same wear",
    );
}

#[test]
fn duals_need_a_dual_rating_and_their_measures() {
    let mut folder = edited(TIRE, "144/142 L", "144 L");
    edit(&mut folder, TIRE, "rated_load_dual_lb = 5840\n", "");
    tells(&folder, "'drive-11r22-5-g' has no dual rating");
    let old = "dual = { spacing_mm = 343, diameter_difference_mm = 3, least_gap_mm = 10 }\n";
    tells(&edited(TRUCK, old, ""), "dual is missing: the group has duals — add dual = {");
    let folder = edited(TRUCK, "fitment = \"dual\"", "fitment = \"single\"");
    tells(&folder, "dual has no place here: the group has singles");
}

#[test]
fn sizes_are_possible() {
    one_problem(
        TIRE,
        "diameter_mm = 1052",
        "diameter_mm = 1152",
        "does not fit the designation, about 1052",
        "",
    );
    one_problem(
        TIRE,
        "section_width_mm = 279",
        "section_width_mm = 329",
        "a section width of 329 mm",
        "data sheet",
    );
    one_problem(
        TIRE,
        "static_loaded_radius_mm = 493",
        "static_loaded_radius_mm = 530",
        "is not under half the diameter, 526 mm",
        "",
    );
    one_problem(
        TIRE,
        "static_loaded_radius_mm = 493",
        "static_loaded_radius_mm = 280",
        "is under that of the rim",
        "",
    );
    one_problem(TIRE, "air_volume_l = 112", "air_volume_l = 40", "does not fit the dimensions", "");
    one_problem(
        TIRE,
        "air_volume_l = 112",
        "rim_diameter_mm = 622\nair_volume_l = 112",
        "a rim diameter of 622 mm",
        "",
    );
    let folder = edited(TIRE, "construction = \"radial\"", "construction = \"bias\"");
    tells(&folder, "5:16: the designation is that of a radial tire — R before the rim");
}

#[test]
fn sidewall_texts_are_read() {
    one_problem(
        TIRE,
        "designation = \"11R22.5\"",
        "designation = \"11R23\"",
        "needs a rim of code 23, which is not made",
        "as molded",
    );
    one_problem(
        TIRE,
        "service_description = \"144/142 L\"",
        "service_description = \"144/142\"",
        "",
        "146/143 L",
    );
    one_problem(
        TIRE,
        "rated_load_single_lb = 6175",
        "rated_load_single_lb = 7500",
        "the load index says 2800 kg",
        "",
    );
}

#[test]
fn pressures_stay_under_tire_and_rim() {
    one_problem(
        TIRE,
        "rated_pressure_psi = 105",
        "rated_pressure_psi = 110",
        "758 kPa (110 psi) is above molded_maximum_kpa, 724 kPa",
        "",
    );
    one_problem(
        TRUCK,
        "fixed_pressure_psi = 115",
        "fixed_pressure_psi = 125",
        "is above molded_maximum_kpa",
        "",
    );
}

#[test]
fn casings_suit_a_pressure_that_varies() {
    let folder = edited(TIRE, "\"tubeless\"", "\"tube_type\"");
    tells(&folder, "is a tube-type tire on an air channel — a tube creeps");
    let mut folder = edited(TIRE, "construction = \"radial\"", "construction = \"bias\"");
    edit(&mut folder, TIRE, "11R22.5", "11-22.5");
    tells(&folder, "warning: 'drive-11r22-5-g' is a bias-ply tire on an air channel");
}

#[test]
fn wheel_valves_are_said_never_assumed() {
    let folder = edited(TRUCK, "wheel_valve = \"by_hand\"\n", "");
    tells(&folder, "wheel_valve is missing: the group is on an air channel — look at a wheel end");
    let folder = edited(TRUCK, "wheel_valve = \"by_hand\"", "wheel_valve = \"self_closing\"");
    tells(&folder, "wheel_valve_closes_below_kpa is missing: the wheel valve is self-closing");
    tells(&folder, "there is no usual value");
    one_problem(
        TRUCK,
        "wheel_valve = \"by_hand\"",
        "wheel_valve_closes_below_psi = 15\nwheel_valve = \"by_hand\"",
        "has no place here: the wheel valve is not self-closing",
        "",
    );
    let new = "channel = \"drive\"\nwheel_ends_shut = 5";
    let folder = edited(TRUCK, "channel = \"drive\"", new);
    tells(&folder, "5 wheel ends shut, but the group has 4");
}

#[test]
fn groups_have_a_channel_or_a_fixed_pressure() {
    let folder = edited(TRUCK, "fixed_pressure_psi = 115\n", "");
    tells(&folder, "fixed_pressure_kpa is missing: the group is on no air channel");
    let folder =
        edited(TRUCK, "channel = \"drive\"", "channel = \"drive\"\nfixed_pressure_kpa = 600");
    tells(&folder, "fixed_pressure_kpa has no place here: the group is on an air channel");
}

#[test]
fn trailers_take_air_from_a_line_of_their_own() {
    one_problem(
        TRAILER,
        "air_from = \"tire_line\"",
        "air_from = \"brake_supply_line\"",
        "trailer tires fed from the brake supply line are not modeled",
        "brakes would compete with tires",
    );
    let folder = edited(TRAILER, "air_from = \"tire_line\"\n", "");
    tells(&folder, "air_from is missing: the trailer has air channels");
}

#[test]
fn combinations_have_one_truck_and_whole_channels() {
    let folder = edited(COMBINATION, "[\"tractor\", \"tipper\"]", "[\"tipper\"]");
    tells(&folder, "the combination has no truck");
    let folder =
        edited(COMBINATION, "[\"tractor\", \"tipper\"]", "[\"tractor\", \"tractor\", \"tipper\"]");
    tells(&folder, "the combination has 2 trucks");
    let folder = edited(TRUCK, "name = \"trailer\"", "name = \"rear\"");
    tells(&folder, "the truck has no air channel 'trailer' for this trailer to add to");
    let folder = edited(TRUCK, "exhaust = { c_dm3_s_bar = 9.0, b = 0.3 }\n", "");
    tells(&folder, "exhaust is missing: no vehicle of the combination gives it");
    let text =
        quarry().text(TRAILER).unwrap().to_owned() + "exhaust = { c_dm3_s_bar = 2.0, b = 0.3 }\n";
    let mut folder = quarry();
    folder.insert(TRAILER, text);
    tells(&folder, "two vehicles give a different exhaust for the air channel 'trailer'");
}

#[test]
fn elements_are_whole_parts_or_whole_tubes() {
    let folder = edited(
        TRUCK,
        "{ name = \"frame line\", bore_mm = 12, length_m = 6 }",
        "{ name = \"frame line\", bore_mm = 12 }",
    );
    tells(&folder, "length_m is missing: a tube has a bore and a length");
    let folder = edited(TRUCK, "bore_mm = 12, length_m = 6", "bore_mm = 12, length_m = 6, b = 0.3");
    tells(&folder, "c_dm3_s_bar is missing: a part has");
    tells(&folder, "bore_mm has no place here");
}

#[test]
fn air_pressures_stand_in_order() {
    one_problem(
        TRUCK,
        "cut_in_kpa = 760",
        "cut_in_kpa = 950",
        "governor cut-in is not below cut-out",
        "exchange",
    );
    let folder = edited(TRUCK, "shuts_kpa = 520", "shuts_kpa = 620");
    tells(&folder, "the protection valve does not shut below the pressure at which it opens");
    one_problem(
        TRUCK,
        "opens_kpa = 620",
        "opens_kpa = 910",
        "opens only from above governor cut-in",
        "may never open",
    );
    one_problem(
        TRUCK,
        "brake_threshold_kpa = 620",
        "brake_threshold_kpa = 500",
        "under the pressure at which the protection valve shuts",
        "",
    );
    one_problem(
        TRUCK,
        "brake_threshold_kpa = 620",
        "brake_threshold_kpa = 690",
        "above the pressure at which tire air is taken again",
        "",
    );
    one_problem(
        TRUCK,
        "brake_resume_kpa = 680",
        "brake_resume_kpa = 920",
        "only from above governor cut-in",
        "wait for ever",
    );
    let folder = edited(TRUCK, "inlet = \"ambient\"", "inlet = \"boosted\"");
    tells(&folder, "boost_kpa is missing: the compressor breathes boost");
}

#[test]
fn the_governor_reaches_what_the_tires_want() {
    let mut folder = edited(TRUCK, "cut_out_kpa = 900", "cut_out_kpa = 710");
    edit(&mut folder, TRUCK, "cut_in_kpa = 760", "cut_in_kpa = 690");
    tells(
        &folder,
        "warning: the governor cuts out at 710 kPa (103 psi), but 'tractor.drive' is rated at",
    );
}

#[test]
fn hand_set_pressures_stay_between_closing_and_maximum() {
    let cell = |pressure: &str| {
        let mut folder = quarry();
        let text = format!(
            "{}\n[[hand_set]]\nchannel = \"drive\"\nload_state = \"laden\"\nrung = \"haul road\"\n{pressure}\n",
            folder.text(COMBINATION).unwrap()
        );
        folder.insert(COMBINATION, text);
        folder
    };
    tells(&cell("pressure_kpa = 750"), "is above molded_maximum_kpa");
    tells(&cell("pressure_kpa = 1000"), "the governor cuts out at 900 kPa");
    tells(&cell("pressure_kpa = 130"), "is under bead_minimum_kpa, 138 kPa");
    tells(&cell("pressure_kpa = 70"), "did you mean psi? write pressure_psi = 70");
}

#[test]
fn speeds_stay_under_the_speed_symbol() {
    let folder = edited(TIRE, "144/142 L", "144/142 F");
    tells(
        &folder,
        "90 km/h (56 mph) is above the speed symbol F (80 km/h (50 mph)) of 'drive-11r22-5-g'",
    );
    one_problem(
        ROUTE,
        "speed_limit_kmh = 80",
        "speed_limit_kmh = 125",
        "is above the speed symbol L",
        "right if a rung's speed cap keeps the truck under it",
    );
}

#[test]
fn us_limits_in_miles_an_hour_are_suspected() {
    let mut folder = edited(ROUTE, "other_public", "us_public");
    assert!(problems(&folder).is_empty());
    edit(&mut folder, ROUTE, "speed_limit_kmh = 80", "speed_limit_kmh = 55");
    tells(&folder, "if it is miles an hour, write speed_limit_mph = 55");
}

#[test]
fn legs_follow_one_another() {
    one_problem(ROUTE, "from_km = 9.5", "from_km = 9.7", "no leg covers 9.5 km to 9.7 km", "");
    one_problem(ROUTE, "from_km = 9.5", "from_km = 9.1", "two legs cover 9.1 km to 9.5 km", "");
    let folder = edited(ROUTE, "from_km = 0\n", "from_km = 0.5\n");
    tells(&folder, "the first leg begins at 0.5 km, not at 0");
    let folder = edited(ROUTE, "to_km = 9.5", "to_km = 0.9");
    tells(&folder, "the leg ends before it begins");
    one_problem(
        ROUTE,
        "at_km = 9.2",
        "at_km = 92",
        "92 km lies beyond the route, which is 31 km long",
        "km against m",
    );
}

#[test]
fn elevation_comes_from_one_source() {
    let folder = edited(ROUTE, "crossfall_pct = 2", "crossfall_pct = 2\ngrade_pct = 1");
    tells(&folder, "takes its elevation from more than one source");
    let mut folder = quarry();
    let text = folder.text(ROUTE).unwrap();
    let (from, to) = (text.find("[[elevation]]").unwrap(), text.find("[[lay_bys]]").unwrap());
    let text = format!("{}{}", &text[..from], &text[to..]);
    folder.insert(ROUTE, text);
    tells(&folder, "the route has no elevation — give grade_pct on every leg");
    one_problem(ROUTE, "at_km = 7\n", "at_km = 4.5\n", "chainage must rise", "");
    let folder = edited(ROUTE, "[[elevation]]\nat_km = 31\nelevation_m = 540\n", "");
    tells(&folder, "reach from 0 km to 9.5 km, the route from 0 to 31 km");
}

#[test]
fn rungs_rise_fit_the_controller_and_cover_the_route() {
    one_problem(
        COMBINATION,
        "speed_cap_kmh = 60",
        "speed_cap_kmh = 25",
        "speed caps must rise",
        "slowest",
    );
    let folder = edited(TRUCK, "stored_rungs = 4", "stored_rungs = 2");
    tells(&folder, "3 rungs, but the controller stores 2");
    let folder = edited(COMBINATION, "surfaces = [\"gravel\"]", "surfaces = []");
    tells(&folder, "no rung is meant for the leg 'haul road' — name a rung on the leg");
    let folder =
        edited(COMBINATION, "surfaces = [\"gravel\"]", "surfaces = [\"gravel\", \"earth\"]");
    tells(&folder, "is already a surface of the rung 'quarry floor'");
}

#[test]
fn a_day_holds_its_cycles() {
    one_problem(HAUL, "cycles_a_day = 6", "cycles_a_day = 90", "25.5 hours", "standing times");
}

#[test]
fn the_second_trailer_of_a_kind_is_numbered_and_prolongs_the_line_again() {
    let mut folder = edited(COMBINATION, "\"tipper\"]", "\"tipper\", \"tipper\"]");
    tells(&folder, "no load is given for 'tipper 2.tridem'");
    for (mass, gross) in [("5900", "16000"), ("20000", "40800")] {
        let text = folder.text(COMBINATION).unwrap().to_owned();
        let line = text.lines().find(|line| line.contains(&format!("mass_kg = {mass},"))).unwrap();
        let both = format!("{line}\n{}", line.replace("tipper", "tipper 2"));
        edit(&mut folder, COMBINATION, line, &both);
        let sum = gross.parse::<u32>().unwrap() + mass.parse::<u32>().unwrap();
        let gross = format!("gross_mass_kg = {gross}");
        edit(&mut folder, COMBINATION, &gross, &format!("gross_mass_kg = {sum}"));
    }
    let (survey, problems) = load(&folder);
    assert!(problems.is_empty(), "{problems:#?}");
    let combination = &survey.unwrap().hauls[0].combination;
    assert_eq!(combination.vehicles[2].name, "tipper 2");
    assert_eq!(combination.groups_of(1).count(), 2);
    assert_eq!(combination.channels[1].path.len(), 7);
}
