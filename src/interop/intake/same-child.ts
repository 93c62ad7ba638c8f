import type { CalendarDate, Sex } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Identity } from "./fragment.js"
import { editsBetween, lettersApart, namesAgree, nameWords } from "./name-key.js"

/** A child of the practice, as far as it tells who it is. */
export interface KnownChild {
  readonly id: string
  readonly name: string
  readonly number: string | null
  readonly born: CalendarDate
  readonly sex: Sex
}

/** A child it may be, and what speaks for and against it. */
export interface Candidate {
  readonly child: KnownChild
  readonly why: string
}

export type SameChild =
  | { readonly kind: "same"; readonly child: KnownChild }
  | { readonly kind: "near"; readonly candidates: readonly Candidate[] }
  | { readonly kind: "none" }

const MOST_CANDIDATES = 10

/**
 * Which child of the practice a file is about. A child is taken only when birth date and name agree and nothing that both
 * sides say contradicts it, or when number and birth date agree and the file gives no name; and only when no other child
 * fits, by number or by a name one letter off. Everything less is a suggestion for a person, with its reason.
 *
 * @example
 * sameChild({ name: "SOLBERG MIRA", born: "2017-03-14" }, children)
 * // => { kind: "same", child: { name: "Mira Solberg", ... } }
 */
export function sameChild(identity: Identity, children: readonly KnownChild[]): SameChild {
  // Whoever fits or stands in the way shares birth date or number: the names of all others need no look yet.
  const close = compare(
    identity,
    children.filter((child) => isClose(identity, child)),
  )
  return taken(identity, close) ?? suggested(compare(identity, children))
}

type Compared = Comparison & { readonly child: KnownChild }

const isClose = ({ born, number }: Identity, child: KnownChild): boolean =>
  born === child.born || isSameNumber(number, child)

const compare = (identity: Identity, children: readonly KnownChild[]): readonly Compared[] =>
  children.flatMap((child) => {
    const found = comparison(identity, child)
    return found ? [{ child, ...found }] : []
  })

function taken({ number }: Identity, close: readonly Compared[]): SameChild | null {
  const fitting = close.filter(({ fits }) => fits)
  const [only] = fitting
  if (!only || fitting.length > 1) return null
  // A twin whose name is a letter off, or the owner of the number, might be meant as well.
  const isSettled = only.numberAgrees && number !== undefined
  const others = close.filter(
    (other) => other !== only && (other.numberAgrees || (!isSettled && other.isOneLetterOff)),
  )
  return others.length === 0 ? { kind: "same", child: only.child } : null
}

function suggested(compared: readonly Compared[]): SameChild {
  if (compared.length === 0) return { kind: "none" }
  const hasSeveral = compared.filter(({ fits }) => fits).length > 1
  const candidates = compared
    .toSorted((a, b) => b.weight - a.weight)
    .slice(0, MOST_CANDIDATES)
    .map(({ child, why, fits }) => ({
      child,
      why: fits
        ? hasSeveral
          ? say("everything the file says agrees, but it agrees with another child as well")
          : say("everything the file says agrees, but another child is too like it")
        : why,
    }))
  return { kind: "near", candidates }
}

interface Comparison {
  readonly fits: boolean
  readonly numberAgrees: boolean
  /** Born on the same day, with a name that differs by one letter. */
  readonly isOneLetterOff: boolean
  readonly why: string
  readonly weight: number
}

function comparison(identity: Identity, child: KnownChild): Comparison | null {
  const { number, name, born, sex } = identity
  const numberAgrees = isSameNumber(number, child)
  const numberDiffers = Boolean(number) && child.number !== null && !numberAgrees
  const bornAgrees = born === child.born
  const nameAgrees = name !== undefined && namesAgree(name, child.name)
  const isOneLetterOff =
    (bornAgrees || numberAgrees) && !nameAgrees && name !== undefined && lettersApart(name, child.name) <= 1
  const hasPartOfName = !nameAgrees && name !== undefined && sharesAWord(name, child.name)
  const sexDiffers = sex !== undefined && sex !== child.sex
  const hasName = name !== undefined && nameWords(name).length > 0
  const identified = nameAgrees || (!hasName && numberAgrees)
  const fits = identified && bornAgrees && !numberDiffers && !sexDiffers
  const base = { fits, numberAgrees, isOneLetterOff: isOneLetterOff && bornAgrees }
  const isLike =
    fits || numberAgrees || nameAgrees || (bornAgrees && (isOneLetterOff || hasPartOfName || !hasName))
  if (!isLike) return null
  const weight =
    (numberAgrees ? 4 : 0) +
    (bornAgrees ? 4 : born !== undefined && isNearDate(born, child.born) ? 2 : 0) +
    (nameAgrees ? 4 : isOneLetterOff ? 3 : hasPartOfName ? 1 : 0) -
    (sexDiffers ? 1 : 0) -
    (numberDiffers ? 1 : 0)
  const facts = [
    bornAgrees
      ? say("the same birth date")
      : born === undefined
        ? say("the file gives no birth date")
        : isSwapped(born, child.born)
          ? say("day and month of birth are exchanged")
          : say("born {recorded} here, {given} in the file", { recorded: child.born, given: born }),
    nameAgrees
      ? say("the same name")
      : !hasName
        ? say("the file gives no name")
        : isOneLetterOff
          ? say("the name differs by one letter")
          : hasPartOfName
            ? say("a part of the name agrees")
            : say("another name"),
    ...(numberAgrees ? [say("the same number")] : []),
    ...(numberDiffers
      ? [
          say("number {recorded} here, {given} in the file", {
            recorded: child.number ?? "",
            given: number ?? "",
          }),
        ]
      : []),
    ...(sexDiffers
      ? [say("the file says {sex, select, female {girl} other {boy}}", { sex: sex ?? "" })]
      : []),
  ]
  return { ...base, weight, why: facts.join("; ") }
}

/** By the practice's own number, or by the id that files written here name the child by. */
function isSameNumber(given: string | undefined, { number, id }: KnownChild): boolean {
  const plain = given?.trim().toLowerCase()
  return Boolean(plain) && (plain === number?.trim().toLowerCase() || plain === id.toLowerCase())
}

function sharesAWord(a: string, b: string): boolean {
  const words = new Set(nameWords(a).filter((word) => word.length > 2))
  return nameWords(b).some((word) => words.has(word))
}

const isSwapped = (a: CalendarDate, b: CalendarDate): boolean =>
  a !== b && `${a.slice(0, 5)}${a.slice(8)}-${a.slice(5, 7)}` === b

const isNearDate = (a: CalendarDate, b: CalendarDate): boolean => isSwapped(a, b) || editsBetween(a, b) <= 1
