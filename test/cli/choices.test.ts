import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const words = ["choices", "examples/slowed.json", "--as-of", "2026-08-01"]
const fees = {
  title: "Fees 2026",
  currency: "EUR",
  from: "2026-01-01",
  fees: [
    {
      id: "review",
      title: "Examination",
      cents: 5000,
      coverage: "not-covered",
      charged: {
        kind: "examination",
        stages: ["baseline", "safety-check", "review", "washout", "discharge"],
      },
    },
    { id: "bottle", title: "Bottle", cents: 3000, coverage: "uncertain", charged: { kind: "bottle" } },
  ],
}

describe("lengthwise choices", () => {
  it("has every option with its figures in the JSON", async () => {
    const { options, eye, assumptions } = json(await commandLine([...words, "--json"]))
    expect(options.map(({ id }: { id: string }) => id).slice(0, 3)).toEqual([
      "as-now",
      "nothing",
      "atropine-0.01",
    ])
    expect(eye).toBe("right")
    expect(assumptions.length).toBeGreaterThan(3)
    for (const { figures } of options) expect(figures.until18.lengthMm.mm).toBeGreaterThan(24)
  })

  it("agrees with the forecast of the same day", async () => {
    const { options } = json(await commandLine([...words, "--json"]))
    const forecast = ["forecast", ...words.slice(1), "--to-age", "18", "--json"]
    const { chance26mmBy18 } = json(await commandLine(forecast))
    expect(options[0].figures.until18.chance26mm.chance).toBeCloseTo(chance26mmBy18.asTreated, 9)
    expect(options[1].figures.until18.chance26mm.chance).toBeCloseTo(chance26mmBy18.untreated, 9)
  })

  it("is read aloud option by option, and recommends none", async () => {
    const { code, stdout } = await commandLine(words)
    expect(code).toBe(0)
    expect(stdout).toMatch(/None is recommended; the clinician and the family\s+decide/)
    expect(stdout).toMatch(/\nGoing on with atropine 0.05 %\n {2}Length of the right eye at 18/)
    expect(stdout).toMatch(/\nNo treatment\n/)
  })

  it("says what each costs by a practice's fees", async () => {
    const { stdout } = await commandLine([...words, "--fees", "fees.json"], { files: { "fees.json": fees } })
    expect(stdout).toMatch(/Cost of the next 30 months: not covered [\d.,]+ EUR; uncertain [\d.,]+ EUR/)
    expect(stdout).toMatch(/Cost of each 0\.1 mm withheld: not covered [\d.,]+ EUR \(/)
  })

  it("tells the faults of the fees", async () => {
    const files = { "fees.json": { ...fees, currency: "euro" } }
    const result = await commandLine([...words, "--fees", "fees.json", "--json"], { files })
    expect(result.code).toBe(1)
    expect(json(result).problems[0].path).toBe("currency")
  })

  it("shows strong drops when they are asked for", async () => {
    expect((await commandLine(words)).stdout).not.toMatch(/\nAtropine 1 %\n/)
    expect((await commandLine([...words, "--strong"])).stdout).toMatch(/\nAtropine 1 %\n/)
  })

  it("refuses by name and exits 0", async () => {
    const course = { lengthwise: 1, child: { born: "2023-01-01", sex: "male" }, visits: [] }
    const result = await commandLine(["choices", "young.json", "--json"], { files: { "young.json": course } })
    expect(result.code).toBe(0)
    expect(json(result)).toMatchObject({
      options: [],
      refused: expect.stringMatching(/covers children of 6/),
    })
  })

  it("says why: formula, parameters, sources", async () => {
    const { why } = json(await commandLine([...words, "--json", "--why"]))
    expect(why.formula.join(" ")).toMatch(/pace x natural growth of that year x share withheld/)
    expect(why.parameters.map(({ name }: { name: string }) => name)).toContain(
      "share of natural growth withheld by lenslet spectacles",
    )
    const sources = why.sources.map(({ id }: { id: string }) => id)
    for (const id of ["treatments/yam2019", "treatments/zadnik2023", "treatments/star2026"]) {
      expect(sources).toContain(id)
    }
  })
})
