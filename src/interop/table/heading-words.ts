import type { Eye } from "../../engine/course.js"
import { plainWords } from "./cell-text.js"

/** A heading taken apart: the eye it names, the unit it names, and the words that are left. */
export interface HeadingWords {
  readonly words: readonly string[]
  readonly eye: Eye | null
  readonly unit: string | undefined
}

const EYE_TOKENS: Readonly<Record<string, Eye>> = {
  ...all("od re r rt right derecho derecha der", "right"),
  ...all("os oi le l lt left izquierdo izquierda izq", "left"),
}

/** UCUM codes by how units are written in headings. */
const UNITS: Readonly<Record<string, string>> = {
  mm: "mm",
  um: "um",
  µm: "um",
  d: "[diop]",
  dpt: "[diop]",
  dioptres: "[diop]",
  diopters: "[diop]",
  dioptrias: "[diop]",
  mmhg: "mm[Hg]",
  "%": "%",
  "mg/ml": "mg/mL",
}

function all(tokens: string, eye: Eye): Record<string, Eye> {
  return Object.fromEntries(tokens.split(" ").map((token) => [token, eye]))
}

/**
 * @example
 * headingWords("AL (mm) OD") // => { words: ["al"], eye: "right", unit: "mm" }
 */
export function headingWords(heading: string): HeadingWords {
  const { text, unit } = withoutUnit(heading)
  const apart = text
    // "SphereRight" is two words, "logMAR" is one.
    .replace(/[ºª]/g, " ")
    .replace(/log\s*MAR/i, "logmar")
    .replace(/([a-z])([A-Z][a-z])/g, "$1 $2")
  const tokens = plainWords(apart).split(" ").filter(Boolean).flatMap(splitEye)
  const eyes = new Set(tokens.flatMap((token) => EYE_TOKENS[token] ?? []))
  const words = tokens.filter((token) => !(token in EYE_TOKENS) && token !== "ojo" && token !== "eye")
  const [eye = null] = eyes
  // "ojo" and "eye" count only where nothing else is left: a column that says which eye.
  return { words: words.length > 0 ? words : tokens, eye: eyes.size === 1 ? eye : null, unit }
}

/** A unit in brackets, or as the last word after a comma. */
function withoutUnit(text: string): { readonly text: string; readonly unit: string | undefined } {
  const match = /[([]\s*([^)\]]+?)\s*[)\]]|,\s*(\S+)\s*$|\s(mm|dpt|mmhg|%|µm|um)(?=\s|$)/i.exec(text)
  const named = (match?.[1] ?? match?.[2] ?? match?.[3] ?? "").toLowerCase()
  const unit = UNITS[named]
  return match && unit ? { text: text.replace(match[0], " "), unit } : { text, unit: undefined }
}

/** "ALOD" and "odsph" are written without a blank. */
const GLUED =
  /^(?:(od|os|oi)(al|axl|sph|esf|cyl|cil|ax|axis|eje|se|ser|k1|k2|va|av|iop|pio)|(al|axl|sph|esf|cyl|cil|ax|axis|eje|se|ser|k1|k2|va|av|iop|pio)(od|os|oi))$/

function splitEye(token: string): readonly string[] {
  const match = GLUED.exec(token)
  return match ? match.slice(1).filter((part) => part !== undefined) : [token]
}
