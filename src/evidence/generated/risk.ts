// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const risk = {
  "meta": {
    "title": "Myopia definitions and long-term risk",
    "warning": "Odds ratios are not absolute risks. Cumulative risks come from a Dutch population of European descent born mostly before 1960 plus a myopia clinic series; do not read them as a forecast for a given child. Always show source, population and age."
  },
  "definitions": [
    {
      "term": "myopia",
      "rule": "SER <= -0.50 D (relaxed accommodation)",
      "low": null,
      "high": -0.5,
      "unit": "D",
      "source_id": "IMI-DEF-2019",
      "how_obtained": "abstract",
      "note": "The paper itself warns of classification bias near the cut-off. A 2024 erratum to the paper exists; content not seen.",
      "verified_again": true
    },
    {
      "term": "high myopia (IMI)",
      "rule": "SER <= -6.00 D",
      "high": -6,
      "unit": "D",
      "source_id": "IMI-DEF-2019",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "term": "high myopia (WHO)",
      "rule": "SER <= -5.00 D",
      "high": -5,
      "unit": "D",
      "source_id": "WU-2019",
      "how_obtained": "full-text excerpt quoting WHO report",
      "note": "Conflicts with IMI: make the definition set a setting and store which was used."
    },
    {
      "term": "pre-myopia (IMI)",
      "rule": "-0.50 < SER <= +0.75 D in a child with other risk factors",
      "low": -0.5,
      "high": 0.75,
      "unit": "D",
      "source_id": "IMI-DEF-2019",
      "how_obtained": "secondary: a professional-press answer quotes both bounds from the 2019 paper; a 2025 preprint on pre-myopic Chinese children enrols on the same bounds; the paper's own text was not read",
      "secondary_source_id": "PREMYOPIA-SEC",
      "verified_again": true,
      "note": "Numeric bounds confirmed second-hand. The definition also needs age and other measurable risk factors, so refraction alone does not make a child pre-myopic."
    },
    {
      "term": "low / moderate / high bands used in the 2020 meta-analysis",
      "rule": "low: -3.00 < SER < -0.50; moderate: -6.00 < SER <= -3.00; high: SER <= -6.00 D",
      "unit": "D",
      "source_id": "HAARMAN-2020",
      "how_obtained": "abstract",
      "note": "'Low' here differs from IMI 'low'. Never join odds ratios to the IMI bands.",
      "verified_again": true
    },
    {
      "term": "pathologic myopia",
      "rule": "posterior staphyloma, or myopic maculopathy of category 2 (diffuse atrophy) or worse",
      "source_id": "IMI-PATHMYOPIA-2021",
      "how_obtained": "abstract",
      "note": "Structural, not a dioptre threshold; can occur without high myopia."
    },
    {
      "term": "myopic maculopathy categories",
      "rule": "0 none; 1 tessellated fundus; 2 diffuse chorioretinal atrophy; 3 patchy chorioretinal atrophy; 4 macular atrophy; plus: lacquer cracks, myopic choroidal neovascularisation, Fuchs spot",
      "source_id": "IMI-DIGEST-2021",
      "how_obtained": "full-text table 2"
    },
    {
      "term": "secondary, axial, refractive myopia",
      "rule": "terms kept by the IMI classification; no numbers",
      "source_id": "IMI-DEF-2019",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "term": "long eye used as high-myopia proxy",
      "rule": "AL >= 26 mm (26.5 mm in one study of pseudophakic eyes)",
      "unit": "mm",
      "source_id": "TIDEMAN-2016",
      "how_obtained": "secondary (journal issue summary); 26.5 mm in a full-text excerpt of another IOVS paper; >26 mm also used as a definition in the introduction of PMC8342297",
      "verified_again": true
    }
  ],
  "visual_impairment_cumulative": [
    {
      "predictor": "axial length",
      "category": "24 to <26 mm",
      "age_years": 75,
      "risk_percent": 3.8,
      "se_percent": null,
      "source_id": "TIDEMAN-2016",
      "how_obtained": "secondary: professional news summary of the paper",
      "verified_again": true,
      "verified_note": "same professional news summary read again; no second source"
    },
    {
      "predictor": "axial length",
      "category": ">=30 mm",
      "age_years": 75,
      "risk_percent": 90,
      "se_percent": null,
      "source_id": "TIDEMAN-2016",
      "how_obtained": "secondary: professional news summary of the paper",
      "verified_again": true,
      "verified_note": "same professional news summary read again; no second source"
    },
    {
      "predictor": "SER",
      "category": "<= -6.00 D",
      "age_years": 60,
      "risk_percent": 5.7,
      "source_id": "TIDEMAN-2016",
      "how_obtained": "secondary: professional news summary",
      "verified_again": true,
      "note": "The news summary words the group as aged 60 or younger.",
      "verified_note": "same professional news summary read again; no second source"
    },
    {
      "predictor": "SER",
      "category": "<= -6.00 D",
      "age_years": 75,
      "risk_percent": 39,
      "source_id": "TIDEMAN-2016",
      "how_obtained": "secondary: professional news summary",
      "verified_again": true,
      "verified_note": "same professional news summary read again; no second source"
    }
  ],
  "tideman_study": {
    "n_total": 15693,
    "n_with_SE": 15404,
    "n_with_AL": 9074,
    "al_range_mm": [
      15.3,
      37.8
    ],
    "n_al_ge_26": 819,
    "n_se_le_minus6": 796,
    "ser_range_D": [
      -25,
      14
    ],
    "population": "Dutch, European descent (Rotterdam Study I-III, Erasmus Rucphen Family, Myopia Study)",
    "how_obtained": "abstract (first half) + news summary",
    "table2_odds_ratios": "NOT OBTAINED - needs the paper",
    "verified_again": true
  },
  "odds_ratios_by_degree": {
    "source_id": "HAARMAN-2020",
    "how_obtained": "abstract",
    "reference_group": "no myopia / emmetropia as defined per study",
    "rows": [
      {
        "outcome": "myopic macular degeneration",
        "low": [
          13.57,
          6.18,
          29.79
        ],
        "moderate": [
          72.74,
          33.18,
          159.48
        ],
        "high": [
          845.08,
          230.05,
          3104.34
        ],
        "verified_again": true
      },
      {
        "outcome": "retinal detachment",
        "low": [
          3.15,
          1.92,
          5.17
        ],
        "moderate": [
          8.74,
          7.28,
          10.5
        ],
        "high": [
          12.62,
          6.65,
          23.94
        ],
        "note": "A third-party summary gives 8.69 for moderate; the abstract value 8.74 is used.",
        "verified_again": true
      },
      {
        "outcome": "posterior subcapsular cataract",
        "low": [
          1.56,
          1.32,
          1.84
        ],
        "moderate": [
          2.55,
          1.98,
          3.28
        ],
        "high": [
          4.55,
          2.66,
          7.75
        ],
        "verified_again": true
      },
      {
        "outcome": "nuclear cataract",
        "low": [
          1.79,
          1.08,
          2.97
        ],
        "moderate": [
          2.39,
          1.03,
          5.55
        ],
        "high": [
          2.87,
          1.43,
          5.73
        ],
        "verified_again": true
      },
      {
        "outcome": "open angle glaucoma",
        "low": [
          1.59,
          1.33,
          1.91
        ],
        "moderate_or_high": [
          2.92,
          1.89,
          4.52
        ],
        "verified_again": true
      },
      {
        "outcome": "open angle glaucoma, any myopia",
        "any": [
          1.95,
          null,
          null
        ],
        "how_obtained": "secondary (research summary page)",
        "verified_again": true
      },
      {
        "outcome": "visual impairment, age over 60",
        "low": [
          1.71,
          1.07,
          2.74
        ],
        "moderate": [
          5.54,
          3.12,
          9.85
        ],
        "high": [
          87.63,
          34.5,
          222.58
        ],
        "verified_again": true
      }
    ],
    "format": "[OR, 95% CI low, 95% CI high]"
  },
  "per_dioptre": [
    {
      "outcome": "myopic maculopathy prevalence",
      "ratio_per_D": 1.67,
      "reduction_if_1D_less_percent": 40,
      "source_id": "BULLIMORE-2019",
      "how_obtained": "abstract",
      "note": "Five population studies, about 21,000 people; same relative benefit at any starting level.",
      "verified_again": true
    },
    {
      "outcome": "myopic maculopathy risk",
      "ratio_per_D": 1.58,
      "source_id": "BULLIMORE-2021",
      "how_obtained": "abstract",
      "note": "Final abstract 58%; accepted manuscript 57%.",
      "verified_again": true
    },
    {
      "outcome": "open angle glaucoma risk",
      "ratio_per_D": 1.2,
      "source_id": "BULLIMORE-2021",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "outcome": "posterior subcapsular cataract risk",
      "ratio_per_D": 1.21,
      "source_id": "BULLIMORE-2021",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "outcome": "retinal detachment risk",
      "ratio_per_D": 1.3,
      "source_id": "BULLIMORE-2021",
      "how_obtained": "abstract",
      "verified_again": true
    }
  ],
  "risk_benefit": {
    "source_id": "BULLIMORE-2021",
    "how_obtained": "abstract",
    "years_of_visual_impairment": [
      {
        "ser_D": -3,
        "mean_years": 4.42,
        "years_saved_by_1D": 0.74
      },
      {
        "ser_D": -8,
        "mean_years": 9.56,
        "years_saved_by_1D": 1.21
      }
    ],
    "nnt_to_prevent_5_years_VI": [
      4.1,
      6.8
    ],
    "microbial_keratitis_per_10000_patient_years": [
      1,
      25
    ],
    "fraction_with_vision_loss": 0.15,
    "patients_exposed_5y_to_cause_5_years_loss": [
      38,
      945
    ],
    "loss_statement": "fewer than 1 in 38 would lose vision",
    "note": "Keratitis figures concern contact lenses, not drops. An accepted-manuscript copy prints 57% (maculopathy) and 1.22 years (-8 D); the final abstract has 58% and 1.21.",
    "verified_again": true
  },
  "retinal_detachment": [
    {
      "group": "no myopia, phakic",
      "rate_per_100k_py": 22.44,
      "source_id": "LUDWIG-2023",
      "how_obtained": "abstract"
    },
    {
      "group": "myopia, phakic",
      "rate_per_100k_py": 67.51,
      "ratio_to_none": "about 3",
      "source_id": "LUDWIG-2023",
      "how_obtained": "abstract"
    },
    {
      "group": "high myopia, phakic",
      "rate_per_100k_py": 868.83,
      "ratio_to_none": "about 39",
      "source_id": "LUDWIG-2023",
      "how_obtained": "abstract",
      "note": "US insurance claims, coded diagnoses; high-myopia coding favours sick eyes, so treat as an upper figure. The paper warns that the ratio depends on follow-up rules."
    },
    {
      "group": "-1 to -3 D",
      "relative_risk": 4,
      "source_id": "EDCCS-1993",
      "how_obtained": "abstract"
    },
    {
      "group": "worse than -3 D",
      "relative_risk": 10,
      "source_id": "EDCCS-1993",
      "how_obtained": "abstract"
    },
    {
      "group": "by axial length (mm)",
      "value": null,
      "how_obtained": "not found",
      "note": "One paper states that risk rises in proportion to axial length but gives no table in the readable part."
    }
  ],
  "other": [
    {
      "item": "any of six retinal diseases, severe myopia v none",
      "odds_ratio": 8.15,
      "source_id": "ARNAL-2025",
      "how_obtained": "secondary summary",
      "verified_again": true
    },
    {
      "item": "share of children <=5 y with SER <= -6 D and mendelian or secondary myopia",
      "percent": 25,
      "n": 91,
      "source_id": "UKPEDHIGH-2024",
      "how_obtained": "abstract"
    },
    {
      "item": "high myopia prevalence in pre-school children",
      "text": "under 1%",
      "source_id": "IMI-PEDHIGH-2023",
      "how_obtained": "abstract"
    },
    {
      "item": "axial growth in adults by length",
      "rows": [
        {
          "al": "26 to <28 mm",
          "mm_per_year": 0.011
        },
        {
          "al": ">=28 mm",
          "mm_per_year": 0.035
        }
      ],
      "source": "PMC8342297 (clinic series, mean age 47)",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "item": "suggested adult screening ages (severe myopia age 30; -6 to -10 D age 50)",
      "how_obtained": "seen only on an industry-linked news page; excluded",
      "value": null
    }
  ]
}

export const riskProvenance: Provenance = {
  "id": "clinical/risk",
  "title": "Myopia definitions and long-term risk",
  "authors": "several sources: clinical/IMI-DEF-2019, clinical/WU-2019, clinical/HAARMAN-2020, clinical/IMI-PATHMYOPIA-2021, clinical/IMI-DIGEST-2021, clinical/TIDEMAN-2016, clinical/BULLIMORE-2019, clinical/BULLIMORE-2021, clinical/LUDWIG-2023, clinical/EDCCS-1993, clinical/ARNAL-2025, clinical/UKPEDHIGH-2024, clinical/IMI-PEDHIGH-2023",
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
  "checkedBy": "second search from scratch by this project, rows marked verified_again",
  "checkedOn": null,
  "sha256": "c8a62c2ee4537a07b80dd88d9f6ade7d042a3e50c9f67b23e00f397a8ac6003d",
  "supersedes": null,
  "notes": ""
}
