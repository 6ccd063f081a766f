# What the usual way costs: R Markdown (Debian's rmarkdown, ggplot2, pandoc) with an answer and six metrics, each with one
# plot, its means, analysis of variance and Tukey's comparisons, on the same invented files as site.ts. One R for all
# reports, so that its start is not counted. Prints a report's seconds and bytes, also zipped as a server would send them;
# keeps the pages in a third argument.
#
#   Rscript tests/bench/rMarkdown/render.R CONTENT_FOLDER 10 [FOLDER]

arguments <- commandArgs(trailingOnly = TRUE)
template <- file.path(dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE))), "report.Rmd")
files <- head(Sys.glob(file.path(arguments[1], "reports", "*", "shots.csv")), as.integer(arguments[2]) + 1)
kept <- length(arguments) > 2
folder <- if (kept) normalizePath(arguments[3]) else tempfile("rmarkdown-")
if (!kept) dir.create(folder)

render <- function(file) {
  name <- paste0(basename(dirname(file)), ".html")
  rmarkdown::render(template, output_file = name, output_dir = folder, intermediates_dir = folder,
                    params = list(file = normalizePath(file)), quiet = TRUE, envir = new.env())
  file.path(folder, name)
}
zipped <- function(file) length(memCompress(readBin(file, "raw", file.size(file)), "gzip"))

invisible(render(files[1])) # The first one loads packages.
time <- system.time(made <- vapply(files[-1], render, ""))
each <- function(...) sum(time[c(...)]) / length(made)
cat(sprintf("R Markdown: %.2f s a report, processor %.2f s, %.2f MB, zipped %.3f MB (%s, rmarkdown %s)\n",
            each("elapsed"), each("user.self", "sys.self", "user.child", "sys.child"),
            mean(file.size(made)) / 1e6, mean(vapply(made, zipped, 0)) / 1e6,
            R.version.string, packageVersion("rmarkdown")))
if (!kept) unlink(folder, recursive = TRUE)
