"""Reference values of the beta, gamma, t, F, chi-square and normal distributions, by mpmath.

    python3 distributions.py > distributions.json     (Python 3 with mpmath and SciPy; under a minute)

Tails by mpmath's own incomplete beta and gamma functions and erfc. Some of them are differences from 1 inside
mpmath: with 400 digits even a tail of 1e-300 keeps its own. Quantiles by root finding on them.
"""
import json
from mpmath import mp, mpf, betainc, gammainc, erfc, sqrt, log, exp
from scipy import stats

mp.dps = 400


def text(x):
    return float(mp.nstr(x, 20))


def beta_tail(x, a, b, upper):
    return betainc(a, b, x, 1, regularized=True) if upper else betainc(a, b, 0, x, regularized=True)


def f_tail(f, d1, d2, upper):
    x = d1 * f / (d2 + d1 * f)
    # the complement keeps the digits of x near 1
    return beta_tail(d2 / (d2 + d1 * f), d2 / 2, d1 / 2, not upper) if x > 0.5 else beta_tail(x, d1 / 2, d2 / 2, upper)


def t_upper(t, df):
    half = f_tail(t * t, mpf(1), df, True) / 2
    return half if t > 0 else 1 - half


def gamma_tail(x, shape, upper):
    return gammainc(shape, x, mp.inf, regularized=True) if upper else gammainc(shape, 0, x, regularized=True)


def solve(tail, p, start):
    """x > 0 with log tail(x) = log p: secant steps in log x from SciPy's value, which only starts them."""
    a, b = log(mpf(start)), log(mpf(start)) + mpf("1e-7")
    fa, fb = log(tail(exp(a))) - log(p), log(tail(exp(b))) - log(p)
    for _ in range(6):
        if fa == fb:
            break
        a, b = b, b - fb * (b - a) / (fb - fa)
        fa, fb = fb, log(tail(exp(b))) - log(p)
    assert abs(fb) < mpf("1e-25"), (p, start, fb)
    return exp(b)


t_rows = [
    {"t": t, "df": df, "upper": text(t_upper(mpf(t), mpf(df)))}
    for df in (1, 2, 3.5, 7, 17.84, 22, 60, 400, 12345)
    for t in (-4, -0.3, 0, 1e-5, 0.01, 0.7, 1.96, 3, 6, 12, 40, 1000)
]
f_rows = [
    {"f": f, "df1": d1, "df2": d2,
     "lower": text(f_tail(mpf(f), mpf(d1), mpf(d2), False)), "upper": text(f_tail(mpf(f), mpf(d1), mpf(d2), True))}
    for d1 in (1, 2, 3, 5, 8.5, 40)
    for d2 in (1, 2.7, 6, 19.89, 36, 180, 18000)
    for f in (1e-4, 0.05, 0.8, 1.5, 4, 20, 300)
]
chi_rows = [
    {"x": x, "df": df, "lower": text(gamma_tail(mpf(x) / 2, mpf(df) / 2, False)),
     "upper": text(gamma_tail(mpf(x) / 2, mpf(df) / 2, True))}
    for df in (1, 2, 3, 4.4, 9, 23, 120, 1500)
    for x in (1e-3, 0.1, 1, 3.84, 10, 30, 150, 700, 2000)
]
beta_rows = [
    {"x": x, "a": a, "b": b, "lower": text(beta_tail(mpf(x), mpf(a), mpf(b), False)),
     "upper": text(beta_tail(mpf(x), mpf(a), mpf(b), True))}
    for a, b in ((0.5, 0.5), (1, 9), (3, 8), (7.5, 2), (40, 60))
    for x in (1e-6, 0.03, 0.2, 0.5, 0.9, 0.999)
]
gamma_rows = [
    {"x": x, "shape": a, "lower": text(gamma_tail(mpf(x), mpf(a), False)), "upper": text(gamma_tail(mpf(x), mpf(a), True))}
    for a in (0.3, 1, 2.5, 12, 90)
    for x in (1e-3, 0.5, 2, 9, 40, 200)
]
normal_rows = [{"z": z, "upper": text(erfc(mpf(z) / sqrt(mpf(2))) / 2)} for z in (-8, -3, -0.5, 0, 0.1, 1, 1.96, 4, 9, 20, 37)]

ps = (1e-12, 1e-6, 0.001, 0.025, 0.3, 0.499)
t_quantiles = [
    {"p": p, "df": df, "t": text(-solve(lambda t: t_upper(t, mpf(df)), mpf(p), stats.t.isf(p, df)))}
    for df in (1, 2, 3.5, 7, 17.84, 22, 60, 400, 12345)
    for p in ps
]
f_quantiles = [
    {"p": p, "df1": d1, "df2": d2, "f": text(solve(lambda f: f_tail(f, mpf(d1), mpf(d2), False), mpf(p), stats.f.ppf(p, d1, d2)))}
    for d1 in (1, 2, 3, 8.5)
    for d2 in (2.7, 6, 19.89, 36, 180)
    for p in (0.01, 0.5, 0.9, 0.95, 0.999)
]
chi_quantiles = [
    {"p": p, "df": df, "x": text(solve(lambda x: gamma_tail(x / 2, mpf(df) / 2, False), mpf(p), stats.chi2.ppf(p, df)))}
    for df in (1, 2, 3, 9, 23, 120)
    for p in (0.001, 0.025, 0.5, 0.95, 0.975, 0.9999)
]

print(json.dumps(
    {"t": t_rows, "f": f_rows, "chiSquare": chi_rows, "beta": beta_rows, "gamma": gamma_rows, "normal": normal_rows,
     "tQuantiles": t_quantiles, "fQuantiles": f_quantiles, "chiSquareQuantiles": chi_quantiles},
    indent=0))
