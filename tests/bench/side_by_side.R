# SPDX-License-Identifier: MIT
# The same work in R's survival package: side_by_side.R curve FILE | bootstrap FILE REPLICATES. Prints "SECONDS RESULT".
library(survival)
given <- commandArgs(trailingOnly = TRUE)
rows <- read.csv(given[2])
rows$by[is.infinite(rows$by)] <- NA
# survfit wants an exact day where both ends are alike, and NA for "not yet"; a root by the first look has no lower end.
rows$after[rows$after == 0] <- NA
curve <- function(rows) survfit(Surv(after, by, type = "interval2") ~ 1, data = rows, se.fit = FALSE)

if (given[1] == "curve") {
  seconds <- system.time(fit <- curve(rows))[["user.self"]]
  # Masses stand at the middles of their intervals; those that end by day 30 have their middle before it.
  cat(seconds, 1 - summary(fit, times = 30, extend = TRUE)$surv, "\n")
} else {
  wanted <- as.integer(given[3])
  batches <- split(seq_len(nrow(rows)), rows$batch)
  set.seed(1)
  seconds <- system.time(medians <- replicate(wanted, {
    drawn <- unlist(batches[sample(length(batches), replace = TRUE)], use.names = FALSE)
    quantile(curve(rows[drawn, ]), 0.5, conf.int = FALSE)[[1]]
  }))[["user.self"]]
  cat(seconds, quantile(ifelse(is.na(medians), Inf, medians), 0.975, type = 1), "\n")
}
