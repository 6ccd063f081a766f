# Shots needed, gaps found and spreads, by R's own functions. Writes plan.json beside this file.
# Rscript plan.R
options(digits = 15)
# Welch's interval, equal n and spread: given the first variance's share r, beta((n - 1) / 2, (n - 1) / 2), the
# statistic is the pooled t with 2n - 2 df and the critical value that of (n - 1) / (r^2 + (1 - r)^2).
welch <- function(n, gap) {
  ncp <- gap * sqrt(n / 2)
  seen <- function(r) {
    critical <- qt(0.975, (n - 1) / (r^2 + (1 - r)^2))
    dbeta(r, (n - 1) / 2, (n - 1) / 2) * (pt(critical, 2 * n - 2, ncp, lower.tail = FALSE) + pt(-critical, 2 * n - 2, ncp))
  }
  2 * integrate(seen, 0, 0.5, rel.tol = 1e-10, subdivisions = 1000)$value
}
# Two clubs in eight rounds or more: paired t; fewer: Welch.
rounds <- function(n, gap)
  if (n >= 8) power.t.test(n = n, delta = gap, sd = sqrt(2), type = "paired", strict = TRUE)$power else welch(n, gap)
needs <- list()
for (sd in c(4, 6, 8, 10, 12, 15)) for (gap in c(3, 5, 7, 10, 15)) {
  n <- 3
  while (rounds(n, gap / sd) < 0.8) n <- n + 1
  needs[[length(needs) + 1]] <- sprintf('    {"sd": %g, "gap": %g, "n": %d}', sd, gap, n)
}
ahead <- list()
for (n in c(5, 12, 20, 60)) {
  p <- rounds(n, 5 / 8)
  d <- 8 * uniroot(function(gap) rounds(n, gap) - 0.8, c(0.1, 5), tol = 1e-12)$root
  h <- qt(0.975, if (n >= 8) n - 1 else 2 * n - 2) * 8 * sqrt(2 / n)
  # Range of two equal averages: |N(0, 2 s^2 / n)|, mean and 95 % point.
  s <- 8 * sqrt(2 / n)
  ahead[[length(ahead) + 1]] <- sprintf(
    '    {"n": %d, "power": %.12f, "detectable": %.12f, "halfWidth": %.12f, "luckAverage": %.12f, "luckUpTo": %.12f}',
    n, p, d, h, s * sqrt(2 / pi), s * qnorm(0.975))
}
welches <- c()
for (n in c(5, 8, 12, 20)) for (gap in c(0.5, 1, 1.7))
  welches <- c(welches, sprintf('    {"n": %d, "gap": %g, "power": %.12f}', n, gap, welch(n, gap)))
# Pooled within-cell standard deviation: residual standard error of a one-way model on R's own data set.
warp <- warpbreaks
cell <- interaction(warp$wool, warp$tension)
sigma <- summary(lm(warp$breaks ~ cell))$sigma
shots <- sprintf('    {"cell": "%s", "value": %g}', cell, warp$breaks)
writeLines(c('{', '  "needs": [', paste(needs, collapse = ",\n"), '  ],', '  "ahead": [', paste(ahead, collapse = ",\n"),
  '  ],', '  "welch": [', paste(welches, collapse = ",\n"), '  ],', sprintf('  "pooledSd": %.12f,', sigma), '  "shots": [', paste(shots, collapse = ",\n"), '  ]', '}'), "plan.json")
