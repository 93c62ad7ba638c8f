/**
 * The reading level of an English text by the published formula of Flesch and Kincaid (Kincaid et al. 1975, Research Branch
 * Report 8-75): grade = 0.39 words per sentence + 11.8 syllables per word - 15.59.
 *
 * A sentence ends at a full stop, question mark or exclamation mark before a blank or the end; a colon ends none. Every piece
 * handed in is at least one. A word is what stands between blanks and holds a letter or a digit; parts of a hyphenated word are one word.
 */
export function readingGrade(pieces: readonly string[]): number {
  const sentences = pieces.flatMap(sentencesIn)
  const words = sentences.flatMap(wordsIn)
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0)
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59
}

export const sentencesIn = (piece: string): readonly string[] =>
  piece.split(/(?<=[.?!])\s+/).filter((sentence) => wordsIn(sentence).length > 0)

export const wordsIn = (sentence: string): readonly string[] =>
  sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}%]/u.test(word))

/**
 * Syllables as they are read aloud. Of letters: groups of vowels; a silent e at the end, and in -es or -ed where it is not
 * spoken, is taken off; each word has one at least. Figures are read digit by digit ("0.14" zero point one four), which
 * is more than most readers speak, so a text with figures is never made to look easier than it is. "mm" is "millimetres", "%"
 * "per cent", "D" "dioptres".
 */
export function syllablesIn(word: string): number {
  const parts = word.toLowerCase().match(/[a-zà-ÿ']+|\d|%|[.,](?=\d)/g) ?? []
  return parts.reduce((sum, part) => sum + syllablesOfPart(part), 0)
}

function syllablesOfPart(part: string): number {
  if (/^\d$/.test(part)) return part === "0" || part === "7" ? 2 : 1
  if (part === "%") return 2
  if (part === "." || part === ",") return 1
  const spoken = SPOKEN[part]
  if (spoken !== undefined) return spoken
  const letters = part.replace(/'s?$/, "").replace(/'/g, "")
  const groups = letters.match(/[aeiouyà-ÿ]+/g)?.length ?? 0
  const silent =
    /[^aeiouyl]e$/.test(letters) ||
    /[aeiouy]le$/.test(letters) ||
    /[^aeioutd]ed$/.test(letters) ||
    /[^aeiousxzcg]es$/.test(letters)
      ? 1
      : 0
  return Math.max(1, groups - silent)
}

/** Words that the rule would count wrong and that a family's page holds. */
const SPOKEN: Readonly<Record<string, number>> = {
  mm: 4,
  cm: 4,
  d: 3,
  being: 2,
  seeing: 2,
  quiet: 2,
  science: 2,
  diet: 2,
  dioptre: 3,
  dioptres: 3,
  clearer: 2,
  more: 1,
  somewhere: 2,
  something: 2,
  sometimes: 2,
  therefore: 2,
  centre: 2,
}
