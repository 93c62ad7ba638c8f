import type { Visit } from "./course.js"

/** The question whose yes says that the unlikely figures of a visit were measured again and stand. */
export const MEASURED_AGAIN = "figures-measured-again"

/** Then they are a measurement, however unlikely: the fastest eyes must not go unanswered for ever. */
export const isMeasuredAgain = ({ answers = [] }: Pick<Visit, "answers">): boolean =>
  answers.some(({ question, answer }) => question === MEASURED_AGAIN && answer === "yes")
