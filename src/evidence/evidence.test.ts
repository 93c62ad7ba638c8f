import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { clinicalProvenance, duties, risk, safetyNorms } from "./clinical.js"
import {
  citationOf,
  emmetropicCurve,
  evidence,
  growthParameters,
  infancyMean,
  references,
  type Source,
  tables,
} from "./index.js"
import { sourceById, sources } from "./sources.js"
import { adverseEffects, metaAnalyses, rebound, treatmentProvenance, trials } from "./treatments.js"

const parameters = Object.entries(growthParameters.values)

function unfrozen(value: unknown, path: string): string[] {
  if (typeof value !== "object" || value === null) return []
  const inner = Object.entries(value).flatMap(([key, item]) => unfrozen(item, `${path}.${key}`))
  return Object.isFrozen(value) ? inner : [path, ...inner]
}

/** Wholly or partly from memory, or looked for and not found. */
const unread = ({ obtained }: Source) => /from memory|^not found/.test(obtained)

describe("growth parameters", () => {
  it.each(parameters)(
    "%s has a source that exists, or is an assumption with the range tried",
    (_, parameter) => {
      expect(parameter.source.length).toBeGreaterThan(0)
      if (parameter.source.includes("assumption")) {
        expect(parameter.source).toEqual(["assumption"])
        expect(parameter.rangeTried).toBeDefined()
      } else {
        for (const id of parameter.source) expect(sourceById(id), id).toBeDefined()
      }
      expect(parameter.note).toMatch(/\S/)
    },
  )

  it.each(parameters)("%s lies inside the range that was tried", (_, { value, rangeTried }) => {
    if (rangeTried === undefined) return
    expect(value).toBeGreaterThanOrEqual(rangeTried[0])
    expect(value).toBeLessThanOrEqual(rangeTried[1])
  })

  it("are those of the fitted model, value for value", () => {
    const path = fileURLToPath(new URL("tables/progression/growth_model.json", import.meta.url))
    const model = JSON.parse(readFileSync(path, "utf8"))
    const noise = model.measurement_within_subject_sd
    const value = (name: keyof typeof growthParameters.values) => growthParameters.values[name].value
    expect([value("rateAt10MmPerYear"), value("eastAsianFactor")]).toEqual([
      model.untreated_rate.parameters.r10,
      model.untreated_rate.parameters.E,
    ])
    expect([value("declineBefore13PerYear"), value("declineAfter13PerYear"), value("kneeAgeYears")]).toEqual([
      model.untreated_rate.parameters.k1,
      model.untreated_rate.parameters.k2,
      model.untreated_rate.knot_age,
    ])
    expect([value("girlFactor"), value("boyFactor")]).toEqual([
      model.untreated_rate.S_sex.girl,
      model.untreated_rate.S_sex.boy,
    ])
    expect([value("youngestAgeYears"), value("oldestFittedAgeYears")]).toEqual(model.untreated_rate.valid_age)
    expect(value("logPaceSd")).toBe(model.between_child.persistent_log_sd)
    expect(value("wobbleMmPerSqrtYear")).toBe(model.between_child.within_child_wobble_mm_per_sqrt_year)
    expect(value("wobbleCorrelationBetweenEyes")).toBe(model.between_eye.correlation_of_elongation)
    expect(value("seasonAmplitude")).toBe(model.season.A)
    expect(value("ultrasoundSessionSdMm")).toBe(noise.AL_ascan_mm)
    expect(value("deviceChangeSdMm")).toBe(noise.AL_extra_sd_if_device_changed_mm)
    expect(value("cycloplegicAutorefractionSdD")).toBe(noise.SER_autoref_cycloplegic_D)
    expect(value("dryAutorefractionSdD")).toBe(noise.SER_autoref_noncycloplegic_child_D)
    expect(value("dryAutorefractionBiasD")).toBe(noise.SER_noncycloplegic_bias_D)
    expect(value("subjectiveSdD")).toBe(noise.SER_subjective_D)
    expect(value("dioptresPerMm")).toBe(model.mm_to_dioptre.longitudinal_D_per_mm)
  })

  it("give a length of the usual readings the published SD between visits within 0.001 mm", () => {
    const { opticalReadingSdMm, opticalUsualReadings, opticalSessionSdMm } = growthParameters.values
    const visit = Math.hypot(
      opticalSessionSdMm.value,
      opticalReadingSdMm.value / Math.sqrt(opticalUsualReadings.value),
    )
    expect(Math.abs(visit - 0.025)).toBeLessThan(0.001)
  })
})

describe("treatment effects", () => {
  it.each(growthParameters.effects.map((effect) => [effect.id, effect] as const))(
    "%s names sources that exist",
    (_, effect) => {
      expect(effect.source.length).toBeGreaterThan(0)
      for (const id of effect.source) expect(sourceById(id), id).toBeDefined()
    },
  )

  it("are the priors of the evidence, share and SD", () => {
    const path = fileURLToPath(new URL("tables/treatments/priors.json", import.meta.url))
    const { priors } = JSON.parse(readFileSync(path, "utf8"))
    const classes: Record<string, string> = {
      "atropine-0.01": "atropine 0.01%",
      "atropine-0.02": "atropine 0.02%",
      "atropine-0.025": "atropine 0.025%",
      "atropine-0.05": "atropine 0.05%",
      "atropine-0.1": "atropine 0.1%",
      "atropine-0.5": "atropine 0.5%",
      "atropine-1": "atropine 1%",
      "defocus-spectacles": "spectacles, multi-segment peripheral defocus",
      "lenslet-spectacles": "spectacles, highly aspherical lenslets",
      "dual-focus-lens": "soft lens, dual-focus",
      "multifocal-lens": "soft lens, multifocal high add",
      orthokeratology: "orthokeratology",
      "atropine-0.01+orthokeratology": "combination: atropine 0.01% + orthokeratology",
    }
    expect(growthParameters.effects.map(({ id }) => id)).toEqual(Object.keys(classes))
    for (const effect of growthParameters.effects) {
      const prior = priors.find((entry: { class: string }) => entry.class === classes[effect.id])
      expect([effect.withheldFraction, effect.withheldFractionSd]).toEqual([
        prior.fraction_avoided,
        prior.fraction_sd,
      ])
    }
  })

  it("say that only the two weakest strengths may do nothing", () => {
    const mayBeNil = growthParameters.effects.filter((effect) => effect.mayBeNil).map(({ id }) => id)
    expect(mayBeNil).toEqual(["atropine-0.01", "atropine-0.02"])
  })
})

describe("what was only remembered", () => {
  const used = [...Object.values(growthParameters.values), ...growthParameters.effects]
    .flatMap(({ source }) => source)
    .filter((id) => id !== "assumption")

  it("is behind no default", () => {
    expect([...new Set(used)].filter((id) => unread(sourceById(id)!))).toEqual([])
  })

  it("is told apart: the registers do hold sources that were not read", () => {
    expect(sources.filter(unread).map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        "progression/donovan2012season",
        "progression/brennan2024",
        "clinical/ISO-8596",
      ]),
    )
  })

  it("is left out of the documents a screen may show", () => {
    const offending: string[] = []
    const visit = (value: unknown, path: string): void => {
      if (typeof value === "string" && /\bmemory\b/i.test(value) && !path.endsWith(".how_obtained")) {
        offending.push(path)
      }
      if (typeof value !== "object" || value === null) return
      if ("how_obtained" in value && value.how_obtained === "from memory, unverified") offending.push(path)
      for (const [key, inner] of Object.entries(value)) visit(inner, `${path}.${key}`)
    }
    visit({ adverseEffects, metaAnalyses, rebound, trials, duties, risk, safetyNorms }, "")
    expect(offending).toEqual([])
  })

  it("takes the unread pupil figures out of a row and leaves the accommodation that was read", () => {
    const row = adverseEffects.physiology.find(
      (entry) => entry.source === "yam2019" && entry.concentration_percent === 0.025,
    )
    expect(row?.accommodation_loss_D).toBe(1.61)
    expect(row?.photopic_pupil_increase_mm).toBeUndefined()
  })

  it("leaves the read arms of the trials in place", () => {
    const placebo = trials.find((arm) => arm.source === "yam2019" && arm.arm === "placebo")
    expect(placebo?.dAL_mean).toBe(0.41)
    expect(trials.some((arm) => arm.source === "repka2023")).toBe(false)
  })
})

describe("the public door", () => {
  it("can cite every source behind a default, as the full register does", () => {
    for (const { source } of [...Object.values(growthParameters.values), ...growthParameters.effects]) {
      for (const id of source) {
        if (id !== "assumption") expect(citationOf(id)).toEqual(sourceById(id))
      }
    }
    expect(citationOf("assumption")).toBeUndefined()
  })

  it("hands out nothing that can be changed", () => {
    const all = {
      evidence,
      infancyMean,
      tables,
      sources,
      adverseEffects,
      metaAnalyses,
      rebound,
      trials,
      duties,
      risk,
      safetyNorms,
      treatmentProvenance,
      clinicalProvenance,
    }
    expect(unfrozen({ ...all }, "all")).toEqual(["all"])
    expect(Object.isFrozen(references) && Object.isFrozen(emmetropicCurve)).toBe(true)
  })
})

describe("the engine", () => {
  /**
   * A literal is distinctive when it has at least three significant digits: such a number in the engine is a copy of
   * the evidence, while 1, 0.5 or 13 may be anything.
   */
  const literals = [
    ...parameters.flatMap(([, { value }]) => [value]),
    emmetropicCurve.asymptoteMm,
    emmetropicCurve.spanMm,
    emmetropicCurve.ratePerYear,
  ].filter((value) => String(Math.abs(value)).replace(/^0\.0*|\./g, "").length >= 3)

  const folder = fileURLToPath(new URL("../engine/", import.meta.url))
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
    (name) => name.endsWith(".ts") && !name.endsWith(".test.ts"),
  )

  it("repeats no number of the evidence: it is given them", () => {
    expect(literals.length).toBeGreaterThan(5)
    expect(files.length).toBeGreaterThan(0)
    const copies = files.flatMap((name) => {
      const code = readFileSync(`${folder}${name}`, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
      const numbers = new Set((code.match(/(?<![\w.])\d*\.?\d+(?![\w.])/g) ?? []).map(Number))
      return literals.filter((value) => numbers.has(Math.abs(value))).map((value) => `${name}: ${value}`)
    })
    expect(copies).toEqual([])
  })
})
