// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
import type { Provenance } from "../types.js"

export const priors = {
  "meaning": "fraction_avoided multiplies age-expected UNTREATED elongation; its SD is uncertainty about the average effect in a new clinic (sampling + between-trial + design), not the spread between children.",
  "sd_rule": "judgement: at least the trial SE; widened for single trials, manufacturer trials, other ancestry, compounded strength. Not an estimated posterior.",
  "which": "Use the fraction when untreated growth for this child is modelled by age; show mm as the headline. mm_per_year_year1 applies to roughly 7-11-year-olds growing 0.30-0.45 mm/y untreated; never use it above about 13 y without scaling down.",
  "decay": "Optical effects fade in relative terms (ortho-k pooled 51% at 12 mo, 41% at 24 mo). For a 3-year projection multiply the year-1 fraction by 1.0, 0.85, 0.75 (own suggestion; SD 0.15). The multi-year fractions above already average this in: do not apply twice.",
  "priors": [
    {
      "class": "atropine 0.01%",
      "fraction_avoided": 0.15,
      "fraction_sd": 0.08,
      "mm_per_year_year1": 0.045,
      "mm_sd": 0.025,
      "derivation": "Random-effects pool of 6 placebo trials (LAMP, WA-ATOM, ATOM-J, CHAMP, MOSAIC, PEDIG): fraction 0.16 (SE 0.02, tau 0), 0.042 mm/y (SE 0.008, tau 0.012, 7 trials with the Danish). Rounded down and SD widened to cover zero effect (PEDIG), strength as compounded and mixed durations. See checks 10-13.",
      "confidence": "conflicting",
      "mm_cumulative": {
        "24": 0.08,
        "24_sd": 0.05
      },
      "allow_zero": true,
      "caveat": "Wei 2020 (1 y: 0.09/0.41 mm) was found later and is not in the pool; adding it moves the pooled fraction by less than 0.01 and mm/y by less than 0.005, inside the SD"
    },
    {
      "class": "atropine 0.02%",
      "fraction_avoided": 0.12,
      "fraction_sd": 0.1,
      "mm_per_year_year1": 0.03,
      "mm_sd": 0.03,
      "derivation": "CHAMP only: 0.08/0.81 = 0.10 over 3 y; Bayesian NMA 0.096 mm. Below its own 0.01% arm, so pool toward 0.01%.",
      "confidence": "weak"
    },
    {
      "class": "atropine 0.025%",
      "fraction_avoided": 0.27,
      "fraction_sd": 0.12,
      "mm_per_year_year1": 0.11,
      "mm_sd": 0.05,
      "derivation": "LAMP year 1: 0.12/0.41 = 0.29 (SE 0.07), one trial; NMA 0.083 mm pulls down.",
      "confidence": "one trial"
    },
    {
      "class": "atropine 0.05%",
      "fraction_avoided": 0.45,
      "fraction_sd": 0.15,
      "mm_per_year_year1": 0.17,
      "mm_sd": 0.06,
      "derivation": "LAMP year 1: 0.21/0.41 = 0.51 (SE 0.07). Chinese RCT 0.50/0.76 over 2 y = 0.66. Bayesian NMA only 0.114 mm. MOSAIC2: 0.06 mm/y at age 14. Shrunk to 0.45.",
      "confidence": "moderate, mostly East Asian"
    },
    {
      "class": "atropine 0.1%",
      "fraction_avoided": 0.45,
      "fraction_sd": 0.2,
      "mm_per_year_year1": 0.14,
      "mm_sd": 0.08,
      "derivation": "ATOM2 without placebo; NMA 0.134 mm; 6-month loading in Danish trial faded. Wide.",
      "confidence": "weak"
    },
    {
      "class": "atropine 0.5%",
      "fraction_avoided": 0.65,
      "fraction_sd": 0.2,
      "mm_per_year_year1": 0.23,
      "mm_sd": 0.08,
      "derivation": "NMA 0.23 mm/y (CI 0.07-0.38) and 0.184 mm; set against about 0.35 mm/y untreated.",
      "confidence": "moderate"
    },
    {
      "class": "atropine 1%",
      "fraction_avoided": 0.9,
      "fraction_sd": 0.15,
      "mm_per_year_year1": 0.3,
      "mm_sd": 0.08,
      "derivation": "ATOM1 0.40/0.38 over 2 y = 1.05 (ultrasound, includes choroid and lens effects); NMA 0.35 mm/y vs 0.171 mm in the Bayesian one. Capped below 1.",
      "confidence": "moderate; not for routine use"
    },
    {
      "class": "spectacles, multi-segment peripheral defocus",
      "fraction_avoided": 0.5,
      "fraction_sd": 0.15,
      "mm_per_year_year1": 0.15,
      "mm_sd": 0.05,
      "derivation": "Lam 2020: 0.34/0.55 = 0.62 over 2 y (SE 0.04), single centre, manufacturer involved; shrunk.",
      "confidence": "moderate",
      "mm_cumulative": {
        "24": 0.28,
        "24_sd": 0.08
      }
    },
    {
      "class": "spectacles, highly aspherical lenslets",
      "fraction_avoided": 0.52,
      "fraction_sd": 0.12,
      "mm_per_year_year1": 0.2,
      "mm_sd": 0.05,
      "derivation": "Bao: 0.23/0.36 = 0.64 at 12 mo, 0.35/0.69 = 0.51 at 24 mo; shrunk.",
      "confidence": "moderate",
      "mm_cumulative": {
        "24": 0.32,
        "24_sd": 0.07
      }
    },
    {
      "class": "soft lens, dual-focus",
      "fraction_avoided": 0.42,
      "fraction_sd": 0.12,
      "mm_per_year_year1": 0.12,
      "mm_sd": 0.04,
      "derivation": "0.32/0.62 = 0.52 over 3 y (SE 0.07); modelled 0.14, 0.23, 0.29 mm at 1, 2, 3 y; Chinese RCT 0.10/0.33 = 0.30 at 1 y.",
      "confidence": "good",
      "mm_cumulative": {
        "12": 0.12,
        "24": 0.21,
        "36": 0.28,
        "sd": 0.06
      }
    },
    {
      "class": "soft lens, multifocal high add",
      "fraction_avoided": 0.35,
      "fraction_sd": 0.1,
      "mm_per_year_year1": 0.08,
      "mm_sd": 0.03,
      "derivation": "BLINK 0.23-0.24/0.66 over 3 y = 0.36; yearly value is the 3-year mean.",
      "confidence": "good",
      "mm_cumulative": {
        "36": 0.23,
        "36_sd": 0.05
      }
    },
    {
      "class": "soft lens, multifocal medium add",
      "fraction_avoided": 0.12,
      "fraction_sd": 0.08,
      "mm_per_year_year1": 0.025,
      "mm_sd": 0.02,
      "derivation": "BLINK 0.07-0.08/0.66; the AL gap is small and the SER CI includes 0.",
      "confidence": "weak"
    },
    {
      "class": "orthokeratology",
      "fraction_avoided": 0.43,
      "fraction_sd": 0.08,
      "mm_per_year_year1": 0.15,
      "mm_sd": 0.04,
      "derivation": "ROMIO 0.27/0.63 = 0.43; TO-SEE 0.33/0.64 = 0.52 (not randomised); meta 0.25 mm (CI 0.21-0.30) per 2 y; percent fell 51 to 41 from 12 to 24 mo.",
      "confidence": "good",
      "mm_cumulative": {
        "24": 0.26,
        "24_sd": 0.04
      }
    },
    {
      "class": "spectacles, executive bifocal",
      "fraction_avoided": 0.3,
      "fraction_sd": 0.12,
      "mm_per_year_year1": 0.1,
      "mm_sd": 0.04,
      "derivation": "Cheng: 0.21/0.62 at 2 y = 0.34; 0.25/0.82 at 3 y = 0.30; one practice, fast progressors.",
      "confidence": "one trial"
    },
    {
      "class": "spectacles, progressive addition",
      "fraction_avoided": 0.1,
      "fraction_sd": 0.08,
      "mm_per_year_year1": 0.04,
      "mm_sd": 0.03,
      "derivation": "COMET 0.20/1.48 D = 0.14; AL at most 0.11 mm over 3 y; 5-year effect not significant.",
      "confidence": "good evidence of a small effect"
    },
    {
      "class": "repeated low-level red light",
      "fraction_avoided": 0.75,
      "fraction_sd": 0.2,
      "mm_per_year_year1": 0.28,
      "mm_sd": 0.08,
      "derivation": "Meta 0.31 mm at 12 mo (CI 0.19-0.42); Chen 0.38/0.39. Choroidal thickening included; strong rebound; safety open. Do not propose by default.",
      "confidence": "moderate effect, unresolved safety",
      "mm_cumulative": {
        "24_if_stopped_at_12": "much of the gain lost: +0.14 mm vs untreated in the year after stopping"
      }
    },
    {
      "class": "combination: atropine 0.01% + orthokeratology",
      "fraction_avoided": 0.58,
      "fraction_sd": 0.12,
      "mm_per_year_year1": 0.21,
      "mm_sd": 0.05,
      "derivation": "Ortho-k prior plus an extra 0.06 mm/y (SD 0.03): Tan 0.17/2 y, Kinoshita 0.11/2 y, Li 0.10/y; cut because the gain was in low myopes and drop placebo is lacking.",
      "confidence": "moderate; extra over ortho-k 0.06 (0.03) mm/y"
    },
    {
      "class": "combination: atropine + defocus spectacles",
      "fraction_avoided": null,
      "fraction_sd": null,
      "mm_per_year_year1": null,
      "mm_sd": null,
      "derivation": "No randomised AL estimate read. Do not add the two fractions; if a number is needed use the larger single fraction.",
      "confidence": "insufficient"
    },
    {
      "class": "outdoor time",
      "fraction_avoided": 0.05,
      "fraction_sd": 0.08,
      "mm_per_year_year1": 0.02,
      "mm_sd": 0.02,
      "derivation": "Trials 0.03-0.09 mm but in children mostly not yet myopic; no separate estimate in myopes.",
      "confidence": "prevention, not progression"
    }
  ]
}

export const priorsProvenance: Provenance = {
  "id": "treatments/priors",
  "title": "Share of untreated elongation avoided, by treatment",
  "authors": "own work of this project: set by judgement on the trials named in each derivation",
  "year": null,
  "doi": null,
  "where": "not applicable",
  "obtained": "set by judgement on the trials named in each derivation",
  "population": "not applicable",
  "n": "not applicable",
  "ageRange": "not applicable",
  "device": "not applicable",
  "units": "1; mm/a",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": null,
  "checkedOn": null,
  "sha256": "c5b1e79b7fb40f17a4586103e20bdc12c80500f142b62f7c8f359f3870ebab4f",
  "supersedes": null,
  "notes": ""
}
