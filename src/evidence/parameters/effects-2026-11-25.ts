import type { TreatmentEffect } from "../types.js"

/**
 * What the trials report that each treatment withholds of natural growth, from treatments/priors.json. The SD is the
 * uncertainty about the mean effect in a new clinic, set by judgement no smaller than the trials' standard error; it is
 * not the spread between children. Figures that were not read are left out of the derivations and sources here.
 */
export const treatmentEffects: readonly TreatmentEffect[] = [
  {
    id: "atropine-0.01",
    kind: "atropine",
    concentrationPercent: 0.01,
    withheldFraction: 0.15,
    withheldFractionSd: 0.08,
    confidence: "conflicting",
    derivation:
      "Five placebo trials read (LAMP, WA-ATOM, ATOM-J, CHAMP, MOSAIC) pool to 0.17 (SE 0.02); rounded down and widened until zero is in reach, because a sixth trial (US, 2 years) concluded there was no effect (its figures were not read). A further one-year trial (0.09 of 0.41 mm) fits.",
    mayBeNil: true,
    source: [
      "treatments/yam2019",
      "treatments/lee2022",
      "treatments/hieda2021",
      "treatments/zadnik2023",
      "treatments/mosaic_arvo2023",
      "treatments/chia_editorial2025",
      "treatments/wei2020",
    ],
  },
  {
    id: "atropine-0.02",
    kind: "atropine",
    concentrationPercent: 0.02,
    withheldFraction: 0.12,
    withheldFractionSd: 0.1,
    confidence: "weak",
    derivation:
      "CHAMP only: 0.08 of 0.81 mm in 3 years, 0.10; a Bayesian network estimate 0.096 mm. Below its own 0.01 % arm, so drawn towards 0.01 %.",
    mayBeNil: true,
    source: ["treatments/zadnik2023", "treatments/bayes_nma2024"],
  },
  {
    id: "atropine-0.025",
    kind: "atropine",
    concentrationPercent: 0.025,
    withheldFraction: 0.27,
    withheldFractionSd: 0.12,
    confidence: "one trial",
    derivation: "LAMP year 1: 0.12 of 0.41 mm, 0.29 (SE 0.07); a network estimate of 0.083 mm pulls it down.",
    mayBeNil: false,
    source: ["treatments/yam2019", "treatments/bayes_nma2024"],
  },
  {
    id: "atropine-0.05",
    kind: "atropine",
    concentrationPercent: 0.05,
    withheldFraction: 0.45,
    withheldFractionSd: 0.15,
    confidence: "moderate, mostly East Asian",
    derivation:
      "LAMP year 1: 0.21 of 0.41 mm, 0.51 (SE 0.07); a Chinese trial 0.50 of 0.76 mm in 2 years, 0.66; a Bayesian network estimate only 0.114 mm; MOSAIC2 0.06 mm/a at 14 years. Shrunk to 0.45.",
    mayBeNil: false,
    source: [
      "treatments/yam2019",
      "treatments/ijo2023",
      "treatments/bayes_nma2024",
      "treatments/loughman2025",
    ],
  },
  {
    id: "atropine-0.1",
    kind: "atropine",
    concentrationPercent: 0.1,
    withheldFraction: 0.45,
    withheldFractionSd: 0.2,
    confidence: "weak",
    derivation:
      "ATOM2 had no placebo arm; a Bayesian network estimate 0.134 mm; the 6-month loading of a Danish trial faded. Wide.",
    mayBeNil: false,
    source: [
      "treatments/chia2012",
      "treatments/bayes_nma2024",
      "treatments/hansen2023",
      "treatments/hansen2024",
    ],
  },
  {
    id: "atropine-0.5",
    kind: "atropine",
    concentrationPercent: 0.5,
    withheldFraction: 0.65,
    withheldFractionSd: 0.2,
    confidence: "moderate",
    derivation:
      "Network estimates 0.23 mm/a (95 % 0.07 to 0.38) and 0.184 mm, set against about 0.35 mm/a untreated.",
    mayBeNil: false,
    source: ["treatments/ha2022", "treatments/bayes_nma2024"],
  },
  {
    id: "atropine-1",
    kind: "atropine",
    concentrationPercent: 1,
    withheldFraction: 0.9,
    withheldFractionSd: 0.15,
    confidence: "moderate; not for routine use",
    derivation:
      "ATOM1 0.40 of 0.38 mm in 2 years (ultrasound, with choroid and lens effects); network estimates 0.35 mm/a and 0.171 mm. Capped below 1.",
    mayBeNil: false,
    source: ["treatments/chua2006", "treatments/ha2022", "treatments/bayes_nma2024"],
  },
  {
    id: "defocus-spectacles",
    kind: "defocus-spectacles",
    concentrationPercent: null,
    withheldFraction: 0.5,
    withheldFractionSd: 0.15,
    confidence: "moderate",
    derivation:
      "Multi-segment spectacles, one centre with the maker involved: 0.34 of 0.55 mm in 2 years, 0.62 (SE 0.04); shrunk.",
    mayBeNil: false,
    source: ["treatments/lam2020"],
  },
  {
    id: "lenslet-spectacles",
    kind: "lenslet-spectacles",
    concentrationPercent: null,
    withheldFraction: 0.52,
    withheldFractionSd: 0.12,
    confidence: "moderate",
    derivation:
      "Highly aspherical lenslets: 0.23 of 0.36 mm at 12 months, 0.64; 0.35 of 0.69 mm at 24 months, 0.51; shrunk.",
    mayBeNil: false,
    source: ["treatments/bao2022_1y", "treatments/bao2022_2y"],
  },
  {
    id: "dual-focus-lens",
    kind: "dual-focus-lens",
    concentrationPercent: null,
    withheldFraction: 0.42,
    withheldFractionSd: 0.12,
    confidence: "good",
    derivation:
      "0.32 of 0.62 mm in 3 years, 0.52 (SE 0.07); modelled 0.14, 0.23 and 0.29 mm at 1, 2 and 3 years; a Chinese trial 0.10 of 0.33 mm in 1 year, 0.30.",
    mayBeNil: false,
    source: ["treatments/chamberlain2019", "treatments/chamberlain_aaopt", "treatments/dfscl_china2024"],
  },
  {
    id: "multifocal-lens",
    kind: "multifocal-lens",
    concentrationPercent: null,
    withheldFraction: 0.35,
    withheldFractionSd: 0.1,
    confidence: "good",
    derivation: "High-add soft lenses: 0.23 to 0.24 of 0.66 mm in 3 years, 0.36.",
    mayBeNil: false,
    source: ["treatments/walline2020", "treatments/blink_comp2026"],
  },
  {
    id: "orthokeratology",
    kind: "orthokeratology",
    concentrationPercent: null,
    withheldFraction: 0.43,
    withheldFractionSd: 0.08,
    confidence: "good",
    derivation:
      "0.27 of 0.63 mm in 2 years, 0.43; a trial not randomised 0.33 of 0.64, 0.52; a meta-analysis 0.25 mm (95 % 0.21 to 0.30) in 2 years, its share falling from 51 to 41 per cent between 12 and 24 months.",
    mayBeNil: false,
    source: ["treatments/cho2012", "treatments/chen2013", "treatments/wen2015"],
  },
  {
    id: "atropine-0.01+orthokeratology",
    kind: "atropine+orthokeratology",
    concentrationPercent: 0.01,
    withheldFraction: 0.58,
    withheldFractionSd: 0.12,
    confidence: "moderate; extra over orthokeratology 0.06 (0.03) mm/a",
    derivation:
      "Orthokeratology plus 0.06 (SD 0.03) mm/a more: 0.17 mm in 2 years, 0.11 mm in 2 years and 0.10 mm in 1 year in three trials, cut because the gain was in low myopes and a placebo drop is lacking.",
    mayBeNil: false,
    source: [
      "treatments/cho2012",
      "treatments/wen2015",
      "treatments/tan2023",
      "treatments/kinoshita2020",
      "treatments/li_aok2024",
    ],
  },
]
