// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const definitions = {
  "progression_and_nonresponse": [
    {
      "label": "retreat after washout",
      "rule": ">=0.50 D worse in at least one eye in 12 mo",
      "source": "chia2016",
      "how_obtained": "abstract"
    },
    {
      "label": "retreat as needed (PRN)",
      "rule": ">=0.5 D over 1 year",
      "source": "zhang2024",
      "how_obtained": "abstract"
    },
    {
      "label": "responder",
      "rule": "<0.50 D total progression at 36 mo",
      "source": "zadnik2023",
      "how_obtained": "full text table 2",
      "note": "only 17.5% of placebo and 28.5% of 0.01% eyes met it: too strict for a growing child over 3 y"
    },
    {
      "label": "responder eye",
      "rule": "<0.50 D",
      "source": "hansen2025",
      "how_obtained": "abstract"
    },
    {
      "label": "trial failure",
      "rule": "confirmed 0.75 D progression by 36 mo",
      "source": "star_topline2025",
      "how_obtained": "secondary citation"
    },
    {
      "label": "fast progressor at entry",
      "rule": ">=0.50 D/y or >=0.75 D/y (two subgroups)",
      "source": "star2026",
      "how_obtained": "abstract"
    },
    {
      "label": "EU label entry criterion",
      "rule": ">=0.5 D/y and -0.5 to -6.0 D, age 3-14 at start",
      "source": "ema_authorised2025",
      "how_obtained": "regulator page"
    },
    {
      "label": "rapid elongation",
      "rule": ">0.36 mm/y",
      "source": "cho2017",
      "how_obtained": "abstract"
    },
    {
      "label": "effective control on ortho-k",
      "rule": "<0.30 mm/y",
      "source": "orthok_rcrp2018",
      "how_obtained": "abstract"
    },
    {
      "label": "fast progressor by AL",
      "rule": ">0.1 mm in 6 mo",
      "source": "rose2021",
      "how_obtained": "abstract"
    },
    {
      "label": "fast progression",
      "rule": ">1.0 D/y",
      "source": "cho2012, shih1999",
      "how_obtained": "abstract"
    },
    {
      "label": "stable",
      "rule": "<=0.25 D change from the year before, 3 y running",
      "source": "comet5y_arvo",
      "how_obtained": "abstract"
    },
    {
      "label": "AL >=0.2 or >=0.3 mm/y",
      "rule": "often quoted cut-offs",
      "source": null,
      "how_obtained": "not found stated as a non-responder rule in a source read here, except the <0.30 mm ortho-k rule above"
    }
  ],
  "caution": [
    "A fast year on treatment does not show that the drug fails: the child might have been faster without it (brennan2025, abstract).",
    "Past progression is a poor reason to delay starting (same source).",
    "Fixed mm/y cut-offs mislabel young children; use growth relative to age-expected untreated growth with its interval.",
    "Spread of growth is about the same in treated and placebo arms in LAMP (SD 0.20-0.29 vs 0.22 mm), so most \"non-response\" is ordinary variation."
  ],
  "adherence": [
    {
      "trial": "ATOM-J",
      "value": "compliance 83.3% atropine, 85.7% placebo at 24 mo",
      "definition": "not in abstract",
      "source": "hieda2021",
      "how_obtained": "abstract"
    },
    {
      "trial": "MOSAIC2",
      "value": "81% adherent, 92% attended 36 mo",
      "definition": "not in abstract",
      "source": "loughman2025",
      "how_obtained": "abstract"
    },
    {
      "trial": "AMPP 0.5%",
      "value": "78% still using at 12 mo; 71.8% at 3 y",
      "definition": "continuing treatment (persistence)",
      "source": "polling2016, polling2020",
      "how_obtained": "abstract; full text table 2"
    },
    {
      "trial": "electronic cap pilot (atropine for amblyopia, n=7)",
      "value": "objective 88% (57-100) vs parent report 98% (90-100) at 4 weeks",
      "definition": "days opened / days prescribed",
      "source": "wang_mems",
      "how_obtained": "abstract",
      "note": "parents over-report; adherence fell with time"
    },
    {
      "trial": "AOK crossover",
      "value": null,
      "definition": "mean days a week by questionnaire",
      "source": "li_aok2024",
      "how_obtained": "methods excerpt"
    },
    {
      "trial": "lenslet spectacles",
      "value": ">=12 h every day: 0.41 mm saved vs 0.35 mm overall at 24 mo",
      "definition": "hours/day by questionnaire",
      "source": "bao2022_2y",
      "how_obtained": "abstract"
    },
    {
      "trial": "BLINK",
      "value": "mean wear 11.0 h/day; longer wear did not add effect",
      "definition": "hours/day",
      "source": "walline2020",
      "how_obtained": "secondary citation (trade news)"
    }
  ],
  "adherence_gap": "No trial read here gives a dose-response of AL on missed atropine nights. Do not scale the drug effect by % nights as if known; show both numbers.",
  "suggested_fields": [
    "nights prescribed",
    "nights reported",
    "bottle-derived nights (mL dispensed / drop volume / drops per night)",
    "method",
    "persistence = days from first to last supply"
  ]
}

export const definitionsProvenance: Provenance = {
  "id": "treatments/definitions",
  "title": "Progression, responder and adherence rules in use",
  "authors": "several sources: treatments/chia2016, treatments/zhang2024, treatments/zadnik2023, treatments/hansen2025, treatments/star_topline2025, treatments/star2026, treatments/ema_authorised2025, treatments/cho2017, treatments/orthok_rcrp2018, treatments/rose2021, treatments/comet5y_arvo, treatments/hieda2021, treatments/loughman2025, treatments/wang_mems, treatments/li_aok2024, treatments/bao2022_2y, treatments/walline2020",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "given in the row",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": null,
  "checkedOn": null,
  "sha256": "2e93f87036623241036f4bae302e7bafafc6015611cca41eccd06c3ef0c29e66",
  "supersedes": null,
  "notes": ""
}
