"""Recalculates the findings of this report from its shots, with Python, NumPy and SciPy:

    python3 reproduce.py          the main measures number by number, the others in one line each
    python3 reproduce.py all      every number

Reads shots.csv, datapackage.json (which column holds what) and findings.json from its own folder. Everything is in the
units of findings.json: metres, metres a second, degrees, rpm. Ends with an error if a number differs by more than 1e-9
of itself (of 1, for numbers under 1).
"""

import csv
import json
import sys
from collections import defaultdict
from itertools import product
from pathlib import Path

import numpy as np
from scipy.optimize import brentq
from scipy.special import ndtr
from scipy.stats import chi2, norm, t as student

FEWEST_SHOTS = 5
folder = Path(__file__).resolve().parent


def read_json(name):
    return json.loads((folder / name).read_text(encoding="utf-8"))


# --- Shots ------------------------------------------------------------------------------------------------------------

# What follows from two other readings is calculated from them: the file has it rounded.
MADE_OF = {
    "smash": lambda ball, club: ball / club,
    "face_to_path": lambda face, path: face - path,
    "spin_loft": lambda loft, attack: loft - attack,
    "spin_rate": np.hypot,
    "spin_axis": lambda back, side: np.degrees(np.arctan2(side, back)),
}

findings = read_json("findings.json")
assert findings["version"] == 2, "These programs read version 2 of findings.json."
with open(folder / "shots.csv", encoding="utf-8", newline="") as file:
    shots = list(csv.DictReader(file))
thing = np.array([shot["Contender"] for shot in shots])
golfer = np.array([shot["Golfer"] for shot in shots])
counted = np.array([shot["Left out"] == "" for shot in shots])
rounds = np.array([f"{shot['Golfer']} {shot['Round']}" if shot["Round"] else "" for shot in shots])
contenders = [one["id"] for one in findings["contenders"]]
golfers = list(dict.fromkeys(golfer))

fields = [field for field in read_json("datapackage.json")["resources"][0]["schema"]["fields"] if "metric" in field]
readings = {
    field["metric"]: np.array([float(shot[field["name"]] or "nan") for shot in shots]) * field["toSI"]
    for field in fields
}
for field in fields:
    if "calculatedFrom" in field:
        made = MADE_OF[field["metric"]](*(readings[part] for part in field["calculatedFrom"]))
        readings[field["metric"]] = np.where(np.isnan(made), readings[field["metric"]], made)


def values_of(values, contender, of=golfers, all_shots=False):
    return values[(thing == contender) & np.isin(golfer, of) & (counted | all_shots) & ~np.isnan(values)]


# --- Likely ranges ----------------------------------------------------------------------------------------------------


def range_under(q, k, df):
    """Chance that the range of k standard normals over an independent estimate of their sd with df stays under q.

    As studentized_range.cdf of SciPy, which takes some hundred times as long for fewer digits.
    """
    u = np.linspace(*np.log(np.array([chi2.ppf(1e-17, df), chi2.isf(1e-17, df)]) / df) / 2, 81)
    weight = np.exp(df * (u - np.exp(2 * u) / 2 + 0.5))
    z = np.arange(-9, 9.01, 0.25)
    inside = k * norm.pdf(z) * (ndtr(z) - ndtr(z - q * np.exp(u)[:, None])) ** (k - 1) * 0.25
    return weight @ inside.sum(axis=1) / weight.sum()


def likely(estimate, error, df, level, k):
    """Among all pairs of k: Student's t for two, else the studentized range (Tukey's q over the root of 2)."""
    if k == 2:
        critical = student.ppf((1 + level) / 2, df)
        p = 2 * student.sf(abs(estimate) / error, df)
    else:
        critical = brentq(lambda q: range_under(q, k, df) - level, 0.5, 200, xtol=1e-13) / np.sqrt(2)
        p = 1 - range_under(abs(estimate) / error * np.sqrt(2), k, df)
    width = critical * error
    return {"estimate": estimate, "ci": [estimate - width, estimate + width], "p": p, "width": width}


def cell(values, step):
    """Mean, and its variance; a spread under that of rounding to the file's step is not believed."""
    return np.mean(values), max(np.var(values, ddof=1), step**2 / 12) / len(values), len(values) - 1


def welch(a, b, level, k):
    """Two groups of cells, each counted alike: Welch, Satterthwaite; for three or more things Games and Howell."""
    means, errors, dfs = np.array([*a, *b]).T
    sides = np.repeat([1, -1], [len(a), len(b)])
    df = errors.sum() ** 2 / (errors**2 / dfs).sum()
    return likely(means @ sides / len(a), np.sqrt(errors.sum()) / len(a), df, level, k)


def by_shots(values, pair, level, step, of=golfers, all_shots=False):
    def own(contender, one):
        return values_of(values, contender, [one], all_shots)

    judged = [one for one in contenders if all(len(own(one, each)) >= FEWEST_SHOTS for each in of)]
    cells = [[cell(own(pair[side], each), step) for each in of] for side in "ab"]
    return welch(*cells, level, len(judged))


def additive(table, a, b, level):
    """value ~ block + thing by least squares; Tukey and Kramer over all things. `table`: {(block, thing): value}"""
    blocks, things = (list(dict.fromkeys(keys)) for keys in zip(*table))
    design = np.array([[*(x == block for x in blocks), *(y == one for y in things[1:])] for block, one in table], float)
    value = np.array(list(table.values()))
    inverse = np.linalg.inv(design.T @ design)
    effects = np.linalg.lstsq(design, value, rcond=None)[0]
    contrast = np.array([0.0] * len(blocks) + [(one == a) - float(one == b) for one in things[1:]])
    df = len(value) - design.shape[1]
    variance = ((value - design @ effects) ** 2).sum() / df
    return likely(contrast @ effects, np.sqrt(variance * (contrast @ inverse @ contrast)), df, level, len(things))


def means_table(values, block, least=1, things=contenders, all_shots=False):
    cells = defaultdict(list)
    for value, where, what, there in zip(values, block, thing, counted | all_shots):
        if there and where and what in things and not np.isnan(value):
            cells[where, what].append(value)
    return {key: np.mean(own) for key, own in cells.items() if len(own) >= least}


def differences(table, a, b):
    blocks = dict.fromkeys(block for block, _ in table)
    return np.array([table[one, a] - table[one, b] for one in blocks if (one, a) in table and (one, b) in table])


def by_golfers(values, pair, level, all_shots=False):
    """Six golfers or more: their averages are what is compared, and no range is narrower than the pair's own t."""
    sizes = [len(values_of(values, one, [who], all_shots)) for who, one in product(golfers, contenders)]
    least = 3 if np.median([size for size in sizes if size > 0]) >= 6 else 1
    table = means_table(values, golfer, least, all_shots=all_shots)
    model = additive(table, pair["a"], pair["b"], level)
    own = differences(table, pair["a"], pair["b"])
    if len(own) < 2 or np.var(own) == 0:
        return model
    paired = likely(model["estimate"], np.std(own, ddof=1) / np.sqrt(len(own)), len(own) - 1, level, 2)
    return paired if paired["width"] > model["width"] else model


def by_rounds(values, pair, level):
    """The same with rounds in place of golfers."""
    judged = [one for one in contenders if len(values_of(values, one)) >= FEWEST_SHOTS]
    return additive(means_table(values, rounds, things=judged), pair["a"], pair["b"], level)


def by_pairs_of_rounds(values, pair, level, all_shots=False):
    """Two things in rounds: Student's t on the differences of the rounds that have both."""
    own = differences(means_table(values, rounds, all_shots=all_shots), pair["a"], pair["b"])
    return likely(np.mean(own), np.std(own, ddof=1) / np.sqrt(len(own)), len(own) - 1, level, 2)


def as_judged(values, pair, step, all_shots=False):
    if pair["method"] == "paired-rounds":
        return by_pairs_of_rounds(values, pair, pair["level"], all_shots)
    if findings["design"]["unit"] == "hitter":
        return by_golfers(values, pair, pair["level"], all_shots)
    return by_shots(values, pair, pair["level"], step, all_shots=all_shots)


# --- Side by side -----------------------------------------------------------------------------------------------------

rows = defaultdict(list)


def compare(measure, what, published, again):
    if isinstance(published, list):
        for end, one, other in zip(("from", "to"), published, again):
            compare(measure, f"{what} {end}", one, other)
    elif published is not None:
        rows[measure].append((what, published, float(again)))


def compare_pairs(measure, values, pairs, step):
    for pair in pairs:
        name = f"{pair['a']} - {pair['b']}"
        if pair["method"] is not None:
            again = as_judged(values, pair, step)
            compare(measure, f"{name} difference", pair["estimate"], again["estimate"])
            compare(measure, name, pair["ci"], again["ci"])
            compare(measure, f"{name} p", pair["p"], again["p"])
        if pair["withLeftOut"] is not None:
            again = as_judged(values, pair, step, all_shots=True)
            compare(measure, f"{name} every shot counted", pair["withLeftOut"]["estimate"], again["estimate"])
            compare(measure, f"{name} every shot counted", pair["withLeftOut"]["ci"], again["ci"])
        if pair["byRounds"] is not None:
            again = by_rounds(values, pair, pair["level"])
            compare(measure, f"{name} by rounds", pair["byRounds"]["estimate"], again["estimate"])
            compare(measure, f"{name} by rounds", pair["byRounds"]["ci"], again["ci"])
        for check in pair["holds"]:
            if check["check"] == "by-rounds":
                again = by_rounds(values, pair, 0.95)
                compare(measure, f"{name} checked by rounds", check["estimate"], again["estimate"])
                compare(measure, f"{name} checked by rounds", check["ci"], again["ci"])
        for own in pair["byHitter"]:
            means = [np.mean(values_of(values, pair[side], [own["hitter"]])) for side in "ab"]
            compare(measure, f"{name} of {own['hitter']}", own["estimate"], means[0] - means[1])
            if own["ci"] is not None:
                again = by_shots(values, pair, pair["level"], step, [own["hitter"]])
                compare(measure, f"{name} of {own['hitter']}", own["ci"], again["ci"])


steps = {metric["id"]: metric["resolution"] for metric in findings["metrics"]}
for metric in findings["metrics"]:
    values = readings[metric["id"]]
    for one in metric["byContender"]:
        own = values_of(values, one["id"])
        compare(metric["id"], f"{one['id']} shots", one["n"], len(own))
        for what, published, again in (
            ("average", one["mean"], np.mean),
            ("median", one["median"], np.median),
            ("least", one["min"], np.min),
            ("most", one["max"], np.max),
            ("sd", one["sd"], lambda some: np.std(some, ddof=1)),
        ):
            if published is not None:
                compare(metric["id"], f"{one['id']} {what}", published, again(own))
        if one["ci"] is not None:
            half = student.ppf(0.975, len(own) - 1) * np.std(own, ddof=1) / np.sqrt(len(own))
            compare(metric["id"], f"{one['id']} average", one["ci"], [np.mean(own) - half, np.mean(own) + half])
    compare_pairs(metric["id"], values, metric["pairs"], metric["resolution"])
if findings["straighter"] is not None:
    compare_pairs("straighter", np.abs(readings["side"]), findings["straighter"], steps["side"])

main = [metric["id"] for metric in findings["metrics"] if metric["role"] == "primary"]
if findings["invented"]:
    print("Invented data.")
largest = 0.0
for measure, own in rows.items():
    apart = np.max([abs(again - published) / max(1, abs(published)) for _, published, again in own])
    largest = np.maximum(largest, apart)
    print(f"\n{measure}: {len(own)} numbers, largest difference {apart:.1e}")
    if measure in main or "all" in sys.argv[1:]:
        print(f"  {'':44} {'findings.json':>18} {'here':>18}")
        for what, published, again in own:
            print(f"  {what:44} {published:18.10g} {again:18.10g}")
print(f"\n{sum(map(len, rows.values()))} numbers, largest difference {largest:.1e}")
if not largest <= 1e-9:
    sys.exit("findings.json and shots.csv do not agree")
