/** Limits beyond which a measurement under atropine is a concern. They ask for a look; they decide nothing. */
export interface ComfortLimits {
  /** Widening of the photopic pupil against the child's own baseline, mm. */
  readonly pupilWideningMm: number
  /** Amplitude of accommodation that should remain, dioptres. */
  readonly residualAmplitudeD: number
  /** Loss of near acuity against the child's own baseline, logMAR. */
  readonly nearLossLogMAR: number
  /** By how much two photopic measurements of an unchanged pupil may differ (95 %), mm. */
  readonly pupilRetestMm: number
  /** Symptom grade from which it is a concern, of 3. */
  readonly symptomGrade: 2 | 3
}

/**
 * - pupil 3 mm and amplitude 5 D: COOPER-2013, one small study (n = 12), known from a professional news summary only
 * - pupil retest 0.25 mm: HVIDHANSEN-2023, limits of agreement of photopic pupils, n = 43, abstract
 * - near loss 0.2 logMAR and grade 2: common practice, no source
 * (evidence: clinical/safety-norms.json, comfort_limits_on_atropine and pupil.test_retest)
 */
export const usualComfortLimits: ComfortLimits = {
  pupilWideningMm: 3,
  residualAmplitudeD: 5,
  nearLossLogMAR: 0.2,
  pupilRetestMm: 0.25,
  symptomGrade: 2,
}
