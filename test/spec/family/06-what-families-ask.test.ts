import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { Course, TreatmentKind } from "../../../src/engine/course.js"
import { duties } from "../../../src/evidence/clinical.js"
import { parseTable } from "../../../src/evidence/parse-table.js"
import { sourceById } from "../../../src/evidence/sources.js"
import { alreadyMyopic, nearWork, shortCitation } from "../../../src/report/family/question-evidence.js"
import { steadyCourse } from "../../steady-child.js"
import { blocksOf, demoChildren, reported, wordsIn } from "./child.js"

const START = "2024-06-15"
const on = (kind: TreatmentKind, concentrationPercent?: number): Course =>
  steadyCourse({
    months: [0, 6, 12],
    shareAfter: 0.6,
    treatments: [
      { from: START, kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) },
    ],
  })
const answers = (course: Course) =>
  blocksOf(reported({ course, today: "2025-06-15" }, { on: "screen" }), "questions").flatMap((block) =>
    block.kind === "answer" ? [block] : [],
  )
const asked = (course: Course) => answers(course).map(({ question }) => question)
const answerTo = (question: RegExp, course: Course) => {
  const found = answers(course).find((each) => question.test(each.question))
  return `${found?.lines.join(" ")} ${found?.grade}`
}

const GENERAL = [
  "Does daylight help?",
  "Do eye exercises, vision training or a diet help?",
  "Do screens and close work do harm?",
  "Will the glasses get stronger?",
]

describe("Families are answered what concerns their child", () => {
  it("on drops", () => {
    expect(asked(on("atropine", 0.05))).toEqual([
      "Are the drops safe?",
      "May we stop early?",
      "What if we miss a night?",
      ...GENERAL,
    ])
  })
  it("with contact lenses", () => {
    expect(asked(on("orthokeratology"))).toEqual(["Are the lenses safe?", "May we stop early?", ...GENERAL])
  })
  it("with spectacles", () => {
    expect(asked(on("lenslet-spectacles"))).toEqual(["May we stop early?", ...GENERAL])
  })
  it("without treatment", () => {
    expect(asked(steadyCourse({ months: [0, 12], shareAfter: 1, treatments: [] }))).toEqual(GENERAL)
  })
})

describe("Each answer stands on rows that were read", () => {
  const drops = on("atropine", 0.05)

  it("stopping: the trial of that strength", () => {
    expect(answerTo(/stop early/, drops)).toMatch(
      /0\.05 % drops.*after 2 years grew 0\.33 mm.*went on grew 0\.17 mm.*Yam 2022/,
    )
    expect(answerTo(/stop early/, on("atropine", 0.01))).toMatch(/0\.01 % drops.*0\.29 mm.*0\.24 mm/)
    expect(answerTo(/stop early/, on("atropine", 0.02))).toMatch(/We have read no trial.*not known/)
    expect(answerTo(/stop early/, on("orthokeratology"))).toMatch(/often came back strongly/)
  })

  it("safety: unwanted effects of that strength, with those of drops without the drug where there were any", () => {
    expect(answerTo(/safe/, drops)).toMatch(
      /about 8 of 100 children, and 15 of 100 saw less clearly.*5 years.*Loughman 2025/,
    )
    expect(answerTo(/safe/, on("atropine", 0.01))).toMatch(
      /about 2 of 100 children, and 3 of 100 on drops without.*Zadnik 2023/,
    )
    expect(answerTo(/safe/, on("atropine", 0.025))).toMatch(/1\.6 D weaker after a year, and 0\.3 D weaker/)
    expect(answerTo(/safe/, on("atropine", 0.04))).toMatch(/We have read no figures/)
    expect(answerTo(/safe/, on("dual-focus-lens"))).toMatch(/Of 10\u202f000 people.*1 to 25 get/)
  })

  it("what nobody has shown is said so", () => {
    for (const question of [/miss a night/, /exercises/])
      expect(answerTo(question, drops)).toMatch(
        /We have read no trial that shows.*We have read no trial of it\./,
      )
    expect(answerTo(/screens/, drops)).toMatch(/We have read no trial that shows it\./)
  })

  it("daylight and close work: the figures of the files, and advice as a rule of thumb", () => {
    expect(answerTo(/daylight/, drops)).toMatch(
      /9\u202f437 children.*0\.09 mm less.*rule of thumb: about 2 hours/,
    )
    expect(answerTo(/screens/, drops)).toMatch(/about 1\.3 times.*every 20 to 30 minutes.*30 cm/)
    const advice = duties.duties.find(({ id }) => id === "CD-100")
    expect(advice?.duty).toMatch(/about 2 hours outdoors.*20-30 minutes.*30 cm/)
    expect(advice?.evidence_status).toBe("verified")
  })

  it("rows taken over by hand equal the files", () => {
    const rowsOf = (name: string) => {
      const file = `src/evidence/tables/progression/${name}`
      const provenance = JSON.parse(readFileSync(`${file}.source.json`, "utf8"))
      return parseTable(`${name}.csv`, readFileSync(`${file}.csv`, "utf8"), provenance).rows
    }
    const near = rowsOf("f_onset_predictors").find(({ row }) => row === nearWork.row)
    expect([near?.source, near?.predictor, Number(near?.value)]).toEqual([
      "dutheil2023",
      "near work, children",
      nearWork.oddsRatio,
    ])
    const modifier = rowsOf("a_modifiers").find(({ row }) => row === alreadyMyopic.row)
    expect([modifier?.source, modifier?.effect, modifier?.value]).toEqual([
      "jonesjordan2021",
      "parental myopia, reading, outdoor time",
      "none",
    ])
    for (const { source } of [nearWork, alreadyMyopic])
      expect(sourceById(source)?.obtained).not.toMatch(/memory/)
  })

  it("sources are named by who and when, never by a title", () => {
    expect(shortCitation("treatments/yam2022")).toBe("Yam 2022")
    expect(shortCitation("progression/jonesjordan2021")).toBe("Jones-Jordan 2021")
    expect(shortCitation("treatments/jcm_optical_cessation2024")).toBe("J Clin Med 2024")
    expect(shortCitation("treatments/star2026")).toBe("STAR")
  })
})

describe("What cannot wait stands out, with the practice's own numbers", () => {
  const drops = on("atropine", 0.05)
  const urgent = (course: Course, contacts = {}) =>
    wordsIn(reported({ course, today: "2025-06-15", rules: { ...noNumbers, contacts } }), "urgent")
  const noNumbers = {
    protocols: [],
    feeSchedules: [],
    consentWordings: [],
    pharmacies: [],
    examinationSwitches: {},
  }

  it("same-day signs for every child", () => {
    for (const { course } of demoChildren())
      expect(wordsIn(reported({ course }), "urgent")).toContain(
        "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight.",
      )
  })
  it("poison with the number of the practice, and without one where none is set", () => {
    expect(urgent(drops, { poisonCentre: "01 02 03", urgent: "04 05" })).toMatch(
      /Call at once: 04 05\..*at once: 01 02 03\./,
    )
    expect(urgent(drops)).toMatch(/call the poison centre of your country at once/)
  })
  it("no word of drops to a family that never had any", () => {
    expect(urgent(steadyCourse({ months: [0], shareAfter: 1, treatments: [] }))).not.toMatch(/drops|poison/)
  })
  it("a warning sign that was told of is asked about first", () => {
    const flagged: Course = {
      ...drops,
      visits: drops.visits.map((visit, i) =>
        i === 2 ? { ...visit, answers: [{ question: "flashes", answer: "yes" }] } : visit,
      ),
    }
    expect(urgent(flagged)).toMatch(/^On 15 June 2025 you told us of a warning sign\./)
  })
})
