import type { Instruments, VisitDraft } from "./visit-draft.js"
import { EMPTY_EYE, USUAL_INSTRUMENTS } from "./visit-draft.js"

/** What the browser keeps between visits to the form. A full or forbidden store costs convenience, never the entry. */

const INSTRUMENTS_KEY = "lengthwise.instruments"
const MORE_KEY = "lengthwise.more-measurements"
const draftKey = (name: string): string => `lengthwise.draft.${name}`

export function keepDraft(name: string, draft: VisitDraft): void {
  put(draftKey(name), draft)
}

/** The draft left behind, or null. Anything that does not look like one (an older form) is not used. */
export function keptDraft(name: string): VisitDraft | null {
  const kept = take(draftKey(name))
  if (!looksLikeDraft(kept)) return null
  // A form of before may have had fewer fields.
  return {
    ...kept,
    stage: kept.stage ?? "owed",
    answers: kept.answers ?? {},
    right: { ...EMPTY_EYE, ...kept.right },
    left: { ...EMPTY_EYE, ...kept.left },
  }
}

export function dropDraft(name: string): void {
  try {
    localStorage.removeItem(draftKey(name))
  } catch {
    // Nothing was kept where nothing can be removed.
  }
}

export function keepInstruments(draft: VisitDraft): void {
  const { lengthMethod, device, refractionMethod, accommodationMethod } = draft
  put(INSTRUMENTS_KEY, { lengthMethod, device, refractionMethod, accommodationMethod } satisfies Instruments)
}

/** What was used last on this computer, or null. */
export function keptInstruments(): Instruments | null {
  const kept = take(INSTRUMENTS_KEY)
  return isRecord(kept) ? { ...USUAL_INSTRUMENTS, ...kept } : null
}

/** Whether the folded measurements were open last. */
export function keepMoreOpen(open: boolean): void {
  put(MORE_KEY, open)
}

export const keptMoreOpen = (): boolean => take(MORE_KEY) === true

function put(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value))
  } catch {
    // See above: the form works without.
  }
}

function take(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "null")
  } catch {
    return null
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null

function looksLikeDraft(value: unknown): value is VisitDraft {
  if (!isRecord(value) || typeof value.date !== "string" || !isRecord(value.symptoms)) return false
  return [value.right, value.left].every(
    (eye) => isRecord(eye) && Object.values(eye).every((text) => typeof text === "string"),
  )
}
