# Pooling of reports, each golfer alike: t.test of R on the golfers' gaps (mean of a golfer's reports), and the
# range for another golfer. Writes pooled-gap.json beside this file.
# Rscript pooled-gap.R
set.seed(20260711)
cases <- list()
add <- function(name, gaps, golfers) {
  means <- as.numeric(tapply(gaps, factor(golfers, levels = unique(golfers)), mean))
  k <- length(means)
  test <- t.test(means)
  half <- qt(0.975, k - 1) * sd(means) * sqrt(1 + 1 / k)
  cases[[length(cases) + 1]] <<- list(
    name = name, gaps = gaps, golfers = golfers, k = k,
    estimate = unname(test$estimate), ci = as.numeric(test$conf.int),
    another = c(mean(means) - half, mean(means) + half))
}
add("three golfers, one report each", round(rnorm(3, 5, 4), 3), c("a", "b", "c"))
add("five golfers, one with three reports", round(rnorm(7, 5, 4), 3), c("a", "b", "a", "c", "d", "a", "e"))
add("eight golfers, two reports each", round(rnorm(16, -2, 6), 3), rep(letters[1:8], 2))
digits <- function(x) if (length(x) == 1) format(x, digits = 17) else paste0("[", paste(format(x, digits = 17, trim = TRUE), collapse = ", "), "]")
words <- function(x) paste0("[", paste0('"', x, '"', collapse = ", "), "]")
lines <- vapply(cases, function(one) sprintf(
  '  {"name": "%s", "gaps": %s, "golfers": %s, "k": %d, "estimate": %s, "ci": %s, "another": %s}',
  one$name, digits(one$gaps), words(one$golfers), one$k, digits(one$estimate), digits(one$ci), digits(one$another)), "")
writeLines(c("[", paste(lines, collapse = ",\n"), "]"), "pooled-gap.json")
