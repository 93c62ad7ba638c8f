import type { CalendarDate } from "../../../engine/course.js"
import { say } from "../../../engine/say.js"
import { type Loose, record } from "../../course/loose.js"
import { OLD_GLASSES } from "../r4/glasses.js"
import { isSame, withoutLoss } from "../remainder.js"
import type { NotTaken } from "./collected.js"
import type { Piece } from "./piece.js"

/** A course file made of pieces, before it is checked. */
export interface Assembled {
  readonly file: Readonly<Record<string, unknown>>
  /** Who gave what stands at a path of the file. */
  readonly owners: ReadonlyMap<string, readonly Piece[]>
  readonly notTaken: readonly NotTaken[]
}

type PieceOf<Kind extends Piece["kind"]> = Extract<Piece, { kind: Kind }>
type Fields = Record<string, unknown>

interface Day {
  fields: Fields
  readonly right: Fields
  readonly left: Fields
  readonly others: Record<"right" | "left", PieceOf<"eye">[]>
  readonly sources: PieceOf<"source">[]
  readonly bases: PieceOf<"base">[]
  readonly given: { readonly at: string; readonly piece: Piece }[]
  isOnlyOldGlasses: boolean
}

export function assembled(pieces: readonly Piece[]): Assembled {
  const days = new Map<CalendarDate, Day>()
  const notTaken: NotTaken[] = []
  const refuse = (piece: Piece, why: string) => notTaken.push({ where: piece.origin, why })
  const dayOf = (date: CalendarDate): Day => {
    const known = days.get(date)
    if (known) return known
    const fresh: Day = {
      fields: { date },
      right: {},
      left: {},
      others: { right: [], left: [] },
      sources: [],
      bases: [],
      given: [],
      isOnlyOldGlasses: false,
    }
    days.set(date, fresh)
    return fresh
  }
  const isForeignGlasses = (piece: Piece) => piece.kind === "eye" && piece.isOldGlasses === true
  for (const piece of pieces.filter((each) => !isForeignGlasses(each))) takeIn(piece, { dayOf, refuse })
  for (const piece of pieces.filter(isForeignGlasses)) takeGlasses(piece, { days, dayOf, refuse })
  return { ...file(days, itemsOf(pieces)), notTaken }
}

interface Taking {
  readonly dayOf: (date: CalendarDate) => Day
  readonly refuse: (piece: Piece, why: string) => void
}

function takeIn(piece: Piece, { dayOf, refuse }: Taking): void {
  if (piece.kind === "item") return
  const day = dayOf(piece.date)
  if (piece.kind === "source") day.sources.push(piece)
  if (piece.kind === "base") {
    if (day.bases.length > 0) refuse(piece, say("Another visit of this day was taken."))
    else day.bases.push(piece)
  }
  if (piece.kind === "asked") {
    if (day.fields[piece.field] === undefined) {
      day.fields[piece.field] = piece.value
      day.given.push({ at: piece.field, piece })
    } else refuse(piece, clash(piece.date))
  }
  if (piece.kind === "eye") takeFigure(piece, { day, refuse })
}

function takeFigure(
  piece: PieceOf<"eye">,
  { day, refuse }: { readonly day: Day; readonly refuse: Taking["refuse"] },
): void {
  const { eye, field, value } = piece
  const eyeFields = day[eye]
  if (field === "otherRefractions") {
    day.others[eye].push(piece)
    return
  }
  const known = eyeFields[field]
  if (known === undefined) {
    eyeFields[field] = value
    day.given.push({ at: `${eye}.${field}`, piece })
    return
  }
  if (isSame(known, value)) return
  if (field === "refraction" && isByOtherMethod(record(known), record(value))) {
    day.others[eye].push(piece)
    return
  }
  // Far and near acuity, or the two pupils, stand in two Observations and in one field.
  const [a, b] = [record(known), record(value)]
  const isShared = Object.keys(b).some((name) => Object.hasOwn(a, name))
  if ((field === "acuity" || field === "pupil") && !isShared) {
    eyeFields[field] = { ...a, ...b }
    day.given.push({ at: `${eye}.${field}`, piece })
    return
  }
  refuse(piece, clash(piece.date))
}

const isByOtherMethod = (a: Loose, b: Loose): boolean =>
  a.method !== b.method || a.cycloplegic !== b.cycloplegic

const clash = (date: CalendarDate): string =>
  say("Another value for the same thing on {date} was taken; they differ, and which holds is not known.", {
    date,
  })

/** Prescriptions of another program are years of old glasses; on a day with figures they add nothing that was measured. */
function takeGlasses(
  piece: Piece,
  { days, dayOf, refuse }: Taking & { readonly days: ReadonlyMap<CalendarDate, Day> },
): void {
  if (piece.kind !== "eye") return
  const known = days.get(piece.date)
  if (known !== undefined && !known.isOnlyOldGlasses) {
    refuse(piece, say("The glasses were prescribed on a day with figures, which were taken instead."))
    return
  }
  const day = dayOf(piece.date)
  day.isOnlyOldGlasses = true
  day.fields.from = OLD_GLASSES
  takeFigure(piece, { day, refuse })
}

type Items = ReadonlyMap<string, readonly PieceOf<"item">[]>

/** In the order they had; those of other programs after them. */
function itemsOf(pieces: readonly Piece[]): Items {
  const lists = new Map<string, PieceOf<"item">[]>()
  for (const piece of pieces) {
    if (piece.kind !== "item") continue
    const list = lists.get(piece.list)
    if (list) list.push(piece)
    else lists.set(piece.list, [piece])
  }
  for (const list of lists.values()) list.sort(byPlace)
  return lists
}

const byPlace = (a: { place?: number | undefined }, b: { place?: number | undefined }) =>
  (a.place ?? Number.MAX_SAFE_INTEGER) - (b.place ?? Number.MAX_SAFE_INTEGER)

function file(days: ReadonlyMap<CalendarDate, Day>, items: Items): Omit<Assembled, "notTaken"> {
  const owners = new Map<string, Piece[]>()
  const own = (path: string, piece: Piece) => {
    const known = owners.get(path)
    if (known) known.push(piece)
    else owners.set(path, [piece])
  }
  const visits = [...days.values()]
    .toSorted((a, b) => (String(a.fields.date) < String(b.fields.date) ? -1 : 1))
    .map((day, index) => {
      const at = `visits[${index}]`
      for (const { at: field, piece } of day.given) {
        own(`${at}.${field}`, piece)
        own(at, piece)
      }
      for (const eye of ["right", "left"] as const) {
        const others = day.others[eye].toSorted(byPlace)
        for (const [place, piece] of others.entries()) {
          own(`${at}.${eye}.otherRefractions[${place}]`, piece)
          own(at, piece)
        }
        if (others.length > 0) day[eye].otherRefractions = others.map(({ value }) => value)
        if (Object.keys(day[eye]).length > 0) day.fields[eye] = day[eye]
      }
      const sources = day.sources.toSorted(byPlace)
      for (const [place, piece] of sources.entries()) {
        own(`${at}.sources[${place}]`, piece)
        own(at, piece)
      }
      if (sources.length > 0) day.fields.sources = sources.map(({ value }) => value)
      for (const piece of day.bases) own(at, piece)
      return day.bases.reduce<unknown>((visit, { resource }) => withoutLoss(resource, visit), day.fields)
    })
  const lists = [...items].map(([list, held]) => {
    for (const [place, piece] of held.entries()) own(`${list}[${place}]`, piece)
    for (const piece of held) own(list, piece)
    return [list, held.map(({ value }) => value)] as const
  })
  return { file: { ...Object.fromEntries(lists), visits }, owners }
}
