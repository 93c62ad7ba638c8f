import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { FeeSchedule } from "../../src/engine/practice-rules.js"
import { demoFees } from "../../src/engine/simulate/demo-fees.js"
import { commandLine, json } from "./fake-io.js"

const course = {
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [],
  payments: [
    { date: "2025-01-02", cents: 4000, currency: "EUR" },
    { date: "2025-01-03", cents: 4000, currency: "CHF" },
  ],
}

const estimate = (fees: unknown, ...words: readonly string[]) =>
  commandLine(["estimate", "child.json", "--fees", "fees.json", "--as-of", "2025-01-10", ...words], {
    files: { "child.json": course, "fees.json": fees },
  })

const drops = ["--treatment", "atropine", "--concentration", "0.05"]

describe("lengthwise estimate", () => {
  it("keeps the three sums apart in its JSON", async () => {
    const { code, ...said } = await estimate(demoFees, ...drops, "--json")
    expect(code).toBe(0)
    const { plan, paid, isInvoice } = json(said)
    expect(isInvoice).toBe(false)
    expect(plan).toMatchObject({ option: "atropine 0.05 %", currency: "EUR", months: 30 })
    // First examination and five reviews; six refractions; six lengths and 25 bottles.
    expect(plan.totals).toEqual({
      coveredCents: 9500 + 5 * 5500,
      uncertainCents: 6 * 2000,
      notCoveredCents: 6 * 4000 + 25 * 3200,
    })
    expect(paid).toMatchObject({ cents: 4000, problems: [{ path: "payments[1].currency", value: "CHF" }] })
  })

  it("tells a person the sums, what was paid, the dates and what is taken for granted", async () => {
    const text = (await estimate(demoFees, ...drops)).stdout.replace(/\s+/g, " ")
    for (const words of [
      "Atropine 0.05 %, 10 January 2025 to 10 July 2027: three sums, not added up.",
      "Not covered: 1,040.00 EUR.",
      "Not counted: payments[1].currency must be EUR, the currency of the fee schedule; the payment of 3 January 2025 is in CHF.",
      "8 August 2025 to 5 January 2026: 6 bottles of atropine 0.05 %, 192.00 EUR, not covered.",
      "10 February 2025: 1-month check, free of charge.",
      "An estimate, not an invoice.",
    ])
      expect(text).toContain(words)
  })

  it("plans the course as recorded where no option is named, and observation for none", async () => {
    const asRecorded = json(await estimate(demoFees, "--json"))
    const none = json(await estimate(demoFees, "--treatment", "none", "--json"))
    expect(asRecorded.plan.option).toBe("observation without treatment")
    expect(none.plan.lines).toEqual(asRecorded.plan.lines)
  })

  it("takes several schedules, each from its day", async () => {
    const later: FeeSchedule = {
      ...demoFees,
      title: "Later",
      from: "2026-01-01",
      fees: demoFees.fees.map((fee) => ({ ...fee, cents: fee.cents * 2 })),
    }
    const { plan } = json(await estimate([demoFees, later], ...drops, "--months", "12", "--json"))
    const lengths = plan.lines.filter(({ fee }: { fee: string }) => fee === "length")
    expect(lengths.map(({ cents }: { cents: number }) => cents)).toEqual([4000, 4000, 8000])
  })

  it("tells every fault of the fees with its place", async () => {
    const [first, ...others] = demoFees.fees
    const fees = {
      ...demoFees,
      currency: "euro",
      fees: [{ ...first, cents: 95.5, coverage: "partly" }, ...others],
    }
    const { code, ...said } = await estimate(fees, "--json")
    expect(code).toBe(1)
    expect(json(said).problems.map(({ path }: { path: string }) => path)).toEqual([
      "currency",
      "fees[0].cents",
      "fees[0].coverage",
    ])
    expect(said.stderr).toContain("Fees: fees[0].cents must be a whole number from 0 to 100000000, not 95.5.")
  })

  it("tells fees that get in each other's way, and schedules in two currencies", async () => {
    const twice = { ...demoFees, fees: [...demoFees.fees, { ...demoFees.fees[3]!, id: "again" }] }
    const franc = { ...demoFees, currency: "CHF", from: "2026-01-01" }
    const said = json(await estimate([twice, franc], "--json"))
    expect(said.problems.map(({ path }: { path: string }) => path)).toEqual([
      "[0].fees[8].charged",
      "[1].currency",
    ])
  })

  it("refuses where no fees are in force yet", async () => {
    const { code, stderr } = await estimate({ ...demoFees, from: "2030-01-01" })
    expect(code).toBe(1)
    expect(stderr).toContain("No fee schedule is in force on 2025-01-10; the first one begins on 2030-01-01.")
  })

  it("asks for a strength with drops, and for none without", async () => {
    const missing = await estimate(demoFees, "--treatment", "atropine")
    expect(missing.stderr).toContain("--concentration is missing")
    const odd = await estimate(demoFees, "--treatment", "orthokeratology", "--concentration", "0.05")
    expect(odd.stderr).toContain("--concentration must be absent")
    expect([missing.code, odd.code]).toEqual([1, 1])
  })

  it("takes months as a whole number", async () => {
    expect((await estimate(demoFees, "--months", "2.5")).code).toBe(2)
  })
})

describe("the example of fees", () => {
  it("is that of the demo practice", () => {
    const example = readFileSync(new URL("../../examples/fees.json", import.meta.url), "utf8")
    expect(JSON.parse(example)).toEqual(demoFees)
  })
})

describe("lengthwise schema fees", () => {
  it("prints the published schema", async () => {
    const published = readFileSync(new URL("../../docs/fees.schema.json", import.meta.url), "utf8")
    expect(json(await commandLine(["schema", "fees"]))).toEqual(JSON.parse(published))
  })
})
