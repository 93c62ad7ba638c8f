/**
 * First letters of the words of a name, as a report without the name has them. Letters as people see them: one with its
 * marks is one, in any script.
 *
 * @example
 * initials("Mira de la Cruz") // => "M. d. l. C."
 */
export function initials(name: string): string {
  const letters = new Intl.Segmenter("en", { granularity: "grapheme" })
  return name
    .trim()
    .split(/[\s\u00a0-]+/)
    .flatMap((word) => {
      const [first] = letters.segment(word)
      return first === undefined ? [] : [`${first.segment}.`]
    })
    .join(" ")
}
