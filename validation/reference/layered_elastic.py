"""Layered elastic ground by another road: Love's stress function with growing and decaying waves in
one dense system for all layers, solved by mpmath with as many digits as the growth of the waves
takes; Bessel functions by scipy. Writes the cases and layered_elastic.json (a grid, read by a test of
the model)."""

import json
from importlib.metadata import version
from pathlib import Path

import mpmath as mp
import numpy as np
from scipy.special import j0, j1

from cases import write

# What is left of e^(-CUT), and how far from a wheel the points lie at most (m).
CUT, REACH = 30.0, 1.7


class Ground:
    """Layers (modulus MPa, Poisson's ratio, thickness m), the last without thickness."""

    def __init__(self, layers):
        self.layers = layers
        self.known, self.seen = {}, {}
        # Waves grow over all layers while the shallowest face decays by e^(-CUT).
        depth = sum(h for _, _, h in layers[:-1])
        mp.mp.dps = int(50 + 2 * CUT * depth / layers[0][2] / 2.3)
        end, width = CUT / layers[0][2], 3.0 / REACH
        edges = np.concatenate(([0], width * 2.0 ** np.arange(-20, 0), np.arange(width, end + width, width)))
        x, w = np.polynomial.legendre.leggauss(7)
        self.nodes = np.concatenate([(b - a) / 2 * x + (a + b) / 2 for a, b in zip(edges, edges[1:])])
        self.weights = np.concatenate([(b - a) / 2 * w for a, b in zip(edges, edges[1:])])

    def columns(self, m, nu, e, z):
        """sz, txz, 2 m w, 2 m u (per m) of the four solutions A e^mz, B z e^mz, C e^-mz, D z e^-mz of
        Love's function phi: w = (2(1-nu) lap - d2/dz2) phi / 2G and so on, J0 and J1 taken out."""
        g = e / (2 * (1 + nu))
        rows = []
        for sign in (1, -1):
            for power in (0, 1):
                s = mp.mpf(sign) * m
                f = [mp.exp(s * z) * z**power]
                # Derivatives of z^p e^(sz) by Leibniz.
                for n in (1, 2, 3):
                    f.append(mp.exp(s * z) * (s**n * z**power + (n * s ** (n - 1) if power else 0)))
                lap = [f[0 + n] * -(m**2) for n in (0, 1)]
                lap = [lap[0] + f[2], lap[1] + f[3]]
                rows.append((
                    (2 - nu) * lap[1] - f[3],  # sz / J0
                    -m * ((1 - nu) * lap[0] - f[2]),  # trz / J1
                    (2 * (1 - nu) * lap[0] - f[2]) / (2 * g),  # w / J0
                    m * f[1] / (2 * g),  # u / J1
                ))
        return rows

    def amplitudes(self, m):
        if m in self.known:
            return self.known[m]
        n = len(self.layers)
        mm = mp.mpf(m)
        size = 4 * n
        matrix, right = mp.zeros(size, size), mp.zeros(size, 1)
        (e, nu, _), row = self.layers[0], 0
        for k, column in enumerate(self.columns(mm, mp.mpf(nu), mp.mpf(e), mp.mpf(0))):
            matrix[0, k], matrix[1, k] = column[0], column[1]
        right[0] = -1
        row, top = 2, mp.mpf(0)
        for i in range(n - 1):
            h = mp.mpf(self.layers[i][2])
            for side, z, sign in ((i, top + h, 1), (i + 1, top + h, -1)):
                e, nu, _ = self.layers[side]
                for k, column in enumerate(self.columns(mm, mp.mpf(nu), mp.mpf(e), z)):
                    for j in range(4):
                        matrix[row + j, 4 * side + k] = sign * column[j]
            row, top = row + 4, top + h
        matrix[row, size - 4] = matrix[row + 1, size - 3] = 1
        self.known[m] = mp.lu_solve(matrix, right)
        return self.known[m]

    def kernels(self, m, layer, z):
        x = self.amplitudes(m)
        e, nu, _ = self.layers[layer]
        columns = self.columns(mp.mpf(m), mp.mpf(nu), mp.mpf(e), mp.mpf(z))
        return [float(sum(x[4 * layer + k] * c[j] for k, c in enumerate(columns))) for j in range(4)]

    def field(self, layer, z, wheels, at):
        """Strains xx, yy, zz, xy; stresses zz, xz; settlement, at a point for wheels (x, y, a m, q MPa)."""
        e, nu, _ = self.layers[layer]
        circles = sorted({(a, round(((at[0] - x) ** 2 + (at[1] - y) ** 2) ** 0.5, 12)) for x, y, a, _ in wheels})
        if (layer, z) not in self.seen:
            count = int(np.searchsorted(self.nodes, CUT / z))
            self.seen[layer, z] = np.array([self.kernels(m, layer, z) for m in self.nodes[:count]]).T
        sz, t, w, u = self.seen[layer, z]
        nodes, weights = self.nodes[: len(sz)], self.weights[: len(sz)]
        fields = {}
        for a, r in circles:
            load = weights * a * j1(nodes * a)
            x = nodes * r
            j1x = np.where(x < 1e-9, 0.5, j1(x) / np.where(x < 1e-9, 1, x))
            fields[a, r] = [
                float(np.sum(load * sz * j0(x))),
                float(np.sum(load * t * j1(x))),
                float(np.sum(load * w * j0(x))),
                float(np.sum(load * nodes * u * j0(x))),
                float(np.sum(load * nodes * u * j1x)),
            ]
        total = dict.fromkeys(("exx", "eyy", "exy", "szz", "sxz", "uz"), 0.0)
        for x, y, a, q in wheels:
            dx, dy = at[0] - x, at[1] - y
            r = (dx * dx + dy * dy) ** 0.5
            c, s = (dx / r, dy / r) if r > 0 else (1.0, 0.0)
            szz, txz, uz, dilation, hoop = fields[a, round(r, 12)]
            radial = dilation - hoop
            total["exx"] += q * (radial * c * c + hoop * s * s)
            total["eyy"] += q * (radial * s * s + hoop * c * c)
            total["exy"] += q * (radial - hoop) * c * s
            total["szz"] += q * szz
            total["sxz"] += q * txz * c
            total["uz"] += q * uz
        total["ezz"] = (1 + nu) * (1 - 2 * nu) / (e * (1 - nu)) * total["szz"] - nu / (1 - nu) * (total["exx"] + total["eyy"])
        return total


GROUNDS = {
    "thin": [(3000.0, 0.35, 0.05), (200.0, 0.35, 0.25), (50.0, 0.40, None)],
    "thaw": [(6000.0, 0.35, 0.075), (80.0, 0.35, 0.25), (15.0, 0.40, None)],
    "two": [(1000.0, 0.30, 0.30), (30.0, 0.50, None)],
    "five": [(4000.0, 0.35, 0.04), (2500.0, 0.35, 0.08), (8000.0, 0.20, 0.15), (150.0, 0.40, 0.30), (40.0, 0.45, None)],
    "contrast": [(30000.0, 0.20, 0.20), (3.0, 0.45, None)],
}


def radius(load_kn, kpa):
    return (load_kn / kpa / np.pi) ** 0.5


def wheels(load_kn, kpa, places):
    a = float(radius(load_kn, kpa))
    return [(x, y, a, kpa / 1e3) for x, y in places]


DUAL_TANDEM = [(0.0, 0.0), (0.34, 0.0), (0.0, 1.3), (0.34, 1.3)]
POINTS = [(0.0, 0.0), (0.17, 0.0), (0.1, 0.4)]


def main():
    made_with = f"mpmath {version('mpmath')}, scipy {version('scipy')}, numpy {version('numpy')}"
    rows, cases = [], []
    for name, layers in GROUNDS.items():
        ground = Ground(layers)
        depth, faces = 0.0, []
        for i, (_, _, h) in enumerate(layers[:-1]):
            depth += h
            faces += [("bottom", i, depth), ("top", i + 1, depth)]
        faces.append(("within", len(layers) - 1, depth + 0.2))
        for kpa in (690.0, 345.0):
            tires = wheels(20.0, kpa, DUAL_TANDEM)
            for face, layer, z in faces:
                for at in POINTS:
                    found = ground.field(layer, z, tires, at)
                    rows.append({"ground": name, "pressure_kpa": kpa, "face": face, "layer": layer, "depth_m": z,
                                 "x_m": at[0], "y_m": at[1], **found})
    for name in ("thin", "thaw"):
        layers = GROUNDS[name]
        ground = Ground(layers)
        for kpa in (690.0, 345.0):
            tires = wheels(20.0, kpa, [(0.0, 0.0), (0.34, 0.0)])
            worst = lambda of: max(of(at) for at in ((0.0, 0.0), (0.17, 0.0)))  # noqa: E731
            h1, h2 = layers[0][2], layers[0][2] + layers[1][2]

            def asphalt(at):
                f = ground.field(0, h1, tires, at)
                return max(f["exx"], f["eyy"])

            written = [f"{e} MPa, {nu}" + (f", {h * 1e3} mm" if h else "") for e, nu, h in layers]
            inputs = {"wheel_load": "20 kN", "pressure": f"{kpa} kPa", "dual_spacing": "340 mm",
                      "layers": "; ".join(written)}
            expected = {
                "asphalt_microstrain": 1e6 * worst(asphalt),
                "subgrade_microstrain": 1e6 * worst(lambda at: -ground.field(2, h2, tires, at)["ezz"]),
            }
            cases.append(("pavement-strain", inputs, expected, 1e-6, "another solution of the same equations"))
    write("library-mpmath", "layered_elastic.py", made_with,
          "lu_solve with growing waves; Gauss-Legendre panels", ["burmister-1945"], cases)
    out = {
        "made_with": made_with,
        "load_kn": 20.0,
        "wheels_m": DUAL_TANDEM,
        "grounds": {name: [list(layer) for layer in layers] for name, layers in GROUNDS.items()},
        "rows": rows,
    }
    path = Path(__file__).parent / "layered_elastic.json"
    path.write_text(json.dumps(out, indent=None, separators=(",", ":")).replace('{"ground', '\n{"ground') + "\n")


if __name__ == "__main__":
    main()
