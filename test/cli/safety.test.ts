import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { commandLine, json } from "./fake-io.js"

const course: Course = {
  lengthwise: 1,
  child: { id: "E-7", born: "2016-05-02", sex: "female" },
  visits: [
    {
      date: "2025-01-10",
      right: { pupil: { photopic: 3.8 } },
      left: { pupil: { photopic: 3.8 } },
      answers: [
        { question: "heart-condition", answer: "no" },
        { question: "antimuscarinic-medicines", answer: "yes", note: "syrup for the bladder" },
      ],
    },
    {
      date: "2025-02-10",
      right: { pupil: { photopic: 6.9 } },
      left: { pupil: { photopic: 4.1 } },
      symptoms: [{ kind: "light-sensitivity", grade: 2 }],
      answers: [{ question: "flashes", answer: "yes" }],
    },
  ],
  treatments: [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }],
  supplies: [{ opened: "2025-01-12", concentrationPercent: 0.05, lot: "L-1", pharmacy: "North" }],
  concerns: [
    {
      opened: "2025-02-01",
      kind: "stinging",
      what: "=stings at night",
      adverseEvent: true,
      seriousness: "mild",
      relatedness: "probable",
      closed: "2025-02-05",
      outcome: "gone by itself",
    },
  ],
}
const files = { "child.json": course }
const safety = (...more: string[]) =>
  commandLine(["safety", "child.json", "--as-of", "2025-03-01", ...more], { files })

describe("lengthwise safety", () => {
  it("says red flags before everything else", async () => {
    const { code, stdout } = await safety()
    expect(code).toBe(0)
    expect(stdout.startsWith("Red flags: care on the same day\n  Flashes: told on 10 February 2025.")).toBe(
      true,
    )
    expect(stdout.indexOf("photopic pupil 6.9 mm")).toBeGreaterThan(0)
  })

  it("names the cautions that were not asked and those answered with yes", async () => {
    const { stdout } = await safety()
    expect(stdout).toMatch(
      /Other medicines that act like atropine: 10 January 2025 \(syrup for the bladder\); their\s+effects add\s+up/,
    )
    expect(stdout).toMatch(/not asked yet\n[\s\S]*Narrow angle or shallow chamber \(CD-058\)/)
  })

  it("says what is not watched and why", async () => {
    expect((await safety()).stdout).toMatch(/CD-118, intraocular pressure: 21 mmHg or more/)
  })

  it("gives the same as one JSON document", async () => {
    const answer = json(await safety("--json"))
    expect(answer.redFlags).toHaveLength(1)
    expect(answer.concerns.map(({ kind }: { kind: string }) => kind)).toEqual(["light-sensitivity", "pupil"])
    expect(answer.concerns[0].offers[0]).toMatchObject({ duty: "CD-085" })
    expect(answer.cautions.find(({ id }: { id: string }) => id === "heart-condition").state).toBe("asked-no")
  })

  it("writes the adverse events as a table whose cells are never run as formulas", async () => {
    const { stdout } = await safety("--adverse-events", "--format", "csv")
    const [header, row] = stdout.split("\r\n")
    expect(header).toContain('"child number","opened","closed","kind","what"')
    expect(row).toContain(`"E-7","2025-02-01","2025-02-05","stinging","'=stings at night"`)
    expect(row).toContain('"atropine 0.05 %","2025-01-10","0.05","L-1","North"')
  })

  it("and as JSON", async () => {
    const { adverseEvents } = json(await safety("--adverse-events", "--format", "json"))
    expect(adverseEvents).toMatchObject([{ child: "E-7", lot: "L-1", relatedness: "probable" }])
  })

  it("says plainly when nothing is open", async () => {
    const quiet = { ...course, visits: [], concerns: [] }
    const { stdout } = await commandLine(["safety", "child.json", "--as-of", "2025-03-01"], {
      files: { "child.json": quiet },
    })
    expect(stdout).toContain(
      "Nothing is open on 1 March 2025. What was not measured or asked raises nothing.",
    )
  })
})
