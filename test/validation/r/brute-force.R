# The growth model by brute force, in base R: dense covariance, solve() and determinant(), integrate() for the growth,
# a dense grid for pace, withheld shares and dioptres per mm. Written from the mathematics of the model alone, apart
# from the engine, to check the engine against it. It reads courses/*.csv (the course files beside them, flattened) and
# writes ../fixtures/growth-brute-force.json.
#
# Run inside this folder:  Rscript brute-force.R      (about three minutes)
#
#   L_e(t) = L0_e + m [ N(t) - sum_j w_j C_j(t) ] + d_e N(t) + B_e(t),   m = exp(u - tau^2/2)
#   r_e(t) = r0_e - kappa (L_e(t) - L0_e) + offset + noise               up to the start of the first treatment
# N is natural growth since the child's first figure, C_j the part of it in the nights under treatment j in that eye.

# Values of the parameter file as of 25 November 2026; the comparison gives the engine these same ones.
p <- list(
  rateAt10MmPerYear = 0.272, eastAsianFactor = 1.3, girlFactor = 1.03, boyFactor = 0.97,
  declineBefore13PerYear = 0.125, declineAfter13PerYear = 0.3, kneeAgeYears = 13,
  seasonAmplitude = 0.25, seasonPeakDayOfYearNorth = 355, seasonPeakDayOfYearSouth = 172, tropicLatitudeDegrees = 10,
  logPaceSd = 0.31, wobbleMmPerSqrtYear = 0.093, wobbleCorrelationBetweenEyes = 0.88, eyeDifferenceSd = 0.114,
  opticalSessionSdMm = 0.016, opticalReadingSdMm = 0.0312, opticalUsualReadings = 3,
  ultrasoundSessionSdMm = 0.18, deviceChangeSdMm = 0.03,
  dioptresPerMm = 1.9, cycloplegicAutorefractionSdD = 0.2, dryAutorefractionSdD = 0.4, subjectiveSdD = 0.25,
  retinoscopySdD = 0.25, dryAutorefractionBiasD = -0.55, methodChangeSdD = 0.25, refractionSharedShare = 0.5,
  withheldSpreadSd = 0.1
)
dioptresPerMmSd <- 0.22
dryAutorefractionBiasSdD <- 0.55
# Mean and SD of the mean share withheld, of the treatments the seven children have.
effects <- data.frame(
  kind = c("atropine", "atropine", "atropine", "lenslet-spectacles", "multifocal-lens"),
  concentration = c(0.01, 0.025, 0.05, NA, NA),
  mean = c(0.15, 0.27, 0.45, 0.52, 0.35),
  sd = c(0.08, 0.12, 0.15, 0.12, 0.10)
)
firstLength <- c(mean = 24, sd = 30)
firstRefraction <- c(mean = 0, sd = 60)

children <- read.csv("courses/children.csv")
figures <- read.csv("courses/figures.csv")
treatments <- read.csv("courses/treatments.csv")
supplies <- read.csv("courses/supplies.csv")
missed <- read.csv("courses/missed-nights.csv")
day <- function(text) as.numeric(as.Date(text))
january2000 <- day("2000-01-01")

# ---- growth -------------------------------------------------------------------------------------------------------

naturalRate <- function(t, child) { # t in days since 1970
  a <- (t - day(child$born)) / 365.25
  k1 <- p$declineBefore13PerYear; k2 <- p$declineAfter13PerYear; knee <- p$kneeAgeYears
  level <- p$rateAt10MmPerYear * (if (child$ancestry == "east-asian") p$eastAsianFactor else 1) *
    (if (child$sex == "female") p$girlFactor else p$boyFactor)
  shape <- ifelse(a <= knee, exp(-k1 * (a - 10)), exp(-k1 * (knee - 10)) * exp(-k2 * (a - knee)))
  latitude <- child$latitude
  amplitude <- if (is.na(latitude) || abs(latitude) < p$tropicLatitudeDegrees) 0 else p$seasonAmplitude
  peak <- if (!is.na(latitude) && latitude < 0) p$seasonPeakDayOfYearSouth else p$seasonPeakDayOfYearNorth
  level * shape * (1 + amplitude * cos(2 * pi * (t - january2000 - peak) / 365.25)) # mm per year
}

# Integral in pieces of at most half a year and never across the knee, so that the integrand is smooth in each.
grown <- function(from, to, child) {
  if (to <= from) return(0)
  knee <- day(child$born) + 365.25 * p$kneeAgeYears
  cuts <- sort(unique(c(from, to, seq(from, to, by = 180), if (knee > from && knee < to) knee)))
  sum(mapply(function(a, b) integrate(naturalRate, a, b, child = child, rel.tol = 1e-12, abs.tol = 1e-14)$value,
             head(cuts, -1), tail(cuts, -1))) / 365.25
}

# For each night of each treatment the chance of a drop: 0 where bottles are recorded and none is open and in date, else
# the nights of the week meant to have one, less the missed nights that the family told of, spread evenly over the nights
# of their span on which a drop was to be expected (in either eye). Runs of equal nights are spans.
treatedSpans <- function(course, bottles, told, until) {
  from <- day(course$from)
  to <- pmin(ifelse(is.na(course$to) | course$to == "", until, day(course$to)), until)
  all <- seq(min(from), max(until - 1, min(from)))
  open <- day(bottles$opened); last <- day(bottles$beyondUse)
  chance <- sapply(seq_len(nrow(course)), function(j) {
    given <- all >= from[j] & all < to[j]
    own <- if (course$kind[j] != "atropine") rep(FALSE, nrow(bottles)) else
      is.na(bottles$concentration) | bottles$concentration == course$concentration[j]
    covered <- if (!any(own)) TRUE else sapply(all, function(n) any(open[own] <= n & n <= last[own]))
    weekly <- if (is.na(course$nightsPerWeek[j])) 1 else course$nightsPerWeek[j] / 7
    given * covered * weekly
  })
  chance <- matrix(chance, ncol = nrow(course))
  drops <- course$kind == "atropine"
  expected <- if (any(drops)) apply(chance[, drops, drop = FALSE], 1, max) else 0
  kept <- rep(1, length(all))
  for (i in seq_len(nrow(told))) {
    within <- all >= day(told$from[i]) & all <= day(told$to[i])
    kept[within] <- kept[within] - min(1, told$nights[i] / sum(expected[within]))
  }
  chance[, drops] <- chance[, drops] * pmax(kept, 0)
  lapply(seq_len(nrow(course)), function(j) {
    runs <- rle(chance[, j]); end <- cumsum(runs$lengths); start <- end - runs$lengths + 1
    data.frame(from = all[start], to = all[end] + 1, share = runs$values)[runs$values > 0, ]
  })
}
grownTreated <- function(to, child, spans) {
  if (is.null(spans) || nrow(spans) == 0) return(0)
  sum(spans$share * mapply(function(a, b) grown(a, min(b, to), child), spans$from, spans$to))
}
# A treatment of one eye does nothing to the other.
inEye <- function(course, eye) ifelse(is.na(course$eye) | course$eye == "" | course$eye == eye, 1, 0)

# ---- what was seen ------------------------------------------------------------------------------------------------

refractionSd <- function(f) switch(f$method,
  autorefraction = if (f$cycloplegic == "true") p$cycloplegicAutorefractionSdD else p$dryAutorefractionSdD,
  subjective = p$subjectiveSdD, retinoscopy = p$retinoscopySdD)

scenario <- function(id) {
  child <- as.list(children[children$child == id, ])
  rows <- figures[figures$child == id, ]
  course <- treatments[treatments$child == id, ]
  course <- course[order(course$from), ]
  bottles <- supplies[supplies$child == id, ]
  rows$day <- day(rows$date)
  treatedFrom <- sapply(rows$eye, function(eye) min(c(day(course$from)[inEye(course, eye) == 1], Inf)))
  rows <- rows[rows$what == "length" | rows$day <= treatedFrom, ]
  rows <- rows[order(rows$day), ]
  first <- min(rows$day)
  lengths <- rows[rows$what == "length", ]
  instrument <- paste(rows$method, rows$device)
  firstInstrument <- paste(lengths$method, lengths$device)[1]
  last <- max(lengths$day)
  birthday18 <- day(child$born) + 18 * 365.25
  spansSeen <- treatedSpans(course, bottles, missed[missed$child == id, ], last)

  seen <- lapply(seq_len(nrow(rows)), function(i) {
    f <- rows[i, ]
    length <- f$what == "length"
    readings <- if (is.na(f$readings)) p$opticalUsualReadings else f$readings
    dry <- !length && f$cycloplegic == "false"
    list(
      eye = f$eye, day = f$day, length = length,
      value = if (length) f$value else f$value + (if (is.na(f$cylinder)) 0 else f$cylinder) / 2,
      years = (f$day - first) / 365.25,
      N = grown(first, f$day, child),
      C = sapply(spansSeen, function(s) grownTreated(f$day, child, s)) * inEye(course, f$eye),
      noise = if (!length) refractionSd(f)^2
        else if (f$method == "ultrasound") p$ultrasoundSessionSdMm^2
        else p$opticalSessionSdMm^2 + p$opticalReadingSdMm^2 / readings,
      # A lasting offset of the whole child, by name; its prior mean and SD.
      offset = if (length) { if (instrument[i] == firstInstrument) NA else instrument[i] }
        else if (!dry) NA else if (f$method == "autorefraction") "dry autorefraction" else "other dry",
      offsetMean = if (dry && f$method == "autorefraction") p$dryAutorefractionBiasD else 0,
      offsetSd = if (length) p$deviceChangeSdMm
        else if (f$method == "autorefraction") dryAutorefractionBiasSdD else p$methodChangeSdD
    )
  })

  # Lengths asked for: at the last length, and at 18 years, with no treatment from the last length on or with those not
  # ended continued at the share of their nights so far.
  target <- function(eye, at, treatedOn) {
    C <- sapply(spansSeen, function(s) grownTreated(at, child, s))
    open <- is.na(course$to) | course$to == "" | day(course$to) > last
    for (j in which(open & treatedOn & at > last)) {
      nights <- last - day(course$from[j])
      share <- if (nights > 0) sum(spansSeen[[j]]$share * (spansSeen[[j]]$to - spansSeen[[j]]$from)) / nights else 1
      C[j] <- C[j] + share * grown(last, at, child)
    }
    list(eye = eye, length = TRUE, years = (at - first) / 365.25, N = grown(first, at, child), C = C * inEye(course, eye))
  }
  eyes <- unique(lengths$eye)
  targets <- unlist(lapply(eyes, function(eye) list(
    c(target(eye, last, FALSE), name = paste(eye, "last")),
    c(target(eye, birthday18, FALSE), name = paste(eye, "untreated18")),
    c(target(eye, birthday18, TRUE), name = paste(eye, "treated18")))), recursive = FALSE)

  trial <- t(sapply(seq_len(nrow(course)), function(j) {
    e <- effects[effects$kind == course$kind[j] &
      (is.na(course$concentration[j]) | effects$concentration %in% course$concentration[j]), ]
    c(mean = e$mean, sd = sqrt(e$sd^2 + p$withheldSpreadSd^2))
  }))
  list(id = id, seen = seen, targets = targets, trial = trial, last = last,
       usesKappa = any(rows$what == "refraction"))
}

# ---- the dense Gaussian, given u, w and kappa ------------------------------------------------------------------------

covariance <- function(a, b, kappa) { # of two figures or targets, without their noise and offsets
  slope <- function(x) if (x$length) 1 else -kappa
  sameEye <- a$eye == b$eye
  start <- if (!sameEye || a$length != b$length) 0 else if (a$length) firstLength["sd"]^2 else firstRefraction["sd"]^2
  wobble <- p$wobbleMmPerSqrtYear^2 * min(a$years, b$years) * (if (sameEye) 1 else p$wobbleCorrelationBetweenEyes)
  lasting <- if (sameEye) p$eyeDifferenceSd^2 * a$N * b$N else 0
  as.numeric(start + slope(a) * slope(b) * (wobble + lasting))
}
gaussian <- function(s, kappa) {
  n <- length(s$seen)
  K <- matrix(0, n, n)
  for (i in 1:n) for (j in 1:n) {
    a <- s$seen[[i]]; b <- s$seen[[j]]
    K[i, j] <- covariance(a, b, kappa) + (if (i == j) a$noise else 0) +
      (if (!is.na(a$offset) && identical(a$offset, b$offset)) a$offsetSd^2 else 0) +
      (if (i != j && !a$length && !b$length && a$day == b$day)
        p$refractionSharedShare * sqrt(a$noise * b$noise) else 0)
  }
  slope <- sapply(s$seen, function(x) if (x$length) 1 else -kappa)
  level <- sapply(s$seen, function(x) if (x$length) firstLength["mean"] else firstRefraction["mean"] + x$offsetMean)
  C <- matrix(sapply(s$seen, function(x) x$C), nrow = n, byrow = TRUE)
  list(K = K, inverse = solve(K), logDet = as.numeric(determinant(K)$modulus),
       y = sapply(s$seen, function(x) x$value) - as.numeric(level),
       N = slope * sapply(s$seen, function(x) x$N), C = slope * C)
}
pace <- function(u) exp(u - p$logPaceSd^2 / 2)

logLikelihood <- function(g, u, w) {
  rest <- g$y - pace(u) * (g$N - as.numeric(g$C %*% w))
  as.numeric(-0.5 * (length(rest) * log(2 * pi) + g$logDet + t(rest) %*% g$inverse %*% rest))
}

# ---- the grid ---------------------------------------------------------------------------------------------------

uGrid <- p$logPaceSd * seq(-6, 6, length.out = 401)
wGrid <- function(trial) trial["mean"] + trial["sd"] * seq(-6, 6, length.out = 201)

# Log prior weights of a grid: density times step, summing to one.
logWeights <- function(grid, mean, sd) { d <- dnorm(grid, mean, sd); log(d / sum(d)) }

# At one kappa: log evidence, and the moments of m and m w that any length needs.
integrated <- function(s, kappa, testedIsNil) {
  g <- gaussian(s, kappa)
  k <- ncol(g$C)
  X <- cbind(g$y, g$N, g$C)
  G <- t(X) %*% g$inverse %*% X
  const <- -0.5 * (length(g$y) * log(2 * pi) + g$logDet)
  grids <- lapply(1:k, function(j) if (testedIsNil && j == k) 0 else wGrid(s$trial[j, ]))
  prior <- lapply(1:k, function(j) if (testedIsNil && j == k) 0 else
    logWeights(grids[[j]], s$trial[j, "mean"], s$trial[j, "sd"]))
  w <- as.matrix(expand.grid(grids))
  priorW <- rowSums(as.matrix(expand.grid(prior)))
  toN <- w %*% G[-(1:2), 2]; toY <- w %*% G[-(1:2), 1]
  within <- rowSums((w %*% G[-(1:2), -(1:2), drop = FALSE]) * w)
  priorU <- logWeights(uGrid, 0, p$logPaceSd)
  logPost <- sapply(seq_along(uGrid), function(i) {
    m <- pace(uGrid[i])
    const - 0.5 * (G[1, 1] - 2 * m * (G[1, 2] - toY) + m^2 * (G[2, 2] - 2 * toN + within)) + priorW + priorU[i]
  })
  list(g = g, w = w, logPost = matrix(logPost, nrow = nrow(w)), kappa = kappa)
}

# Mixed over kappa nodes: evidence, and mean, SD and chance past 26 mm of each target.
mixed <- function(s, kappas, logKappaWeights, testedIsNil = FALSE) {
  parts <- lapply(seq_along(kappas), function(i) {
    part <- integrated(s, kappas[i], testedIsNil)
    peak <- max(part$logPost) + logKappaWeights[i]
    weight <- exp(part$logPost + logKappaWeights[i] - peak)
    keep <- if (testedIsNil) NULL else lapply(s$targets, function(target) {
      toData <- sapply(part$g$y * 0 + seq_along(s$seen), function(i) covariance(target, s$seen[[i]], part$kappa))
      gain <- as.numeric(part$g$inverse %*% toData)
      sd <- sqrt(covariance(target, target, part$kappa) - sum(gain * toData))
      base <- firstLength["mean"] + sum(gain * part$g$y)
      onN <- target$N - sum(gain * part$g$N)
      onC <- target$C - as.numeric(gain %*% part$g$C)
      mean <- base + outer(as.numeric(onN - part$w %*% onC), pace(uGrid))
      far <- weight > 1e-14 * max(weight)
      c(first = sum(weight * mean), second = sum(weight * ((mean - 24)^2 + sd^2)),
        past26 = sum(weight[far] * pnorm(26, mean[far], sd, lower.tail = FALSE)))
    })
    list(peak = peak, total = sum(weight), keep = keep,
         paceMean = sum(weight * rep(pace(uGrid), each = nrow(part$w))),
         wMean = as.numeric(t(part$w) %*% rowSums(weight)))
  })
  top <- max(sapply(parts, function(x) x$peak))
  scale <- sapply(parts, function(x) exp(x$peak - top))
  total <- sum(scale * sapply(parts, function(x) x$total))
  add <- function(get) Reduce(`+`, lapply(seq_along(parts), function(i) scale[i] * get(parts[[i]]))) / total
  lengths <- if (testedIsNil) NULL else lapply(seq_along(s$targets), function(t) {
    a <- add(function(x) x$keep[[t]])
    list(name = s$targets[[t]]$name, mean = a[["first"]],
         sd = sqrt(a[["second"]] - (a[["first"]] - 24)^2), past26 = a[["past26"]])
  })
  list(logEvidence = top + log(total), lengths = lengths,
       pace = add(function(x) x$paceMean), w = add(function(x) x$wMean))
}

# Five Gauss-Hermite nodes, as in the engine, by Golub and Welsch 1969: eigenvalues of the Jacobi matrix of the Hermite polynomials, weights
# from the first entries of its eigenvectors.
jacobi <- eigen(outer(1:5, 1:5, function(i, j) ifelse(abs(i - j) == 1, sqrt(pmin(i, j)), 0)), symmetric = TRUE)
sameNodes <- list(at = p$dioptresPerMm + dioptresPerMmSd * jacobi$values, log = log(jacobi$vectors[1, ]^2))
denseGrid <- p$dioptresPerMm + dioptresPerMmSd * seq(-6, 6, length.out = 61)
dense <- list(at = denseGrid, log = logWeights(denseGrid, p$dioptresPerMm, dioptresPerMmSd))
single <- list(at = p$dioptresPerMm, log = 0)

# ---- writing -----------------------------------------------------------------------------------------------------

number <- function(x) sprintf("%.12g", x)
array <- function(x) paste0("[", paste(number(x), collapse = ", "), "]")
asJson <- function(m, h0) paste0(
  "{ \"logEvidence\": ", number(m$logEvidence), ", \"logEvidenceNil\": ", number(h0$logEvidence),
  ", \"pace\": ", number(m$pace), ", \"withheld\": ", array(m$w), ",\n        \"lengths\": {",
  paste(sapply(m$lengths, function(l) sprintf(
    "\n          \"%s\": { \"mean\": %s, \"sd\": %s, \"past26\": %s }", l$name, number(l$mean), number(l$sd), number(l$past26))),
    collapse = ","), "\n        } }")

answer <- function(id) {
  s <- scenario(id)
  points <- expand.grid(u = c(-0.4, 0, 0.35), kappa = if (s$usesKappa) c(1.7, 1.9, 2.2) else p$dioptresPerMm)
  shares <- list(s$trial[, "mean"], s$trial[, "mean"] * 0, s$trial[, "mean"] + 0.2)
  fixed <- unlist(lapply(seq_len(nrow(points)), function(i) {
    g <- gaussian(s, points$kappa[i])
    sapply(shares, function(w) sprintf("\n        { \"u\": %s, \"withheld\": %s, \"kappa\": %s, \"logLikelihood\": %s }",
      number(points$u[i]), array(w), number(points$kappa[i]), number(logLikelihood(g, points$u[i], w))))
  }))
  few <- if (s$usesKappa) sameNodes else single
  many <- if (s$usesKappa) dense else single
  atNodes <- asJson(mixed(s, few$at, few$log), mixed(s, few$at, few$log, TRUE))
  atGrid <- if (s$usesKappa) asJson(mixed(s, many$at, many$log), mixed(s, many$at, many$log, TRUE)) else atNodes
  cat(id, "done\n", file = stderr())
  growth <- paste0("[", paste(sapply(s$seen, function(x) sprintf("[%s, %s]", number(x$N), array(x$C))), collapse = ", "), "]")
  paste0("    \"", id, "\": {\n      \"lastLength\": \"", as.Date(s$last, origin = "1970-01-01"),
    "\",\n      \"growthAtFigures\": ", growth,
    ",\n      \"fixed\": [", paste(fixed, collapse = ","),
    "\n      ],\n      \"sameNodes\": ", atNodes, ",\n      \"denseKappa\": ", atGrid, "\n    }")
}

parameters <- paste(sprintf("    \"%s\": %s", names(p), sapply(p, number)), collapse = ",\n")
trials <- paste(sprintf("    { \"kind\": \"%s\", \"concentrationPercent\": %s, \"mean\": %s, \"sd\": %s }", effects$kind,
  ifelse(is.na(effects$concentration), "null", number(effects$concentration)), number(effects$mean), number(effects$sd)),
  collapse = ",\n")
cat("{\n  \"madeBy\": \"test/validation/r/brute-force.R, ", R.version.string, "\",\n  \"parameters\": {\n", parameters,
  "\n  },\n  \"parameterSds\": { \"dioptresPerMm\": ", number(dioptresPerMmSd), ", \"dryAutorefractionBiasD\": ",
  number(dryAutorefractionBiasSdD), " },\n  \"effects\": [\n", trials, "\n  ],\n  \"children\": {\n", paste(sapply(children$child, answer), collapse = ",\n"), "\n  }\n}\n",
  sep = "", file = "../fixtures/growth-brute-force.json")
