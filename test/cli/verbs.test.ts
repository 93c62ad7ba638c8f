import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { standardProtocol } from "../../src/engine/protocol/standard.js"
import { evidence } from "../../src/evidence/index.js"
import { commandLine, json } from "./fake-io.js"

const asOf = ["--as-of", "2026-08-01"]

describe("lengthwise forecast", () => {
  const forecast = ["forecast", "examples/slowed.json", ...asOf, "--to-age", "18"]

  it("has every key of the contract, each line as long as the ages", async () => {
    const { eyes, chance26mmBy18 } = json(await commandLine([...forecast, "--json"]))
    for (const eye of [eyes.right, eyes.left]) {
      expect(eye.ages.at(-1)).toBe(18)
      for (const fan of [eye.untreated, eye.asTreated]) {
        for (const line of ["p5", "p25", "p50", "p75", "p95"]) expect(fan[line]).toHaveLength(eye.ages.length)
      }
    }
    expect(chance26mmBy18.untreated).toBeGreaterThan(chance26mmBy18.asTreated)
  })

  it("takes an age the child has passed as a fault", async () => {
    const result = await commandLine(["forecast", "examples/slowed.json", ...asOf, "--to-age", "9", "--json"])
    expect(result.code).toBe(1)
    expect(json(result).problems[0].path).toBe("--to-age")
  })

  it("refuses by name beyond the ages of the evidence", async () => {
    const result = await commandLine([
      "forecast",
      "examples/slowed.json",
      ...asOf,
      "--to-age",
      "30",
      "--json",
    ])
    expect(result.code).toBe(0)
    expect(json(result).refused).toMatch(/30/)
  })

  it("says both chances in words", async () => {
    const { stdout } = await commandLine(forecast)
    expect(stdout).toMatch(/reaches 26 mm: .* untreated, .* as treated/)
    expect(stdout).toMatch(/reaches -6 D: .* untreated, .* as treated/)
  })
})

describe("lengthwise centile", () => {
  const centile = ["centile", "--al", "24.1", "--age", "9.5", "--sex", "female"]

  it("places a length on a named reference, with its grade", async () => {
    const answer = json(await commandLine([...centile, "--reference", "al-europe-sexed-approx", "--json"]))
    expect(answer).toMatchObject({ reference: "al-europe-sexed-approx", grade: "C" })
    expect(answer.z).toBeGreaterThan(0)
    expect(answer.centile).toBeGreaterThan(50)
  })

  it("picks a reference by ancestry", async () => {
    expect(json(await commandLine([...centile, "--ancestry", "european", "--json"])).reference).toBeTruthy()
  })

  it("takes the only population at hand for a bare question, and says so", async () => {
    const answer = json(await commandLine([...centile, "--json"]))
    expect(answer.reference).toBe("al-europe-sexed-approx")
    expect(answer.note).toMatch(/no ancestry was given/)
  })

  it("refuses by name where none fits, and exits 0", async () => {
    const result = await commandLine([...centile, "--ancestry", "east-asian", "--json"])
    expect(result.code).toBe(0)
    expect(Object.keys(json(result))).toEqual(["refused"])
  })

  it("refuses a child outside the ages of the reference", async () => {
    const words = [
      "centile",
      "--al",
      "23",
      "--age",
      "3",
      "--sex",
      "male",
      "--reference",
      "al-europe-sexed-approx",
      "--json",
    ]
    expect(json(await commandLine(words)).refused).toBeTruthy()
  })

  it("tells a length of 241, an age of 900 and an unknown reference at once", async () => {
    const words = [
      "centile",
      "--al",
      "241",
      "--age",
      "900",
      "--sex",
      "female",
      "--reference",
      "mine",
      "--json",
    ]
    const result = await commandLine(words)
    expect(result.code).toBe(1)
    expect(json(result).problems.map(({ path }: { path: string }) => path)).toEqual([
      "--al",
      "--age",
      "--reference",
    ])
  })

  it("shows with --why the table, its grade and how it was read", async () => {
    const { stdout } = await commandLine([...centile, "--reference", "olsm-al", "--why"])
    expect(stdout).toMatch(/olsm-al, grade B \(to be read with its limits\)/)
  })
})

describe("lengthwise refraction", () => {
  it("has every key of the contract, from an argument that begins with a minus", async () => {
    const answer = json(await commandLine(["refraction", "-2.25 -0.50 x 180", "--json"]))
    expect(answer).toEqual({
      m: -2.5,
      j0: 0.25,
      j45: 0,
      sphericalEquivalent: -2.5,
      printed: "-2.25 -0.50 x 180",
    })
  })

  it("averages several readings, wherever the options stand", async () => {
    const answer = json(await commandLine(["refraction", "--json", "-2.00 -1.00 x 179", "-2.00 -1.00 x 1"]))
    expect(answer.printed).toBe("-2.00 -1.00 x 180")
  })

  it("takes powers to the cornea", async () => {
    const answer = json(await commandLine(["refraction", "-10.00", "--vertex-mm", "12", "--json"]))
    expect(answer.m).toBeCloseTo(-10 / 1.12, 10)
  })

  it("tells what is wrong with a reading, and where", async () => {
    const result = await commandLine(["refraction", "-2.25 -0.50 x 190", "-2.25", "--json"])
    expect(result.code).toBe(1)
    expect(json(result).problems[0].path).toBe("readings[0].axis")
    expect(result.stderr).toContain("readings[0].axis")
  })
})

describe("lengthwise due", () => {
  const due = ["due", "examples/slowed.json", ...asOf]

  it("gives each duty every key of the contract", async () => {
    const { duties } = json(await commandLine([...due, "--json"]))
    expect(duties.length).toBeGreaterThan(5)
    for (const duty of duties) {
      expect(duty).toEqual({
        kind: expect.any(String),
        step: expect.any(String),
        opens: expect.any(String),
        due: expect.any(String),
        closes: expect.any(String),
        state: expect.stringMatching(/^(done|open|overdue|upcoming|missed)$/),
        needs: expect.any(Array),
      })
    }
  })

  it("follows a protocol of the practice", async () => {
    const own = { ...standardProtocol, id: "own", steps: standardProtocol.steps.slice(0, 1) }
    const result = await commandLine([...due, "--protocol", "own.json", "--json"], {
      files: { "own.json": own },
    })
    expect(json(result).protocol.id).toBe("own")
    expect(json(result).duties.length).toBeLessThan(5)
  })

  it("follows the protocol that fits the treatment, and the one a child names before it", async () => {
    const course = {
      lengthwise: 1,
      child: { born: "2016-05-02", sex: "female" },
      visits: [{ date: "2026-01-10" }],
      treatments: [{ kind: "orthokeratology", from: "2026-01-10" }],
    }
    const followed = async (protocol?: string) => {
      const child = { ...course.child, ...(protocol && { protocol }) }
      return json(
        await commandLine(["due", "c.json", ...asOf, "--json"], {
          files: { "c.json": { ...course, child } },
        }),
      )
    }
    expect((await followed()).protocol.id).toBe("optical")
    expect((await followed("step-down")).protocol.id).toBe("step-down")
    const unknown = await followed("gold")
    expect(unknown.protocol.id).toBe("optical")
    expect(unknown.checks).toContainEqual(
      expect.objectContaining({ kind: "unknown-protocol", path: "child.protocol" }),
    )
  })

  it("tells every fault of a protocol", async () => {
    const own = { ...standardProtocol, title: "", longestPauseDays: -1 }
    const result = await commandLine([...due, "--protocol", "own.json", "--json"], {
      files: { "own.json": own },
    })
    expect(result.code).toBe(1)
    expect(json(result).problems.map(({ path }: { path: string }) => path)).toEqual([
      "title",
      "longestPauseDays",
    ])
  })

  it("tells a protocol that is not JSON", async () => {
    const result = await commandLine([...due, "--protocol", "own.json"], { files: { "own.json": "{" } })
    expect(result.code).toBe(1)
    expect(result.stderr).toContain("own.json is not JSON")
  })
})

describe("lengthwise order", () => {
  const order = ["order", "--concentration", "0.01", "--stock", "1", "--bottles", "1", "--volume-ml", "10"]

  it("has every key of the contract", async () => {
    const answer = json(await commandLine([...order, "--json"]))
    expect(answer.steps[0]).toMatchObject({
      takeMl: 0.5,
      of: "stock 1 %",
      addDiluentMl: 4.5,
      givesPercent: 0.1,
    })
    expect(answer).toMatchObject({
      finalPercent: 0.01,
      low95Percent: expect.any(Number),
      high95Percent: expect.any(Number),
      withinLimits: true,
      mgPerBottle: 1,
      bottles: 1,
      checkPercent: expect.closeTo(0.01, 10),
    })
  })

  it("tells faults by the options as they were typed", async () => {
    const words = ["order", "--concentration", "2", "--stock", "1", "--bottles", "0", "--volume-ml", "10"]
    const result = await commandLine(words)
    expect(result.code).toBe(1)
    expect(result.stderr).toContain("--concentration must be at most the stock's 1 %")
    expect(result.stderr).toContain("--bottles must be a whole number")
  })
})

describe("lengthwise method", () => {
  it("lists every parameter with value, unit, uncertainty, and a source or the assumption with its range", async () => {
    const { values, parameters } = json(await commandLine(["method", "--json"]))
    expect(parameters).toBe(evidence.growth.version)
    expect(values.map(({ name }: { name: string }) => name)).toEqual(Object.keys(evidence.growth.values))
    for (const { name, source, rangeTried } of values) {
      expect(source.length, name).toBeGreaterThan(0)
      if (source.includes("assumption")) expect(rangeTried, name).toHaveLength(2)
    }
  })

  it("has the citation of every source it names", async () => {
    const { values, effects, sources } = json(await commandLine(["method", "--json"]))
    const known = new Set(sources.map(({ id }: { id: string }) => id))
    const named = [...values, ...effects].flatMap(({ source }: { source: string[] }) => source)
    expect(named.filter((id) => id.includes("/") && !known.has(id))).toEqual([])
  })

  it("lists every reference with its grade, for people too", async () => {
    const { stdout } = await commandLine(["method"])
    for (const { id, grade } of evidence.references) expect(stdout).toContain(`${id}, grade ${grade}`)
  })
})

describe("lengthwise schema", () => {
  it("prints the published schema", async () => {
    const published = readFileSync(new URL("../../docs/course-file.schema.json", import.meta.url), "utf8")
    expect(json(await commandLine(["schema"]))).toEqual(JSON.parse(published))
  })
})

describe("lengthwise protocol", () => {
  it("lists the protocols that ship, each saying where its intervals come from", async () => {
    const { protocols } = json(await commandLine(["protocol", "list", "--json"]))
    expect(protocols.map(({ id }: { id: string }) => id)).toEqual([
      "standard",
      "optical",
      "watchful",
      "step-down",
    ])
    for (const { source } of protocols) expect(source).toMatch(/^common practice, no source/)
  })

  it("shows one as the file a practice starts its own from, and that file is without fault", async () => {
    const shown = await commandLine(["protocol", "show", "optical", "--json"])
    const checked = await commandLine(["protocol", "check", "own.json", "--json"], {
      files: { "own.json": shown.stdout },
    })
    expect(checked.code).toBe(0)
    expect(json(checked)).toMatchObject({ id: "optical", problems: [] })
  })

  it("shows one in words", async () => {
    const { stdout } = await commandLine(["protocol", "show", "optical"])
    expect(stdout).toContain("1-week check: 7 days after the start, from 3 days before to 7 days after.")
  })

  it("names the protocols there are when it knows none of that id", async () => {
    const result = await commandLine(["protocol", "show", "gold", "--json"])
    expect(result.code).toBe(1)
    expect(json(result).problems[0].allowed).toBe("one of standard, optical, watchful, step-down")
  })

  it("tells a step before its anchor and an id used twice, each with path and value", async () => {
    const [baseline, check, ...others] = standardProtocol.steps
    const steps = [baseline, { ...check, offsetMonths: -1, id: "baseline" }, ...others]
    const result = await commandLine(["protocol", "check", "own.json", "--json"], {
      files: { "own.json": { ...standardProtocol, steps } },
    })
    expect(result.code).toBe(1)
    expect(json(result).problems).toMatchObject([
      { path: "steps[1].offsetMonths", value: -1, allowed: "a whole number of months from 0 to 240" },
      { path: "steps[1].id", value: "baseline", allowed: "unlike every other id (steps[0] has it)" },
    ])
  })

  it("takes any other action as a slip of usage", async () => {
    expect((await commandLine(["protocol", "invent"])).code).toBe(2)
  })
})
