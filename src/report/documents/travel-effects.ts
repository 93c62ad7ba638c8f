import type { Treatment } from "../../engine/course.js"
import type { EventRow, PhysiologyRow } from "../../engine/safety/safety-evidence.js"
import { msg, say } from "../../engine/say.js"
import { sourceById } from "../../evidence/sources.js"
import { adverseEffects } from "../../evidence/treatments.js"

export interface Noticed {
  /** What somebody beside the child may see or be told, without figures. */
  readonly signs: readonly string[]
  /** Who reported it, as short as a note allows. */
  readonly sources: readonly string[]
}

const PUPIL = msg("The pupils may look wider than usual.")
const NEAR = msg("Reading and writing close up may be harder or blurred.")

/** By what the trials asked the children about. */
const COMPLAINTS: readonly (readonly [sign: string, fields: readonly string[]])[] = [
  [msg("Bright light may bother the child."), ["photophobia"]],
  [NEAR, ["blurred_near", "reading_problems"]],
  [msg("Sight may be blurred at times."), ["blurred_vision"]],
  [msg("The child may have a headache."), ["headache"]],
  [msg("The eyes or lids may be red, itchy or sore."), ["allergic_conjunctivitis", "eye_irritation"]],
]

/**
 * What was reported of children on drops of this strength, and of no other. A complaint counts where any trial reports
 * it, however rare: a note is no place to weigh it against the group without the drug.
 */
export function noticedOn({
  concentrationPercent: percent,
}: Pick<Treatment, "concentrationPercent">): Noticed {
  if (percent === undefined) return { signs: [], sources: [] }
  const events: readonly EventRow[] = adverseEffects.events_percent
  const arms = events.filter(({ arm }) => arm === `atropine ${percent}%`)
  const physiology: readonly PhysiologyRow[] = adverseEffects.physiology
  const changes = physiology.filter((row) => row.concentration_percent === percent)
  const signs = new Map<string, string[]>()
  const add = (sign: string, source: string | undefined) =>
    signs.set(sign, [...(signs.get(sign) ?? []), ...(source === undefined ? [] : [source])])
  for (const [sign, fields] of COMPLAINTS) {
    for (const arm of arms) {
      if (fields.some((field) => typeof arm[field] === "number" && arm[field] > 0)) add(sign, arm.source)
    }
  }
  for (const row of changes) {
    if ((row.photopic_pupil_increase_mm ?? 0) > 0) add(PUPIL, row.source)
    if (isWeaker(row, physiology)) add(NEAR, row.source)
  }
  const order = [...COMPLAINTS.map(([sign]) => sign), PUPIL]
  return {
    signs: order.filter((sign) => signs.has(sign)).map((sign) => say(sign)),
    sources: [...new Set([...signs.values()].flat())].map(shortSource),
  }
}

/** Whether the power to focus near fell, and by more than on drops without the drug where a trial had such. */
function isWeaker(row: PhysiologyRow, all: readonly PhysiologyRow[]): boolean {
  const placebo = all.find(({ trial, concentration_percent: other }) => trial === row.trial && other === 0)
  const lostD = row.accommodation_loss_D
  if (lostD !== undefined) return lostD > (placebo?.accommodation_loss_D ?? 0)
  return Array.isArray(row.accommodation_loss_D_range)
}

/** "Yam 2019": the first author, or the trial where the register names none, and the year. */
function shortSource(id: string): string {
  const [first = id] = (sourceById(`treatments/${id}`)?.citation ?? id).split(" ")
  const year = /\d{4}$/.exec(id)?.[0] ?? ""
  return `${first} ${year}`.trim()
}
