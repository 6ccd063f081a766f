# Shots needed, gaps found and spreads, by R's own functions. Writes plan.json beside this file.
# Rscript plan.R
options(digits = 15)
needs <- list()
for (sd in c(4, 6, 8, 10, 12, 15)) for (gap in c(3, 5, 7, 10, 15)) {
  n <- ceiling(power.t.test(delta = gap, sd = sd, power = 0.8, sig.level = 0.05, strict = TRUE)$n)
  needs[[length(needs) + 1]] <- sprintf('    {"sd": %g, "gap": %g, "n": %d}', sd, gap, n)
}
ahead <- list()
for (n in c(5, 12, 20, 60)) {
  p <- power.t.test(n = n, delta = 5, sd = 8, sig.level = 0.05, strict = TRUE)$power
  d <- power.t.test(n = n, power = 0.8, sd = 8, sig.level = 0.05, strict = TRUE, tol = 1e-12)$delta
  h <- qt(0.975, 2 * n - 2) * 8 * sqrt(2 / n)
  # Range of two equal averages: |N(0, 2 s^2 / n)|, mean and 95 % point.
  s <- 8 * sqrt(2 / n)
  ahead[[length(ahead) + 1]] <- sprintf(
    '    {"n": %d, "power": %.12f, "detectable": %.12f, "halfWidth": %.12f, "luckAverage": %.12f, "luckUpTo": %.12f}',
    n, p, d, h, s * sqrt(2 / pi), s * qnorm(0.975))
}
# Pooled within-cell standard deviation: residual standard error of a one-way model on R's own data set.
warp <- warpbreaks
cell <- interaction(warp$wool, warp$tension)
sigma <- summary(lm(warp$breaks ~ cell))$sigma
shots <- sprintf('    {"cell": "%s", "value": %g}', cell, warp$breaks)
writeLines(c('{', '  "needs": [', paste(needs, collapse = ",\n"), '  ],', '  "ahead": [', paste(ahead, collapse = ",\n"),
  '  ],', sprintf('  "pooledSd": %.12f,', sigma), '  "shots": [', paste(shots, collapse = ",\n"), '  ]', '}'), "plan.json")
