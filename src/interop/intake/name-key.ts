/** Letters that no accent was put on but that instruments write as others do. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
}

/**
 * The words of a name without accents, capitals and marks.
 *
 * @example
 * nameWords("Núñez-Ortiz, José") // => ["nunez", "ortiz", "jose"]
 */
export function nameWords(name: string): readonly string[] {
  return name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[ßæœøłđðþı]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/['’ʼ`´]/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
}

/**
 * Whether two names are the same words, in whatever order given and family name stand, and however compound names are
 * spaced: "Anna Maria Lopez", "LOPEZ ANNAMARIA".
 */
export function namesAgree(a: string, b: string): boolean {
  const [wordsA, wordsB] = [nameWords(a), nameWords(b)]
  if (wordsA.length === 0 || wordsB.length === 0) return false
  if (wordsA.toSorted().join(" ") === wordsB.toSorted().join(" ")) return true
  // One word that is all of another name could be anybody's.
  if (wordsA.length < 2 || wordsB.length < 2) return false
  return turned(wordsB).some((turn) => isSpacedOtherwise(wordsA, turn))
}

/** Every order in which the last words stand before the first ones. */
const turned = (words: readonly string[]): readonly (readonly string[])[] =>
  words.map((_, start) => [...words.slice(start), ...words.slice(0, start)])

/** The same letters, where every gap of the one with fewer words is a gap of the other. */
function isSpacedOtherwise(a: readonly string[], b: readonly string[]): boolean {
  if (a.join("") !== b.join("")) return false
  const [fewer, more] = a.length <= b.length ? [a, b] : [b, a]
  const gaps = new Set(gapsOf(more))
  return gapsOf(fewer).every((gap) => gaps.has(gap))
}

function gapsOf(words: readonly string[]): readonly number[] {
  let place = 0
  return words.map((word) => {
    place += word.length
    return place
  })
}

/** How many letters two names differ by at the least, given and family name in either order. */
export function lettersApart(a: string, b: string): number {
  const [wordsA, wordsB] = [nameWords(a), nameWords(b)]
  if (wordsA.length === 0 || wordsB.length === 0) return Number.POSITIVE_INFINITY
  const plain = wordsA.join("")
  return Math.min(...turned(wordsB).map((turn) => editsBetween(plain, turn.join(""))))
}

/**
 * Damerau–Levenshtein distance with neighbouring letters exchanged as one edit (optimal string alignment).
 *
 * @example
 * editsBetween("marta", "matra") // => 1
 */
export function editsBetween(a: string, b: string): number {
  const [from, to] = [[...a], [...b]]
  let [before, row]: [number[], number[]] = [[], Array.from({ length: to.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= from.length; i++) {
    const next = [i]
    for (let j = 1; j <= to.length; j++) {
      const isSame = from[i - 1] === to[j - 1]
      let edits = Math.min((next[j - 1] ?? 0) + 1, (row[j] ?? 0) + 1, (row[j - 1] ?? 0) + (isSame ? 0 : 1))
      const isExchange = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]
      if (isExchange) edits = Math.min(edits, (before[j - 2] ?? 0) + 1)
      next.push(edits)
    }
    before = row
    row = next
  }
  return row[to.length] ?? 0
}
