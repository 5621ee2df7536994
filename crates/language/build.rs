//! Rebuilds the crate when a text file is added, changed or taken away.

fn main() {
    println!("cargo::rerun-if-changed=texts");
}
