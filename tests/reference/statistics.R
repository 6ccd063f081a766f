# Reference figures for the statistics, from R's own functions on R's own data sets and on seeded sessions.
#
#   Rscript statistics.R > statistics.json        (R 4.2.2, packages of the base installation only)
#
# Where R has no function for a method the formula of the paper named is written out here in R.

json <- function(x) {
  if (is.null(x)) return("null")
  if (is.list(x)) {
    parts <- vapply(x, json, "")
    if (is.null(names(x))) return(paste0("[", paste(parts, collapse = ", "), "]"))
    return(paste0("{", paste0('"', names(x), '": ', parts, collapse = ", "), "}"))
  }
  if (is.character(x)) return(if (length(x) == 1 && is.null(attr(x, "many"))) paste0('"', x, '"') else paste0("[", paste0('"', x, '"', collapse = ", "), "]"))
  text <- ifelse(is.na(x), "null", sprintf("%.17g", as.numeric(x)))
  if (length(x) == 1 && is.null(attr(x, "many"))) text else paste0("[", paste(text, collapse = ", "), "]")
}
many <- function(x) { x <- as.numeric(x); attr(x, "many") <- TRUE; x }

pairs <- function(k) { out <- list(); for (a in 1:(k - 1)) for (b in (a + 1):k) out[[length(out) + 1]] <- c(a, b); out }

winsorised <- function(x, share = 0.2) {
  s <- sort(x); n <- length(x); g <- floor(share * n + 1e-9)
  pmin(pmax(x, s[g + 1]), s[n - g])
}
yuen <- function(x, y, level = 0.95) { # Yuen 1974
  part <- function(x) { n <- length(x); h <- n - 2 * floor(0.2 * n + 1e-9); list(h = h, d = (n - 1) * var(winsorised(x)) / (h * (h - 1))) }
  a <- part(x); b <- part(y); se <- sqrt(a$d + b$d)
  df <- (a$d + b$d)^2 / (a$d^2 / (a$h - 1) + b$d^2 / (b$h - 1))
  est <- mean(x, trim = 0.2) - mean(y, trim = 0.2); hw <- qt((1 + level) / 2, df) * se
  list(estimate = est, standardError = se, df = df, p = 2 * pt(-abs(est / se), df), ci = c(est - hw, est + hw))
}
bonett <- function(x, level = 0.95) { # Bonett 2006
  z <- qnorm((1 + level) / 2); n <- length(x); cc <- n / (n - z)
  kurtosis <- n * sum((x - mean(x, trim = 1 / (2 * sqrt(n - 4))))^4) / sum((x - mean(x))^2)^2
  se <- cc * sqrt((kurtosis - (n - 3) / n) / (n - 1))
  sqrt(exp(log(cc * var(x)) + c(-1, 1) * z * se))
}

oneway <- function(name, groups, source) {
  k <- length(groups); y <- unlist(groups, use.names = FALSE); f <- factor(rep(seq_len(k), lengths(groups)))
  w <- oneway.test(y ~ f); fit <- aov(y ~ f); table <- summary(fit)[[1]]; tukey <- TukeyHSD(fit)$f; kw <- kruskal.test(groups)
  spread <- unlist(lapply(groups, function(g) abs(g - median(g)))); bf <- summary(aov(spread ~ f))[[1]]
  welch <- lapply(pairs(k), function(p) {
    t <- t.test(groups[[p[1]]], groups[[p[2]]])
    games <- if (t$parameter >= 20 && t$parameter <= 1000) ptukey(abs(t$statistic) * sqrt(2), k, t$parameter, lower.tail = FALSE) else NULL
    list(a = p[1] - 1, b = p[2] - 1, estimate = unname(t$estimate[1] - t$estimate[2]), standardError = t$stderr, df = unname(t$parameter),
         statistic = unname(t$statistic), p = t$p.value, ci = as.numeric(t$conf.int), gamesHowellP = games)
  })
  # TukeyHSD gives b - a; turned to a - b here, pairs in the order of pairs()
  rows <- vapply(pairs(k), function(p) paste0(p[2], "-", p[1]), "")
  useful <- df.residual(fit) >= 20 && df.residual(fit) <= 1000
  list(name = name, source = source, groups = unname(lapply(groups, many)),
    describe = unname(lapply(groups, function(g) { t <- t.test(g); list(n = length(g), mean = mean(g), sd = sd(g), median = median(g), mad = mad(g, constant = 1),
      min = min(g), max = max(g), quartiles = unname(quantile(g, c(0.25, 0.75))), ci = as.numeric(t$conf.int), ci90 = as.numeric(t.test(g, conf.level = 0.9)$conf.int),
      chiSquareSd = sqrt((length(g) - 1) * var(g) / qchisq(c(0.975, 0.025), length(g) - 1)),
      bonettSd = bonett(g), trimmedMean = mean(g, trim = 0.2), winsorisedVariance = var(winsorised(g))) })),
    welch = welch, holm = many(p.adjust(vapply(welch, function(t) t$p, 0), "holm")),
    yuen = lapply(pairs(k), function(p) yuen(groups[[p[1]]], groups[[p[2]]])),
    welchAnova = list(statistic = unname(w$statistic), df = unname(w$parameter), p = w$p.value),
    anova = list(statistic = table[1, 4], df = table[, 1], p = table[1, 5], between = table[1, 2], within = table[2, 2]),
    tukey = if (useful) list(estimate = many(-tukey[rows, 1]), low = many(-tukey[rows, 3]), high = many(-tukey[rows, 2]), p = many(tukey[rows, 4])) else NULL,
    kruskal = list(statistic = unname(kw$statistic), df = unname(kw$parameter), p = kw$p.value),
    brownForsythe = list(statistic = bf[1, 4], df = bf[, 1], p = bf[1, 5]))
}

twoway <- function(name, data, source) { # columns block, treatment (1..), value
  data$b <- factor(data$block); data$t <- factor(data$treatment); k <- nlevels(data$t)
  full <- lm(value ~ b + t, data); blocks <- lm(value ~ b, data); test <- anova(blocks, full); v <- vcov(full); co <- coef(full)
  gaps <- lapply(pairs(k), function(p) {
    weight <- setNames(rep(0, length(co)), names(co))
    for (i in 1:2) if (p[i] > 1) weight[paste0("t", levels(data$t)[p[i]])] <- c(1, -1)[i]
    list(a = p[1] - 1, b = p[2] - 1, estimate = sum(weight * co), standardError = sqrt(drop(weight %*% v %*% weight)))
  })
  one <- anova(lm(value ~ b, data))
  list(name = name, source = source, block = many(as.integer(data$b) - 1), treatment = many(as.integer(data$t) - 1), value = many(data$value),
    test = list(statistic = test[2, 5], df = c(test[2, 3], df.residual(full)), p = test[2, 6]), treatmentSumOfSquares = test[2, 4],
    residualSumOfSquares = sum(resid(full)^2), blockSumOfSquares = one[1, 2], gaps = gaps)
}

covariate <- function(name, data, source) { # columns group (1..), x, value
  data$g <- factor(data$group); k <- nlevels(data$g); fit <- lm(value ~ g + x, data); s <- summary(fit)$coefficients["x", ]; v <- vcov(fit); co <- coef(fit)
  gaps <- lapply(pairs(k), function(p) {
    weight <- setNames(rep(0, length(co)), names(co))
    for (i in 1:2) if (p[i] > 1) weight[paste0("g", levels(data$g)[p[i]])] <- c(1, -1)[i]
    list(a = p[1] - 1, b = p[2] - 1, estimate = sum(weight * co), standardError = sqrt(drop(weight %*% v %*% weight)))
  })
  list(name = name, source = source, group = many(as.integer(data$g) - 1), x = many(data$x), value = many(data$value),
    slope = list(estimate = s[[1]], standardError = s[[2]], statistic = s[[3]], p = s[[4]], df = df.residual(fit), ci = unname(confint(fit)["x", ])), gaps = gaps)
}

split.values <- function(y, f) unname(split(y, f))
session <- function(seed, n, shift, sd) { set.seed(seed); mapply(function(n, m, s) round(rnorm(n, m, s), 1), n, 230 + shift, sd, SIMPLIFY = FALSE) }

onewayCases <- list(
  oneway("PlantGrowth", split.values(PlantGrowth$weight, PlantGrowth$group), "R datasets"),
  oneway("InsectSprays", split.values(InsectSprays$count, InsectSprays$spray), "R datasets"),
  oneway("chickwts", split.values(chickwts$weight, chickwts$feed), "R datasets"),
  oneway("iris sepal width", split.values(iris$Sepal.Width, iris$Species), "R datasets"),
  oneway("ToothGrowth by supplement", split.values(ToothGrowth$len, ToothGrowth$supp), "R datasets"),
  oneway("morley speed by experiment", split.values(morley$Speed, morley$Expt), "R datasets"),
  oneway("warpbreaks by tension", split.values(warpbreaks$breaks, warpbreaks$tension), "R datasets"),
  oneway("seeded 4 x 12", session(411, rep(12, 4), c(0, 3, 6, 1), c(8, 8, 8, 8)), "rnorm, set.seed(411)"),
  oneway("seeded unequal", session(412, c(5, 9, 14), c(0, 5, -2), c(6, 12, 9)), "rnorm, set.seed(412)"),
  oneway("seeded 2 x 6", session(413, c(6, 6), c(0, 9), c(5, 11)), "rnorm, set.seed(413)"),
  oneway("seeded near flat", session(414, c(8, 8, 8), c(0, 0.2, 0.4), c(0.3, 0.3, 0.3)), "rnorm, set.seed(414)"))

robot <- list(A = c(251.2, 245.1, 248.0, 251.1, 260.5, 250.0, 253.9, 244.6, 254.6, 248.8), B = c(263.2, 262.9, 265.0, 254.5, 264.3, 257.0, 262.8, 264.4, 260.6, 255.9),
  C = c(269.7, 263.2, 277.5, 267.4, 270.5, 265.5, 270.7, 272.9, 275.6, 266.5), D = c(251.6, 248.6, 249.4, 242.0, 246.5, 251.3, 261.8, 249.0, 247.1, 245.9))
onewayCases[[length(onewayCases) + 1]] <- oneway("golf balls hit by a robot", robot, "McClave and Sincich, Statistics, analysis-of-variance chapter (data from memory)")
golfers <- matrix(c(202.4, 203.2, 223.7, 203.6, 242.0, 248.7, 259.8, 240.7, 220.4, 227.3, 240.0, 207.4, 230.0, 243.1, 247.7, 226.9, 191.6, 211.4, 218.7, 200.1,
  247.7, 253.0, 268.1, 244.0, 214.8, 214.8, 233.9, 195.8, 245.4, 243.6, 257.8, 227.9, 224.0, 231.5, 238.2, 215.7, 252.2, 255.2, 265.4, 245.2), ncol = 4, byrow = TRUE)
golf <- data.frame(block = rep(1:10, 4), treatment = rep(1:4, each = 10), value = as.vector(golfers))

bt <- data.frame(block = as.integer(npk$block), treatment = as.integer(npk$N) + 2 * (as.integer(npk$P) - 1), value = npk$yield)
ob <- data.frame(block = OrchardSprays$rowpos, treatment = as.integer(OrchardSprays$treatment), value = OrchardSprays$decrease)
gap <- golf[-c(3, 7, 14, 18, 25, 31, 40), ]
twowayCases <- list(twoway("golf balls hit by ten golfers", golf, "McClave and Sincich, Statistics, analysis-of-variance chapter (data from memory)"),
  twoway("ten golfers, seven cells missing", gap, "the same without rows 3 7 14 18 25 31 40"),
  twoway("npk, nitrogen by phosphate in blocks", bt, "R datasets"), twoway("OrchardSprays by row", ob, "R datasets"),
  twoway("sleep", data.frame(block = as.integer(sleep$ID), treatment = as.integer(sleep$group), value = sleep$extra), "R datasets"))

set.seed(415)
drift <- data.frame(group = rep(1:4, 12), x = 1:48, value = round(rnorm(48, 230, 8) + 0.1 * (1:48) + rep(c(0, 4, 2, -3), 12), 1))
covariateCases <- list(covariate("iris: sepal length by species at equal petal width", data.frame(group = as.integer(iris$Species), x = iris$Petal.Width, value = iris$Sepal.Length), "R datasets"),
  covariate("mtcars: consumption by cylinders at equal weight", data.frame(group = as.integer(factor(mtcars$cyl)), x = mtcars$wt, value = mtcars$mpg), "R datasets"),
  covariate("seeded drift", drift, "rnorm, set.seed(415)"))

rank <- function(x, y) { w <- suppressWarnings(wilcox.test(x, y, exact = TRUE)); list(x = many(x), y = many(y), u = unname(w$statistic), p = w$p.value) }
set.seed(416)
mannWhitney <- list(rank(c(0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46), c(1.15, 0.88, 0.9, 0.74, 1.21)),
  rank(rnorm(5), rnorm(5, 2)), rank(rnorm(12), rnorm(12, 1)), rank(rnorm(30), rnorm(25, 0.3)), rank(rnorm(3), rnorm(20, 1)))
# ties: every way to deal the midranks, listed
ties <- function(x, y) { r <- base::rank(c(x, y)); m <- length(x); seen <- sum(r[seq_len(m)]); sums <- combn(length(r), m, function(i) sum(r[i]))
  list(x = many(x), y = many(y), u = seen - m * (m + 1) / 2, p = min(1, 2 * min(mean(sums <= seen), mean(sums >= seen)))) }
mannWhitneyTies <- list(ties(c(1, 2, 2, 4), c(2, 6, 7, 8)), ties(c(230, 231, 231, 240, 228), c(231, 236, 240, 240, 251, 249)), ties(c(1, 1, 1, 2, 2, 3), c(1, 2, 3, 3, 3, 3, 4)))
approx <- suppressWarnings(wilcox.test(faithful$waiting[1:140], faithful$waiting[141:272], exact = FALSE, correct = TRUE))
mannWhitneyNormal <- list(x = many(faithful$waiting[1:140]), y = many(faithful$waiting[141:272]), u = unname(approx$statistic), p = approx$p.value)

shares <- lapply(list(c(0, 5), c(1, 5), c(7, 8), c(12, 12), c(9, 20), c(37, 48), c(150, 400)), function(s) list(successes = s[1], trials = s[2],
  wilson = as.numeric(suppressWarnings(prop.test(s[1], s[2], correct = FALSE))$conf.int), clopperPearson = as.numeric(binom.test(s[1], s[2])$conf.int), p = binom.test(s[1], s[2])$p.value,
  p30 = binom.test(s[1], s[2], 0.3)$p.value, clopperPearson90 = as.numeric(binom.test(s[1], s[2], conf.level = 0.9)$conf.int)))

hotelling <- function(a, b) { m <- rbind(a, b); g <- factor(rep(1:2, c(nrow(a), nrow(b)))); s <- summary(manova(m ~ g), test = "Hotelling-Lawley")$stats
  list(a = lapply(seq_len(nrow(a)), function(i) many(a[i, ])), b = lapply(seq_len(nrow(b)), function(i) many(b[i, ])), statistic = s[1, 3], df = s[1, 4:5], p = s[1, 6], tSquared = s[1, 2] * (nrow(m) - 2)) }
im <- as.matrix(iris[, 1:4]); dimnames(im) <- NULL
hotellingCases <- list(hotelling(im[51:70, 1:2], im[101:118, 1:2]), hotelling(im[51:100, ], im[101:150, ]))

ellipse <- function(x, y, level) { n <- length(x); S <- cov(cbind(x, y)); e <- eigen(S); f <- sqrt(2 * (n + 1) * (n - 1) / (n * (n - 2)) * qf(level, 2, n - 2))
  list(x = many(x), y = many(y), level = level, centre = c(mean(x), mean(y)), halfAxes = f * sqrt(e$values), angle = atan2(e$vectors[2, 1], e$vectors[1, 1]), correlation = cor(x, y), factor = f) }
ellipses <- list(ellipse(faithful$eruptions[1:30], faithful$waiting[1:30], 0.9), ellipse(cars$speed, cars$dist, 0.9), ellipse(iris$Sepal.Length[1:12], -iris$Petal.Length[1:12], 0.5))

# DerSimonian and Laird 1986, Hartung and Knapp 2001, Higgins, Thompson and Spiegelhalter 2009
pool <- function(name, y, se, source) { k <- length(y); w <- 1 / se^2; m <- sum(w * y) / sum(w); Q <- sum(w * (y - m)^2); tau2 <- max(0, (Q - k + 1) / (sum(w) - sum(w^2) / sum(w)))
  v <- 1 / (se^2 + tau2); est <- sum(v * y) / sum(v); s <- sqrt(1 / sum(v)); hk <- sqrt(sum(v * (y - est)^2) / ((k - 1) * sum(v)))
  t <- t.test(y)
  list(name = name, source = source, estimates = many(y), standardErrors = many(se), between = tau2, q = Q, qP = pchisq(Q, k - 1, lower.tail = FALSE), estimate = est, standardError = s, wald = est + c(-1, 1) * qnorm(0.975) * s,
    hartungKnapp = est + c(-1, 1) * qt(0.975, k - 1) * hk, hartungKnappP = 2 * pt(-abs(est / hk), k - 1), prediction = est + c(-1, 1) * qt(0.975, k - 2) * sqrt(tau2 + s^2),
    unweighted = as.numeric(t$conf.int), unweightedP = t$p.value, nextValue = mean(y) + c(-1, 1) * qt(0.975, k - 1) * sd(y) * sqrt(1 + 1 / k)) }
bcg <- data.frame(tpos = c(4, 6, 3, 62, 33, 180, 8, 505, 29, 17, 186, 5, 27), tneg = c(119, 300, 228, 13536, 5036, 1361, 2537, 87886, 7470, 1699, 50448, 2493, 16886),
  cpos = c(11, 29, 11, 248, 47, 372, 10, 499, 45, 65, 141, 3, 29), cneg = c(128, 274, 209, 12619, 5761, 1079, 619, 87892, 7232, 1600, 27197, 2338, 17825))
y <- with(bcg, log((tpos / (tpos + tneg)) / (cpos / (cpos + cneg)))); v <- with(bcg, 1 / tpos - 1 / (tpos + tneg) + 1 / cpos - 1 / (cpos + cneg))
pools <- list(pool("BCG vaccine, log relative risk", y, sqrt(v), "Colditz et al. 1994; published pooled value -0.7141 (-1.0644 to -0.3638), DerSimonian and Laird, in the tests of R package metafor"),
  pool("three reports", c(6.1, 2.0, 4.4), c(1.4, 2.2, 0.9), "made up"))

powers <- lapply(list(c(5, 1), c(12, 1.2), c(20, 0.5), c(8, 2)), function(s) list(n = s[1], gap = s[2], power = power.t.test(n = s[1], delta = s[2], sd = 1, strict = TRUE)$power))
leasts <- lapply(c(5, 12, 20), function(n) list(n = n, gap = power.t.test(n = n, power = 0.8, sd = 1, strict = TRUE, tol = 1e-12)$delta))
needs <- lapply(c(2, 1, 0.6, 0.25), function(g) list(gap = g, n = ceiling(power.t.test(delta = g, power = 0.8, sd = 1, strict = TRUE)$n)))

# luck: mean of max - min of independent normals, and its 95 % point, by R's adaptive quadrature
luck <- function(s) { E <- integrate(function(x) vapply(x, function(x) 1 - prod(pnorm(x / s)) - prod(1 - pnorm(x / s)), 0), -12 * max(s), 12 * max(s), rel.tol = 1e-12, subdivisions = 2000)$value
  P <- function(r) sum(vapply(seq_along(s), function(j) integrate(function(x) vapply(x, function(x) dnorm(x / s[j]) / s[j] * prod(pnorm((x + r) / s[-j]) - pnorm(x / s[-j])), 0), -9 * s[j], 9 * s[j], rel.tol = 1e-12, subdivisions = 2000)$value, 0))
  list(standardErrors = many(s), average = E, upTo = uniroot(function(r) P(r) - 0.95, c(0.1, 8) * max(s), tol = 1e-12)$root) }
lucks <- list(luck(c(1, 2)), luck(c(1, 1, 1.5)), luck(c(0.8, 1.1, 1.3, 2.4)), luck(c(2, 2, 2, 2, 2)))

contrasts <- lapply(1, function(i) { g <- session(417, c(9, 12, 7, 10), c(0, 4, 2, 9), c(7, 9, 5, 12)); w <- c(0.5, -0.5, 0.5, -0.5); v <- w^2 * vapply(g, var, 0) / lengths(g)
  df <- sum(v)^2 / sum(v^2 / (lengths(g) - 1)); est <- sum(w * vapply(g, mean, 0)); list(groups = lapply(g, many), weights = w, estimate = est, standardError = sqrt(sum(v)), df = df, p = 2 * pt(-abs(est) / sqrt(sum(v)), df), ci = est + c(-1, 1) * qt(0.975, df) * sqrt(sum(v))) })

cat(json(list(software = R.version.string, oneway = onewayCases, twoway = twowayCases, covariate = covariateCases, mannWhitney = mannWhitney, mannWhitneyTies = mannWhitneyTies, mannWhitneyNormal = mannWhitneyNormal,
  shares = shares, hotelling = hotellingCases, ellipses = ellipses, pools = pools, powers = powers, leasts = leasts, needs = needs, lucks = lucks, contrasts = contrasts)), "\n", sep = "")
