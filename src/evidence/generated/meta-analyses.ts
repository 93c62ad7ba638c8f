// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const metaAnalyses = [
  {
    "id": "ha2022",
    "scope": "8 atropine concentrations, 16 RCTs, 3272 children, per year vs control",
    "how_obtained": "abstract",
    "rows": [
      {
        "concentration_percent": 1,
        "dSER": 0.81,
        "dSER_ci95": [
          0.58,
          1.04
        ],
        "dAL": -0.35,
        "dAL_ci95": [
          -0.46,
          -0.25
        ]
      },
      {
        "concentration_percent": 0.5,
        "dSER": 0.7,
        "dSER_ci95": [
          0.4,
          1
        ],
        "dAL": -0.23,
        "dAL_ci95": [
          -0.38,
          -0.07
        ]
      }
    ]
  },
  {
    "id": "bayes_nma2024",
    "scope": "Bayesian NMA, 28 RCTs, 6608 children, change vs placebo (mixed durations)",
    "how_obtained": "abstract",
    "rows": [
      {
        "concentration_percent": 0.0025,
        "dSER": -0.006,
        "dSER_cri95": [
          -0.269,
          0.256
        ],
        "dAL": -0.048,
        "dAL_cri95": [
          -0.182,
          0.085
        ]
      },
      {
        "concentration_percent": 0.005,
        "dSER": 0.216,
        "dSER_cri95": [
          -0.078,
          0.508
        ],
        "dAL": -0.078,
        "dAL_cri95": [
          -0.222,
          0.066
        ]
      },
      {
        "concentration_percent": 0.01,
        "dSER": 0.146,
        "dSER_cri95": [
          0.094,
          0.199
        ],
        "dAL": -0.095,
        "dAL_cri95": [
          -0.13,
          -0.06
        ]
      },
      {
        "concentration_percent": 0.02,
        "dSER": 0.167,
        "dSER_cri95": [
          0.039,
          0.297
        ],
        "dAL": -0.096,
        "dAL_cri95": [
          -0.183,
          -0.009
        ]
      },
      {
        "concentration_percent": 0.025,
        "dSER": 0.201,
        "dSER_cri95": [
          0.064,
          0.341
        ],
        "dAL": -0.083,
        "dAL_cri95": [
          -0.164,
          -0.004
        ]
      },
      {
        "concentration_percent": 0.05,
        "dSER": 0.344,
        "dSER_cri95": [
          0.251,
          0.44
        ],
        "dAL": -0.114,
        "dAL_cri95": [
          -0.176,
          -0.056
        ]
      },
      {
        "concentration_percent": 0.1,
        "dSER": 0.255,
        "dSER_cri95": [
          0.114,
          0.396
        ],
        "dAL": -0.134,
        "dAL_cri95": [
          -0.198,
          -0.032
        ]
      },
      {
        "concentration_percent": 0.25,
        "dSER": 0.296,
        "dSER_cri95": [
          0.14,
          0.452
        ],
        "dAL": -0.174,
        "dAL_cri95": [
          -0.315,
          -0.061
        ]
      },
      {
        "concentration_percent": 0.5,
        "dSER": 0.331,
        "dSER_cri95": [
          0.215,
          0.447
        ],
        "dAL": -0.184,
        "dAL_cri95": [
          -0.291,
          -0.073
        ]
      },
      {
        "concentration_percent": 1,
        "dSER": 0.286,
        "dSER_cri95": [
          0.195,
          0.337
        ],
        "dAL": -0.171,
        "dAL_cri95": [
          -0.203,
          -0.097
        ]
      }
    ],
    "note": "photophobia risk with 1% about 17 times that with 0.01%"
  },
  {
    "id": "hou2023",
    "scope": "44 studies, per year",
    "how_obtained": "abstract",
    "rows": [
      {
        "band": "0.5-1%",
        "dSER": 0.73,
        "dAL": -0.26
      },
      {
        "band": "0.1-0.25%",
        "dSER": 0.65,
        "dAL": -0.37
      },
      {
        "band": "0.005-0.05%",
        "dSER": 0.35,
        "dAL": -0.11
      }
    ]
  },
  {
    "id": "gan2022",
    "scope": "12 RCTs + 15 cohorts, per year",
    "how_obtained": "abstract",
    "rows": [
      {
        "band": "0.5-1%",
        "dSER": 0.73
      },
      {
        "band": ">0.01 to <0.5%",
        "dSER": 0.67
      },
      {
        "band": "0.01%",
        "dSER": 0.35
      },
      {
        "band": "0.01% after removing extreme studies",
        "dSER": 0.23,
        "dAL": -0.09
      }
    ]
  },
  {
    "id": "fphar2024",
    "scope": "39 studies, 7712 children, Asia, per year",
    "how_obtained": "abstract",
    "rows": [
      {
        "concentration_percent": 0.05,
        "dSER": 0.62
      },
      {
        "concentration_percent": 1,
        "dSER": 0.56,
        "dAL": -0.43
      }
    ]
  },
  {
    "id": "zhao2019",
    "scope": "0.01% vs control, 7 RCTs, 1079",
    "how_obtained": "abstract",
    "rows": [
      {
        "concentration_percent": 0.01,
        "dAL": -0.12,
        "dAL_ci95": [
          -0.19,
          -0.06
        ],
        "note": "axial growth; the same abstract also gives -0.14 (-0.25 to -0.03) for change in axial length, low certainty"
      }
    ]
  },
  {
    "id": "asia_meta2023",
    "scope": "15 RCTs, 2268 Asian children, any dose <1%",
    "how_obtained": "abstract",
    "rows": [
      {
        "dSER": 0.39,
        "dSER_ci95": [
          0.23,
          0.54
        ],
        "dAL": -0.15,
        "dAL_ci95": [
          -0.19,
          -0.1
        ]
      }
    ]
  },
  {
    "id": "prousali2019",
    "scope": "overview; 2-year AL change vs control",
    "how_obtained": "full text table 5",
    "rows": [
      {
        "treatment": "1% atropine",
        "dAL": -0.36,
        "dAL_ci95": [
          -0.43,
          -0.29
        ],
        "subjects": 400
      },
      {
        "treatment": "orthokeratology",
        "dAL": -0.27,
        "dAL_ci95": [
          -0.31,
          -0.23
        ],
        "subjects": 663,
        "studies": 11,
        "I2": 0
      },
      {
        "treatment": "bifocal spectacles",
        "dAL": -0.2,
        "dAL_ci95": [
          -0.31,
          -0.09
        ],
        "subjects": 89
      },
      {
        "treatment": "peripheral-add multifocal soft lenses",
        "dAL": -0.13,
        "dAL_ci95": [
          -0.2,
          -0.06
        ],
        "subjects": 99
      },
      {
        "treatment": "concentric-ring bifocal soft lenses",
        "dAL": -0.12,
        "dAL_ci95": [
          -0.2,
          -0.04
        ],
        "subjects": 128
      },
      {
        "treatment": "progressive addition spectacles",
        "dAL": -0.1,
        "dAL_ci95": [
          -0.2,
          0
        ],
        "subjects": 791,
        "I2": 78
      },
      {
        "treatment": "undercorrection",
        "dAL": 0.06,
        "dAL_ci95": [
          -0.04,
          0.16
        ],
        "subjects": 94,
        "note": "harm direction"
      }
    ]
  },
  {
    "id": "fpubh2023",
    "scope": "12 RCTs 2019-2021, corrigendum",
    "how_obtained": "abstract",
    "rows": [
      {
        "treatment": "highly aspherical lenslet spectacles (2 y)",
        "dSER": 0.8,
        "dAL": -0.35
      },
      {
        "treatment": "multi-segment spectacles (2 y)",
        "dSER": 0.44,
        "dAL": -0.34
      },
      {
        "treatment": "dual-focus soft lens (3 y)",
        "dSER": 0.66,
        "dAL": -0.28
      },
      {
        "treatment": "high-add multifocal soft lens (3 y)",
        "dSER": 0.45,
        "dAL": -0.24,
        "dAL_ci95": [
          -0.33,
          -0.15
        ]
      },
      {
        "treatment": "atropine 0.05% (1 y)",
        "dSER": 0.54,
        "dSER_ci95": [
          0.38,
          0.7
        ],
        "dAL": -0.21,
        "dAL_ci95": [
          -0.28,
          -0.14
        ]
      },
      {
        "treatment": "orthokeratology",
        "dAL": -0.24,
        "dAL_ci95": [
          -0.33,
          -0.15
        ]
      }
    ],
    "note": "very narrow CIs in this paper for some rows treat SE as SD; do not use them"
  },
  {
    "id": "wen2015",
    "scope": "orthokeratology, 8 studies, 769",
    "how_obtained": "abstract",
    "rows": [
      {
        "treatment": "orthokeratology 2 y",
        "dAL": -0.25,
        "dAL_ci95": [
          -0.3,
          -0.21
        ],
        "percent_control_by_month": {
          "6": 55,
          "12": 51,
          "18": 51,
          "24": 41
        }
      }
    ]
  },
  {
    "id": "gong2017",
    "scope": "atropine dose and adverse effects",
    "how_obtained": "not found",
    "rows": []
  },
  {
    "id": "moon_shin",
    "scope": "Korean 0.01/0.025/0.05% dose comparison",
    "how_obtained": "not found",
    "rows": []
  }
]

export const metaAnalysesProvenance: Provenance = {
  "id": "treatments/meta-analyses",
  "title": "Pooled effects by dose and by class",
  "authors": "several sources: treatments/ha2022, treatments/bayes_nma2024, treatments/hou2023, treatments/gan2022, treatments/fphar2024, treatments/zhao2019, treatments/asia_meta2023, treatments/prousali2019, treatments/fpubh2023, treatments/lawrenson2023, treatments/wen2015, treatments/gong2017, treatments/moon_shin",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "[diop]; mm",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": null,
  "checkedOn": null,
  "sha256": "bc8aac16541d9dc0f55bd17f563d95e3260af45d62cd221666eb9bf6e7590079",
  "supersedes": null,
  "notes": ""
}
