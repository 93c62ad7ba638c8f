// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const rebound = {
  "practical": [
    "Check AL and refraction 6 and 12 months after stopping; expect the larger jump at higher strength and younger age.",
    "Working threshold suggested here (not from a guideline): flag when the first 6 months off exceed the age-expected untreated half-year growth by more than twice the device repeatability.",
    "A fair rebound test compares with age-expected UNTREATED growth, not with growth on treatment: faster than on treatment is expected in anyone for whom the drug worked."
  ],
  "entries": [
    {
      "trial": "ATOM1",
      "concentration_percent": 1,
      "treated_months": 24,
      "off_months": 12,
      "dSER_off": -1.14,
      "dSER_off_sd": 0.8,
      "control_dSER_off": -0.38,
      "control_dSER_off_sd": 0.39,
      "source": "tong2009",
      "how_obtained": "abstract (D, SER at 36 months); from memory, unverified (3-year AL totals)",
      "SER_at_36": -4.29,
      "SER_at_36_sd": 1.67,
      "control_SER_at_36": -5.22,
      "control_SER_at_36_sd": 1.38,
      "verified_again": true,
      "verified_again_scope": "D values"
    },
    {
      "trial": "ATOM2",
      "concentration_percent": 0.5,
      "treated_months": 24,
      "off_months": 12,
      "retreated_percent": 68,
      "retreat_rule": ">=0.50 D in at least one eye during the 12 mo off",
      "source": "chia2014",
      "source_retreated": "chia2016",
      "how_obtained": "from memory, unverified for D and mm; abstract for the retreated percentage"
    },
    {
      "trial": "ATOM2",
      "concentration_percent": 0.1,
      "treated_months": 24,
      "off_months": 12,
      "retreated_percent": 59,
      "retreat_rule": ">=0.50 D in at least one eye during the 12 mo off",
      "source": "chia2014",
      "source_retreated": "chia2016",
      "how_obtained": "from memory, unverified for D and mm; abstract for the retreated percentage"
    },
    {
      "trial": "ATOM2",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 12,
      "retreated_percent": 24,
      "retreat_rule": ">=0.50 D in at least one eye during the 12 mo off",
      "source": "chia2014",
      "source_retreated": "chia2016",
      "how_obtained": "from memory, unverified for D and mm; abstract for the retreated percentage"
    },
    {
      "trial": "LAMP phase 3",
      "concentration_percent": 0.05,
      "treated_months": 24,
      "off_months": 12,
      "dSER_off": -0.68,
      "dAL_off": 0.33,
      "continued_dSER": -0.28,
      "continued_dAL": 0.17,
      "excess_dSER": -0.4,
      "excess_dAL": 0.16,
      "p_SER": "<0.001",
      "p_AL": "<0.001",
      "source": "yam2022",
      "how_obtained": "abstract",
      "reading": "excess over continuing is loss of effect plus rebound; the two cannot be separated without an untreated arm",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 3",
      "concentration_percent": 0.025,
      "treated_months": 24,
      "off_months": 12,
      "dSER_off": -0.57,
      "dAL_off": 0.29,
      "continued_dSER": -0.35,
      "continued_dAL": 0.2,
      "excess_dSER": -0.22,
      "excess_dAL": 0.09,
      "p_SER": "0.004",
      "p_AL": "0.001",
      "source": "yam2022",
      "how_obtained": "abstract",
      "reading": "excess over continuing is loss of effect plus rebound; the two cannot be separated without an untreated arm",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 3",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 12,
      "dSER_off": -0.56,
      "dAL_off": 0.29,
      "continued_dSER": -0.38,
      "continued_dAL": 0.24,
      "excess_dSER": -0.18,
      "excess_dAL": 0.05,
      "p_SER": "0.04",
      "p_AL": "0.13",
      "source": "yam2022",
      "how_obtained": "abstract",
      "reading": "excess over continuing is loss of effect plus rebound; the two cannot be separated without an untreated arm",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 3",
      "finding": "Smaller rebound with older age and with lower concentration (both SER and AL, P<0.001); authors call the concentration difference clinically insignificant (P=0.15).",
      "source": "yam2022",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 4",
      "finding": "After stopping, 94 of 107 (87.9%) met the retreatment rule (>=0.5 D in a year) over years 4-5; no difference by starting concentration (P=0.76).",
      "retreated_percent": 87.9,
      "source": "zhang2024",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "Chinese 0.05% RCT",
      "concentration_percent": 0.05,
      "treated_months": 24,
      "off_months": 12,
      "dSER_off": -0.5,
      "dSER_off_sd": 0.41,
      "control_dSER_off": -0.72,
      "control_dSER_off_sd": 0.6,
      "dAL_off": 0.31,
      "dAL_off_sd": 0.25,
      "control_dAL_off": 0.28,
      "control_dAL_off_sd": 0.26,
      "source": "ijo2023",
      "how_obtained": "abstract",
      "reading": "no clear AL rebound vs concurrent ex-placebo (0.03 mm, P>0.05)",
      "verified_again": true
    },
    {
      "trial": "ATOM-J",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 12,
      "n": 51,
      "diff_dSER_off": -0.13,
      "diff_dSER_ci95": [
        -0.35,
        0.1
      ],
      "diff_dAL_off": -0.02,
      "diff_dAL_ci95": [
        -0.12,
        0.09
      ],
      "source": "atomj_washout2023",
      "how_obtained": "abstract",
      "reading": "no rebound",
      "verified_again": true
    },
    {
      "trial": "ATOM-J",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 1,
      "n": 149,
      "diff_dSER_off": -0.06,
      "diff_dSER_ci95": [
        -0.21,
        0.08
      ],
      "diff_dAL_off": 0.02,
      "diff_dAL_ci95": [
        -0.05,
        0.08
      ],
      "source": "atomj_washout2023",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "WA-ATOM",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 12,
      "n_randomised": 153,
      "dSER_off": -0.41,
      "dSER_off_ci95": [
        -0.46,
        -0.36
      ],
      "control_dSER_off": -0.28,
      "control_dSER_off_ci95": [
        -0.33,
        -0.22
      ],
      "p_SER": "0.016",
      "dAL_off": 0.2,
      "dAL_off_ci95": [
        0.18,
        0.21
      ],
      "control_dAL_off": 0.13,
      "control_dAL_off_ci95": [
        0.11,
        0.16
      ],
      "p_AL": "<0.001",
      "excess_dAL": 0.07,
      "source": "waatom_washout2024",
      "how_obtained": "abstract",
      "reading": "faster than concurrent ex-placebo after stopping 0.01%: a rebound at 0.01%, against ATOM-J; totals over 3 y similar in both arms",
      "caveat": "row added in the second check; the abstract prints the four intervals against the wrong means, matched here by which interval holds which mean"
    },
    {
      "trial": "APP (Denmark)",
      "concentration_percent": 0.01,
      "finding": "At 36 mo (12 mo off) no difference between arms; the 0.1% to 0.01% step at 6 mo behaved like a rebound.",
      "source": "hansen2025",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "CHAMP stage 2",
      "concentration_percent": 0.01,
      "treated_months": 36,
      "off_months": 12,
      "n_continue": 38,
      "n_stop": 39,
      "finding": "reported as no rebound on switching to placebo; numbers not read",
      "source": "champ_stage2_arvo2024",
      "how_obtained": "secondary citation (meeting news)"
    },
    {
      "trial": "MOSAIC2",
      "concentration_percent": 0.01,
      "finding": "stopping or tapering 0.01% after 2 y showed no rebound; see trials.json for differences against 0.05%",
      "source": "loughman2025",
      "how_obtained": "abstract"
    },
    {
      "trial": "Gradual vs prompt stop of 0.01%",
      "concentration_percent": 0.01,
      "treated_months": 24,
      "off_months": 12,
      "gradual": {
        "n": 25,
        "dSER": -0.21,
        "dSER_sd": 0.24,
        "dAL": 0.15,
        "dAL_sd": 0.1
      },
      "prompt": {
        "n": 25,
        "dSER": -0.43,
        "dSER_sd": 0.26,
        "dAL": 0.25,
        "dAL_sd": 0.18
      },
      "adjusted_p_AL": 0.682,
      "adjusted_p_SER": 0.541,
      "taper": "one day a week fewer each month until none",
      "source": "erdinest2025",
      "how_obtained": "abstract",
      "reading": "retrospective, matched; mixed model found no difference: taper NOT shown to help at 0.01%",
      "verified_again": true
    },
    {
      "trial": "Rebound review (RCTs)",
      "finding": "All treatments pooled: AL 0.10 (SD 0.07) mm and SER -0.27 (0.2) D after 10.2 (7.4) months off; optical only: 0.04 (0.04) mm and -0.13 (0.07) D.",
      "source": "sanchez_tena2024",
      "how_obtained": "abstract"
    },
    {
      "trial": "Optical cessation review",
      "finding": "14 studies: strong rebound for orthokeratology, weak for multifocal soft lenses, variable for peripheral-plus spectacles; fades with time off.",
      "source": "jcm_optical_cessation2024",
      "how_obtained": "abstract"
    },
    {
      "trial": "BLINK2",
      "treatment": "high-add multifocal soft lens",
      "off_months": 12,
      "n": 248,
      "extra_dAL_per_year": 0.04,
      "extra_dAL_ci95": [
        0.01,
        0.06
      ],
      "extra_dSER_per_year": -0.16,
      "extra_dSER_ci95": [
        -0.21,
        -0.11
      ],
      "mean_age_start": 14.9,
      "source": "blink2_arvo2024",
      "how_obtained": "abstract"
    },
    {
      "trial": "Red light post-trial",
      "treatment": "repeated low-level red light",
      "treated_months": 12,
      "off_months": 12,
      "n": 52,
      "dAL_off": 0.42,
      "dAL_off_sd": 0.2,
      "control_dAL": 0.28,
      "control_dAL_sd": 0.14,
      "control_n": 41,
      "dSER_off": -0.91,
      "dSER_off_sd": 0.48,
      "control_dSER": -0.54,
      "control_dSER_sd": 0.39,
      "source": "xiong2022",
      "how_obtained": "abstract",
      "reading": "clear rebound",
      "verified_again": true
    },
    {
      "trial": "Red light 635 nm RCT",
      "treatment": "repeated low-level red light",
      "treated_months": 12,
      "off_months": 3,
      "n": 42,
      "dAL_off": 0.16,
      "dAL_off_ci95": [
        0.11,
        0.22
      ],
      "dSER_off": -0.2,
      "dSER_off_ci95": [
        -0.26,
        -0.14
      ],
      "source": "chen_lrl2023",
      "how_obtained": "abstract",
      "verified_again": true
    }
  ]
}

export const reboundProvenance: Provenance = {
  "id": "treatments/rebound",
  "title": "After stopping",
  "authors": "several sources: treatments/tong2009, treatments/chia2014, treatments/yam2022, treatments/zhang2024, treatments/ijo2023, treatments/atomj_washout2023, treatments/waatom_washout2024, treatments/hansen2025, treatments/champ_stage2_arvo2024, treatments/loughman2025, treatments/erdinest2025, treatments/sanchez_tena2024, treatments/jcm_optical_cessation2024, treatments/blink2_arvo2024, treatments/xiong2022, treatments/chen_lrl2023",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "mo; [diop]; mm",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": "second search from scratch by this project, rows marked verified_again",
  "checkedOn": null,
  "sha256": "457c3d30faac8e412a40e322cadae3544235140108f02ceb92fb860d209fc43b",
  "supersedes": null,
  "notes": ""
}
