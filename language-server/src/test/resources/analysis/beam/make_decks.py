"""Writes the beam decks beside this file, runs them, and records what the solver answers.

Each case gives two files: NAME.inp, a deck for the general finite-element program CalculiX
CrunchiX (command ccx; made with version 2.20 of Debian 12), and NAME.case, the same beam in plain
words with the reactions, deflections and moments read from the program's output. Millimetres,
newtons. Members are 30 mm wide and 20 to 24 mm deep on spans of metres, so that shear deformation
stays far below the half per cent that is compared.

Usage: python3 make_decks.py
"""

import os
import subprocess
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
WIDTH, DEPTH, MODULUS, STEP = 30.0, 20.0, 70000.0, 100.0

# end; pins; springs (place, N/mm); hinges; deeper stretches (from, to, depth);
# line loads (from, to, N/mm at from, N/mm at to); forces (place, N); couples (place, N mm)
CASES = {
    "three-unequal-spans": dict(end=9600, pins=[0, 3000, 6900, 9600], lines=[(0, 9600, 0.02, 0.02)]),
    "two-floors-one-splice": dict(
        end=7300, pins=[0, 3650, 7300], hinges=[4400], lines=[(0, 7300, 0.02, 0.02)]
    ),
    "five-floors-four-splices": dict(
        end=18600,
        pins=[0, 4200, 7800, 11400, 15000, 18600],
        hinges=[4900, 8400, 12100, 15600],
        lines=[(0, 11400, 0.02, 0.02), (11400, 18600, 0.03, 0.03)],
    ),
    "overhangs": dict(end=8000, pins=[900, 4500, 7200], lines=[(0, 8000, 0.02, 0.02)]),
    "reinforced-middle": dict(
        end=7200,
        pins=[0, 3600, 7200],
        deeper=[(900, 2700, 24.0), (3200, 5000, 24.0)],
        lines=[(0, 7200, 0.02, 0.02)],
    ),
    "partial-trapezoid": dict(
        end=7000,
        pins=[0, 3400, 7000],
        hinges=[3900],
        lines=[(600, 2500, 0.0, 0.04), (2500, 4600, 0.04, 0.01), (5000, 6400, 0.03, 0.03)],
    ),
    "springs": dict(
        end=7200, pins=[0, 7200], springs=[(2400, 1.5), (4800, 0.6)], lines=[(0, 7200, 0.02, 0.02)]
    ),
    "forces-and-couple": dict(
        end=7200,
        pins=[0, 3600, 7200],
        hinges=[4200],
        forces=[(1300, 40.0), (5500, -25.0), (4200, 15.0)],
        couples=[(2600, 20000.0)],
    ),
    "two-splices-in-a-span": dict(
        end=11000,
        pins=[0, 3600, 7400, 11000],
        hinges=[4300, 6700],
        deeper=[(4000, 4300, 24.0)],
        lines=[(0, 11000, 0.02, 0.02)],
        forces=[(5500, 30.0)],
    ),
    "splice-on-an-anchor": dict(
        end=10800,
        pins=[0, 3600, 7200, 10800],
        hinges=[7200],
        lines=[(0, 10800, 0.015, 0.03)],
    ),
}


def mesh(case):
    """Node places of each length between hinges, elements of at most STEP between key places."""
    keys = {0.0, float(case["end"])}
    keys.update(case["pins"], case.get("hinges", []))
    keys.update(place for place, _ in case.get("springs", []))
    keys.update(place for place, _ in case.get("forces", []))
    keys.update(place for place, _ in case.get("couples", []))
    for one in case.get("deeper", []) + case.get("lines", []):
        keys.update(one[:2])
    keys = sorted(float(key) for key in keys)
    places = [0.0]
    for left, right in zip(keys, keys[1:]):
        parts = max(1, round((right - left) / STEP))
        places += [left + (right - left) * i / parts for i in range(1, parts + 1)]
    return places


def build(case):
    """Nodes (number -> place), elements (three nodes, depth) and hinge pairs."""
    hinges = [float(h) for h in case.get("hinges", [])]
    nodes, elements, pairs, number = {1: 0.0}, [], [], 1
    places = mesh(case)
    for left, right in zip(places, places[1:]):
        if left in hinges:
            pairs.append((number, number + 1))
            number += 1
            nodes[number] = left
        middle, end = number + 1, number + 2
        nodes[middle], nodes[end] = (left + right) / 2, right
        depth = DEPTH
        for start, stop, deep in case.get("deeper", []):
            if start <= nodes[middle] <= stop:
                depth = deep
        elements.append((number, middle, end, depth))
        number = end
    return nodes, elements, pairs


def node_at(nodes, place):
    """The first node at a place: the left one of a hinge."""
    return min(n for n, x in nodes.items() if abs(x - place) < 1e-6)


def consistent(case, nodes, elements):
    """Work-equivalent nodal forces of the line loads."""
    force = {}
    for start, stop, first, last in case.get("lines", []):
        for a, m, b, _ in elements:
            if start - 1e-6 <= nodes[a] and nodes[b] <= stop + 1e-6:
                slope = (last - first) / (stop - start)
                wa = first + slope * (nodes[a] - start)
                wb = first + slope * (nodes[b] - start)
                length = nodes[b] - nodes[a]
                for node, share in ((a, wa / 6), (m, (wa + wb) / 3), (b, wb / 6)):
                    force[node] = force.get(node, 0.0) + share * length
    for place, value in case.get("forces", []):
        node = node_at(nodes, place)
        force[node] = force.get(node, 0.0) + value
    return force


def deck(name, case, nodes, elements, pairs, force):
    """The input deck as text."""
    out = ["** " + name + ": beam along x, loads along y; mm, N", "*NODE, NSET=ALL"]
    out += [f"{n}, {x:.6g}, 0, 0" for n, x in nodes.items()]
    depths = sorted({depth for *_, depth in elements})
    for depth in depths:
        out.append(f"*ELEMENT, TYPE=B32R, ELSET=D{depth:g}")
        out += [
            f"{i}, {a}, {m}, {b}"
            for i, (a, m, b, d) in enumerate(elements, start=1)
            if d == depth
        ]
    for i, (place, stiffness) in enumerate(case.get("springs", []), start=1):
        out.append(f"*ELEMENT, TYPE=SPRING1, ELSET=K{i}")
        out.append(f"{len(elements) + i}, {node_at(nodes, place)}")
        out += [f"*SPRING, ELSET=K{i}", "2", f"{stiffness:g}"]
    out += ["*MATERIAL, NAME=METAL", "*ELASTIC", f"{MODULUS:g}, 0"]
    for depth in depths:
        out.append(f"*BEAM SECTION, ELSET=D{depth:g}, MATERIAL=METAL, SECTION=RECT")
        out += [f"{WIDTH:g}, {depth:g}", "0, 0, -1"]
    if pairs:
        out.append("** splices: the two ends move together and turn freely")
    for left, right in pairs:
        for dof in (1, 2):
            out += ["*EQUATION", "2", f"{right}, {dof}, 1, {left}, {dof}, -1"]
    out += ["*BOUNDARY", "ALL, 3, 3", "1, 1, 1"]
    out += [f"{node_at(nodes, place)}, 2, 2" for place in case["pins"]]
    starts = [1] + [right for _, right in pairs]
    out += [f"{start + 1}, 4, 4" for start in starts]
    out += ["*STEP", "*STATIC", "*CLOAD"]
    out += [f"{node}, 2, {value:.10g}" for node, value in sorted(force.items())]
    for place, value in case.get("couples", []):
        out.append(f"{node_at(nodes, place)}, 6, {value:g}")
    out += ["*NODE PRINT, NSET=ALL", "U, RF"]
    out += ["*EL FILE, SECTION FORCES, OUTPUT=2D", "S", "*END STEP"]
    return "\n".join(out) + "\n"


def run(text):
    """Displacements, nodal forces and bending moments by node."""
    with tempfile.TemporaryDirectory() as room:
        with open(os.path.join(room, "deck.inp"), "w", encoding="ascii") as file:
            file.write(text)
        done = subprocess.run(["ccx", "deck"], cwd=room, capture_output=True, text=True, check=False)
        if "ERROR" in done.stdout or "Job finished" not in done.stdout:
            raise SystemExit(done.stdout)
        tables, current = [], None
        with open(os.path.join(room, "deck.dat"), encoding="ascii") as file:
            for line in file:
                words = line.split()
                if line.startswith((" displacements", " forces")):
                    current = {}
                    tables.append(current)
                elif len(words) == 4 and current is not None:
                    current[int(words[0])] = float(words[2])
        moments, inside = {}, False
        with open(os.path.join(room, "deck.frd"), encoding="ascii") as file:
            for line in file:
                if line.startswith(" -4"):
                    inside = "STRESS" in line
                elif line.startswith(" -1") and inside:
                    moments[int(line[3:13])] = float(line[61:73])
    return tables[0], tables[1], moments


def record(case, nodes, force, answer):
    """The plain-words file: the beam, then what was read."""
    moved, forces, moments = answer
    rigid = MODULUS * WIDTH / 12
    out = [
        "# Read from CalculiX CrunchiX 2.20 (ccx, Debian 12); millimetres, newtons.",
        "# The deck of the same name holds the whole input; make_decks.py wrote both.",
        f"beam 0 {case['end']:g}",
        f"stretch 0 {case['end']:g} {rigid * DEPTH**3:.12g}",
    ]
    for start, stop, deep in case.get("deeper", []):
        out.append(f"stretch {start:g} {stop:g} {rigid * (deep**3 - DEPTH**3):.12g}")
    out += [f"pin {place:g}" for place in case["pins"]]
    out += [f"spring {place:g} {k:g}" for place, k in case.get("springs", [])]
    out += [f"hinge {place:g}" for place in case.get("hinges", [])]
    out += ["line " + " ".join(f"{v:g}" for v in line) for line in case.get("lines", [])]
    out += [f"force {place:g} {value:g}" for place, value in case.get("forces", [])]
    out += [f"couple {place:g} {value:g}" for place, value in case.get("couples", [])]
    hinges = {float(h) for h in case.get("hinges", [])}
    for place in case["pins"]:
        here = [n for n, x in nodes.items() if abs(x - place) < 1e-6]
        # The program's nodal force still holds the load that stands on the node itself.
        value = sum(force.get(n, 0.0) for n in here) - sum(forces[n] for n in here)
        out.append(f"reaction {place:g} {value:.6g}")
    for place, k in case.get("springs", []):
        out.append(f"reaction {place:g} {k * moved[node_at(nodes, place)]:.6g}")
    supports = sorted(case["pins"] + [place for place, _ in case.get("springs", [])])
    ends = sorted({0, case["end"], *supports})
    for left, right in zip(ends, ends[1:]):
        for share in (0.25, 0.5, 0.75):
            target = left + share * (right - left)
            node = min(nodes, key=lambda n: (abs(nodes[n] - target), n))
            if nodes[node] in hinges:
                continue
            out.append(f"deflection {nodes[node]:.6g} {moved[node]:.6g}")
            if all(nodes[node] != place for place, _ in case.get("couples", [])):
                out.append(f"moment {nodes[node]:.6g} {moments[node]:.6g}")
    for place in sorted(hinges):
        out.append(f"deflection {place:g} {moved[node_at(nodes, place)]:.6g}")
    for place in supports:
        if float(place) not in hinges and 0 < place < case["end"]:
            out.append(f"moment {place:g} {moments[node_at(nodes, place)]:.6g}")
    return "\n".join(out) + "\n"


def main():
    for name, case in CASES.items():
        nodes, elements, pairs = build(case)
        force = consistent(case, nodes, elements)
        text = deck(name, case, nodes, elements, pairs, force)
        answer = run(text)
        for ending, content in ((".inp", text), (".case", record(case, nodes, force, answer))):
            with open(os.path.join(HERE, name + ending), "w", encoding="ascii") as file:
                file.write(content)


if __name__ == "__main__":
    main()
