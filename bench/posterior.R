# The posterior of one child by dense linear algebra in base R: one Cholesky factor per node of kappa, then pace nodes
# and 15 nodes of the withheld fraction (Gauss-Hermite from the eigenvalues of the Jacobi matrix). Prints the log
# evidence and the milliseconds of one run. Called by bench/assess.mjs; the figures come from there, the algebra is R's.
lines <- strsplit(readLines(commandArgs(TRUE)[1]), ",")
kind <- vapply(lines, `[`, "", 1)
numbers <- lapply(lines, function(l) as.numeric(l[-1]))
head <- numbers[[which(kind == "head")]]
tau <- head[1]; mu <- head[2]; sd <- head[3]
part <- cumsum(kind == "part")
parts <- lapply(seq_len(max(part)), function(p) {
  m <- do.call(rbind, numbers[part == p & kind == "row"])
  list(weight = numbers[[which(part == p & kind == "part")]], y = m[, 1], n = m[, 2], c = m[, 3], v = m[, -(1:3)])
})
n <- 15
jacobi <- matrix(0, n, n)
for (i in seq_len(n - 1)) jacobi[i, i + 1] <- jacobi[i + 1, i] <- sqrt(i)
e <- eigen(jacobi, symmetric = TRUE)
w <- mu + sd * e$values
wp <- e$vectors[1, ]^2
step <- 1 / 3
z <- seq(-15, 15) * step

run <- function() {
  terms <- numeric(0)
  for (p in parts) {
    f <- t(chol(p$v))
    x <- forwardsolve(f, cbind(p$y, p$n, p$c))
    g <- crossprod(x)
    base <- length(p$y) * log(2 * pi) + 2 * sum(log(diag(f)))
    for (u in z) {
      m <- exp(u * tau - tau^2 / 2)
      a <- rbind(1, -m, m * w)
      q <- colSums(a * (g %*% a))
      terms <- c(terms, log(p$weight) + log(step / sqrt(2 * pi)) - u^2 / 2 + log(wp) - (base + q) / 2)
    }
  }
  top <- max(terms)
  top + log(sum(exp(terms - top)))
}
for (i in 1:3) value <- run()
times <- vapply(1:9, function(i) { t <- proc.time()[["elapsed"]]; for (j in 1:5) run(); (proc.time()[["elapsed"]] - t) / 5 }, 0)
cat(sprintf("%.12f %.6f\n", value, 1000 * median(times)))
