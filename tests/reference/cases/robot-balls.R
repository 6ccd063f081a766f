# Reference figures of tests/cases/robot-balls by R (Debian r-base-core, R 4.2.2), run by hand:
#   Rscript tests/reference/cases/robot-balls.R > tests/reference/cases/robot-balls.json
# Shots: four brands of ball hit ten times each by a robot; McClave and Sincich, Statistics, chapter on the
# analysis of variance (from memory; sums of squares recomputed below agree with the printed ones).
shots <- read.csv("tests/cases/robot-balls/content/reports/robot-balls/shots.csv", check.names = FALSE)
carry <- shots[["Carry (yd)"]] * 0.9144
ball <- factor(shots[["Ball"]])
number <- function(x) formatC(x, digits = 15, format = "g")
table <- anova(lm(shots[["Carry (yd)"]] ~ ball))
welch <- oneway.test(carry ~ ball)
k <- nlevels(ball)
n <- tapply(carry, ball, length); m <- tapply(carry, ball, mean); v <- tapply(carry, ball, var)
pairs <- character()
for (i in 1:(k - 1)) for (j in (i + 1):k) {
  part <- c(v[i] / n[i], v[j] / n[j])
  se <- sqrt(sum(part))
  df <- sum(part)^2 / sum(part^2 / (c(n[i], n[j]) - 1))
  d <- m[i] - m[j]
  half <- qtukey(0.95, k, df) / sqrt(2) * se
  p <- ptukey(abs(d) / se * sqrt(2), k, df, lower.tail = FALSE)
  pairs <- c(pairs, sprintf('    {"a": "%s", "b": "%s", "estimate": %s, "lower": %s, "upper": %s, "p": %s}',
    tolower(sub("Brand ", "", levels(ball)[i])), tolower(sub("Brand ", "", levels(ball)[j])),
    number(d), number(d - half), number(d + half), number(p)))
}
interval <- sapply(levels(ball), function(b) t.test(carry[ball == b])$conf.int)
cat('{\n  "anovaYards": {"sst": ', number(table[1, 2]), ', "sse": ', number(table[2, 2]), ', "f": ', number(table[1, 4]),
  ', "df": [', table[1, 1], ', ', table[2, 1], ']},\n  "welch": {"statistic": ', number(welch$statistic),
  ', "df": [', number(welch$parameter[1]), ', ', number(welch$parameter[2]), '], "p": ', number(welch$p.value), '},\n',
  '  "means": [', paste(number(m), collapse = ", "), '],\n  "sds": [', paste(number(sqrt(v)), collapse = ", "), '],\n',
  '  "lower": [', paste(number(interval[1, ]), collapse = ", "), '],\n  "upper": [', paste(number(interval[2, ]), collapse = ", "), '],\n',
  '  "pairs": [\n', paste(pairs, collapse = ",\n"), '\n  ]\n}\n', sep = "")
