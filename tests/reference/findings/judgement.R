# Reference figures of tests/findings by R (Debian r-base-core, R 4.2.2), run by hand from the project's folder:
#   Rscript tests/reference/findings/judgement.R > tests/reference/findings/judgement.json
# Invented sessions, seeded. Carry in yards as written here; the tests convert. Formulas are written out from the
# papers named beside them, with lm and aov for the linear models.
set.seed(5)
number <- function(x) ifelse(is.na(x), "null", formatC(x, digits = 15, format = "g"))
vec <- function(x) paste0("[", paste(number(x), collapse = ", "), "]")
obj <- function(l) paste0("{", paste(sprintf('"%s": %s', names(l), unlist(l)), collapse = ", "), "}")
arr <- function(x) paste0("[", paste(x, collapse = ", "), "]")
draw <- function(n, m, s) round(rnorm(n, m, s), 1)
letters3 <- c("a", "b", "c")
pairs3 <- list(c(1, 2), c(1, 3), c(2, 3))

# Few hitters, each counted alike: d = mean of the hitters' gaps, Satterthwaite's df, q(k, df) / sqrt(2) (t for two).
few <- list()
for (design in list(list(H = 2, k = 2), list(H = 3, k = 3), list(H = 5, k = 3))) {
  H <- design$H; k <- design$k
  cells <- lapply(1:H, function(h) lapply(1:k, function(j) draw(5 + (h + 2 * j) %% 6, 200 + 12 * h + 4 * j, 4 + h)))
  critical <- function(df, level) if (k == 2) qt(1 - (1 - level) / 2, df) else qtukey(level, k, df) / sqrt(2)
  gaps <- character()
  for (p in pairs3) if (max(p) <= k) {
    i <- p[1]; j <- p[2]
    d <- mean(sapply(1:H, function(h) mean(cells[[h]][[i]]) - mean(cells[[h]][[j]])))
    part <- unlist(lapply(1:H, function(h) sapply(c(i, j), function(x) var(cells[[h]][[x]]) / length(cells[[h]][[x]]) / H^2)))
    dfs <- unlist(lapply(1:H, function(h) sapply(c(i, j), function(x) length(cells[[h]][[x]]) - 1)))
    se <- sqrt(sum(part)); df <- sum(part)^2 / sum(part^2 / dfs)
    gaps <- c(gaps, obj(list(a = sprintf('"%s"', letters3[i]), b = sprintf('"%s"', letters3[j]), estimate = number(d),
      standardError = number(se), df = number(df), half95 = number(critical(df, .95) * se), half975 = number(critical(df, .975) * se))))
  }
  few[[length(few) + 1]] <- obj(list(hitters = H, contenders = k,
    cells = arr(sapply(cells, function(own) arr(sapply(own, vec)))), gaps = arr(gaps)))
}

# Eight hitters, three contenders, one cell missing: lm on cell means, Tukey-Kramer, never under the pair's own t.
H <- 8; k <- 3
cells <- lapply(1:H, function(h) lapply(1:k, function(j) if (h == 8 && j == 3) numeric() else
  draw(6 + (h + j) %% 3, 190 + 9 * h + 5 * j + rnorm(1, 0, 2), 5)))
table <- do.call(rbind, lapply(1:H, function(h) do.call(rbind, lapply(1:k, function(j)
  if (length(cells[[h]][[j]])) data.frame(h = h, j = j, y = mean(cells[[h]][[j]]))))))
fit <- lm(y ~ factor(h) + factor(j), table)
b <- coef(fit); V <- vcov(fit); rdf <- df.residual(fit)
effect <- function(j) { x <- rep(0, length(b)); if (j > 1) x[names(b) == paste0("factor(j)", j)] <- 1; x }
many <- character()
for (p in pairs3) {
  contrast <- effect(p[1]) - effect(p[2])
  d <- sum(contrast * b); se <- sqrt(drop(t(contrast) %*% V %*% contrast))
  wide <- reshape(table, idvar = "h", timevar = "j", direction = "wide")
  own <- na.omit(wide[[paste0("y.", p[1])]] - wide[[paste0("y.", p[2])]])
  tukey <- qtukey(.95, k, rdf) / sqrt(2) * se
  single <- qt(.975, length(own) - 1) * sd(own) / sqrt(length(own))
  dbar <- mean(own); next_half <- qt(.975, length(own) - 1) * sd(own) * sqrt(1 + 1 / length(own))
  more <- sum(own > 0)
  many <- c(many, obj(list(a = sprintf('"%s"', letters3[p[1]]), b = sprintf('"%s"', letters3[p[2]]), estimate = number(d),
    half = number(max(tukey, single)), direct = length(own), newHitter = vec(dbar + c(-1, 1) * next_half), more = more,
    byLuck = number(binom.test(more, length(own))$p.value), share = vec(binom.test(more, length(own))$conf.int))))
}
table_test <- anova(lm(y ~ factor(h), table), fit)
many <- obj(list(cells = arr(sapply(cells, function(own) arr(sapply(own, vec)))), f = number(table_test$F[2]),
  df = vec(c(table_test$Df[2], rdf)), gaps = arr(many)))

# One hitter in rotation: the three other ways of working a gap out. Contender c is hit into a drift of its own.
one <- list()
for (design in list(list(n = 12, gap = 9, drift = 0, mishits = 0), list(n = 12, gap = 9, drift = 8, mishits = 2),
                    list(n = 9, gap = 11, drift = 15, mishits = 1), list(n = 8, gap = 8, drift = 0, mishits = 0),
                    list(n = 6, gap = 10, drift = 0, mishits = 0))) {
  n <- design$n
  sequence <- unlist(lapply(1:n, function(r) sample(1:3)))
  place <- seq_along(sequence)
  y <- round(220 + c(design$gap, 0, 1)[sequence] + design$drift * (place - 1) / (3 * n - 1) + rnorm(3 * n, 0, 5), 1)
  spoil <- sample(which(sequence == 1), design$mishits)
  y[spoil] <- y[spoil] - c(25, 18)[seq_len(design$mishits)]
  round_of <- rep(1:n, each = 3)
  values <- lapply(1:3, function(j) y[sequence == j])
  # Yuen: 20 % trimmed, Winsorised variance, df from what is kept (Wilcox, Introduction to Robust Estimation, 5.3)
  yuen <- function(x) { g <- floor(.2 * length(x)); s <- sort(x); w <- pmin(pmax(x, s[g + 1]), s[length(x) - g]); h <- length(x) - 2 * g
    list(m = mean(x, trim = .2), d = (length(x) - 1) * var(w) / (h * (h - 1)), h = h) }
  by_round <- lm(y ~ factor(round_of) + factor(sequence))
  drifted <- lm(y ~ factor(sequence) + place)
  linear <- function(fit, i, j) { b <- coef(fit); x <- rep(0, length(b)); names(x) <- names(b)
    if (i > 1) x[paste0("factor(sequence)", i)] <- 1; if (j > 1) x[paste0("factor(sequence)", j)] <- -1
    list(d = sum(x * b), se = sqrt(drop(t(x) %*% vcov(fit) %*% x)), df = df.residual(fit)) }
  half <- function(way, level) qtukey(level, 3, way$df) / sqrt(2) * way$se
  gaps <- character()
  for (p in pairs3) {
    a <- yuen(values[[p[1]]]); b <- yuen(values[[p[2]]])
    ways <- list(usual = list(d = a$m - b$m, se = sqrt(a$d + b$d), df = (a$d + b$d)^2 / (a$d^2 / (a$h - 1) + b$d^2 / (b$h - 1))),
      rounds = linear(by_round, p[1], p[2]), drift = linear(drifted, p[1], p[2]))
    gaps <- c(gaps, obj(c(list(a = sprintf('"%s"', letters3[p[1]]), b = sprintf('"%s"', letters3[p[2]])),
      lapply(ways, function(w) obj(list(estimate = number(w$d), half95 = number(half(w, .95)), half90 = number(half(w, .9))))))))
  }
  slope <- summary(drifted)$coefficients["place", ]
  one[[length(one) + 1]] <- obj(list(sequence = arr(sprintf('"%s"', letters3[sequence])), carry = vec(y), gaps = arr(gaps),
    slope = number(slope[1]), slopeHalf = number(qt(.975, df.residual(drifted)) * slope[2])))
}

# Visits: two contenders, three or four visits of three or four shots; the additive model on visit means.
visits <- character()
for (design in list(list(v = 4, n = 3, gap = 6, alike = 1), list(v = 4, n = 3, gap = 5, alike = 5), list(v = 3, n = 4, gap = 8, alike = 1),
                    list(v = 3, n = 4, gap = 5, alike = 5))) {
  visit <- rep(1:design$v, each = 2 * design$n); who <- rep(rep(1:2, each = design$n), design$v)
  y <- round(200 + c(design$gap, 0)[who] + rnorm(2 * design$v, 0, design$alike)[(visit - 1) * 2 + who] + rnorm(length(who), 0, 2), 1)
  means <- aggregate(y, list(visit = visit, who = who), mean)
  fit <- lm(x ~ factor(visit) + factor(who), means)
  se <- summary(fit)$coefficients["factor(who)2", 2]; d <- -coef(fit)["factor(who)2"]
  shots <- t.test(y[who == 1], y[who == 2])
  visits <- c(visits, obj(list(who = arr(sprintf('"%s"', letters3[who])), carry = vec(y), estimate = number(d), shots = vec(shots$conf.int),
    half90 = number(qt(.95, df.residual(fit)) * se), half95 = number(qt(.975, df.residual(fit)) * se), df = df.residual(fit))))
}

# Leave-one-out of a Welch interval, the shot far out by 0.6745 |x - median| / MAD (MAD without a factor).
a <- c(draw(11, 208, 4), 236); b <- draw(12, 203, 4)
welch <- function(x, y) { t <- t.test(x, y); c(mean(x) - mean(y), t$conf.int) }
out <- rbind(t(sapply(seq_along(a), function(i) welch(a[-i], b))), t(sapply(seq_along(b), function(i) welch(a, b[-i]))))
far <- c(0.6745 * abs(a - median(a)) / mad(a, constant = 1), 0.6745 * abs(b - median(b)) / mad(b, constant = 1))
leave <- obj(list(a = vec(a), b = vec(b), range = vec(range(out[, 1])), lower = vec(out[, 2]), upper = vec(out[, 3]), farOut = vec(far)))

cat('{\n  "few": ', arr(unlist(few)), ',\n  "many": ', many, ',\n  "one": ', arr(unlist(one)), ',\n  "visits": ', arr(visits),
  ',\n  "leaveOneOut": ', leave, '\n}\n', sep = "")
