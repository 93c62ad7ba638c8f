/** Duties of 100,000 invented courses in one run, by the protocol that fits each, in processor time. */
import { addDays, addMonths, duties, protocolFor, randomFrom } from "../dist/engine/index.js"

const CHILDREN = 100_000
const BATCH = 500
const TODAY = "2026-11-25"
const random = randomFrom(7)
const between = (low, high) => low + Math.floor(random.uniform() * (high - low + 1))
const happens = (chance) => random.uniform() < chance

const eye = () => ({
  axialLength: { mm: 24, readings: 5 },
  refraction: { sphere: -2, cycloplegic: true },
  pupil: { photopic: 4 },
  accommodation: { dioptres: 12 },
  acuity: { nearLogMAR: 0.1 },
})
const TREATMENTS = [
  { kind: "atropine", concentrationPercent: 0.05 },
  { kind: "atropine", concentrationPercent: 0.025 },
  { kind: "defocus-spectacles" },
  { kind: "orthokeratology" },
  null,
]

/** Up to five years of half-yearly visits, some late, some missed; a change of strength, a stop, monthly bottles. */
function course() {
  const start = addDays(TODAY, -between(0, 1800))
  const given = random.pick(TREATMENTS)
  const dates = [start, addMonths(start, 1)]
  for (let month = 6; month <= 60; month += 6) dates.push(addDays(addMonths(start, month), between(-20, 40)))
  const visits = dates
    .filter((date) => date <= TODAY && (date === start || happens(0.9)))
    .map((date) => ({ date, right: eye(), left: eye(), symptoms: [] }))
  const change = given?.concentrationPercent && happens(0.3) ? addMonths(start, 12) : null
  const stop = happens(0.4) ? addMonths(start, 24) : null
  const treatments = given
    ? [
        { ...given, from: start, to: change ?? stop },
        ...(change ? [{ kind: "atropine", concentrationPercent: 0.01, from: change, to: stop }] : []),
      ]
    : []
  const supplies = []
  if (given?.concentrationPercent) {
    for (let month = 0; month < 24; month++) {
      const opened = addMonths(start, month)
      if (opened <= TODAY)
        supplies.push({ ...given, kind: undefined, opened, beyondUse: addDays(opened, 30) })
    }
  }
  const consents = treatments.map(({ kind, concentrationPercent, from }) => ({
    date: from,
    covers: { kind, concentrationPercent },
  }))
  return {
    lengthwise: 1,
    child: { born: addDays(start, -3000), sex: "female" },
    visits,
    treatments,
    supplies,
    consents,
  }
}

const rules = { protocols: [] }
let spent = 0
let owed = 0
let visits = 0
for (let done = 0; done < CHILDREN; done += BATCH) {
  const courses = Array.from({ length: BATCH }, course)
  const started = process.cpuUsage()
  for (const child of courses) {
    const protocol = protocolFor({ course: child, today: TODAY, rules })
    owed += duties({ course: child, protocol, today: TODAY }).length
  }
  const { user, system } = process.cpuUsage(started)
  spent += (user + system) / 1000
  for (const child of courses) visits += child.visits.length
}
const seconds = spent / 1000
console.log(
  `Duties of ${CHILDREN.toLocaleString("en")} children in one run: ${seconds.toFixed(1)} s of processor time, ${Math.round(CHILDREN / seconds).toLocaleString("en")} children per second on one core`,
)
console.log(
  `  ${(owed / CHILDREN).toFixed(1)} duties and ${(visits / CHILDREN).toFixed(1)} visits a child; bound by the dates of each step and by the short-lived objects of each duty, not by the visits`,
)
