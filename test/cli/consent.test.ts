import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const course = {
  lengthwise: 1,
  child: { born: "2017-03-14", sex: "female" },
  visits: [],
  consents: [
    { date: "2025-01-10", covers: { kind: "atropine", concentrationPercent: 0.05 }, until: "2025-06-01" },
  ],
}
const consent = (...options: string[]) =>
  commandLine(["consent", "course.json", ...options], { files: { "course.json": course } })
const drops = ["--for", "atropine", "--concentration"]

describe("lengthwise consent", () => {
  it("says that a consent covers the treatment, and which", async () => {
    const { stdout } = await consent(...drops, "0.05", "--as-of", "2025-03-01")
    expect(stdout).toBe("On 1 March 2025 the consent of 10 January 2025 covers atropine 0.05 %.\n")
  })

  it("says from the day it was withdrawn that none does", async () => {
    const answer = json(await consent(...drops, "0.05", "--as-of", "2025-06-01", "--json"))
    expect(answer).toMatchObject({
      state: "withdrawn",
      why: "consent to atropine 0.05 % was withdrawn on 2025-06-01",
    })
  })

  it("says that a lower strength is not covered either", async () => {
    const answer = json(await consent(...drops, "0.01", "--as-of", "2025-03-01", "--json"))
    expect(answer).toMatchObject({ state: "another-strength" })
  })

  it("gives the text there is to read, with the figures of the strength", async () => {
    const { stdout } = await consent(...drops, "0.05", "--as-of", "2025-03-01", "--text")
    // LAMP, first year: 0.20 against 0.41 mm (Yam et al. 2019, abstract).
    expect(stdout.replaceAll("\u00a0", " ")).toContain(
      "grew 0.20 mm on average, eyes on drops without the drug 0.41 mm",
    )
    expect(stdout).toContain('Wording "drops", version 1')
  })

  it.each([
    ["es", "0,20 mm de promedio; los ojos con gotas sin el medicamento, 0,41 mm"],
    ["zh-Hans", "眼轴平均增长 0.20 毫米；使用不含药物的滴眼液的眼睛增长 0.41 毫米"],
  ])("gives it in %s, the same figures", async (language, words) => {
    const { stdout } = await consent(
      ...drops,
      "0.05",
      "--as-of",
      "2025-03-01",
      "--text",
      "--language",
      language,
    )
    expect(stdout.replaceAll("\u00a0", " ")).toContain(words)
    expect(stdout).toContain(language)
    // What the practice reads about the consent stays in the language of the command line.
    expect(stdout).toMatch(/^On 1 March 2025 the consent of 10 January 2025 covers atropine 0\.05 %\./)
  })

  it("knows no other language, and says which there are", async () => {
    const { code, stderr } = await consent(...drops, "0.05", "--text", "--language", "fr")
    expect(code).toBe(2)
    expect(stderr).toContain("en, es, zh-Hans")
  })

  it.each([
    ["drops without a strength", ["--for", "atropine"], "the strength asked about"],
    ["a strength no drop has", [...drops, "5"], "at most 1.5"],
    ["glasses with a strength", ["--for", "lenslet-spectacles", "--concentration", "1"], "has no strength"],
  ])("refuses %s", async (_, options, words) => {
    const { code, stderr } = await consent(...options)
    expect(code).toBe(1)
    expect(stderr).toContain(words)
  })

  it("does not know a treatment that is none", async () => {
    expect((await consent("--for", "none")).code).toBe(2)
  })
})
