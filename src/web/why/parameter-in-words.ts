import { knownWords } from "../../chart/words.js"
import { say, withDecimalSign } from "../../engine/say.js"
import type { NamedParameter } from "../../engine/why/why.js"
import { capitalised } from "../format.js"
import { PARAMETER_NAMES } from "./parameter-names.js"

/** A name as the parameter file has it, in words: "rateAt10MmPerYear" is "Rate at 10 mm per year". */
export function nameInWords(name: string): string {
  const known = Object.hasOwn(PARAMETER_NAMES, name) ? PARAMETER_NAMES[name] : undefined
  if (known !== undefined) return say(known)
  const words = name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/([a-zA-Z])(\d)/g, "$1 $2")
    .replace(/(\d)([a-zA-Z])/g, "$1 $2")
    .toLowerCase()
  return capitalised(words)
}

/** A value of the evidence as it stands there, every digit. */
const inFull = (value: number): string => withDecimalSign(String(value))

/** "0.272 mm/a, known to ±0.019" */
export function valueInWords({ value, unit, sd }: Pick<NamedParameter, "value" | "unit" | "sd">): string {
  const shown = `${inFull(value)}${unit === "1" || unit === "" ? "" : ` ${unit}`}`
  return sd === null ? shown : say("{value}, known to ± {sd} (1 SD)", { value: shown, sd: inFull(sd) })
}

/**
 * Where a value comes from: the numbers of its sources in the list below it; what is no source, such as the word
 * "assumption", as it stands, with the range that was tried.
 */
export function sourceInWords(
  { source, rangeTried }: Pick<NamedParameter, "source" | "rangeTried">,
  listed: readonly string[],
): string {
  const numbers = source.filter((id) => listed.includes(id)).map((id) => listed.indexOf(id) + 1)
  const unlisted = source
    .filter((id) => !listed.includes(id))
    .map((word) => {
      const said = word === "assumption" ? say("assumption") : knownWords(word)
      return rangeTried
        ? say("{source}, tried from {low} to {high}", {
            source: said,
            low: inFull(rangeTried[0]),
            high: inFull(rangeTried[1]),
          })
        : said
    })
  const named = numbers.length === 0 ? [] : [say("source {numbers}", { numbers: numbers.join(", ") })]
  return [...unlisted, ...named].join("; ")
}
