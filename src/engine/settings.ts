import type { PracticeSettings } from "./assessment.js"

/**
 * What a practice may set, with the values that hold until it does. They are our own choices, not published ones:
 * error rates of the test, the certainty asked for, and the cuts on the scale from emmetropic (0) to natural
 * growth (1). The setting factor is described in the parameter file.
 */
export const defaultSettings: PracticeSettings = {
  alpha: 0.1,
  beta: 0.1,
  certainty: 0.8,
  cuts: { nearNormal: 0.25, slowed: 0.75, asUntreated: 1.5 },
  settingFactor: 1,
}
