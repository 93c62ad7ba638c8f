// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const adverseEffects = {
  "physiology": [
    {
      "trial": "LAMP phase 1",
      "months": 12,
      "concentration_percent": 0.05,
      "accommodation_loss_D": 1.98,
      "accommodation_loss_sd": 2.82,
      "photopic_pupil_increase_mm": 1.03,
      "photopic_sd": 1.02,
      "mesopic_pupil_increase_mm": 0.58,
      "mesopic_sd": 0.63,
      "source": "yam2019",
      "how_obtained": "abstract",
      "verified_again": true,
      "verified_again_scope": "all fields"
    },
    {
      "trial": "LAMP phase 1",
      "months": 12,
      "concentration_percent": 0.025,
      "accommodation_loss_D": 1.61,
      "accommodation_loss_sd": 2.61,
      "source": "yam2019",
      "how_obtained": "abstract (accommodation); from memory, unverified (pupil)",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 1",
      "months": 12,
      "concentration_percent": 0.01,
      "accommodation_loss_D": 0.26,
      "accommodation_loss_sd": 3.04,
      "source": "yam2019",
      "how_obtained": "abstract (accommodation); from memory, unverified (pupil)",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 1",
      "months": 12,
      "concentration_percent": 0,
      "accommodation_loss_D": 0.32,
      "accommodation_loss_sd": 2.91,
      "source": "yam2019",
      "how_obtained": "abstract (accommodation); from memory, unverified (pupil)",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 2",
      "months": 24,
      "finding": "pupil and accommodation changes stayed as in year 1 at all strengths; acuity and quality of life unaffected",
      "source": "yam2020",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "ATOM2 5-year",
      "concentration_percent": 0.01,
      "photopic_pupil_increase_mm": 0.8,
      "accommodation_loss_D_range": [
        2,
        3
      ],
      "near_acuity": "no loss",
      "source": "chia2016",
      "how_obtained": "abstract"
    },
    {
      "meta": "Asian RCTs, doses <1%",
      "photopic_pupil_increase_mm": 0.7,
      "photopic_ci95": [
        0.33,
        1.06
      ],
      "mesopic_pupil_increase_mm": 0.38,
      "mesopic_ci95": [
        0.22,
        0.54
      ],
      "accommodation": "no significant change",
      "any_adverse_event_ratio": 1.37,
      "source": "asia_meta2023",
      "how_obtained": "abstract"
    },
    {
      "trial": "AOK (0.01% + ortho-k vs ortho-k)",
      "months": 24,
      "photopic_pupil_increase_mm": 0.78,
      "control_photopic": 0.23,
      "mesopic_pupil_increase_mm": 0.7,
      "control_mesopic": 0.31,
      "note": "SE 0.07-0.09; more photophobia in the drop arm (P=0.006)",
      "source": "tan2023",
      "how_obtained": "abstract"
    },
    {
      "meta": "0.01% + ortho-k vs ortho-k",
      "pupil_increase_mm": 0.56,
      "pupil_ci95": [
        0.43,
        0.7
      ],
      "accommodation_D": -1.08,
      "accommodation_ci95": [
        -1.73,
        -0.43
      ],
      "source": "aok_meta2023",
      "how_obtained": "abstract"
    }
  ],
  "events_percent": [
    {
      "trial": "CHAMP",
      "months": 36,
      "arm": "placebo",
      "n": 162,
      "any": 71.6,
      "photophobia": 3.1,
      "allergic_conjunctivitis": 3.1,
      "eye_irritation": 3.7,
      "mydriasis": 0,
      "blurred_vision": 0,
      "stopped_for_event": 6.2,
      "serious_ocular": 0,
      "source": "zadnik2023",
      "how_obtained": "full text table 3"
    },
    {
      "trial": "CHAMP",
      "months": 36,
      "arm": "atropine 0.01%",
      "n": 164,
      "any": 59.8,
      "photophobia": 2.4,
      "allergic_conjunctivitis": 1.8,
      "eye_irritation": 0.6,
      "mydriasis": 1.2,
      "blurred_vision": 1.2,
      "stopped_for_event": 0,
      "serious_ocular": 0,
      "source": "zadnik2023",
      "how_obtained": "full text table 3"
    },
    {
      "trial": "CHAMP",
      "months": 36,
      "arm": "atropine 0.02%",
      "n": 247,
      "any": 66,
      "photophobia": 4.5,
      "allergic_conjunctivitis": 4.5,
      "eye_irritation": 0.8,
      "mydriasis": 1.6,
      "blurred_vision": 1.6,
      "stopped_for_event": 2,
      "serious_ocular": 0,
      "source": "zadnik2023",
      "how_obtained": "full text table 3"
    },
    {
      "trial": "STAR",
      "months": "48 (dosing)",
      "arm": "vehicle",
      "photophobia": 16.7,
      "discontinued_treatment": 18.7,
      "source": "star2026",
      "how_obtained": "abstract"
    },
    {
      "trial": "STAR",
      "months": "48 (dosing)",
      "arm": "atropine 0.01%",
      "photophobia": 24.1,
      "discontinued_treatment": 19.7,
      "source": "star2026",
      "how_obtained": "abstract"
    },
    {
      "trial": "STAR",
      "months": "48 (dosing)",
      "arm": "atropine 0.03%",
      "photophobia": 30.4,
      "discontinued_treatment": 18.6,
      "source": "star2026",
      "how_obtained": "abstract"
    },
    {
      "trial": "MOSAIC2",
      "months": "year 3",
      "arm": "atropine 0.05%",
      "n": 66,
      "blurred_near": 15,
      "photophobia": 8,
      "stopped_for_event": 0,
      "source": "loughman2025",
      "how_obtained": "abstract"
    },
    {
      "trial": "MOSAIC2",
      "months": "year 3",
      "arm": "tapering 0.01%",
      "blurred_near": 3,
      "photophobia": 0,
      "stopped_for_event": null,
      "source": "loughman2025",
      "how_obtained": "abstract"
    },
    {
      "trial": "ATOM-J",
      "months": 24,
      "arm": "atropine 0.01%",
      "n": 84,
      "allergic_conjunctivitis": 2.4,
      "source": "hieda2021",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "ATOM-J",
      "months": 24,
      "arm": "placebo",
      "n": 84,
      "allergic_conjunctivitis": 1.2,
      "note": "abstract prints 1.4% but 1/84 = 1.2%",
      "source": "hieda2021",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "LAMP phase 1",
      "arm": "photochromic / reading glasses need, allergic conjunctivitis",
      "value": null,
      "source": "yam2019",
      "how_obtained": "not found"
    },
    {
      "trial": "AMPP cohort",
      "arm": "atropine 0.5%",
      "n": 77,
      "photophobia": 72,
      "reading_problems": 38,
      "headache": 22,
      "stopped_by_12mo": 22,
      "note": "11 of 17 who stopped did so in month 1",
      "source": "polling2016",
      "how_obtained": "abstract",
      "verified_again": true
    },
    {
      "trial": "AMPP cohort 3 y",
      "arm": "atropine 0.5% start",
      "n": 124,
      "persisted_3y": 71.8,
      "stopped_allergy_n": 9,
      "stopped_adverse_n": 17,
      "lost_n": 9,
      "source": "polling2020",
      "how_obtained": "full text table 2",
      "verified_again": true
    },
    {
      "trial": "APP (Denmark)",
      "finding": "108 events in the 6 mo loading period (mostly the 0.1% arm), 14 in the 6 mo after the switch to 0.01%",
      "source": "hansen2023",
      "how_obtained": "abstract"
    },
    {
      "trial": "Photochromic spectacles, 0.05% or 0.1%",
      "n": 24,
      "photophobia": 75,
      "improved_with_photochromic": 63,
      "source": "photochromic_arvo2016",
      "how_obtained": "abstract",
      "verified_again": true
    }
  ],
  "completion": [
    {
      "trial": "ATOM1",
      "months": 24,
      "randomised": 400,
      "completed": 346,
      "lost_percent": 13.5,
      "source": "chua2006",
      "verified_again": true
    },
    {
      "trial": "ATOM2",
      "months": 24,
      "randomised": 400,
      "entered_washout": 356,
      "source": "chia2014",
      "verified_again": true
    },
    {
      "trial": "LAMP",
      "randomised": 438,
      "m12": 383,
      "m24": 350,
      "m36": 326,
      "m60": 270,
      "source": "yam2020, yam2022, zhang2024",
      "verified_again": true,
      "caveat": "corrected: m60 269 -> 270 (final abstract, 82.8% of 326)"
    },
    {
      "trial": "MOSAIC",
      "randomised": 250,
      "m24": 204,
      "source": "mosaic_arvo2023",
      "verified_again": true
    }
  ],
  "baseline_rate_warning": "Placebo photophobia runs from 3% (CHAMP, spontaneous report) to 17% (STAR): elicitation differs, so compare only within a trial; a symptom on 0.01% is often not the drug.",
  "monitoring_hints": [
    "Stop and examine for lid or conjunctival allergy; CHAMP, ATOM-J and ATOM2 all report it at about 2-5%.",
    "Record photopic pupil, near acuity with distance correction, and accommodation amplitude at baseline and 1 month so that change is measurable."
  ]
}

export const adverseEffectsProvenance: Provenance = {
  "id": "treatments/adverse-effects",
  "title": "Pupil, accommodation, symptoms and completion under atropine",
  "authors": "several sources: treatments/yam2019, treatments/yam2020, treatments/chia2016, treatments/chia2014, treatments/asia_meta2023, treatments/tan2023, treatments/aok_meta2023, treatments/zadnik2023, treatments/star2026, treatments/loughman2025, treatments/hieda2021, treatments/chia2012, treatments/polling2016, treatments/polling2020, treatments/hansen2023, treatments/photochromic_arvo2016, treatments/chua2006, treatments/mosaic_arvo2023",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "[diop]; mm; %",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": "second search from scratch by this project, rows marked verified_again",
  "checkedOn": null,
  "sha256": "16f57e15f1a4f9291065934f53794353f068bfa84d0b361f49acd67dd8f047fb",
  "supersedes": null,
  "notes": ""
}
