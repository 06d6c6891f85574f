# SPDX-License-Identifier: MIT
# Writes regression.json, the values that the regressions of stats are tested against:
#
#     Rscript regression.R > regression.json        (in this folder; R 4.2 with its own packages only)
#
# Maximum likelihood is R's glm. Firth's fit is worked out here in another way than in stats: by Firth's modified score
# with the leverages from a QR decomposition, the information for a Hessian; limits by uniroot on the profile. Before it
# is written it is checked a third way: by R's own glm on counts to which each row's leverage is added, half of it as
# successes, until leverages and fit agree; at the limits by nlminb, which is given no derivatives. Fieller's limits are
# where the test statistic crosses the quantile, by uniroot too.

tight <- glm.control(epsilon = 1e-15, maxit = 100)
number <- function(x) formatC(x, digits = 15, format = "g", width = 1)
list_of <- function(x) paste0("[", paste(number(x), collapse = ", "), "]")

penalised <- function(b, x, y, n) {
  eta <- drop(x %*% b)
  w <- n * plogis(eta) * plogis(-eta)
  sum(y * plogis(eta, log.p = TRUE) + (n - y) * plogis(-eta, log.p = TRUE)) + sum(log(abs(diag(qr.R(qr(sqrt(w) * x))))))
}

firth <- function(x, y, n, held = NULL, at = 0, start = rep(0, ncol(x))) {
  free <- setdiff(seq_len(ncol(x)), held)
  b <- start
  b[held] <- at
  if (length(free) == 0) return(b)
  best <- penalised(b, x, y, n)
  for (i in 1:100000) {
    eta <- drop(x %*% b)
    p <- plogis(eta)
    w <- n * p * plogis(-eta)
    h <- rowSums(qr.Q(qr(sqrt(w) * x))^2)
    score <- crossprod(x, y - n * p + h * (0.5 - p))[free]
    step <- solve(crossprod(sqrt(w) * x)[free, free, drop = FALSE], score)
    share <- 1
    repeat {
      trial <- b
      trial[free] <- b[free] + share * step
      height <- penalised(trial, x, y, n)
      if (is.finite(height) && height >= best - 1e-12) break
      share <- share / 2
      if (share < 1e-15) stop("no way up")
    }
    b <- trial
    best <- height
    if (max(abs(step) / (1 + abs(b[free]))) < 1e-14) break
  }
  b
}

augmented <- function(x, y, n) {
  b <- rep(0, ncol(x))
  for (i in 1:5000) {
    p <- plogis(drop(x %*% b))
    h <- rowSums(qr.Q(qr(sqrt(n * p * (1 - p)) * x))^2)
    fit <- suppressWarnings(glm.fit(x, (y + h / 2) / (n + h), n + h, start = b, family = binomial(), control = tight))
    moved <- max(abs(fit$coefficients - b) / (1 + abs(b)))
    b <- fit$coefficients
    if (moved < 1e-13) break
  }
  b
}

# How far the penalised likelihood falls where a coefficient is held, by a search that is given no derivatives.
searched_fall <- function(x, y, n, b, covariance, j, at) {
  start <- (b + covariance[, j] / covariance[j, j] * (at - b[j]))[-j]
  whole <- function(free) replace(rep(at, length(b)), -j, free)
  there <- nlminb(start, function(free) -penalised(whole(free), x, y, n), scale = 1 / sqrt(diag(covariance))[-j],
                  control = list(rel.tol = 1e-14, iter.max = 1000, eval.max = 5000))
  penalised(b, x, y, n) + there$objective
}

check_otherwise <- function(x, y, n, b, covariance, lower, upper, drop_wanted) {
  other <- augmented(x, y, n)
  stopifnot(max(abs(other - b) / (1 + abs(b))) < 1e-9)
  for (j in seq_along(b)) for (at in c(lower[j], upper[j]))
    stopifnot(abs(searched_fall(x, y, n, other, covariance, j, at) - drop_wanted) < 1e-6)
}

firth_table <- function(x, y, n, level) {
  b <- firth(x, y, n)
  top <- penalised(b, x, y, n)
  p <- plogis(drop(x %*% b))
  se <- sqrt(diag(solve(crossprod(sqrt(n * p * (1 - p)) * x))))
  drop_wanted <- qchisq(level, 1) / 2
  fall <- function(j, at) {
    start <- b + solve(crossprod(sqrt(n * p * (1 - p)) * x))[, j] / se[j]^2 * (at - b[j])
    top - penalised(firth(x, y, n, j, at, start), x, y, n)
  }
  limit <- function(j, way) {
    far <- 2 * se[j]
    while (fall(j, b[j] + way * far) < drop_wanted) far <- 1.5 * far
    uniroot(function(at) fall(j, at) - drop_wanted, sort(c(b[j], b[j] + way * far)), tol = 1e-13)$root
  }
  index <- seq_along(b)
  chi <- sapply(index, function(j) 2 * fall(j, 0))
  lower <- sapply(index, limit, -1)
  upper <- sapply(index, limit, 1)
  check_otherwise(x, y, n, b, solve(crossprod(sqrt(n * p * (1 - p)) * x)), lower, upper, drop_wanted)
  sprintf(paste0('{"coefficients": %s, "standard_errors": %s, "lower": %s, "upper": %s, "chi2": %s, "p": %s, ',
                 '"penalised_log_likelihood": %s}'),
          list_of(b), list_of(se), list_of(lower), list_of(upper), list_of(chi),
          list_of(pchisq(chi, 1, lower.tail = FALSE)), number(top))
}

ordinary <- function(x, y, n) {
  fit <- glm(cbind(y, n - y) ~ x[, -1], family = binomial, control = tight)
  if (!fit$converged || max(abs(fit$linear.predictors)) > 25) return("null")
  p <- fitted(fit)
  sprintf('{"coefficients": %s, "standard_errors": %s, "log_likelihood": %s, "pearson": %s}', list_of(coef(fit)),
          list_of(sqrt(diag(vcov(fit)))), number(sum(dbinom(y, n, p, log = TRUE) - lchoose(n, y))),
          number(sum((y - n * p)^2 / (n * p * (1 - p)))))
}

data_set <- function(id, source, y, n, covariates) {
  x <- cbind(1, as.matrix(covariates))
  rows <- paste(apply(cbind(y, n, as.matrix(covariates)), 1, list_of), collapse = ",\n     ")
  cat(sprintf('  {"id": "%s",\n   "source": "%s",\n   "rows": [%s],\n   "maximum_likelihood": %s,\n   "firth": %s}',
              id, source, rows, suppressWarnings(ordinary(x, y, n)), firth_table(x, y, n, 0.95)))
}

hill <- function(id, source, dose, y, n, level) {
  treated <- dose > 0
  l <- log(dose[treated]) - mean(log(dose[treated]))
  fit <- glm(cbind(y, n - y)[treated, ] ~ l + I(l^2), family = binomial, control = tight)
  df <- df.residual(fit) + max(0, sum(!treated) - 1)
  pearson <- sum(residuals(fit, "pearson")^2)
  if (any(!treated)) {
    p <- sum(y[!treated]) / sum(n[!treated])
    pearson <- pearson + sum((y[!treated] - n[!treated] * p)^2 / (n[!treated] * p * (1 - p)))
  }
  dispersion <- max(1, pearson / df)
  b <- coef(fit)
  top <- -b[[2]] / (2 * b[[3]])
  limits <- function(quantile, dispersion) {
    v <- dispersion * vcov(fit)
    excess <- function(at) {
      (b[[2]] + 2 * b[[3]] * at)^2 - quantile^2 * (v[2, 2] + 4 * at * v[2, 3] + 4 * at^2 * v[3, 3])
    }
    if (4 * b[[3]]^2 <= quantile^2 * 4 * v[3, 3]) return("null")
    reach <- 1
    while (excess(top - reach) < 0 || excess(top + reach) < 0) reach <- 2 * reach
    ends <- c(uniroot(excess, c(top - reach, top), tol = 1e-14)$root, uniroot(excess, c(top, top + reach), tol = 1e-14)$root)
    list_of(exp(ends + mean(log(dose[treated]))))
  }
  z <- b[[3]] / sqrt(vcov(fit)[3, 3])
  point <- predict(fit, data.frame(l = log(1500) - mean(log(dose[treated]))), se.fit = TRUE)
  around <- function(quantile, dispersion) list_of(plogis(point$fit + c(-1, 0, 1) * quantile * sqrt(dispersion) * point$se.fit))
  cat(sprintf(paste0('  {"id": "%s",\n   "source": "%s",\n   "dose": %s, "successes": %s, "trials": %s, "level": %s,\n',
                     '   "best_dose": %s, "best_rate": %s, "dispersion": %s, "df": %d,\n',
                     '   "limits": %s, "limits_with_spread": %s, "curvature_p": %s, "curvature_p_with_spread": %s,\n',
                     '   "at_1500": %s, "at_1500_with_spread": %s}'),
              id, source, list_of(dose), list_of(y), list_of(n), number(level),
              number(exp(top + mean(log(dose[treated])))), number(plogis(b[[1]] + b[[2]] * top + b[[3]] * top^2)),
              number(dispersion), df, limits(qnorm((1 + level) / 2), 1), limits(qt((1 + level) / 2, df), dispersion),
              number(2 * pnorm(-abs(z))), number(2 * pt(-abs(z) / sqrt(dispersion), df)),
              around(qnorm((1 + level) / 2), 1), around(qt((1 + level) / 2, df), dispersion)))
}

cat('{"made_with": "regression.R,', R.version.string, '",\n "level": 0.95,\n "regressions": [\n')
e <- read.csv("endometrial.csv")
data_set("endometrial",
         "Heinze and Schemper (2002), Stat. Med. 21, 2409-2419: 79 cases of endometrial cancer (quasi-separated)",
         e$high_grade, e$trials, e[, 3:5])
cat(",\n")
u <- read.csv("urinary_infection.csv")
data_set("urinary_infection",
         "Cytel (2010), LogXact 9 User Manual, reduced as in the R package logistf (sex2): 239 women, by pattern",
         u$cases, u$women, u[, 3:8])
cat(",\n")
data_set("infert", "Trichopoulos et al. (1976), Br. J. Obstet. Gynaecol. 83, 645-650: R datasets::infert", infert$case,
         rep(1, nrow(infert)), infert[, c("age", "parity", "induced", "spontaneous")])
cat(",\n")
data_set("beetles", "Bliss (1935), Ann. Appl. Biol. 22, 134-167: beetles killed by log10 dose of carbon disulphide",
         c(6, 13, 18, 28, 52, 53, 61, 60), c(59, 60, 62, 56, 63, 59, 62, 60),
         cbind(c(1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839)))
cat(",\n")
two <- subset(iris, Species != "virginica")
data_set("iris_sepals",
         "Anderson (1935), Bull. Am. Iris Soc. 59, 2-5, in Fisher (1936), Ann. Eugen. 7, 179-188: R datasets::iris, versicolor of setosa and versicolor by sepals (completely separated)",
         as.numeric(two$Species == "versicolor"), rep(1, nrow(two)), two[, c("Sepal.Length", "Sepal.Width")])
cat(",\n")
data_set("separated_by_one", "invented: each success above each failure", c(0, 0, 0, 1, 1, 1), rep(1, 6), cbind(1:6))
cat('\n ],\n "dose_responses": [\n')
hill("five_strengths", "invented: five strengths and untreated, three trays each",
     rep(c(0, 500, 1000, 2000, 4000, 8000), each = 3),
     c(6, 8, 5, 9, 11, 8, 13, 15, 12, 16, 17, 14, 14, 15, 17, 9, 12, 8), rep(20, 18), 0.95)
cat(",\n")
hill("uneven_trays", "invented: trays that spread, unequal sizes, no untreated ones",
     c(300, 300, 1000, 1000, 1000, 3000, 3000, 8000, 8000), c(3, 9, 12, 8, 17, 19, 10, 4, 11),
     c(18, 20, 20, 15, 24, 24, 20, 20, 22), 0.9)
cat(",\n")
hill("nearly_straight", "invented: no bend to speak of", c(500, 500, 1000, 1000, 2000, 2000), c(5, 8, 12, 9, 10, 10),
     rep(20, 6), 0.95)
cat("\n ]}\n")
