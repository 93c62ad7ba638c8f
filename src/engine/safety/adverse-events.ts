import type { CalendarDate, Course, SafetyConcern } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { msg, say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { inRow } from "./in-row.js"

/** An unwanted effect as it is reported: what, when, under which treatment and from which bottle. */
export interface AdverseEvent {
  /** The practice's number for the child, or the id in its course file; null when it has neither. */
  readonly child: string | null
  /** Only when names were asked for. */
  readonly name?: string
  readonly opened: CalendarDate
  readonly closed: CalendarDate | null
  readonly kind: string
  readonly what: string
  readonly seriousness: NonNullable<SafetyConcern["seriousness"]> | null
  readonly relatedness: NonNullable<SafetyConcern["relatedness"]> | null
  readonly outcome: string | null
  readonly owner: string | null
  /** In use on the day it was opened, in words; null when none was. */
  readonly treatment: string | null
  readonly treatmentSince: CalendarDate | null
  /** Of the drops in use that day, % w/v. */
  readonly concentrationPercent: number | null
  /** Of the last bottle opened by that day, while drops were in use. */
  readonly lot: string | null
  readonly pharmacy: string | null
  readonly bottleOpened: CalendarDate | null
  /** Last day of use of that bottle; an earlier day than `opened` says that it was past its date. */
  readonly bottleBeyondUse: CalendarDate | null
}

/** The concerns of a course that are kept as adverse events and were opened in a span of days, oldest first. */
export function adverseEvents({
  course,
  child,
  from = "0000-01-01",
  to = "9999-12-31",
}: {
  readonly course: Course
  readonly child: { readonly number: string | null; readonly name?: string | undefined }
  /** First and last day, both included. */
  readonly from?: CalendarDate | undefined
  readonly to?: CalendarDate | undefined
}): readonly AdverseEvent[] {
  return (course.concerns ?? [])
    .filter(({ adverseEvent, opened }) => adverseEvent === true && from <= opened && opened <= to)
    .toSorted((a, b) => (a.opened < b.opened ? -1 : a.opened > b.opened ? 1 : 0))
    .map((concern) => ({
      child: child.number,
      ...(child.name === undefined ? {} : { name: child.name }),
      opened: concern.opened,
      closed: concern.closed ?? null,
      kind: concern.kind,
      what: concern.what,
      seriousness: concern.seriousness ?? null,
      relatedness: concern.relatedness ?? null,
      outcome: concern.outcome ?? null,
      owner: concern.owner ?? null,
      ...givenOn(course, concern.opened),
    }))
}

type Given = Pick<
  AdverseEvent,
  | "treatment"
  | "treatmentSince"
  | "concentrationPercent"
  | "lot"
  | "pharmacy"
  | "bottleOpened"
  | "bottleBeyondUse"
>

function givenOn(course: Course, on: CalendarDate): Given {
  const inUse = realTreatments(course).filter((treatment) => isInUse(treatment, on))
  const drops = inUse.find(({ kind }) => kind === "atropine")
  const bottle = (course.supplies ?? [])
    .filter(({ opened }) => drops !== undefined && opened !== undefined && opened <= on)
    .toSorted((a, b) => ((a.opened ?? "") < (b.opened ?? "") ? -1 : 1))
    .at(-1)
  return {
    treatment: inUse.length === 0 ? null : inRow(inUse.map(treatmentName)),
    treatmentSince: inUse[0]?.from ?? null,
    concentrationPercent: drops?.concentrationPercent ?? null,
    lot: bottle?.lot ?? null,
    pharmacy: bottle?.pharmacy ?? null,
    bottleOpened: bottle?.opened ?? null,
    bottleBeyondUse: bottle?.beyondUse ?? null,
  }
}

/** The events as a table of text, a column for the name only when any has one. */
export function adverseEventTable(events: readonly AdverseEvent[]): {
  readonly header: readonly string[]
  readonly rows: readonly (readonly string[])[]
} {
  const isNamed = events.some(({ name }) => name !== undefined)
  const columns = COLUMNS.filter(([field]) => field !== "name" || isNamed)
  return {
    header: columns.map(([, title]) => say(title)),
    rows: events.map((event) => columns.map(([field]) => String(event[field] ?? ""))),
  }
}

const COLUMNS: readonly (readonly [field: keyof AdverseEvent, title: string])[] = [
  ["child", msg("child number")],
  ["name", msg("name|column")],
  ["opened", msg("opened|column")],
  ["closed", msg("closed|column")],
  ["kind", msg("kind|column")],
  ["what", msg("what|column")],
  ["seriousness", msg("seriousness|column")],
  ["relatedness", msg("relatedness|column")],
  ["outcome", msg("outcome|column")],
  ["owner", msg("looked after by")],
  ["treatment", msg("treatment that day")],
  ["treatmentSince", msg("treatment since")],
  ["concentrationPercent", msg("strength, % w/v")],
  ["lot", msg("lot in use")],
  ["pharmacy", msg("pharmacy|column")],
  ["bottleOpened", msg("bottle opened")],
  ["bottleBeyondUse", msg("bottle beyond use after")],
]
