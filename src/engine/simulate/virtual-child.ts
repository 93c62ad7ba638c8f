import type { Evidence } from "../../evidence/types.js"
import { ageYears } from "../calendar.js"
import type { Course, Eye, EyeExamination, Refraction, Visit } from "../course.js"
import { EYES } from "../course.js"
import { naturalGrowth } from "../growth/natural-growth.js"
import { eyeIndex, lengthSdMm } from "../growth/observations.js"
import { type TreatmentColumn, treatmentColumns } from "../growth/treatment-columns.js"
import type { Random } from "./random.js"

/** What is true of a virtual child; drawn from the model's own priors unless given. */
export interface Truth {
  /** Own multiple of natural growth. */
  readonly pace: number
  /** Withheld fraction by treatment key. */
  readonly withheld: Readonly<Record<string, number>>
  readonly dioptresPerMm: number
}

export interface VirtualChild {
  readonly course: Course
  readonly truth: Truth
  /** True length without noise, mm, per visit of the course; and at the extra ages asked for. */
  readonly trueMm: Readonly<Record<Eye, readonly number[]>>
  readonly extraMm: Readonly<Record<Eye, readonly number[]>>
}

/**
 * Fills the measurements of a planned course (visits with the fields wanted, values ignored) from the growth model:
 * draws pace, effects, lasting difference of the eyes, wobble and noise. The plan says what is measured, when and how.
 */
export function virtualChild({
  plan,
  evidence,
  random,
  fixed = {},
  startMm,
  startD = -2,
  settingFactor = 1,
  extraAges = [],
}: {
  plan: Course
  evidence: Evidence
  random: Random
  fixed?: { pace?: number; withheld?: Readonly<Record<string, number>> }
  startMm?: number
  startD?: number
  settingFactor?: number
  extraAges?: readonly number[]
}): VirtualChild {
  const parameters = evidence.growth
  const { values } = parameters
  const lastDate =
    plan.visits
      .map((visit) => visit.date)
      .sort()
      .at(-1) ?? plan.child.born
  const growth = naturalGrowth({
    child: plan.child,
    latitudeDegrees: plan.practice?.latitude,
    parameters,
    settingFactor,
  })
  const columns = treatmentColumns({ course: plan, asOf: lastDate, parameters })
  const tau = values.logPaceSd.value
  const pace = fixed.pace ?? Math.exp(tau * random.normal() - (tau * tau) / 2)
  const withheld = Object.fromEntries(
    columns.map((column) => [
      column.key,
      fixed.withheld?.[column.key] ?? column.prior.mean + column.prior.sd * random.normal(),
    ]),
  )
  const dioptresPerMm = values.dioptresPerMm.value + (values.dioptresPerMm.sd ?? 0) * random.normal()

  const visitAges = plan.visits.map((visit) => ageYears({ born: plan.child.born, on: visit.date }))
  const ages = [...new Set([...visitAges, ...extraAges])].sort((a, b) => a - b)
  const lengths = trueLengths({ ages, pace, withheld, columns, growth, values, random, startMm })
  const at = (eye: Eye, age: number) => lengths[eye][ages.indexOf(age)] as number

  const devices = new Map<string, number>()
  const ways = new Map<string, number>()
  const visits = plan.visits.map((visit, v): Visit => {
    const shared = random.normal()
    const filled = EYES.map((eye) => {
      const wanted = visit[eye]
      if (!wanted) return [eye, undefined] as const
      const mm = at(eye, visitAges[v] as number)
      const grown = mm - (lengths[eye][0] as number)
      return [
        eye,
        {
          ...wanted,
          ...measuredLength(wanted, mm),
          ...measuredRefraction(wanted, startD - dioptresPerMm * grown, shared),
        },
      ] as const
    })
    const [right, left] = filled.map(([, exam]) => exam)
    return { ...visit, ...(right ? { right } : {}), ...(left ? { left } : {}) }
  })

  function measuredLength(wanted: EyeExamination, mm: number): Pick<EyeExamination, "axialLength"> {
    if (!wanted.axialLength) return {}
    const name = `${wanted.axialLength.method ?? ""}/${wanted.axialLength.device ?? ""}`
    if (!devices.has(name)) {
      devices.set(name, devices.size === 0 ? 0 : values.deviceChangeSdMm.value * random.normal())
    }
    const noise = lengthSdMm(wanted.axialLength, parameters) * random.normal()
    return {
      axialLength: { ...wanted.axialLength, mm: round(mm + (devices.get(name) as number) + noise, 3) },
    }
  }

  function measuredRefraction(
    wanted: EyeExamination,
    trueD: number,
    shared: number,
  ): Pick<EyeExamination, "refraction"> {
    if (!wanted.refraction) return {}
    const way = wayOf(wanted.refraction)
    const share = values.refractionSharedShare.value
    const noise = way.sdD * (Math.sqrt(share) * shared + Math.sqrt(1 - share) * random.normal())
    return { refraction: { ...wanted.refraction, sphere: round(trueD + way.offsetD + noise, 3) } }
  }

  function wayOf(refraction: Refraction): { sdD: number; offsetD: number } {
    const dry = refraction.cycloplegic !== true
    const auto = refraction.method === "autorefraction"
    const name = dry ? (auto ? "dry" : "subjective") : "wet"
    if (!ways.has(name)) {
      const bias = values.dryAutorefractionBiasD
      const offset =
        name === "wet"
          ? 0
          : name === "dry"
            ? bias.value + (bias.sd ?? 0) * random.normal()
            : values.methodChangeSdD.value * random.normal()
      ways.set(name, offset)
    }
    const sd = auto
      ? dry
        ? values.dryAutorefractionSdD
        : values.cycloplegicAutorefractionSdD
      : values.subjectiveSdD
    return { sdD: sd.value, offsetD: ways.get(name) as number }
  }

  const pickAges = (eye: Eye, wanted: readonly number[]) => wanted.map((age) => at(eye, age))
  return {
    course: { ...plan, visits },
    truth: { pace, withheld, dioptresPerMm },
    trueMm: { right: pickAges("right", visitAges), left: pickAges("left", visitAges) },
    extraMm: { right: pickAges("right", extraAges), left: pickAges("left", extraAges) },
  }
}

function trueLengths(input: {
  ages: readonly number[]
  pace: number
  withheld: Readonly<Record<string, number>>
  columns: readonly TreatmentColumn[]
  growth: ReturnType<typeof naturalGrowth>
  values: Evidence["growth"]["values"]
  random: Random
  startMm: number | undefined
}): Record<Eye, number[]> {
  const { ages, pace, withheld, columns, growth, values, random } = input
  const start = input.startMm ?? 24 + 0.8 * random.normal()
  const now: [number, number] = [start + 0.1 * random.normal(), start + 0.1 * random.normal()]
  const difference = [random.normal(), random.normal()].map((z) => z * values.eyeDifferenceSd.value)
  const out: Record<Eye, number[]> = { right: [now[0]], left: [now[1]] }
  const rho = values.wobbleCorrelationBetweenEyes.value
  for (let i = 1; i < ages.length; i++) {
    const [from, to] = [ages[i - 1] as number, ages[i] as number]
    const natural = growth.cumulativeMm(to) - growth.cumulativeMm(from)
    const held = columns.reduce(
      (sum, column) => sum + (withheld[column.key] as number) * exposedBetween(column, from, to, growth),
      0,
    )
    const wobble = values.wobbleMmPerSqrtYear.value * Math.sqrt(to - from)
    const common = random.normal()
    for (const eye of EYES) {
      const e = eyeIndex(eye)
      const step = wobble * (Math.sqrt(rho) * common + Math.sqrt(1 - rho) * random.normal())
      now[e] += pace * (natural - held) + (difference[e] as number) * natural + step
      out[eye].push(now[e])
    }
  }
  return out
}

function exposedBetween(
  column: TreatmentColumn,
  from: number,
  to: number,
  growth: ReturnType<typeof naturalGrowth>,
): number {
  return column.exposures.reduce((sum, exposure) => {
    const [a, b] = [Math.max(from, exposure.fromAge), Math.min(to, exposure.toAge)]
    return b > a ? sum + exposure.share * (growth.cumulativeMm(b) - growth.cumulativeMm(a)) : sum
  }, 0)
}

const round = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits
