# SPDX-License-Identifier: MIT
law <- function(y, n, plant, share) {
  n1 <- rowsum(n, plant); y1 <- rowsum(y, plant); squares <- rowsum(n^2, plant); alone <- length(n1) == 1
  share <- share / sum(share); rate <- sum(share * y1 / n1)
  m <- floor(min(2000, max(192, 8 * sqrt(sum(n))))); s <- (1:m - 0.5) / m
  angle <- pi / 2 * (if (alone) s else s - sin(2 * pi * s) / (2 * pi)); p <- sin(angle)^2
  given <- function(r) {
    batch <- function(y, n) lbeta(y + p * (1 - r) / r, n - y + (1 - p) * (1 - r) / r) - lbeta(p * (1 - r) / r, (1 - p) * (1 - r) / r)
    each <- share^2 * (1 + (squares / n1 - 1) * r) / n1; drawn <- (y1 + rate) / (n1 + 1)
    k <- if (rate > 0 && rate < 1) rate * (1 - rate) / sum(each * drawn * (1 - drawn)) else 1 / sum(each)
    l <- if (alone) rowSums(mapply(batch, y, n)) else k * (rate * log(p) + (1 - rate) * log(cos(angle)^2)) + log(1 - cos(2 * pi * s))
    exp(l - max(l)) / sum(exp(l - max(l)))
  }
  w <- rowMeans(sapply(rho, given)); under <- cumsum(w) - w / 2; ends <- c(0, angle, pi / 2)
  list(p = p, w = w, rate = rate, below = function(x) approx(ends, c(0, under, 1), asin(sqrt(pmax(0, pmin(1, x)))), ties = mean)$y,
    limits = function(level) range(rate, sin(approx(c(0, under, 1), ends, (1 + c(-1, 1) * level) / 2, ties = mean)$y)^2))
}
