import { say } from "../say.js"

/** Words one after another with the language's own comma and no "and": "a, b, c". */
export const inRow = (words: readonly string[]): string =>
  words.reduce((before, next) => (before === "" ? next : say("{before}, {next}", { before, next })), "")
