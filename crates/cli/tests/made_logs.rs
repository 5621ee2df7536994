//! Made logs by the command line.

mod common;

use common::airtide_in;

#[cfg(not(feature = "logs"))]
#[test]
fn a_build_without_logs_says_which_has_them() {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["logs", "make", "fleet", "--out", "logs"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains("--features logs"), "{}", ran.err);
}

#[cfg(feature = "logs")]
mod made {
    use super::*;
    use common::with_starter;

    #[test]
    fn a_log_and_its_truth_are_written_once_and_read_as_text() {
        let folder = with_starter();
        let call = ["logs", "make", "fleet", "--out", "logs", "--cycles", "1", "--json"];
        let ran = airtide_in(folder.path(), &call);
        assert_eq!(ran.code, 0, "{}", ran.err);
        let document = ran.json();
        assert_eq!(document["schema"], "airtide.made-logs/1");
        let log = &document["logs"][0];
        let path = |key: &str| folder.path().join(log[key].as_str().unwrap());
        let text = std::fs::read_to_string(path("log")).unwrap();
        assert_eq!(text.lines().count() as u64, log["frames"].as_u64().unwrap());
        let truth = std::fs::read_to_string(path("truth")).unwrap();
        let truth: serde_json::Value = serde_json::from_str(&truth).unwrap();
        assert_eq!(truth["schema"], "airtide.truth/1");
        let times = truth["values"]["time_s"].as_array().unwrap().len();
        for tire in truth["values"]["tire_kpa"].as_array().unwrap() {
            assert_eq!(tire.as_array().unwrap().len(), times);
        }
        let again = airtide_in(folder.path(), &call);
        assert_eq!(again.code, 2);
        assert!(again.err.contains("is there already"), "{}", again.err);
    }

    #[test]
    fn wrong_calls_say_what_would_do() {
        let folder = with_starter();
        let told = |more: &[&str]| {
            let call = [&["logs", "make", "fleet", "--out", "logs"][..], more].concat();
            let ran = airtide_in(folder.path(), &call);
            assert_eq!(ran.code, 2, "{more:?}: {}", ran.err);
            assert!(!folder.path().join("logs").exists());
            ran.err
        };
        assert!(told(&["--fault", "tire-leek@a=1mm"]).contains("did you mean 'tire-leak'"));
        assert!(told(&["--fault", "tire-leak@nowhere=1mm"]).contains("there is no tire 'nowhere'"));
        assert!(told(&["--fault", "tire-leak@a=90mm"]).contains("0.05 to 20 mm"));
        assert!(told(&["--unit", "X-1"]).contains("no truck 'X-1'"));
        assert!(told(&["--late-by", "1km"]).contains("--driver late"));
        assert!(told(&["--starts", "25h"]).contains("time of day"));
    }

    #[test]
    fn the_list_of_faults_needs_no_survey() {
        let folder = tempfile::tempdir().unwrap();
        let ran = airtide_in(folder.path(), &["logs", "make", "--list-faults"]);
        assert_eq!(ran.code, 0, "{}", ran.err);
        for kind in ["tire-leak", "exhaust-frozen", "sensors-swapped", "clock-off"] {
            assert!(ran.out.contains(kind));
        }
    }
}
