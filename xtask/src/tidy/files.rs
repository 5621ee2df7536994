//! Size of files, and paths of one machine in them.

use std::fs;
use std::path::Path;
use std::process::Command;

use super::shown;

const LONGEST: usize = 500;
const CODE: [&str; 6] = ["rs", "ts", "tsx", "js", "py", "css"];

/// No code file over 500 lines; no absolute path of a developer's machine in a tracked file.
pub fn check(root: &Path) -> Vec<String> {
    let output = Command::new("git").args(["ls-files", "-z"]).current_dir(root).output();
    let Ok(output) = output else {
        return vec!["git does not start, so the tracked files are not known".to_owned()];
    };
    let mut problems = Vec::new();
    for name in String::from_utf8_lossy(&output.stdout).split('\0').filter(|name| !name.is_empty())
    {
        let path = root.join(name);
        let Ok(text) = fs::read_to_string(&path) else { continue };
        let extension = path.extension().and_then(|e| e.to_str()).unwrap_or_default();
        let lines = text.lines().count();
        if CODE.contains(&extension) && lines > LONGEST {
            problems.push(format!("{name}: {lines} lines; split it by idea, {LONGEST} at most"));
        }
        for (index, line) in text.lines().enumerate() {
            if let Some(found) = machine_path(line) {
                let place = format!("{}:{}", shown(root, &path), index + 1);
                problems.push(format!("{place}: path of one machine: {found}"));
            }
        }
    }
    problems
}

fn machine_path(line: &str) -> Option<&'static str> {
    const ROOTS: [&str; 5] = [
        concat!("/ho", "me/"),
        concat!("/ro", "ot/"),
        concat!("/wo", "rk/"),
        concat!("/t", "mp/"),
        concat!("C:\\Us", "ers"),
    ];
    ROOTS.into_iter().find(|prefix| {
        line.match_indices(prefix).any(|(at, _)| {
            let before = line[..at].chars().next_back();
            before.is_none_or(|c| !(c.is_alphanumeric() || ".~$}*-_/".contains(c)))
        })
    })
}

#[cfg(test)]
mod tests {
    use super::machine_path;

    #[test]
    fn absolute_paths_are_found_and_relative_ones_are_not() {
        assert!(machine_path(concat!("see /ho", "me/me/notes")).is_some());
        assert!(machine_path(concat!("\"/t", "mp/x\"")).is_some());
        assert!(machine_path(concat!("target/tmp/x and docs/wo", "rk/plan")).is_none());
    }
}
