"""Choked flow through a smooth tube by the library fluids: isothermal pipe flow with friction."""

from importlib.metadata import version
from math import pi

from fluids.compressible import P_isothermal_critical_flow, isothermal_gas
from fluids.friction import friction_factor

from cases import write

R, T, MU, RHO_0, P1 = 287.05, 293.15, 1.82e-5, 1.185, 8e5
cases = []
for bore, length in ((6.38, 5.0), (9.56, 5.0), (12.7, 10.0)):
    d, flow = bore / 1e3, 0.01
    for _ in range(50):
        fd = friction_factor(Re=4 * flow / (pi * d * MU), eD=0.0)
        p2 = P_isothermal_critical_flow(P=P1, fd=fd, D=d, L=length)
        rho = (P1 + p2) / 2 / (R * T)
        flow = isothermal_gas(rho=rho, fd=fd, P1=P1, P2=p2, L=length, D=d)
    cases.append((
        "tube-conductance",
        {"bore": f"{bore} mm", "length": f"{length} m"},
        {"conductance": f"{flow / (RHO_0 * P1) * 1e8:.5f} dm3/s/bar"},
        0.15,
        "the tube form lies 10 % under smooth-pipe flow, as a rougher tube with an entry would",
    ))
write("library-fluids", "fluids_tube.py", f"fluids {version('fluids')}", "compressible.isothermal_gas", ["cetop-tube"], cases)
