//! Stops the build with the one command to run where the front end is not built.

fn main() {
    let index = "front/dist/index.html";
    println!("cargo::rerun-if-changed=front/dist");
    println!("cargo::rerun-if-changed=build.rs");
    if !std::path::Path::new(index).is_file() {
        println!(
            "cargo::error=the front end of the page is not built; run: cargo xtask front (needs node 20 or later with npm)"
        );
        std::process::exit(1);
    }
}
