// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const ageDependence = {
  "source": "li2021",
  "how_obtained": "abstract, read through journal-news summaries",
  "n": 350,
  "finding": "Over 2 years in LAMP, age was the only factor tied to progression in every dose arm; a younger child did worse at any dose.",
  "slope_per_year_of_age_over_2y": [
    {
      "concentration_percent": 0.05,
      "SER_D": 0.14,
      "AL_mm": -0.1
    },
    {
      "concentration_percent": 0.025,
      "SER_D": 0.15,
      "AL_mm": -0.11
    },
    {
      "concentration_percent": 0.01,
      "SER_D": 0.2,
      "AL_mm": -0.12
    }
  ],
  "equal_outcome_ages": [
    {
      "age": 6,
      "concentration_percent": 0.05,
      "dSER_2y": -0.9
    },
    {
      "age": 8,
      "concentration_percent": 0.025,
      "dSER_2y": -0.89
    },
    {
      "age": 10,
      "concentration_percent": 0.01,
      "dSER_2y": -0.92
    }
  ],
  "caveats": [
    "No untreated arm in year 2, so the slope mixes natural slowing with age and any true change of drug effect; it is NOT evidence that the fraction avoided changes with age.",
    "Safe use: take untreated growth by age from the growth references and keep the fraction constant; do not also apply this slope (double counting)."
  ],
  "related": [
    {
      "trial": "MOSAIC2 0.05%",
      "mean_age": 13.9,
      "note": "only 0.06 mm/y better than stopping 0.01%: small in mm because older eyes grow little"
    },
    {
      "trial": "STAR",
      "note": "larger absolute effect in ages 3-12 at 36 mo: -1.07 D vehicle vs -0.77 D 0.01% (sponsor statement in trade news)"
    }
  ]
}

export const ageDependenceProvenance: Provenance = {
  "id": "treatments/age-dependence",
  "title": "Age effect on treatment responses to 0.05%, 0.025% and 0.01% atropine",
  "authors": "Li FF et al",
  "year": 2021,
  "doi": "10.1016/j.ophtha.2020.12.036",
  "where": "abstract (treatments/li2021)",
  "obtained": "abstract, via journal-news summaries",
  "population": "Hong Kong children of the LAMP trial",
  "n": "350",
  "ageRange": "not stated",
  "device": "not stated",
  "units": "a; [diop]; mm",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": null,
  "checkedOn": null,
  "sha256": "ee90c827320c2819a605a54434eaccc95a3b858489e1ceb042f1852b23a4e3fa",
  "supersedes": null,
  "notes": "slopes mix natural ageing and drug effect"
}
