"""Acceptability by numpy, as one would write it: a matrix product, argsort and bincount. Prints seconds by the clock and of processors, one line a repeat.

acceptability.py UNITS CRITERIA DRAWS REPEATS
"""
import sys
import time

import numpy as np


def acceptability(table, draws, generator):
    units, criteria = table.shape
    weights = generator.standard_exponential((draws, criteria))
    weights /= weights.sum(axis=1, keepdims=True)
    scores = weights @ table.T
    order = np.argsort(-scores, axis=1)
    counts = np.bincount((order * units + np.arange(units)).ravel(), minlength=units * units)
    return counts.reshape(units, units) / draws


def main():
    units, criteria, draws, repeats = map(int, sys.argv[1:5])
    table = np.array([[((u * 31 + 7) * (c * 57 + 11) * 40503 + u * u * (c + 1) * 7919) % 1000003 / 1000003 for c in range(criteria)] for u in range(units)])
    generator = np.random.default_rng(1)
    print("numpy", np.__version__)
    for _ in range(repeats + 1):
        began, busy = time.perf_counter(), time.process_time()
        shares = acceptability(table, draws, generator)
        print(time.perf_counter() - began, time.process_time() - busy)
    print(" ".join(repr(float(share)) for share in shares[:, 0]))


main()
