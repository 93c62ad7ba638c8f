import { msg, say } from "../say.js"

/** How rows of the evidence were read, as their tables say it; what was only remembered is common practice to a reader. */
const OBTAINED = [
  msg("abstract"),
  msg("full text table 2"),
  msg("full text table 3"),
  msg("full-text excerpt"),
  msg("full-text excerpt + secondary"),
  msg("full-text excerpt (reaction list); common practice for the rest"),
  msg("abstract + secondary"),
  msg("abstract + expert opinion + secondary"),
  msg("secondary (trial entry limit 0.2) + common practice for the rest"),
]

/** In the reader's language where it is one of those that safety speaks of, else as the table has it. */
export const obtainedInWords = (obtained: string): string => {
  const known = OBTAINED.find((words) => words === obtained)
  return known === undefined ? obtained : say(known)
}
