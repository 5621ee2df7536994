//! Whatever lies in the folder, reading it ends in an answer.

mod quarry_edits;

use std::fs::{self, File};

use proptest::prelude::*;
use quarry_edits::*;
use survey::{Folder, ProblemKind, ReadError};

#[test]
fn binary_garbage_is_told_as_such() {
    let mut folder = quarry();
    folder.insert(TIRE, vec![0x00, 0xff, 0xfe, 0x0a, 0xc3, 0x28]);
    tells(&folder, "tires/drive-11r22-5-g.toml:1: this is not UTF-8 text: byte 1");
    folder.insert(TIRE, b"body = \"TRA\"\nname = \"\xe4\"\n".to_vec());
    tells(&folder, "tires/drive-11r22-5-g.toml:2: this is not UTF-8 text: byte 21");
}

#[test]
fn a_byte_order_mark_does_no_harm() {
    let mut folder = quarry();
    let text = format!("\u{feff}{}", folder.text(SURVEY).unwrap());
    folder.insert(SURVEY, text);
    assert!(problems(&folder).is_empty());
    edit(&mut folder, SURVEY, "altitude_m = 640", "altitude_m = -6400");
    assert!(survey::report(&problems(&folder), &folder, false).contains("survey.toml:6:14"));
}

#[test]
fn empty_files_lack_everything() {
    let mut folder = quarry();
    folder.insert(TIRE, "");
    tells(&folder, "designation is missing");
    folder.insert(SURVEY, "\n\n# nothing\n");
    tells(&folder, "survey.toml:1:1: temperature is missing");
}

#[test]
fn deep_nesting_is_refused_and_not_followed() {
    let mut folder = quarry();
    folder.insert(TIRE, format!("a = {}{}", "[".repeat(100_000), "]".repeat(100_000)));
    tells(&folder, "tires/drive-11r22-5-g.toml:1:");
    folder.insert(TIRE, format!("a{} = 1", ".a".repeat(100_000)));
    tells(&folder, "tires/drive-11r22-5-g.toml:1:");
    folder.insert(TIRE, format!("[{}a]\nx = 1", "a.".repeat(5_000)));
    tells(&folder, "tires/drive-11r22-5-g.toml:1:");
}

#[test]
fn huge_numbers_and_dates_are_told_as_values() {
    one_problem(SURVEY, "altitude_m = 640", "altitude_m = 1e308", "outside -430 to 6000 m", "");
    one_problem(SURVEY, "altitude_m = 640", "altitude_ft = 1e308", "is outside", "");
    one_problem(SURVEY, "altitude_m = 640", "altitude_m = 2026-05-01", "is text, not a number", "");
    let big = "altitude_m = 99999999999999999999";
    one_problem(SURVEY, "altitude_m = 640", big, "not valid TOML", "");
}

#[test]
fn names_may_be_of_any_script() {
    let mut folder = edited(COMBINATION, "name = \"haul road\"", "name = \"林道 🚚\"");
    edit(&mut folder, COMBINATION, "name = \"laden\"", "name = \"beladen (größer)\"");
    edit(&mut folder, HAUL, "\"laden\"", "\"beladen (größer)\"");
    let (survey, problems) = load(&folder);
    assert!(problems.is_empty(), "{problems:#?}");
    assert_eq!(survey.unwrap().hauls[0].combination.rungs[1].name, "林道 🚚");
}

#[test]
fn a_file_of_a_hundred_megabytes_is_refused_by_name() {
    let disk = tempfile::tempdir().unwrap();
    for (path, bytes) in quarry().files() {
        fs::create_dir_all(disk.path().join(path).parent().unwrap()).unwrap();
        fs::write(disk.path().join(path), bytes).unwrap();
    }
    let big = File::create(disk.path().join("tires/log.toml")).unwrap();
    big.set_len(100 << 20).unwrap();
    let folder = Folder::read(disk.path()).unwrap();
    assert!(folder.bytes("tires/log.toml").is_none());
    let (survey, problems) = load(&folder);
    assert_eq!(problems.len(), 1);
    assert!(problems[0].to_string().starts_with("tires/log.toml: 100 MB is too large"));
    assert_eq!(survey.unwrap().hauls.len(), 1);
}

#[test]
fn a_folder_that_is_none_is_told() {
    let disk = tempfile::tempdir().unwrap();
    assert!(matches!(Folder::read(&disk.path().join("no")), Err(ReadError::Missing(_))));
    fs::write(disk.path().join("file"), "x").unwrap();
    assert!(matches!(Folder::read(&disk.path().join("file")), Err(ReadError::NotAFolder(_))));
    assert_eq!(Folder::read(disk.path()).unwrap().files().count(), 1);
}

#[cfg(unix)]
#[test]
fn links_out_of_the_survey_are_not_followed() {
    use std::os::unix::fs::symlink;
    let disk = tempfile::tempdir().unwrap();
    let survey = disk.path().join("survey");
    fs::create_dir_all(survey.join("tires")).unwrap();
    fs::write(disk.path().join("secret.toml"), "x = 1").unwrap();
    symlink(disk.path().join("secret.toml"), survey.join("tires/a.toml")).unwrap();
    symlink(disk.path(), survey.join("vehicles")).unwrap();
    symlink("nowhere", survey.join("routes")).unwrap();
    symlink(&survey, survey.join("loop")).unwrap();
    let folder = Folder::read(&survey).unwrap();
    assert_eq!(folder.files().count(), 0);
    let kinds: Vec<(&str, &ProblemKind)> =
        folder.refused().iter().map(|problem| (problem.file.as_str(), &problem.kind)).collect();
    assert!(kinds.contains(&("tires/a.toml", &ProblemKind::LinkLeaves)), "{kinds:?}");
    assert!(kinds.contains(&("vehicles", &ProblemKind::LinkLeaves)), "{kinds:?}");
    let unreadable = |path: &str| {
        kinds
            .iter()
            .any(|(file, kind)| *file == path && matches!(kind, ProblemKind::NotReadable { .. }))
    };
    assert!(unreadable("routes"), "{kinds:?}");
}

const FILES: [&str; 11] = [
    SURVEY,
    STEER_TIRE,
    TIRE,
    TRUCK,
    TRAILER,
    COMBINATION,
    ROUTE,
    HAUL,
    APPROVAL,
    PERMIT,
    REGISTER,
];

#[test]
fn the_whole_survey_is_sound() {
    let (survey, problems) = load(&equipped());
    assert!(problems.is_empty(), "{problems:#?}");
    let survey = survey.unwrap();
    let sizes = (survey.hauls.len(), survey.approvals.len(), survey.fleet.len());
    assert_eq!(sizes, (1, 1, 2));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn any_bytes_in_any_file_end_in_problems(bytes in proptest::collection::vec(any::<u8>(), 0..200), which in 0usize..FILES.len()) {
        let mut folder = equipped();
        let file = FILES[which];
        folder.insert(file, bytes);
        let (_, problems) = load(&folder);
        prop_assert!(!problems.is_empty());
        survey::report(&problems, &folder, true);
    }

    #[test]
    fn any_cut_or_changed_file_ends_in_an_answer(which in 0usize..FILES.len(), at in 0.0f64..1.0, byte in any::<u8>(), cut in any::<bool>()) {
        let mut folder = equipped();
        let file = FILES[which];
        let mut bytes = folder.bytes(file).unwrap().to_vec();
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of the file")]
        let at = (at * bytes.len() as f64) as usize;
        if cut { bytes.truncate(at) } else { bytes[at] = byte }
        folder.insert(file, bytes);
        let (survey, problems) = load(&folder);
        for problem in &problems {
            prop_assert!(!problem.to_string().is_empty());
        }
        prop_assert!(survey.is_some() || !problems.is_empty());
    }
}
