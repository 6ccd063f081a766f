/*
 * Reference values of the studentized range and of the noncentral t in 113-bit floating point.
 *
 *   gcc -O2 studentized-range.c -o /tmp/studentized-range -lquadmath -lm
 *   /tmp/studentized-range > studentized-range.json
 *
 * Textbook integrals, nothing tabulated and no rearrangement against cancellation: the 33 digits pay for that.
 *   P(W <= w) = k Int phi(x) [Phi(x) - Phi(x - w)]^(k-1) dx            trapezoidal rule, step 1/9 on [-13, 13 + w]
 *   P(Q <= q) = Int P(W <= q s) f(s) ds, f the density of chi / sqrt df  exp-sinh rule on (0, infinity)
 *   P(T > t)  = Int P(Z > t s - delta) f(s) ds                           the same
 * Every figure is computed with two steps of the outer rule; "agree" is the relative difference of the two.
 */
#include <quadmath.h>
#include <stdio.h>

typedef __float128 real;

static real density(real x) { return expq(-x * x / 2) / sqrtq(2 * M_PIq); }
static real below(real z) { return erfcq(-z / sqrtq(2)) / 2; }

static real rangeAbove(real w, int k) {
  real step = 1 / 9.0Q, sum = 0;
  if (w > 60) return 0;
  for (real x = -13; x <= 13 + w; x += step) {
    real between = below(x) - below(x - w), power = 1;
    for (int i = 1; i < k; i++) power *= between;
    sum += density(x) * power;
  }
  return 1 - k * step * sum;
}

/* Average over s = chi_df / sqrt df of g(s): s = exp(pi/2 sinh v) scaled to the peak of the density. */
static real average(real df, real step, real (*g)(real, const void *), const void *data) {
  real constant = logq(2.0Q) + df / 2 * logq(df / 2) - lgammaq(df / 2), sum = 0;
  /* many df: the density is narrow; the inner variable is squeezed to its width */
  real squeeze = df > 4 ? 2 / sqrtq(df) : 1;
  for (real v = -5; v <= 5; v += step) {
    real u = squeeze * M_PIq / 2 * sinhq(v);
    if (u > 4) break;
    real weight = expq(constant + df * u - df / 2 * expq(2 * u)) * squeeze * M_PIq / 2 * coshq(v);
    if (weight < 1e-40Q) continue;
    sum += weight * g(expq(u), data);
  }
  return sum * step;
}

struct range { real q; int k; };
static real rangeTerm(real s, const void *data) {
  const struct range *r = data;
  return rangeAbove(r->q * s, r->k);
}
struct shifted { real t, delta; };
static real shiftedTerm(real s, const void *data) {
  const struct shifted *r = data;
  return below(r->delta - r->t * s);
}

static real upper(real q, int k, real df, real step) {
  struct range r = {q, k};
  return df == 0 ? rangeAbove(q, k) : average(df, step, rangeTerm, &r);
}

static void print(const char *name, real value) {
  char text[64];
  quadmath_snprintf(text, sizeof text, "%.21Qg", value);
  printf("\"%s\": %s", name, text);
}

static void printDf(double df) {
  if (df == 0) printf("\"df\": null, ");
  else printf("\"df\": %.17g, ", df);
}

static const real STEP = 1 / 24.0Q, FINE = 1 / 32.0Q;

int main(void) {
  int ks[] = {2, 3, 4, 6, 15};
  double dfs[] = {1, 1.7, 2, 3, 5, 8.3, 12, 20, 37.5, 100, 20000, 0}; /* 0 stands for infinity */
  double qs[] = {0.05, 0.7, 2, 3.3, 5, 8, 14, 40};
  double ps[] = {0.5, 0.95, 0.98, 0.999};
  int first = 1;
  printf("{\"tails\": [\n");
  for (int i = 0; i < 5; i++) for (int j = 0; j < 12; j++) for (int l = 0; l < 8; l++) {
    real a = upper(qs[l], ks[i], dfs[j], STEP), b = upper(qs[l], ks[i], dfs[j], FINE);
    if (b < 1e-24Q) continue; /* what is left after 1 - P(W <= w) in 33 digits */
    printf("%s{\"q\": %.17g, \"k\": %d, ", first ? "" : ",\n", qs[l], ks[i]);
    printDf(dfs[j]);
    print("upper", b);
    printf(", ");
    print("lower", 1 - b);
    printf(", ");
    print("agree", fabsq(a / b - 1));
    printf("}");
    first = 0;
    fflush(stdout);
  }
  printf("\n], \"quantiles\": [\n");
  first = 1;
  for (int i = 1; i < 5; i++) for (int j = 0; j < 12; j++) for (int l = 0; l < 4; l++) {
    /* few df: the quantile is large and the integrand turns in the left tail, where the rule is coarse */
    real step = dfs[j] > 0 && dfs[j] < 4 ? 1 / 72.0Q : STEP;
    real target = 1 - (real)ps[l], a = logq(0.2Q), b = logq(2.5Q);
    real fa = logq(upper(expq(a), ks[i], dfs[j], step) / target);
    real fb = logq(upper(expq(b), ks[i], dfs[j], step) / target);
    for (int round = 0; round < 40 && fabsq(b - a) > 1e-14Q; round++) {
      real slope = (fb - fa) / (b - a), next = b - fb / slope;
      if (next > b + 1) next = b + 1;
      if (next < b - 1) next = b - 1;
      a = b; fa = fb; b = next;
      fb = logq(upper(expq(b), ks[i], dfs[j], step) / target);
    }
    printf("%s{\"p\": %.17g, \"k\": %d, ", first ? "" : ",\n", ps[l], ks[i]);
    printDf(dfs[j]);
    print("q", expq(b));
    printf("}");
    first = 0;
    fflush(stdout);
  }
  printf("\n], \"noncentralT\": [\n");
  first = 1;
  double ts[] = {-2, 0, 0.5, 1.7, 2.5, 4, 9}, deltas[] = {-1.5, 0, 1, 2.8, 6, 12}, ns[] = {1, 2, 4.5, 8, 22, 38, 198, 4000};
  for (int i = 0; i < 7; i++) for (int j = 0; j < 6; j++) for (int l = 0; l < 8; l++) {
    struct shifted r = {ts[i], deltas[j]};
    real a = average(ns[l], 1 / 48.0Q, shiftedTerm, &r), b = average(ns[l], 1 / 64.0Q, shiftedTerm, &r);
    if (b < 1e-60Q) continue;
    printf("%s{\"t\": %.17g, \"delta\": %.17g, \"df\": %.17g, ", first ? "" : ",\n", ts[i], deltas[j], ns[l]);
    print("upper", b);
    printf(", ");
    print("agree", fabsq(a / b - 1));
    printf("}");
    first = 0;
  }
  printf("\n]}\n");
  return 0;
}
