import type { DutyState } from "../engine/assessment.js"
import { msg, say } from "../engine/say.js"

const WORDS: Readonly<Record<DutyState, string>> = {
  done: msg("done|duty"),
  missed: msg("missed|duty"),
  overdue: msg("overdue|duty"),
  open: msg("open|duty"),
  upcoming: msg("upcoming|duty"),
}

/** How it stands with a duty, in one word. */
export const dutyStateWords = (state: DutyState): string => say(WORDS[state])
