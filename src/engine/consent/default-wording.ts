import type { CalendarDate, TreatmentKind } from "../course.js"
import type { ConsentWording } from "../practice-rules.js"
import { LANGUAGES, type Language } from "../say.js"
import { english } from "./shipped/english.js"
import { simplifiedChinese } from "./shipped/simplified-chinese.js"
import { spanish } from "./shipped/spanish.js"
import { spokenFor } from "./wording-language.js"
import { firstDayOf, laterMaterial } from "./wording-versions.js"

/** A wording is of drops or of optical treatments; a practice's own versions keep these ids. */
export type WordingId = "drops" | "optical"

export const wordingIdOf = (kind: TreatmentKind): WordingId => (kind === "atropine" ? "drops" : "optical")

/**
 * The wordings that ship, until a practice has its own, each in three languages. They cover what the duties of consent
 * ask for (evidence: clinical, CD-045 to CD-054): that treatment slows and rarely stops, that growth without it cannot
 * be known, off-label and compounded products, that regulators disagree, benefits and harms in figures, other ways,
 * cost, the right to stop, and the child's own assent in four steps. Local law may ask for more. Names in braces are
 * filled in for the treatment: see `consent-text.ts`.
 */
export const defaultWordings: readonly ConsentWording[] = [...english, ...spanish, ...simplifiedChinese]

export const WORDING_IDS: readonly WordingId[] = ["drops", "optical"]

/** Whether a wording is one that ships, and not the practice's own. */
export const isShipped = ({ id, version }: Pick<ConsentWording, "id" | "version">): boolean =>
  defaultWordings.some((shipped) => shipped.id === id && shipped.version === version)

/**
 * The wordings to be read for a kind of treatment on a day, one for each language there is: the practice's latest in
 * force in that language, or the one that ships where the practice has none. A practice's wording that a later material
 * version in another language has overtaken is not handed out any more: whoever signed it would be asked again at once.
 */
export function wordingsFor({
  kind,
  on,
  wordings,
}: {
  readonly kind: TreatmentKind
  readonly on: CalendarDate
  readonly wordings: readonly ConsentWording[]
}): readonly ConsentWording[] {
  const id = wordingIdOf(kind)
  const begun = wordings.filter((each) => each.id === id && each.from <= on)
  const isLater = (one: ConsentWording, other: ConsentWording) => rankOf(one, begun) > rankOf(other, begun)
  const own = begun.filter(
    (each) =>
      !begun.some((other) => other.language === each.language && isLater(other, each)) &&
      laterMaterial({ read: each, date: each.from, on, wordings: begun }) === undefined,
  )
  const spoken = own.map(({ language }) => spokenFor(language))
  const shipped = defaultWordings.filter(
    (each) => each.id === id && !spoken.includes(spokenFor(each.language)),
  )
  return [...own, ...shipped].toSorted((a, b) => placeOf(a.language) - placeOf(b.language))
}

/**
 * The wording to be read in a language; in the practice's own words where they exist in it.
 *
 * @throws RangeError for a kind of treatment that no wording ships for.
 */
export function wordingIn(spoken: Language, wordings: readonly ConsentWording[]): ConsentWording {
  const found =
    wordings.find(({ language }) => language === spoken) ??
    wordings.find(({ language }) => spokenFor(language) === spoken)
  if (!found) throw new RangeError(`no wording is there in ${spoken}`)
  return found
}

/** By the age of what it says, then by its own. */
const rankOf = (wording: ConsentWording, all: readonly ConsentWording[]): string =>
  `${firstDayOf(wording, all)} ${wording.from}`

/** In the order of the languages we speak, any other after them. */
function placeOf(tag: string): number {
  const spoken = spokenFor(tag)
  return spoken === null ? LANGUAGES.length : LANGUAGES.indexOf(spoken)
}
