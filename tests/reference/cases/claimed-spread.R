# Reference figures of the claims about spread in tests/findings/claims.test.ts by R 4.2.2, run by hand:
#   Rscript tests/reference/cases/claimed-spread.R > tests/reference/cases/claimed-spread.json
# Shots: twelve invented deviations, spread by a factor for each head. Brown-Forsythe of each pair: one-way analysis
# of variance of the distances from the median; p by Holm over the three pairs.
scatter <- c(-7, 4, 1, -3, 8, -1, 5, -6, 2, -4, 3, -2)
heads <- list(alder = scatter * 0.3, birch = rev(scatter) * 1.2, cedar = scatter * 1.3)
distance <- lapply(heads, function(x) abs(x - median(x)))
pairs <- list(c("alder", "birch"), c("alder", "cedar"), c("birch", "cedar"))
p <- sapply(pairs, function(pair) {
  y <- unlist(distance[pair]); g <- factor(rep(pair, each = 12))
  oneway.test(y ~ g, var.equal = TRUE)$p.value
})
ratio <- sapply(pairs, function(pair) sd(heads[[pair[1]]]) / sd(heads[[pair[2]]]))
number <- function(x) formatC(x, digits = 15, format = "g")
cat('{ "pairs": [\n', paste(sprintf('  { "a": "%s", "b": "%s", "p": %s, "ratio": %s }', sapply(pairs, `[`, 1),
  sapply(pairs, `[`, 2), number(p.adjust(p, "holm")), number(ratio)), collapse = ",\n"), "\n] }\n", sep = "")
