//! Names that refer to nothing, names used twice, and paths out of the survey.

mod quarry_edits;

use quarry_edits::*;
use survey::Folder;

#[test]
fn files_are_found_by_their_names() {
    one_problem(
        TRUCK,
        "tire = \"drive-11r22-5-g\"",
        "tire = \"drive-11r22-5-h\"",
        "there is no such file in tires/",
        "did you mean \"drive-11r22-5-g\"?",
    );
    one_problem(
        COMBINATION,
        "vehicles = [\"tractor\", \"tipper\"]",
        "vehicles = [\"tractor\", \"tiper\"]",
        "no such file in vehicles/",
        "did you mean \"tipper\"?",
    );
    one_problem(
        HAUL,
        "combination = \"tractor-tipper\"",
        "combination = \"zzz\"",
        "no such file in combinations/",
        "there are: tractor-tipper",
    );
    one_problem(HAUL, "route = \"bench-to-plant\"", "route = \"bench\"", "in routes/", "");
}

#[test]
fn names_inside_files_are_found() {
    one_problem(
        TRUCK,
        "channel = \"drive\"",
        "channel = \"driv\"",
        "no such air channel",
        "did you mean \"drive\"?",
    );
    one_problem(HAUL, "empty_state = \"empty\"", "empty_state = \"emty\"", "load state", "empty");
    one_problem(
        HAUL,
        "parked_rung = \"highway\"",
        "parked_rung = \"highwy\"",
        "no such rung",
        "did you mean \"highway\"?",
    );
    one_problem(
        ROUTE,
        "raising_allowed = true\n",
        "rung = \"haul rod\"\nraising_allowed = true\n",
        "no such rung",
        "did you mean \"haul road\"?",
    );
    one_problem(
        COMBINATION,
        "groups = [\"tractor.drive\"]",
        "groups = [\"tractor.drives\"]",
        "no such axle group",
        "did you mean \"tractor.drive\"?",
    );
    let old = "\"tipper.tridem\" = { mass_kg = 5900";
    let folder = edited(COMBINATION, old, "\"tipper.tandem\" = { mass_kg = 5900");
    tells(&folder, "there is no such axle group");
    tells(&folder, "no load is given for 'tipper.tridem'");
}

#[test]
fn hand_set_cells_name_what_is_there() {
    let cell = |channel: &str, state: &str, rung: &str| {
        let mut folder = quarry();
        let text = format!(
            "{}\n[[hand_set]]\nchannel = \"{channel}\"\nload_state = \"{state}\"\nrung = \"{rung}\"\npressure_kpa = 500\n",
            folder.text(COMBINATION).unwrap()
        );
        folder.insert(COMBINATION, text);
        folder
    };
    assert!(problems(&cell("drive", "laden", "haul road")).is_empty());
    tells(&cell("drve", "laden", "haul road"), "no such air channel");
    tells(&cell("drive", "loaded", "haul road"), "no such load state");
    tells(&cell("drive", "laden", "haul rod"), "no such rung");
}

#[test]
fn names_are_not_used_twice() {
    let folder = edited(COMBINATION, "name = \"haul road\"", "name = \"highway\"");
    tells(&folder, "combinations/tractor-tipper.toml:47:8: the name 'highway' is used twice");
    let folder = edited(TRUCK, "name = \"drive\"", "name = \"steer\"");
    tells(&folder, "the name 'steer' is used twice");
}

#[test]
fn paths_stay_inside_the_survey() {
    let track = |path: &str| edited(ROUTE, "[descent]", &format!("track = \"{path}\"\n[descent]"));
    for path in ["../secret.gpx", "/etc/passwd", "routes/../../x.gpx", "C:\\x.gpx", "a//b.gpx"] {
        let mut folder = track(&path.replace('\\', "\\\\"));
        let text = folder.text(ROUTE).unwrap();
        let cut = text.find("[[elevation]]").unwrap();
        let rest = text.find("[[lay_bys]]").unwrap();
        let text = format!("{}{}", &text[..cut], &text[rest..]);
        folder.insert(ROUTE, text);
        tells(&folder, "leads out of the survey");
    }
}

#[test]
fn files_in_the_wrong_folder_are_told() {
    let mut folder = quarry();
    folder.insert("tyres/a.toml", "x = 1");
    folder.insert("surveys.toml", "x = 1");
    tells(&folder, "tyres/a.toml: warning: nothing reads this file — did you mean tires?");
    tells(&folder, "surveys.toml: warning: nothing reads this file — did you mean survey.toml?");
    assert_eq!(load(&folder).0.unwrap().hauls.len(), 1);
}

#[test]
fn an_empty_folder_is_no_survey() {
    let (survey, problems) = load(&Folder::default());
    assert!(survey.is_none());
    assert_eq!(problems.len(), 1);
    assert!(problems[0].to_string().contains("there is no survey here"), "{}", problems[0]);
    assert!(problems[0].hint().unwrap().contains("airtide new"));
}

#[test]
fn a_broken_haul_leaves_the_others_alone() {
    let mut folder = quarry();
    let haul = folder.text(HAUL).unwrap().replace("\"laden\"", "\"lden\"");
    folder.insert("hauls/second.toml", haul);
    let (survey, problems) = load(&folder);
    let survey = survey.unwrap();
    assert_eq!(survey.hauls.len(), 1);
    assert_eq!(survey.haul_names, ["aggregate", "second"]);
    assert_eq!(problems.len(), 1);
}

#[test]
fn a_broken_survey_file_does_not_hide_what_is_wrong_with_hauls() {
    let mut folder = edited(HAUL, "empty_state = \"empty\"", "empty_state = \"emty\"");
    folder.insert(SURVEY, "name =");
    tells(&folder, "not valid TOML");
    tells(&folder, "there is no such load state");
}
