import { deepFreeze } from "../freeze.js"
import type { ReboundEffect } from "../types.js"

/**
 * Growth after a stop above that of eyes never treated, from treatments/rebound.json, abstracts only. Reports that
 * compare with eyes still on the drops (LAMP phase 3, 0.16 mm at 0.05 %) are left out: most of that is loss of effect.
 * No axial figures of eyes that stopped 1 % or 0.5 % were read.
 */
export const reboundEffects: readonly ReboundEffect[] = deepFreeze([
  {
    id: "rebound-atropine-0.01",
    of: "atropine",
    concentrationPercent: 0.01,
    extraMm: 0.07,
    extraMmSd: 0.015,
    overMonths: 12,
    derivation:
      "WA-ATOM: 0.20 mm in the year off against 0.13 mm in eyes off placebo (P < 0.001); SD from the widths of the two printed intervals.",
    against: "ATOM-J found none at 0.01 %: -0.02 mm (95 % -0.12 to 0.09) in the year off",
    source: ["treatments/waatom_washout2024", "treatments/atomj_washout2023"],
  },
  {
    id: "rebound-atropine",
    of: "atropine",
    concentrationPercent: null,
    extraMm: 0.1,
    extraMmSd: 0.07,
    overMonths: 10.2,
    derivation:
      "A review of trials, all treatments and doses averaged: 0.10 (SD 0.07) mm after 10.2 months off; used for strengths without a report of their own.",
    against:
      "a Chinese trial of 0.05 % found no clear rebound: 0.31 against 0.28 mm in the year off (P > 0.05)",
    source: ["treatments/sanchez_tena2024", "treatments/ijo2023"],
  },
  {
    id: "rebound-optical",
    of: "optical",
    concentrationPercent: null,
    extraMm: 0.04,
    extraMmSd: 0.04,
    overMonths: 10.2,
    derivation: "The same review, optical treatments alone: 0.04 (SD 0.04) mm.",
    against: null,
    source: ["treatments/sanchez_tena2024"],
  },
])
