import { type Question, ROOM } from "./question.js"
import { advices, eyeFindings } from "./question-examination.js"
import { cautions, lifestyle, onTreatment, redFlags } from "./question-history.js"

/**
 * Everything that is asked or looked at in an examination and is no figure of an eye, in the order of the room. An id,
 * once used in a record, keeps its meaning.
 */
export const QUESTIONS: readonly Question[] = [
  ...redFlags,
  ...cautions,
  ...onTreatment,
  ...lifestyle,
  ...eyeFindings,
  ...advices,
].toSorted((a, b) => ROOM.indexOf(a.place) - ROOM.indexOf(b.place))

const byId = new Map(QUESTIONS.map((question) => [question.id, question]))

/**
 * The question of an id; undefined for an id that no version of the program knows.
 *
 * @example
 * questionOf("missed-drops")?.value?.unit // => "nights a week"
 */
export const questionOf = (id: string): Question | undefined => byId.get(id)
