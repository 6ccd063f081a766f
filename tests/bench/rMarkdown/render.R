# What the usual way costs: R Markdown (Debian's rmarkdown, ggplot2, pandoc) with six metrics, each with its means,
# analysis of variance, Tukey's comparisons and one plot, on the same invented files as site.ts. One R for all reports,
# so that its start is not counted. Prints a report's seconds and bytes, also zipped as a server would send them.
#
#   Rscript tests/bench/rMarkdown/render.R CONTENT_FOLDER 10

arguments <- commandArgs(trailingOnly = TRUE)
template <- file.path(dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE))), "report.Rmd")
files <- head(Sys.glob(file.path(arguments[1], "reports", "*", "shots.csv")), as.integer(arguments[2]) + 1)
folder <- tempfile("rmarkdown-")
dir.create(folder)

render <- function(file) {
  name <- paste0(basename(dirname(file)), ".html")
  rmarkdown::render(template, output_file = name, output_dir = folder, intermediates_dir = folder,
                    params = list(file = normalizePath(file)), quiet = TRUE, envir = new.env())
  file.path(folder, name)
}
zipped <- function(file) length(memCompress(readBin(file, "raw", file.size(file)), "gzip"))

invisible(render(files[1])) # The first one loads packages.
seconds <- system.time(made <- vapply(files[-1], render, ""))[["elapsed"]] / length(files[-1])
cat(sprintf("R Markdown: %.2f s a report, %.2f MB, zipped %.3f MB (%s, rmarkdown %s)\n", seconds,
            mean(file.size(made)) / 1e6, mean(vapply(made, zipped, 0)) / 1e6,
            R.version.string, packageVersion("rmarkdown")))
unlink(folder, recursive = TRUE)
