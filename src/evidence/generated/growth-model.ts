// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
import type { Provenance } from "../types.js"

export const growthModel = {
  "units": "mm, years, dioptres",
  "status": "Fitted by this evidence task to the published arms in a_untreated_axial.csv. It is NOT the Brennan 2024 meta-regression, whose equation was not reached; replace when the paper is at hand.",
  "untreated_rate": {
    "formula": "age<=13: r10*E^ea*S^sex*exp(-k1*(age-10)); age>13: r10*E^ea*S^sex*exp(-3*k1)*exp(-k2*(age-13))",
    "change_formula": "integral over the interval: r10*E^ea*S^sex*(F(age+T)-F(age)); F(b)=(1-exp(-k1*(b-10)))/k1 for b<=13; F(b)=(1-exp(-3*k1))/k1+exp(-3*k1)*(1-exp(-k2*(b-13)))/k2 for b>13",
    "parameters": {
      "r10": 0.272,
      "E": 1.3,
      "k1": 0.125,
      "k2": 0.3
    },
    "knot_age": 13,
    "ea": "1 East Asian, 0 other, fractions allowed for mixed groups",
    "S_sex": {
      "girl": 1.03,
      "boy": 0.97,
      "sd_log": 0.05,
      "source": [
        "naduvilath2023",
        "scorm_al",
        "jonesjordan2021",
        "hyman2005"
      ],
      "note": "girls faster in most cohorts, no sex effect on AL in COMET; size for AL in myopes is a judgement, not a published number"
    },
    "parental_myopia_outdoor_nearwork_in_myopes": "no multiplier (not significant for progression in jonesjordan2021)",
    "prior_sd": {
      "ln_r10": 0.07,
      "ln_E": 0.09,
      "k1": 0.02,
      "k2": 0.1
    },
    "between_study_sd_mm_per_sqrt_year": 0.04,
    "fit": {
      "free_estimates": {
        "r10": 0.272,
        "E": 1.32,
        "k1": 0.122,
        "k2": 0.34
      },
      "chi2": 7.9,
      "df": 10,
      "only_optical_biometry": true,
      "n_points": 13,
      "note": "increments of one arm treated as independent; three mean ages, one EA fraction and several SEs are assumed (see CSV)",
      "sensitivity": {
        "leave_one_out_8y_east_asian_1y_mm": [
          0.425,
          0.44
        ],
        "leave_one_out_8y_non_east_asian_1y_mm": [
          0.309,
          0.334
        ],
        "leave_one_out_E": [
          1.29,
          1.39
        ],
        "leave_one_out_k1": [
          0.112,
          0.13
        ],
        "assumed_mean_ages_moved_by_half_a_year": {
          "8y_east_asian": [
            0.425,
            0.436
          ],
          "8y_non_east_asian": [
            0.315,
            0.337
          ],
          "E": [
            1.28,
            1.37
          ]
        },
        "without_naduvilath2023": {
          "r10": 0.274,
          "E": 1.315,
          "k1": 0.131,
          "k2": 0.345
        },
        "tau": "0.04 was set by hand so that chi2 is near its degrees of freedom",
        "naduvilath_age_as_start_of_year": {
          "r10": 0.274,
          "E": 1.335,
          "k1": 0.131,
          "k2": 0.311,
          "8y_east_asian": 0.445,
          "8y_non_east_asian": 0.333
        },
        "lam2020_abstract_0.55_instead_of_table_0.53": {
          "r10": 0.271,
          "E": 1.33,
          "k1": 0.12,
          "k2": 0.346,
          "8y_east_asian": 0.432,
          "8y_non_east_asian": 0.325
        }
      },
      "recheck": "Searched for again from scratch: the 13 changes (three of them differences of two printed values) and their printed SDs, SEs and CIs are unchanged; the refit gives the same estimates. Still from memory or assumed: mean ages of lamp1, lam2020 and champ, n of lamp1, SE and East Asian share of blink."
    },
    "percent_decline_per_year": {
      "model_6_to_13": 11.8,
      "naduvilath2023_6_to_15": 15.3,
      "brennan2024_secondary": 15,
      "sermeta2023_SER": 9.7
    },
    "valid_age": [
      6,
      16
    ],
    "setting_factor": {
      "trial_like_progressors": 1,
      "unselected_clinic_myopes": 0.75,
      "unselected_range": [
        0.55,
        1
      ],
      "basis": "wong2025 medians lie 30-45 % under the East Asian curve at 7-12 y; judgement"
    },
    "floor_emmetrope_growth": {
      "6": 0.24,
      "11": 0.05,
      "source": "yii2023"
    }
  },
  "between_child": {
    "persistent_log_sd": 0.31,
    "persistent_log_sd_se": 0.065,
    "within_child_wobble_mm_per_sqrt_year": 0.093,
    "within_child_wobble_se": 0.03,
    "formula": "rate_i(t)=g(age)*exp(u_i-0.31^2/2)+w*dB(t); u_i~N(0,0.31^2); change adds wobble SD w*sqrt(T) and measurement SD 0.025*sqrt(2)",
    "fitted_to": "a_between_child_sd.csv rows sd01-sd10 with age spread removed",
    "quick_marginal_sd_of_1y_change_mm": 0.15,
    "quick_marginal_sd_of_2y_change_mm": 0.24,
    "quick_marginal_sd_of_3y_change_mm": 0.31,
    "raw_published_1y_sd_mixed_ages": 0.22,
    "implied_year_to_year_correlation_AL": {
      "mean_rate_0.25": 0.35,
      "0.35": 0.53,
      "0.45": 0.65
    },
    "caution": "SER studies find weaker carry-over (slopes 0.20-0.35 D/D, partial R2 0.03): use this prior for AL only, shrink hard on one interval",
    "published_check": "only published correlation found: 0.38 between the first half-year and the next 2.5 years, in treated (orthokeratology) children (zhao2020ok); none in untreated children"
  },
  "between_eye": {
    "correlation_of_elongation": 0.88,
    "range": [
      0.8,
      0.93
    ],
    "how": "derived from tong2006 under an assumed per-eye SD; no direct AL figure found",
    "correlation_of_AL_level": "not found"
  },
  "season": {
    "formula": "rate*(1+A*cos(2*pi*(t-t_peak))); interval factor 1+A*(sin(2*pi*(t2-tp))-sin(2*pi*(t1-tp)))/(2*pi*(t2-t1)), t in years",
    "A": 0.25,
    "A_range": [
      0.15,
      0.45
    ],
    "t_peak": "about 21 December in the northern hemisphere (range mid-November to mid-January), 21 June in the southern",
    "tropics": "set A=0 within about 10 degrees of the equator (assumption)",
    "basis": [
      "fujiwara2012",
      "cui2013",
      "donovan2012season"
    ],
    "note": "gwiazda2014 gives far more, but from non-cycloplegic SER. A full-year interval has factor 1: judge on 12 months where possible"
  },
  "measurement_within_subject_sd": {
    "AL_optical_same_device_same_session_mm": 0.018,
    "AL_optical_same_device_between_visits_mm": 0.025,
    "AL_extra_sd_if_device_changed_mm": 0.03,
    "AL_bias_between_devices_mm_sd": 0.02,
    "AL_ascan_mm": 0.18,
    "AL_ascan_range_mm": [
      0.1,
      0.27
    ],
    "SER_autoref_cycloplegic_D": 0.2,
    "SER_autoref_noncycloplegic_child_D": 0.4,
    "SER_noncycloplegic_range_D": [
      0.17,
      0.57
    ],
    "SER_noncycloplegic_bias_D": -0.55,
    "SER_noncycloplegic_bias_sd_D": 0.55,
    "SER_subjective_D": 0.25,
    "SER_subjective_range_D": [
      0.17,
      0.35
    ],
    "keratometry_D": 0.15,
    "corneal_radius_mm": 0.02,
    "pupil_photopic_mm": 0.09,
    "pupil_mesopic_mm": 0.32,
    "mdc95_rule": "1.96*sqrt(2)*SD",
    "AL_mdc95_between_visits_mm": 0.069,
    "judgement": "0.025 combines 0.018 retest with about 0.016 time-of-day; cycloplegic 0.20, subjective 0.25, child non-cycloplegic 0.40 and keratometry 0.15 are rounded up from single-session or adult figures in c_measurement_noise.csv",
    "unresolved": "mattern2023 (n25) prints 0.04-0.06 mm as an intra-subject SD; if literal, AL SD would be about twice the 0.025 used here. Five other child sources lie at 0.008-0.021 (two of them re-checked), so 0.025 is kept."
  },
  "mm_to_dioptre": {
    "longitudinal_D_per_mm": 1.9,
    "range": [
      1.6,
      2.25
    ],
    "sd_between_studies": 0.22,
    "by_age_note": "arm ratios show no usable age trend from 8 to 12 y; under 6 y lens power loss cancels it (ratio near 0)",
    "optical_only": "d_reduced_eye.csv"
  },
  "expected_table": [
    {
      "age_start": 6,
      "non_east_asian_1y_mm": 0.422,
      "east_asian_1y_mm": 0.548,
      "non_east_asian_2y_mm": 0.794,
      "east_asian_2y_mm": 1.032
    },
    {
      "age_start": 7,
      "non_east_asian_1y_mm": 0.372,
      "east_asian_1y_mm": 0.484,
      "non_east_asian_2y_mm": 0.7,
      "east_asian_2y_mm": 0.91
    },
    {
      "age_start": 8,
      "non_east_asian_1y_mm": 0.328,
      "east_asian_1y_mm": 0.427,
      "non_east_asian_2y_mm": 0.618,
      "east_asian_2y_mm": 0.803
    },
    {
      "age_start": 9,
      "non_east_asian_1y_mm": 0.29,
      "east_asian_1y_mm": 0.377,
      "non_east_asian_2y_mm": 0.545,
      "east_asian_2y_mm": 0.709
    },
    {
      "age_start": 10,
      "non_east_asian_1y_mm": 0.256,
      "east_asian_1y_mm": 0.332,
      "non_east_asian_2y_mm": 0.481,
      "east_asian_2y_mm": 0.626
    },
    {
      "age_start": 11,
      "non_east_asian_1y_mm": 0.226,
      "east_asian_1y_mm": 0.293,
      "non_east_asian_2y_mm": 0.425,
      "east_asian_2y_mm": 0.552
    },
    {
      "age_start": 12,
      "non_east_asian_1y_mm": 0.199,
      "east_asian_1y_mm": 0.259,
      "non_east_asian_2y_mm": 0.361,
      "east_asian_2y_mm": 0.469
    },
    {
      "age_start": 13,
      "non_east_asian_1y_mm": 0.162,
      "east_asian_1y_mm": 0.21,
      "non_east_asian_2y_mm": 0.281,
      "east_asian_2y_mm": 0.366
    },
    {
      "age_start": 14,
      "non_east_asian_1y_mm": 0.12,
      "east_asian_1y_mm": 0.156,
      "non_east_asian_2y_mm": 0.208,
      "east_asian_2y_mm": 0.271
    },
    {
      "age_start": 15,
      "non_east_asian_1y_mm": 0.089,
      "east_asian_1y_mm": 0.115,
      "non_east_asian_2y_mm": 0.154,
      "east_asian_2y_mm": 0.201
    },
    {
      "age_start": 16,
      "non_east_asian_1y_mm": 0.066,
      "east_asian_1y_mm": 0.085,
      "non_east_asian_2y_mm": 0.114,
      "east_asian_2y_mm": 0.149
    }
  ]
}

export const growthModelProvenance: Provenance = {
  "id": "progression/growth_model",
  "title": "Parameters of the growth model",
  "authors": "own work of this project: fitted to a_untreated_axial.csv and the other tables of this folder by fit_untreated.py",
  "year": null,
  "doi": null,
  "where": "not applicable",
  "obtained": "fitted to a_untreated_axial.csv and the other tables of this folder by fit_untreated.py",
  "population": "not applicable",
  "n": "not applicable",
  "ageRange": "6 to 16 a",
  "device": "not applicable",
  "units": "mm; a; [diop]",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": "second search from scratch by this project, row by row in progression/verification.csv",
  "checkedOn": null,
  "sha256": "5292601481c17910ebe10bd099a87d648422fe029bec7918af4c3d88f0375d99",
  "supersedes": null,
  "notes": ""
}
