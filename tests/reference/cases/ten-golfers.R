# Reference figures of tests/cases/ten-golfers by R (Debian r-base-core, R 4.2.2), run by hand:
#   Rscript tests/reference/cases/ten-golfers.R > tests/reference/cases/ten-golfers.json
# Ten golfers each hit four brands of ball once; McClave and Sincich, Statistics (from memory).
shots <- read.csv("tests/cases/ten-golfers/content/reports/ten-golfers/shots.csv", check.names = FALSE)
yards <- shots[["Carry (yd)"]]
ball <- factor(shots[["Ball"]]); golfer <- factor(shots[["Hitter"]])
number <- function(x) formatC(x, digits = 15, format = "g")
table <- anova(lm(yards ~ ball + golfer))
carry <- yards * 0.9144
error <- anova(lm(carry ~ ball + golfer))[3, 3]
k <- nlevels(ball); hitters <- nlevels(golfer); df <- (k - 1) * (hitters - 1)
tukey <- qtukey(0.95, k, df) * sqrt(error / hitters)
wide <- tapply(carry, list(golfer, ball), mean)
pairs <- character()
for (i in 1:(k - 1)) for (j in (i + 1):k) {
  d <- wide[, i] - wide[, j]
  half <- max(tukey, qt(0.975, hitters - 1) * sd(d) / sqrt(hitters))
  new <- qt(0.975, hitters - 1) * sd(d) * sqrt(1 + 1 / hitters)
  pairs <- c(pairs, sprintf('    {"a": "%s", "b": "%s", "estimate": %s, "halfWidth": %s, "newHitter": [%s, %s], "more": %d, "byLuck": %s}',
    tolower(sub("Brand ", "", levels(ball)[i])), tolower(sub("Brand ", "", levels(ball)[j])),
    number(mean(d)), number(half), number(mean(d) - new), number(mean(d) + new), sum(d > 0),
    number(binom.test(sum(d > 0), hitters)$p.value)))
}
cat('{\n  "anovaYards": {"balls": ', number(table[1, 2]), ', "golfers": ', number(table[2, 2]), ', "error": ', number(table[3, 2]),
  ', "f": ', number(table[1, 4]), ', "df": [', table[1, 1], ', ', table[3, 1], '], "p": ', number(table[1, 5]), '},\n',
  '  "pairs": [\n', paste(pairs, collapse = ",\n"), '\n  ]\n}\n', sep = "")
