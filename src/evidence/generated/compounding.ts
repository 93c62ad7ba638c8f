// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const compounding = {
  "starting_product": {
    "strength_percent": 1,
    "mg_per_mL": 10,
    "typical": "atropine sulfate ophthalmic solution 1%, preserved",
    "composition": "hypromellose 2910, benzalkonium chloride 0.1 mg/mL, phosphates, edetate, pH set to 3.5-6.0",
    "source": "fda_nda206289",
    "how_obtained": "regulator review text"
  },
  "dilution_table": [
    {
      "target_percent": 0.01,
      "target_mg_per_mL": 0.1,
      "dilution_factor": 100,
      "mL_of_1pct_in_5mL": 0.05,
      "mL_of_1pct_in_10mL": 0.1,
      "ug_per_drop_at_uL": {
        "30": 3,
        "40": 4,
        "50": 5
      },
      "carried_over_benzalkonium_percent": 0.0001
    },
    {
      "target_percent": 0.02,
      "target_mg_per_mL": 0.2,
      "dilution_factor": 50,
      "mL_of_1pct_in_5mL": 0.1,
      "mL_of_1pct_in_10mL": 0.2,
      "ug_per_drop_at_uL": {
        "30": 6,
        "40": 8,
        "50": 10
      },
      "carried_over_benzalkonium_percent": 0.0002
    },
    {
      "target_percent": 0.025,
      "target_mg_per_mL": 0.25,
      "dilution_factor": 40,
      "mL_of_1pct_in_5mL": 0.125,
      "mL_of_1pct_in_10mL": 0.25,
      "ug_per_drop_at_uL": {
        "30": 7.5,
        "40": 10,
        "50": 12.5
      },
      "carried_over_benzalkonium_percent": 0.00025
    },
    {
      "target_percent": 0.05,
      "target_mg_per_mL": 0.5,
      "dilution_factor": 20,
      "mL_of_1pct_in_5mL": 0.25,
      "mL_of_1pct_in_10mL": 0.5,
      "ug_per_drop_at_uL": {
        "30": 15,
        "40": 20,
        "50": 25
      },
      "carried_over_benzalkonium_percent": 0.0005
    },
    {
      "target_percent": 0.1,
      "target_mg_per_mL": 1,
      "dilution_factor": 10,
      "mL_of_1pct_in_5mL": 0.5,
      "mL_of_1pct_in_10mL": 1,
      "ug_per_drop_at_uL": {
        "30": 30,
        "40": 40,
        "50": 50
      },
      "carried_over_benzalkonium_percent": 0.001
    }
  ],
  "dilution_note": "Arithmetic on nominal strength (percent w/v, sulfate salt). Not a compounding formula; the pharmacist owns the formula and the beyond-use date.",
  "preservative_note": "A 1:20 to 1:100 dilution with unpreserved diluent leaves 0.0005-0.0001% benzalkonium: treat as unpreserved. Derived from the composition above.",
  "stability": [
    {
      "study": "saito2019",
      "strengths_percent": [
        0.01,
        0.1,
        0.25,
        0.5
      ],
      "diluent": "0.9% sodium chloride, filtered, isolator, 5 mL polyethylene bottles",
      "storage": "5 and 25 C",
      "months": 6,
      "result": "within 5% of target, pH 5.88, 285 mOsm/kg, sterile",
      "how_obtained": "abstract",
      "note": "richdale2023 describes the same kind of data as within 3%"
    },
    {
      "study": "berton2020",
      "strengths_percent": [
        0.01
      ],
      "diluent": "two formulas, with and without preservative, LDPE multidose droppers",
      "months": 6,
      "result": ">=94.7% of start; tropic acid rose slowly; stable in use",
      "how_obtained": "abstract"
    },
    {
      "study": "sriin2022",
      "strengths_percent": [
        0.01
      ],
      "diluent": "artificial tears; balanced salt solution",
      "result": "2-8 C: 90-110% for 6 mo; 25 C: below 90% at 4 mo; opened: 90-110% for 30 d at both",
      "how_obtained": "abstract"
    },
    {
      "study": "bmcresnotes2022",
      "strengths_percent": [
        0.01
      ],
      "diluent": "injection diluted in saline or lubricant",
      "months": 3,
      "result": "like fresh at week 12, no growth",
      "how_obtained": "abstract"
    }
  ],
  "chemistry": "Atropine hydrolyses to tropic acid (inactive); slower in acid. Neutral diluents shorten life, most at low strength and room temperature (richdale2023 introduction; sriin2022).",
  "measured_quality": {
    "source": "richdale2023",
    "how_obtained": "abstract",
    "samples": 24,
    "pharmacies": 9,
    "label_claim_percent": {
      "median": 93.3,
      "min": 70.4,
      "max": 104.1
    },
    "below_90_percent_of_samples": 25,
    "pH": {
      "median": 7.1,
      "min": 5.5,
      "max": 7.8
    },
    "beyond_use_days": {
      "median": 91,
      "min": 7,
      "max": 175
    },
    "bottle_mL": {
      "median": 10,
      "min": 3.5,
      "max": 15
    },
    "clear_bottle": "8 of 9 pharmacies",
    "storage_label": "one third each: fridge, room, cool dark dry",
    "verified_again": true
  },
  "pharmacy_survey": {
    "source": "compounding_survey_arvo2022",
    "how_obtained": "abstract",
    "pharmacies": 26,
    "start_from": {
      "1% solution": 54,
      "powder": 34,
      "either": 8
    },
    "added": {
      "artificial tears only": 42,
      "saline only": 25,
      "mixture": 25
    },
    "bottle_mL_median": 5,
    "beyond_use_days_median": 60,
    "beyond_use_days_iqr": [
      45,
      180
    ],
    "refrigerate_percent": 39,
    "verified_again": true,
    "caveat": "fridge = 7 of 18 that answered; 4% (start) and 8% (additives) undisclosed; 5 mL is given as the most frequent size (interquartile range 3.5-10)"
  },
  "usp": {
    "monograph": {
      "name": "Atropine Sulfate Ophthalmic Solution",
      "assay_percent_of_label": [
        93,
        107
      ],
      "pH": [
        3.5,
        6
      ],
      "package": "tight containers",
      "how_obtained": "copies of USP 28 and a 2025-edition page (assay in both; pH in USP 28)",
      "correction": "The often quoted 90-110% is for the ophthalmic OINTMENT and tablets, and is the target used by richdale2023; the solution is 93-107%.",
      "verified_again": true,
      "verified_again_scope": "assay, pH, container (USP 28 copy); ointment and tablets 90-110% (2025 and USP 29 copies)",
      "caveat": "2025 text of the solution not re-seen",
      "impurity_limits_proposed_percent": {
        "tropic_acid": 7,
        "atropic_acid": 1,
        "apoatropine": 1,
        "any_other_single": 1,
        "total": 7,
        "source": "usp_notice2018",
        "how_obtained": "standard body notice",
        "note": "notice of intent, target July 2019; whether official not read"
      }
    },
    "strength_rule": "keep within monograph limits, or within 10% if none, until the beyond-use date (older text of <797>, read)",
    "bud_table": [
      {
        "category": 1,
        "condition": "any",
        "room": "12 h",
        "fridge": "24 h",
        "freezer": null,
        "how_obtained": "secondary citation (pharmacy publisher explainer of the 2023 chapter)"
      }
    ],
    "in_use": [],
    "bud_rule": "The shortest of: table limit, shown chemical stability, container limit. The table caps sterility; it does not prove stability.",
    "software_advice": "Store BUD as data given by the pharmacy; only warn when it is longer than the table row for the declared category. Keep the table editable."
  },
  "drops": {
    "volume_uL_range": [
      33.8,
      63.4
    ],
    "volume_source": "german1999",
    "volume_how": "abstract",
    "drops_per_mL_range": [
      20.9,
      40.8
    ],
    "drops_source": "moore2017",
    "drops_how": "abstract",
    "note": "glaucoma and generic bottles, not compounded atropine; angle, tip and viscosity matter; no legal standard for drop size",
    "verified_again": true,
    "bottles_tested": 19,
    "repeatability_uL": {
      "mean": 5.07,
      "range": [
        2.24,
        10.76
      ]
    },
    "angle_note": "under 60 degrees gives smaller drops",
    "nights_from_5mL_two_eyes": {
      "german1999": [
        39,
        74
      ],
      "moore2017": [
        52,
        102
      ],
      "how_obtained": "arithmetic, no waste"
    }
  },
  "regulatory": {
    "US": {
      "status": "no drop approved for slowing myopia; use is off-label and compounded; a 0.01% application received a complete response letter in October 2025 although its primary endpoint was met",
      "sources": [
        "fda_crl2025",
        "richdale2023"
      ],
      "how_obtained": "secondary citation (trade news); journal text"
    },
    "EU": {
      "status": "one 0.1 mg/mL (0.01%) product: positive opinion 27 March 2025, later authorised by the Commission; start age 3-14, >=0.5 D/y, -0.5 to -6.0 D; started by an ophthalmologist or qualified professional; usual effects photophobia, irritation, blur. A second application resting on the 3-year 0.01/0.02% trial: refusal recommended 22 May 2025, confirmed 18 September 2025.",
      "sources": [
        "ema_authorised2025",
        "ema_refused2025"
      ],
      "how_obtained": "regulator pages; authorisation via trade news"
    },
    "Japan": {
      "status": "a 0.025% product approved and launched in April 2025",
      "sources": [
        "star_news2025"
      ],
      "how_obtained": "secondary citation (trade news)"
    },
    "note": "0.05% and 0.025% stay off-label in the EU; check national rules on compounding where an authorised 0.01% exists (own inference)."
  }
}

export const compoundingProvenance: Provenance = {
  "id": "treatments/compounding",
  "title": "Dilution, stability, strength found, drops, beyond-use and regulation",
  "authors": "several sources: treatments/fda_nda206289, treatments/richdale2023, treatments/compounding_survey_arvo2022, treatments/usp_notice2018, treatments/fda_crl2025, treatments/ema_authorised2025, treatments/ema_refused2025, treatments/star_news2025",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "given in the key",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": "second search from scratch by this project, rows marked verified_again",
  "checkedOn": null,
  "sha256": "c8edaf6c95248f31bd2f49d570b73a322040ceab0b7434d65a137591abe6e4b1",
  "supersedes": null,
  "notes": ""
}
