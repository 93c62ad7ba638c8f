import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { commandLine, json } from "./fake-io.js"

const course: Course = {
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [
    {
      date: "2026-02-10",
      right: { pupil: { photopic: 4.4 } },
      answers: [{ question: "flashes", answer: "no" }],
    },
  ],
  treatments: [{ from: "2026-01-10", kind: "atropine", concentrationPercent: 0.05 }],
}
const files = { "child.json": course }

describe("lengthwise examination", () => {
  it("lists what is owed with the step or duty behind it", async () => {
    const { code, stdout } = await commandLine(["examination", "child.json", "--as-of", "2026-02-10"], {
      files,
    })
    expect(code).toBe(0)
    expect(stdout).toContain("1-month check on 10 February 2026")
    expect(stdout).toContain("How many drops are missed? (CD-071, verified)")
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "Photopic pupil. (protocol, 1-month check; CD-026, verified",
    )
  })

  it("says what the visit of that day lacks, by eye", async () => {
    const answer = json(
      await commandLine(["examination", "child.json", "--as-of", "2026-02-10", "--json"], { files }),
    )
    const names = answer.missing.map(({ name }: { name: string }) => name)
    expect(names).toContain("photopic pupil (left eye)")
    expect(names).not.toContain("flashes")
  })

  it("shows what a switch would add", async () => {
    const argv = ["examination", "child.json", "--stage", "review", "--on", "CD-028", "--json"]
    const answer = json(await commandLine(argv, { files }))
    expect(answer.owed).toContainEqual(
      expect.objectContaining({
        id: "intraocular-pressure",
        why: [{ from: "duty", duty: "CD-028", status: "partly" }],
      }),
    )
  })
})
