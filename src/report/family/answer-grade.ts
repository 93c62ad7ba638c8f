import { listed, msg, say } from "../../engine/say.js"
import type { Block } from "../document.js"
import { shortCitation } from "./question-evidence.js"

export type Answer = Extract<Block, { kind: "answer" }>

/** How well an answer is known. */
const GRADES = {
  pooled: msg("How well known: several trials taken together ({sources})."),
  trial: msg("How well known: one trial ({sources})."),
  review: msg("How well known: a review of studies ({sources})."),
  link: msg("How well known: studies that watched children. They show a link, not a cause ({sources})."),
  figures: msg("How well known: worked out from several studies ({sources})."),
  none: msg("How well known: not known. We have read no trial of it."),
} as const

export function graded(grade: keyof typeof GRADES, sources: readonly string[] = []): string {
  if (grade === "none") return say(GRADES.none)
  return say(GRADES[grade], { sources: listed([...new Set(sources.map(shortCitation))]) })
}

/** A question with its answer of one line, and how well it is known. */
export const answered = (question: string, line: string, grade: string): Answer => ({
  kind: "answer",
  question,
  lines: [line],
  grade,
})
