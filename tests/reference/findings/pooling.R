# Reports put together, from R alone: whole sessions of seeded shots, and sets of studies. Writes pooling.json beside
# this file.
#
#   Rscript pooling.R        (R 4.2.2; package metafor 3.8-1 for `companion` and `alike`, base R for the rest)
#
# `sessions`: carry in yards of every shot, hit in turn; the gap of a report is the mean of its golfers' gaps, a golfer's
# reports are averaged first, and t.test() pools what is left. `another`: predict() of lm(y ~ 1).
# `alike`: rma() with one and the same sampling variance and test = "knha" is the unweighted mean with t(k - 1).
# `companion`: rma(method = "DL"), Wald and Knapp-Hartung; predict(pi.type = "riley") has t(k - 2).
suppressMessages(library(metafor))
set.seed(4108172)
yard <- 0.9144

number <- function(x) ifelse(is.finite(x), sprintf("%.17g", x), "null")
json <- function(x) {
  if (is.null(x)) return("null")
  if (is.list(x)) {
    parts <- vapply(x, json, "")
    if (is.null(names(x))) return(paste0("[", paste(parts, collapse = ", "), "]"))
    return(paste0("{", paste0('"', names(x), '": ', parts, collapse = ", "), "}"))
  }
  if (is.character(x) && !inherits(x, "AsIs") && length(x) == 1) return(paste0('"', x, '"'))
  if (is.character(x)) return(paste0("[", paste0('"', x, '"', collapse = ", "), "]"))
  if (length(x) == 1 && !inherits(x, "AsIs")) number(x) else paste0("[", paste(number(x), collapse = ", "), "]")
}

# --- Whole sessions -------------------------------------------------------------------------------------------------

# Shots of some golfers who hit some heads in turn; `rounds` and `sd` of the shots may differ from report to report.
session <- function(slug, golfers, rounds, sd, gap, heads = c("Alder", "Birch"), out = 0) {
  shots <- do.call(rbind, lapply(golfers, function(golfer) {
    own <- rnorm(1, 225, 15); more <- gap + rnorm(1, 0, 2)
    do.call(rbind, lapply(seq_len(rounds), function(round) data.frame(golfer = golfer, head = heads,
      carry = round(own + rnorm(length(heads), ifelse(heads == "Alder", more, ifelse(heads == "Cedar", -3, 0)), sd), 1))))
  }))
  kept <- if (out > 0) shots[-out, ] else shots
  means <- tapply(kept$carry, list(kept$golfer, kept$head), mean)
  list(slug = slug, golfers = I(golfers), out = out, golfer = I(shots$golfer), head = I(shots$head), carry = I(shots$carry),
       gap = mean(means[, "Alder"] - means[, "Birch"]) * yard)
}

# What those reports say together; `members` names the reports whose golfers count as one.
together <- function(reports, members) {
  gaps <- vapply(reports, function(one) one$gap, 0); names(gaps) <- vapply(reports, function(one) one$slug, "")
  means <- vapply(members, function(own) mean(gaps[own]), 0)
  test <- t.test(means)
  next_one <- predict(lm(means ~ 1), newdata = data.frame(row.names = 1), interval = "prediction")
  list(k = length(means), estimate = unname(test$estimate), ci = I(as.numeric(test$conf.int)), another = I(as.numeric(next_one[2:3])))
}

single <- list(session("first", "g1", 12, 6, 8), session("second", "g2", 6, 11, 8), session("third", "g3", 20, 2.5, 8),
  session("fourth", "g4", 9, 7, 8), session("fifth", "g5", 8, 5, 8, heads = c("Alder", "Birch", "Cedar")),
  session("sixth", "g6", 10, 6, 8, out = 4), session("seventh", "g7", 5, 9, 8))
grouped <- list(session("first", "g1", 12, 6, -4), session("again", "g1", 7, 9, -4), session("three", c("g2", "g3", "g4"), 6, 6, -4),
  session("one-of-them", "g3", 10, 6, -4), session("others", "g5", 15, 3, -4), session("last", "g6", 5, 12, -4))
alone <- list(session("first", "g1", 12, 6, 5), session("second", "g1", 6, 8, 5), session("third", "g1", 9, 5, 5), session("fourth", "g1", 5, 9, 5))
each <- function(slugs) as.list(slugs)
sessions <- list(
  list(name = "seven golfers, a report each", reports = single, pooled = together(single, each(c("first", "second", "third", "fourth", "fifth", "sixth", "seventh"))),
       withoutFirst = together(single[-1], each(c("second", "third", "fourth", "fifth", "sixth", "seventh")))),
  list(name = "golfers who hit again, or together", reports = grouped,
       pooled = together(grouped, list(c("first", "again"), c("three", "one-of-them"), "others", "last")),
       withoutFirst = together(grouped[-1], list("again", c("three", "one-of-them"), "others", "last"))),
  list(name = "one golfer, four days", reports = alone, pooled = together(alone, each(c("first", "second", "third", "fourth"))), withoutFirst = NULL))

# --- Sets of studies ------------------------------------------------------------------------------------------------

study_sets <- list(
  "two" = list(y = c(4.25, 9.5), se = c(1.5, 2.25)),
  "two, very unequal" = list(y = c(4, 9), se = c(0.02, 40)),
  "three" = list(y = rnorm(3, 6, 3), se = runif(3, 0.5, 3)),
  "five, nothing between them" = list(y = 6 + c(-1, 0.5, 0, 0.75, -0.25) * 0.01, se = c(1, 2, 1.5, 3, 0.8)),
  "six, very unequal" = list(y = rnorm(6, -3, 4), se = 10^seq(-2, 1.5, length.out = 6)),
  "nine" = list(y = rnorm(9, 0, 5), se = sqrt(rchisq(9, 5)) * 0.7),
  "fifteen, far apart" = list(y = rnorm(15, 2, 60), se = runif(15, 0.1, 9)),
  "four, far from zero" = list(y = 20000 + rnorm(4, 0, 0.5), se = runif(4, 0.2, 0.6)))
sets <- lapply(names(study_sets), function(name) {
  s <- study_sets[[name]]; y <- s$y; k <- length(y)
  wald <- rma(yi = y, sei = s$se, method = "DL", test = "z"); knapp <- rma(yi = y, sei = s$se, method = "DL", test = "knha")
  range <- if (k > 2) predict(wald, pi.type = "riley") else NULL
  alike <- rma(yi = y, vi = rep(1, k), method = "EE", test = "knha")
  next_one <- predict(lm(y ~ 1), newdata = data.frame(row.names = 1), interval = "prediction")
  list(name = name, estimates = I(y), standardErrors = I(s$se),
    companion = list(between = wald$tau2, q = wald$QE, qP = wald$QEp, estimate = as.numeric(wald$beta), standardError = wald$se,
      wald = I(c(wald$ci.lb, wald$ci.ub)), hartungKnapp = I(c(knapp$ci.lb, knapp$ci.ub)), hartungKnappP = knapp$pval,
      prediction = if (k > 2) I(c(range$pi.lb, range$pi.ub)) else NULL),
    alike = list(estimate = as.numeric(alike$beta), ci = I(c(alike$ci.lb, alike$ci.ub)), p = alike$pval, another = I(as.numeric(next_one[2:3]))))
})

writeLines(json(list(software = paste0(R.version.string, "; metafor ", packageVersion("metafor")), sessions = sessions, sets = sets)), "pooling.json")
