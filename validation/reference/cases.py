"""Writes case files: the part that the reference scripts share."""

from pathlib import Path

CASES = Path(__file__).parent.parent / "cases"


def value(v):
    return f'"{v}"' if isinstance(v, str) else repr(float(v))


def inline(pairs):
    return "{ " + ", ".join(f"{k} = {value(v)}" for k, v in pairs.items()) + " }"


def write(source, script, made_with, locator, checks, cases):
    """One file; `checks` are the source keys of the equations it is held against; each case is (equation, inputs, expected, relative tolerance, because)."""
    lines = [
        f"# Written by validation/reference/{script}; run it again rather than editing.",
        f'source = "{source}"',
        'standing = "script"',
        f'script = "reference/{script}"',
        f'made_with = "{made_with}"',
        f'locator = "{locator}"',
        "checks = [" + ", ".join(f'"{key}"' for key in checks) + "]",
    ]
    for equation, inputs, expected, tolerance, because in cases:
        lines += [
            "",
            "[[case]]",
            f'equation = "{equation}"',
            'level = "library"',
            f"inputs = {inline(inputs)}",
            f"expected = {inline(expected)}",
            f'tolerance = {{ relative = {tolerance!r}, because = "{because}" }}',
        ]
    (CASES / f"{source}.toml").write_text("\n".join(lines) + "\n")
