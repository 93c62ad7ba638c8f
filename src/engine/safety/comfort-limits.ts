/** Limits beyond which a measurement is a concern. They ask for a look; they decide nothing. */
export interface ComfortLimits {
  /** Widening of the photopic pupil against the child's own baseline, mm. */
  readonly pupilWideningMm: number
  /** Amplitude of accommodation that should remain, dioptres. */
  readonly residualAmplitudeD: number
  /** Loss of near acuity against the child's own baseline, logMAR. */
  readonly nearLossLogMAR: number
  /** By how much two photopic measurements of an unchanged pupil may differ (95 %), mm. */
  readonly pupilRetestMm: number
  /** By how much the amplitude of accommodation of one child may differ over a day, dioptres. */
  readonly amplitudeOverDayD: number
  /** Symptom grade from which it is a concern, of 3. */
  readonly symptomGrade: 2 | 3
  /** Intraocular pressure from which it is looked into, mmHg. */
  readonly pressureMmHg: number
  /** Difference of pressure between the eyes above which it is looked into, mmHg. */
  readonly pressureDifferenceMmHg: number
  /** Distance acuity beyond which it is looked into, logMAR. */
  readonly distanceLogMAR: number
}

/**
 * - pupil 3 mm and amplitude 5 D: COOPER-2013, one small study (n = 12), known from a professional news summary only;
 *   its 3 mm is a difference between the eyes after drops in one eye
 * - pupil retest 0.25 mm: HVIDHANSEN-2023, limits of agreement of photopic pupils, n = 43, abstract
 * - amplitude over a day 2.8 D: PARK-2019, 48 adolescents by push-up, abstract
 * - near loss 0.2 logMAR and grade 2: common practice, no source
 * - pressure 21 mmHg and acuity 0.20 logMAR: ATOM-CRITERIA, entry limits of a trial, secondary
 * - pressure difference 5 mmHg: PALESTINE-2019, n = 578, abstract
 * (evidence: clinical/safety-norms.json)
 */
export const usualComfortLimits: ComfortLimits = {
  pupilWideningMm: 3,
  residualAmplitudeD: 5,
  nearLossLogMAR: 0.2,
  pupilRetestMm: 0.25,
  amplitudeOverDayD: 2.8,
  symptomGrade: 2,
  pressureMmHg: 21,
  pressureDifferenceMmHg: 5,
  distanceLogMAR: 0.2,
}
