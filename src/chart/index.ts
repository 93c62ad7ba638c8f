export { type AnswerScaleInput, answerScale } from "./answer-scale.js"
export { courseFigure, openingWindow } from "./course-figure.js"
export type {
  CourseFigure,
  CourseFigureInput,
  CourseFigureOptions,
  CourseLayout,
  CourseStop,
  GrowthInterval,
  LengthAtAge,
  LengthSd,
  MonthOfCoverage,
  RateAtAge,
  ReferenceBand,
  TrackName,
} from "./course-figure-input.js"
export { type GrowthScaleInput, growthScale } from "./growth-scale.js"
