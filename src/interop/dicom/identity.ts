import { dayNumberOrNull } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Fragment, Identity } from "../intake/fragment.js"
import { type DataSet, textOf, trimmed, wholeTextOf } from "./data-set.js"
import type { Attribute } from "./tags.js"
import { UNREADABLE } from "./text-decoders.js"

type Note = Fragment["notes"][number]

/** Who an object says that it is about, with a note for what it says and cannot be read. */
export function identityOf(set: DataSet): { readonly identity: Identity; readonly notes: readonly Note[] } {
  const notes: Note[] = []
  const number = sensible(textOf(set, "patientId"))
  const name = nameOf(set, notes)
  const born = bornOf(set, notes)
  const sex = textOf(set, "patientSex")?.toUpperCase()
  if (sex !== undefined && sex !== "F" && sex !== "M")
    notes.push({
      kind: "sex-not-read",
      path: "child.sex",
      why: say("the file gives the sex as {sex}, which is not F or M", { sex }),
    })
  return {
    identity: {
      ...(number === undefined ? {} : { number }),
      ...(name === undefined ? {} : { name }),
      ...(born === undefined ? {} : { born }),
      ...(sex === "F" ? { sex: "female" as const } : sex === "M" ? { sex: "male" as const } : {}),
    },
    notes,
  }
}

/** Numbers have 64 letters at most, and so has each spelling of a name; a part of one could be another child's. */
const LONGEST_IDENTIFIER = 200
const sensible = (text: string | undefined): string | undefined =>
  text !== undefined && text.length <= LONGEST_IDENTIFIER ? text : undefined

function nameOf(set: DataSet, notes: Note[]): string | undefined {
  const text = wholeTextOf(set, "patientName")
  if (text === undefined) return undefined
  const name = personName(text)
  if (name !== undefined || !text.includes(UNREADABLE)) return sensible(name)
  notes.push({
    kind: "name-not-read",
    path: "child",
    why: say("the name is in letters that the file's character set does not hold; it was left out"),
  })
  return undefined
}

/**
 * A person's name in reading order. It comes in up to three spellings (Latin letters, ideographs, sounds); the first that
 * is there and can be read is taken. Titles are left out.
 *
 * @example
 * personName("Sample^Child^Marie^^Jr") // => "Child Marie Sample"
 */
export function personName(value: string): string | undefined {
  const [first = ""] = value.split("\\")
  const spelling = first
    .split("=")
    .find((group) => !group.includes(UNREADABLE) && trimmed(group.replaceAll("^", " ")) !== undefined)
  const [family, given, middle] = (spelling ?? "").split("^").map((part) => trimmed(part))
  return trimmed([given, middle, family].filter((part) => part !== undefined).join(" "))
}

function bornOf(set: DataSet, notes: Note[]): CalendarDate | undefined {
  const text = textOf(set, "birthDate")
  const born = text === undefined ? undefined : dayOf(text)
  if (text !== undefined && born === undefined)
    notes.push({
      kind: "birth-date-not-read",
      path: "child.born",
      why: say('the birth date "{text}" is no day of the calendar; it was left out', {
        text: text.slice(0, 30),
      }),
    })
  return born
}

/**
 * A DICOM date, also in the form of the standard's first years; undefined for what is no day of the calendar.
 *
 * @example
 * dayOf("20260316") // => "2026-03-16"
 */
export function dayOf(text: string): CalendarDate | undefined {
  const parts = /^(\d{4})(?:(\d{2})(\d{2})|\.(\d{2})\.(\d{2}))$/.exec(text)
  if (!parts) return undefined
  const day = `${parts[1]}-${parts[2] ?? parts[4]}-${parts[3] ?? parts[5]}`
  return dayNumberOrNull(day) === null ? undefined : day
}

const DAY_SOURCES: readonly Attribute[] = [
  "acquisitionDateTime",
  "acquisitionDate",
  "contentDate",
  "studyDate",
]
/** No instrument was there before; a day before it is a clock that was not set. */
const FIRST_YEAR = "1900"

/** The day on which it was measured, or why there is none that can be believed. */
export function visitDateOf(
  set: DataSet,
  { born, today }: { readonly born: CalendarDate | undefined; readonly today: CalendarDate | undefined },
): { readonly date: CalendarDate } | { readonly why: string } {
  const date = DAY_SOURCES.map((attribute) => {
    const text = textOf(set, attribute)
    return text === undefined
      ? undefined
      : dayOf(attribute === "acquisitionDateTime" ? text.slice(0, 8) : text)
  }).find((day) => day !== undefined)
  if (date === undefined) return { why: say("The file does not say on which day it was measured.") }
  if (date < FIRST_YEAR)
    return {
      why: say("The file says it was measured on {date}: the instrument's clock was wrong.", { date }),
    }
  if (born !== undefined && date < born)
    return {
      why: say("The file says it was measured on {date}, before the child was born ({born}).", {
        date,
        born,
      }),
    }
  if (today !== undefined && date > today)
    return { why: say("The file says it was measured on {date}, a day that is still to come.", { date }) }
  return { date }
}

/** As many letters as the standard allows a model or a serial number. */
const LONGEST_LO = 64

/** Model and serial number, which together tell an instrument from another of the same make. */
export function deviceOf(set: DataSet): string | undefined {
  const parts = [textOf(set, "modelName"), textOf(set, "serialNumber")].flatMap(
    (part) => part?.slice(0, LONGEST_LO) ?? [],
  )
  return parts.length === 0 ? undefined : parts.join(" ")
}
