# Density of moist air by CIPM-2007 and by two ideal gases, typed in again from Picard and others 2008 (Metrologia 45)
# and Alduchov & Eskridge 1996. Run: Rscript air.R > air.csv
cipm <- function(t, p, h) {
  K <- t + 273.15
  psv <- exp(1.2378847e-5 * K^2 + -1.9121316e-2 * K + 33.93711047 + -6.3431645e3 / K)
  f <- 1.00062 + 3.14e-8 * p + 5.6e-7 * t^2
  x <- h * f * psv / p
  a <- c(1.58123e-6, -2.9331e-8, 1.1043e-10); b <- c(5.707e-6, -2.051e-8); c <- c(1.9898e-4, -2.376e-6)
  Z <- 1 - p / K * (sum(a * t^(0:2)) + sum(b * t^(0:1)) * x + sum(c * t^(0:1)) * x^2) + (p / K)^2 * (1.83e-11 - 0.765e-8 * x^2)
  p * 28.96546e-3 / (Z * 8.314472 * K) * (1 - x * (1 - 18.01528 / 28.96546))
}
ideal <- function(t, p, h) {
  e <- h * 610.94 * exp(17.625 * t / (t + 243.04))
  (p - e) / (287.05 * (t + 273.15)) + e / (461.495 * (t + 273.15))
}
grid <- expand.grid(temperature = c(15, 20, 27), pressure = c(70000, 90000, 103000), humidity = c(0, 0.4, 1))
grid$cipm <- mapply(cipm, grid$temperature, grid$pressure, grid$humidity)
grid$ideal <- mapply(ideal, grid$temperature, grid$pressure, grid$humidity)
write.csv(format(grid, digits = 12, trim = TRUE), stdout(), row.names = FALSE, quote = FALSE)
