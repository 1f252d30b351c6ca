"""The model of model.mjs in plain vectorised numpy, in chunks that fit a cache: by the formulas of whole-month lives and
lognormal bills, or by the tables. Numpy's own generator; prints the time of a future and the means with their errors."""

import json
import sys
import time

import numpy as np

MONTHS, ROW, PARTS, TO_A_VEHICLE, QUANTILES, SPREADS = 120, 128, 24, 12, 4096, 3
path, how, n, chunk, seed = sys.argv[1], sys.argv[2], *map(int, sys.argv[3:6])
with open(path, "rb") as file:
    quantiles = np.fromfile(file, np.float64, SPREADS * (QUANTILES + 1)).reshape(SPREADS, -1)
    worth = np.fromfile(file, np.float64, PARTS * ROW).reshape(PARTS, ROW)
    numbers = np.fromfile(file, np.float64, PARTS * 5).reshape(PARTS, 5)
    discount = np.fromfile(file, np.float64, ROW)
    last = np.fromfile(file, np.int32, PARTS * 2 * ROW).reshape(PARTS, 2, ROW)
    spread_at = np.fromfile(file, np.int32, PARTS) // (QUANTILES + 1)

rng = np.random.Generator(np.random.SFC64(seed))


def life_by_formula(j, new, size):
    shape, scale, age = numbers[j, 0], numbers[j, 1], numbers[j, 2]
    rest = rng.standard_exponential(size)
    if new:
        life = np.ceil(scale * rest ** (1 / shape))
    else:
        life = np.ceil(scale * ((age / scale) ** shape + rest) ** (1 / shape) - age)
    return np.minimum(np.maximum(life, 1), ROW).astype(np.int64)


def bill_by_formula(j, size):
    spread = numbers[j, 4]
    return np.exp(spread * rng.standard_normal(size) - spread * spread / 2)


def life_by_table(j, new, size):
    u = rng.integers(0, 2**31, size, dtype=np.int32)
    return np.searchsorted(last[j, int(new), : MONTHS + 1], u)


def bill_by_table(j, size):
    row = quantiles[spread_at[j]]
    place = rng.random(size) * QUANTILES
    at = place.astype(np.int64)
    low = row[at]
    return low + (place - at) * (row[at + 1] - low)


life, bill = (life_by_table, bill_by_table) if how == "tables" else (life_by_formula, bill_by_formula)


def draw(size):
    cost = np.zeros((2, size))
    for j in range(PARTS):
        into = cost[j // TO_A_VEHICLE]
        month = life(j, False, size)
        who = np.flatnonzero(month <= MONTHS)
        month = month[who]
        while who.size:
            into[who] += bill(j, who.size) * worth[j, month]
            month = month + life(j, True, who.size)
            on = month <= MONTHS
            who, month = who[on], month[on]
    return cost


draw(chunk)
start = time.process_time()
drawn = [draw(chunk) for _ in range(n // chunk)]
ns = (time.process_time() - start) * 1e9 / (n // chunk * chunk)
cost = np.concatenate(drawn, axis=1)
error = cost.std(axis=1) / np.sqrt(cost.shape[1])
print(
    json.dumps(
        {
            "ns": ns,
            "keep": cost[0].mean(),
            "replace": cost[1].mean(),
            "errors": error.tolist(),
            "version": np.__version__,
        }
    )
)
