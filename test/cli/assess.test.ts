import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const slowed = ["assess", "examples/slowed.json", "--as-of", "2026-08-01"]
const early = ["assess", "examples/too-early.json", "--as-of", "2026-08-01"]
const born = "2017-03-14"
const girl = { born, sex: "female", ancestry: "east-asian" }
const eyes = (right: number, left: number, sphere = -2.25) => ({
  right: {
    axialLength: { mm: right, readings: 5, method: "optical-biometry" },
    refraction: { sphere, cycloplegic: true, method: "autorefraction" },
  },
  left: {
    axialLength: { mm: left, readings: 5, method: "optical-biometry" },
    refraction: { sphere, cycloplegic: true, method: "autorefraction" },
  },
})
const assess = async (file: unknown, more: readonly string[] = []) =>
  commandLine(["assess", "child.json", "--json", ...more], { files: { "child.json": file } })

describe("lengthwise assess --json", () => {
  it("has every key of the contract", async () => {
    const answer = json(await commandLine([...slowed, "--json"]))
    expect(Object.keys(answer)).toEqual(
      expect.arrayContaining([
        "asOf",
        "eyes",
        "finding",
        "growth",
        "chances",
        "concerns",
        "checks",
        "method",
      ]),
    )
    for (const eye of ["right", "left"]) {
      const { length, rate, natural, emmetropic, detectableChangeMm, position } = answer.eyes[eye]
      expect(length).toEqual({
        mm: expect.any(Number),
        low95: expect.any(Number),
        high95: expect.any(Number),
      })
      expect(rate).toMatchObject({
        mmPerYear: expect.any(Number),
        low95: expect.any(Number),
        high95: expect.any(Number),
        from: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
        to: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
      })
      expect(natural.mmPerYear).toBeGreaterThan(emmetropic.mmPerYear)
      expect(detectableChangeMm).toBeGreaterThan(0)
      expect("refused" in position || "reference" in position).toBe(true)
    }
    expect(Object.keys(answer.finding)).toEqual(
      expect.arrayContaining([
        "state",
        "treatment",
        "likelihoodRatio",
        "lean",
        "upper",
        "lower",
        "earliestAnswer",
      ]),
    )
    expect(Object.keys(answer.growth)).toEqual(
      expect.arrayContaining(["state", "probabilities", "mmPerYear"]),
    )
    expect(answer.method).toEqual({ version: expect.any(String), parameters: expect.any(String) })
  })

  it("gives the chance of an answer by each coming review while there is none", async () => {
    const answer = json(await commandLine([...early, "--json"]))
    expect(answer.chances.length).toBeGreaterThan(2)
    expect(answer.chances[0]).toMatchObject({
      review: expect.any(String),
      ifItWorks: expect.any(Number),
      ifNot: expect.any(Number),
    })
  })

  it("finds the slowed example slowed by its treatment", async () => {
    expect(json(await commandLine([...slowed, "--json"])).finding).toMatchObject({
      state: "slowed",
      treatment: "atropine 0.05 %",
    })
  })

  it.each(["examples/too-early.json", "examples/ultrasound.json"])("cannot tell yet of %s", async (file) => {
    const answer = json(await commandLine(["assess", file, "--as-of", "2026-08-01", "--json"]))
    expect(answer.finding.state).toBe("cannot-tell-yet")
  })

  it("has no treatment to judge in the untreated example", async () => {
    const answer = json(await commandLine(["assess", "examples/untreated-old-glasses.json", "--json"]))
    expect(answer.finding).toMatchObject({ state: "no-treatment", treatment: null, likelihoodRatio: null })
  })

  it.each([
    ["3", "2023-08-01"],
    ["25", "2001-08-01"],
  ])("refuses a child of %s years by name and counts that as an answer", async (_, bornOn) => {
    const visits = [{ date: "2026-07-01", ...eyes(23, 23) }]
    const result = await assess({ lengthwise: 1, child: { ...girl, born: bornOn }, visits }, [
      "--as-of",
      "2026-08-01",
    ])
    expect(result.code).toBe(0)
    expect(json(result).refused).toMatch(/years/)
    expect(json(result).eyes.right.length).toBeNull()
  })

  it("names a check by the place of the visit in the file, not by its order in time", async () => {
    const visits = [
      { date: "2026-07-01", ...eyes(24.4, 24.35, 2.25) },
      { date: "2025-07-01", ...eyes(24.1, 24.05) },
    ]
    const { checks } = json(await assess({ lengthwise: 1, child: girl, visits }))
    expect(checks).toContainEqual(
      expect.objectContaining({ kind: "sign-changed", path: "visits[0].right.refraction.sphere" }),
    )
  })

  it("sees right and left exchanged at one visit", async () => {
    const visits = [
      { date: "2025-01-10", ...eyes(24.1, 24.9) },
      { date: "2025-07-10", ...eyes(24.25, 25.05) },
      { date: "2026-01-10", ...eyes(25.2, 24.4) },
    ]
    const { checks } = json(await assess({ lengthwise: 1, child: girl, visits }))
    expect(checks).toContainEqual(
      expect.objectContaining({ kind: "eyes-exchanged", path: expect.stringContaining("visits[2]") }),
    )
  })

  it("notes a field it does not know among the checks", async () => {
    const { checks } = json(await assess({ lengthwise: 1, child: { ...girl, hobby: "chess" }, visits: [] }))
    expect(checks).toContainEqual(expect.objectContaining({ kind: "unknown-field", path: "child.hobby" }))
  })

  it("answers for an earlier day by leaving later visits out, and says so", async () => {
    const answer = json(
      await commandLine(["assess", "examples/slowed.json", "--as-of", "2025-02-01", "--json"]),
    )
    expect(answer.finding.state).toBe("cannot-tell-yet")
    expect(answer.checks).toContainEqual(expect.objectContaining({ kind: "after-as-of" }))
  })

  it("takes a visit that has not happened yet as a fault", async () => {
    const result = await assess({ lengthwise: 1, child: girl, visits: [{ date: "2027-01-01" }] })
    expect(result.code).toBe(1)
    expect(json(result).problems[0]).toMatchObject({ path: "visits[0].date", value: "2027-01-01" })
  })

  it("takes a question about a day before birth as a fault", async () => {
    const result = await assess({ lengthwise: 1, child: girl, visits: [] }, ["--as-of", "2010-01-01"])
    expect(result.code).toBe(1)
    expect(json(result).problems[0].path).toBe("--as-of")
  })

  it("tells every fault of the example with faults, in JSON on stdout and in sentences on stderr", async () => {
    const result = await commandLine(["assess", "examples/with-faults.json", "--json"])
    expect(result.code).toBe(1)
    expect(json(result).problems).toHaveLength(13)
    for (const { path, message } of json(result).problems) {
      expect(result.stderr).toContain(message)
      expect(path).not.toBe("")
    }
  })
})

describe("lengthwise assess", () => {
  it("tells the growth first, then the treatment, the eyes, chances, the next duty and the caution", async () => {
    const { stdout } = await commandLine(early)
    const headings = [
      "Growth:",
      "Treatment:",
      "Right eye",
      "Left eye",
      "Chance of an answer",
      "Next duty",
      "Not a medical device",
    ]
    const places = headings.map((heading) => stdout.indexOf(heading))
    expect(places).toEqual(places.toSorted((a, b) => a - b))
    expect(places).not.toContain(-1)
  })

  it("stays within a hundred columns", async () => {
    const { stdout } = await commandLine([...slowed, "--why"])
    const long = stdout.split("\n").filter((line) => line.length > 100 && line.trim().includes(" "))
    expect(long).toEqual([])
  })

  it("shows with --why the inputs, the formula in words, parameters with their sources, and the grade", async () => {
    const { stdout } = await commandLine([...slowed, "--why"])
    expect(stdout).toContain("Length on 10 January 2025: right 24.12 mm (5 readings, optical-biometry)")
    expect(stdout).toMatch(/f\s+is\s+the\s+growth\s+less\s+emmetropic\s+growth/)
    expect(stdout).toContain("seasonAmplitude: 0.25 (no SD given). Source: progression/fujiwara2012")
    expect(stdout).toContain("share of natural growth withheld by atropine 0.05 %: 0.45 (SD 0.15)")
    expect(stdout).toMatch(/grade [ABC] \(/)
  })

  it("gives the same explanation in JSON", async () => {
    const { why } = json(await commandLine([...slowed, "--why", "--json"]))
    expect(why.map(({ title }: { title: string }) => title)).toEqual([
      "Why this growth state?",
      "Why this answer about the treatment?",
      "Why this position among peers?",
      "Why these duties?",
    ])
    expect(why[0].sources.length).toBeGreaterThan(5)
  })
})
