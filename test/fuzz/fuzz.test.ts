import { describe, expect, it } from "vitest"
import { inputAt } from "./frame/inputs.js"
import { fuzzRun } from "./frame/run.js"
import type { FuzzTarget } from "./frame/target.js"
import { targetNamed, targetNames } from "./frame/targets.js"

/** A short run of `npm run fuzz`, which reads at least a hundred thousand. */
const INPUTS = 1500

describe("broken files are refused in words: nothing thrown, nothing hung, no memory kept", () => {
  it.each(targetNames())(
    "%s",
    async (name) => {
      const { failures, inputs } = await fuzzRun({ target: await targetNamed(name), seed: 5, inputs: INPUTS })
      expect(failures).toEqual([])
      expect(inputs).toBe(INPUTS)
    },
    120_000,
  )
})

describe("the frame itself", () => {
  const fragile: FuzzTarget = {
    name: "fragile",
    seeds: async () => [new TextEncoder().encode("a quiet file, line by line")],
    read: async (bytes) => {
      if (bytes.includes(0xff)) throw new RangeError("found 255")
    },
  }

  it("finds what a reader throws at, and gives the same input again by its number", async () => {
    const { failures } = await fuzzRun({ target: fragile, seed: 1, inputs: 2000, mostFailures: 1 })
    expect(failures).toHaveLength(1)
    expect(failures[0]?.why).toContain("found 255")
    const seeds = await fragile.seeds()
    const place = { seed: 1, index: failures[0]?.index ?? 0 }
    const [once, twice] = [
      inputAt({ seeds, target: fragile }, place),
      inputAt({ seeds, target: fragile }, place),
    ]
    expect(once).toEqual(twice)
    await expect(fragile.read(once)).rejects.toThrow("found 255")
  })

  it("leaves the files it breaks as they are", async () => {
    const seeds = [Buffer.from("a quiet file, line by line")]
    for (let index = 0; index < 500; index++) inputAt({ seeds, target: fragile }, { seed: 3, index })
    expect(seeds[0]?.toString()).toBe("a quiet file, line by line")
  })

  it("finds memory that is kept", async () => {
    const kept: Uint8Array[] = []
    const leaking: FuzzTarget = { ...fragile, read: async () => kept.push(new Uint8Array(20_000).fill(1)) }
    const { failures } = await fuzzRun({ target: leaking, seed: 1, inputs: 15_000 })
    kept.length = 0
    expect(failures[0]?.why).toContain("memory grew")
  })
})
