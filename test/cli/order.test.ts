import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const order = ["order", "--concentration", "0.01", "--stock", "1", "--bottles", "1", "--volume-ml", "10"]
const twoYears = ["order", "--concentration", "0.01", "--stock", "1", "--bottles", "25", "--volume-ml", "5"]

describe("lengthwise order, beside the keys of the contract", () => {
  it("gives the limits of each measured volume", async () => {
    const { steps } = json(await commandLine([...order, "--json"]))
    expect(steps[0]).toMatchObject({ takeLow95Ml: 0.485, takeHigh95Ml: 0.515, diluentLow95Ml: 4.365 })
  })

  it("takes tolerances in per cent", async () => {
    const answer = json(await commandLine([...order, "--tolerance", "1", "--stock-tolerance", "2", "--json"]))
    const relative = Math.sqrt(0.02 ** 2 + 4 * (0.9 * 0.01) ** 2)
    expect(answer.high95Percent).toBeCloseTo(0.01 * (1 + relative), 12)
  })

  it("says what would bring an interval inside the limits, for machines and aloud", async () => {
    const words = [...order, "--stock-tolerance", "5"]
    const answer = json(await commandLine([...words, "--json"]))
    expect(answer.withinLimits).toBe(false)
    expect(answer.waysInside).toContainEqual(expect.objectContaining({ kind: "larger-volume", totalMl: 50 }))
    const { stdout } = await commandLine(words)
    expect(stdout).toMatch(/NOT within the limits[\s\S]*It would lie within them: make 50 mL in one batch/)
  })

  it("counts the bottles of two years, bound by the month after opening (common practice, no source)", async () => {
    const { bottlesNeeded } = json(await commandLine([...twoYears, "--nights", "730", "--json"]))
    expect(bottlesNeeded).toMatchObject({
      bottles: { low: 25, high: 25 },
      binding: "beyond-use",
      nightsByDrops: { low: 39, high: 102 },
    })
  })

  it("counts for one eye and other days of use", async () => {
    const words = [...twoYears, "--nights", "730", "--eyes", "1", "--days-after-opening", "60", "--json"]
    expect(json(await commandLine(words)).bottlesNeeded.bottles).toEqual({ low: 13, high: 13 })
  })

  it("says aloud how long a bottle lasts and whether what is ordered is enough", async () => {
    const { stdout } = await commandLine([...twoYears, "--nights", "730"])
    const said = stdout.replace(/\s+/g, " ")
    expect(said).toContain("25 bottles of 5 mL cover 730 nights with drops in both eyes.")
    expect(said).toContain("The drops of one bottle last 39 to 102 nights")
    expect(said).toContain("25 bottles ordered: enough.")
    const short = await commandLine([...order, "--nights", "60"])
    expect(short.stdout.replace(/\s+/g, " ")).toContain("1 bottle ordered: too few.")
  })

  it("says whether a preservative is wanted, and what the usual stock carries over", async () => {
    const { stdout } = await commandLine(order)
    expect(stdout).toContain("without preservative")
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "0.0001 % is carried over, which counts as without preservative",
    )
    expect((await commandLine([...order, "--preserved"])).stdout).not.toContain("carried over")
  })

  it("explains the count of bottles with the studies of drops", async () => {
    const { stdout } = await commandLine([...twoYears, "--nights", "730", "--why"])
    expect(stdout).toMatch(/treatments\/moore2017/)
  })

  it("says that undiluted stock is not diluted", async () => {
    const words = ["order", "--concentration", "1", "--stock", "1", "--bottles", "1", "--volume-ml", "5"]
    expect((await commandLine(words)).stdout).toContain("Take 5 mL of stock 1 %, undiluted")
  })
})

describe("lengthwise order, with something wrong", () => {
  const told = async (...words: string[]) => {
    const result = await commandLine([...order, ...words, "--json"])
    expect(result.code).toBe(1)
    return json(result).problems.map(({ path }: { path: string }) => path)
  }

  it("names the option for each fault, all at once and each once", async () => {
    expect(
      await told(
        "--tolerance",
        "100",
        "--stock-tolerance",
        "-1",
        "--graduation-ml",
        "0",
        "--nights",
        "1.5",
        "--eyes",
        "3",
      ),
    ).toEqual(["--graduation-ml", "--tolerance", "--stock-tolerance", "--eyes", "--nights"])
    expect(await told("--volume-ml", "0", "--nights", "30")).toEqual(["--volume-ml"])
  })

  it("shows a tolerance as it was typed", async () => {
    const { stderr } = await commandLine([...order, "--stock-tolerance", "150"])
    expect(stderr).toContain("--stock-tolerance must be a number from 0 to below 100 (per cent); it is 150")
  })

  it("does not guess how long a preserved bottle is used", async () => {
    expect(await told("--preserved", "--nights", "90")).toEqual(["--days-after-opening"])
  })

  it("asks for the nights where eyes or days are given without them", async () => {
    expect(await told("--eyes", "1")).toEqual(["--nights"])
    expect(await told("--days-after-opening", "28")).toEqual(["--nights"])
  })
})
