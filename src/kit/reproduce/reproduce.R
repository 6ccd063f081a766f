# Recalculates the findings of this report from its shots, with R alone:
#
#   Rscript reproduce.R          the main measures number by number, the others in one line each
#   Rscript reproduce.R all      every number
#
# Reads shots.csv, datapackage.json (which column holds what) and findings.json from its own folder. Everything is in
# the units of findings.json: metres, metres a second, degrees, rpm. Ends with an error if a number differs by more
# than 1e-9 of itself (of 1, for numbers under 1).

file_argument <- grep("^--file=", commandArgs(), value = TRUE)
folder <- if (length(file_argument) == 1) dirname(sub("^--file=", "", file_argument)) else "."
everything <- "all" %in% commandArgs(trailingOnly = TRUE)

# --- JSON, which base R does not read -------------------------------------------------------------------------------

read_json <- function(name) {
  text <- paste(readLines(file.path(folder, name), encoding = "UTF-8", warn = FALSE), collapse = "\n")
  pattern <- "\"(?:[^\"\\\\]++|\\\\.)*+\"|-?[0-9][0-9.eE+-]*|true|false|null|[\\[\\]{}:,]"
  tokens <- regmatches(text, gregexpr(pattern, text, perl = TRUE))[[1]]
  at <- 0
  string <- function(token) gsub("\\\\([\"\\\\/])", "\\1", substr(token, 2, nchar(token) - 1))
  value <- function() {
    token <- tokens[at <<- at + 1]
    if (token == "{" || token == "[") {
      found <- list()
      while (!tokens[at + 1] %in% c("}", "]")) {
        if (tokens[at + 1] == ",") at <<- at + 1
        if (token == "[") {
          found <- c(found, list(value()))
        } else {
          name <- string(tokens[at + 1])
          at <<- at + 2
          found[name] <- list(value())
        }
      }
      at <<- at + 1
      found
    } else if (substr(token, 1, 1) == "\"") string(token)
    else switch(token, null = NULL, true = TRUE, false = FALSE, as.numeric(token))
  }
  value()
}

# --- Shots -----------------------------------------------------------------------------------------------------------

findings <- read_json("findings.json")
stopifnot(findings$version == 2)
shots <- read.csv(file.path(folder, "shots.csv"), check.names = FALSE, colClasses = "character",
                  na.strings = "", encoding = "UTF-8")
counted <- is.na(shots[["Left out"]])
contenders <- vapply(findings$contenders, function(one) one$id, "")
golfers <- unique(shots$Golfer)

# What follows from two other readings is calculated from them: the file has it rounded.
made_of <- list(smash = function(ball, club) ball / club,
                face_to_path = function(face, path) face - path,
                spin_loft = function(loft, attack) loft - attack,
                spin_rate = function(back, side) sqrt(back^2 + side^2),
                spin_axis = function(back, side) atan2(side, back) * 180 / pi)
fields <- Filter(function(field) !is.null(field$metric), read_json("datapackage.json")$resources[[1]]$schema$fields)
readings <- list()
for (field in fields) readings[[field$metric]] <- as.numeric(shots[[field$name]]) * field$toSI
for (field in fields) if (!is.null(field$calculatedFrom)) {
  made <- made_of[[field$metric]](readings[[field$calculatedFrom[[1]]]], readings[[field$calculatedFrom[[2]]]])
  readings[[field$metric]] <- ifelse(is.na(made), readings[[field$metric]], made)
}

values_of <- function(values, contender, golfer = golfers, all_shots = FALSE) {
  wanted <- shots$Contender == contender & shots$Golfer %in% golfer & (counted | all_shots)
  values[wanted & !is.na(values)]
}

# --- Likely ranges ---------------------------------------------------------------------------------------------------

# Chance that the range of k standard normals over an independent estimate of their sd with df stays under q. R's own
# ptukey and qtukey stop at about ten and four digits.
range_under <- function(q, k, df) {
  log_sd <- function(chi_square) log(chi_square / df) / 2
  u <- seq(log_sd(qchisq(1e-17, df)), log_sd(qchisq(1e-17, df, lower.tail = FALSE)), length.out = 81)
  weight <- exp(df * (u - exp(2 * u) / 2 + 0.5))
  z <- seq(-9, 9, by = 0.25)
  inside <- k * dnorm(z) * (pnorm(z) - pnorm(outer(z, q * exp(u), "-")))^(k - 1) * 0.25
  sum(weight * colSums(inside)) / sum(weight)
}

range_quantile <- function(level, k, df) {
  near <- qtukey(level, k, df)
  uniroot(function(q) range_under(q, k, df) - level, near + c(-0.05, 0.05), extendInt = "yes", tol = 1e-13)$root
}

# Among all pairs of k: Student's t for two, else the studentized range.
likely <- function(estimate, error, df, level, k) {
  critical <- if (k == 2) qt((1 + level) / 2, df) else range_quantile(level, k, df) / sqrt(2)
  t <- abs(estimate) / error
  p <- if (k == 2) 2 * pt(-t, df) else 1 - range_under(t * sqrt(2), k, df)
  list(estimate = estimate, ci = estimate + c(-1, 1) * critical * error, p = p, width = critical * error)
}

# Mean, and its variance; a spread under that of rounding to the file's step is not believed.
cell <- function(values, step) {
  list(mean = mean(values), error2 = max(var(values), step^2 / 12) / length(values), df = length(values) - 1)
}

# Two groups of cells, each cell counted alike: Welch, Satterthwaite, and for three or more things Games and Howell.
welch <- function(a, b, level, k) {
  parts <- vapply(c(a, b), function(one) c(one$error2, one$df), c(0, 0))
  shares <- parts[1, ] / sum(parts[1, ])
  estimate <- mean(vapply(a, function(one) one$mean, 0)) - mean(vapply(b, function(one) one$mean, 0))
  likely(estimate, sqrt(sum(parts[1, ])) / length(a), 1 / sum(shares^2 / parts[2, ]), level, k)
}

fewest_shots <- 5

by_shots <- function(values, pair, level, step, golfer = golfers, all_shots = FALSE) {
  own <- function(id, one) values_of(values, id, one, all_shots)
  judged <- Filter(function(id) all(vapply(golfer, function(g) length(own(id, g)) >= fewest_shots, TRUE)), contenders)
  if (!all(c(pair$a, pair$b) %in% judged)) return(NULL)
  cells <- function(id) lapply(golfer, function(g) cell(own(id, g), step))
  welch(cells(pair$a), cells(pair$b), level, length(judged))
}

# value ~ block + thing by least squares; Tukey and Kramer over all things.
additive <- function(table, a, b, level) {
  table$thing <- factor(table$thing)
  table$block <- factor(table$block)
  fit <- lm(value ~ block + thing, table)
  contrast <- setNames(numeric(length(coef(fit))), names(coef(fit)))
  for (one in list(list(a, 1), list(b, -1))) {
    name <- paste0("thing", one[[1]])
    if (name %in% names(contrast)) contrast[name] <- one[[2]]
  }
  error <- sqrt(drop(contrast %*% vcov(fit) %*% contrast))
  likely(sum(contrast * coef(fit)), error, df.residual(fit), level, nlevels(table$thing))
}

means_table <- function(values, block, least = 1, things = contenders, all_shots = FALSE) {
  kept <- !is.na(values) & !is.na(block) & shots$Contender %in% things & (counted | all_shots)
  rows <- split(data.frame(value = values, block = block, thing = shots$Contender)[kept, ],
                list(block[kept], shots$Contender[kept]), drop = TRUE)
  rows <- Filter(function(rows) nrow(rows) >= least, rows)
  do.call(rbind, lapply(rows, function(rows) data.frame(value = mean(rows$value), rows[1, c("block", "thing")])))
}

differences <- function(table, a, b) {
  blocks <- intersect(table$block[table$thing == a], table$block[table$thing == b])
  at <- function(id) table$value[table$thing == id][match(blocks, table$block[table$thing == id])]
  at(a) - at(b)
}

# Six golfers or more: their averages are what is compared, and no range is narrower than the pair's own t.
by_golfers <- function(values, pair, level, all_shots = FALSE) {
  there <- !is.na(values) & (counted | all_shots)
  sizes <- table(shots$Golfer[there], shots$Contender[there])
  least <- if (median(sizes[sizes > 0]) >= 6) 3 else 1
  table <- means_table(values, shots$Golfer, least, all_shots = all_shots)
  model <- additive(table, pair$a, pair$b, level)
  own <- differences(table, pair$a, pair$b)
  if (length(own) < 2 || var(own) == 0) return(model)
  paired <- likely(model$estimate, sd(own) / sqrt(length(own)), length(own) - 1, level, 2)
  if (paired$width > model$width) paired else model
}

# The same with rounds in place of golfers.
round_of <- ifelse(is.na(shots$Round), NA, paste(shots$Golfer, shots$Round))
by_rounds <- function(values, pair, level) {
  judged <- Filter(function(id) length(values_of(values, id)) >= fewest_shots, contenders)
  additive(means_table(values, round_of, things = judged), pair$a, pair$b, level)
}

# Two things in rounds: Student's t on the differences of the rounds that have both.
by_pairs_of_rounds <- function(values, pair, level, all_shots = FALSE) {
  own <- differences(means_table(values, round_of, all_shots = all_shots), pair$a, pair$b)
  likely(mean(own), sd(own) / sqrt(length(own)), length(own) - 1, level, 2)
}

as_judged <- function(values, pair, step, all_shots = FALSE) {
  if (identical(pair$method, "paired-rounds")) by_pairs_of_rounds(values, pair, pair$level, all_shots)
  else if (findings$design$unit == "hitter") by_golfers(values, pair, pair$level, all_shots)
  else by_shots(values, pair, pair$level, step, all_shots = all_shots)
}

# --- Side by side ----------------------------------------------------------------------------------------------------

rows <- list()
compare <- function(measure, what, published, again) {
  if (is.null(published)) return()
  rows[[length(rows) + 1]] <<- data.frame(measure = measure, what = what, published = unlist(published), again = again)
}

compare_pairs <- function(measure, values, pairs, step) for (pair in pairs) {
  name <- paste(pair$a, "-", pair$b)
  if (!is.null(pair$method)) {
    again <- as_judged(values, pair, step)
    compare(measure, paste(name, "difference"), pair$estimate, again$estimate)
    compare(measure, paste(name, c("from", "to")), pair$ci, again$ci)
    compare(measure, paste(name, "p"), pair$p, again$p)
  }
  if (!is.null(pair$withLeftOut)) {
    again <- as_judged(values, pair, step, all_shots = TRUE)
    compare(measure, paste(name, "every shot counted"), pair$withLeftOut$estimate, again$estimate)
    compare(measure, paste(name, "every shot counted", c("from", "to")), pair$withLeftOut$ci, again$ci)
  }
  if (!is.null(pair$byRounds)) {
    again <- by_rounds(values, pair, pair$level)
    compare(measure, paste(name, "by rounds"), pair$byRounds$estimate, again$estimate)
    compare(measure, paste(name, "by rounds", c("from", "to")), pair$byRounds$ci, again$ci)
  }
  for (check in pair$holds) if (check$check == "by-rounds") {
    again <- by_rounds(values, pair, 0.95)
    compare(measure, paste(name, "checked by rounds"), check$estimate, again$estimate)
    compare(measure, paste(name, "checked by rounds", c("from", "to")), check$ci, again$ci)
  }
  for (own in pair$byHitter) {
    means <- vapply(c(pair$a, pair$b), function(id) mean(values_of(values, id, own$hitter)), 0)
    compare(measure, paste(name, "of", own$hitter), own$estimate, means[[1]] - means[[2]])
    if (!is.null(own$ci)) compare(measure, paste(name, "of", own$hitter, c("from", "to")), own$ci,
                                  by_shots(values, pair, pair$level, step, own$hitter)$ci)
  }
}

step_of <- list()
for (metric in findings$metrics) {
  values <- readings[[metric$id]]
  step_of[[metric$id]] <- metric$resolution
  for (one in metric$byContender) {
    own <- values_of(values, one$id)
    compare(metric$id, paste(one$id, "shots"), one$n, length(own))
    compare(metric$id, paste(one$id, "average"), one$mean, mean(own))
    compare(metric$id, paste(one$id, "sd"), one$sd, sd(own))
    compare(metric$id, paste(one$id, "median"), one$median, median(own))
    compare(metric$id, paste(one$id, c("least", "most")), c(one$min, one$max), range(own))
    half <- qt(0.975, length(own) - 1) * sd(own) / sqrt(length(own))
    compare(metric$id, paste(one$id, "average", c("from", "to")), one$ci, mean(own) + c(-half, half))
  }
  compare_pairs(metric$id, values, metric$pairs, metric$resolution)
}
if (!is.null(findings$straighter))
  compare_pairs("straighter", abs(readings$side), findings$straighter, step_of$side)

result <- do.call(rbind, rows)
result$difference <- abs(result$again - result$published) / pmax(1, abs(result$published))
main <- vapply(Filter(function(metric) metric$role == "primary", findings$metrics), function(metric) metric$id, "")
shown <- if (everything) unique(result$measure) else main
if (findings$invented) cat("Invented data.\n")
for (measure in unique(result$measure)) {
  own <- result[result$measure == measure, ]
  cat(sprintf("\n%s: %d numbers, largest difference %.1e\n", measure, nrow(own), max(own$difference)))
  if (measure %in% shown) {
    cat(sprintf("  %-44s %18s %18s\n", "", "findings.json", "here"))
    cat(sprintf("  %-44s %18.10g %18.10g\n", own$what, own$published, own$again), sep = "")
  }
}
largest <- max(result$difference)
cat(sprintf("\n%d numbers, largest difference %.1e\n", nrow(result), largest))
if (is.na(largest) || largest > 1e-9) stop("findings.json and shots.csv do not agree")
