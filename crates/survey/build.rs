//! Rebuilds the crate when an embedded survey changes.

fn main() {
    for folder in ["starter", "../../demo"] {
        println!("cargo::rerun-if-changed={folder}");
    }
}
