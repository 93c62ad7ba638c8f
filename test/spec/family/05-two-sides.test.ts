import { describe, expect, it } from "vitest"
import type { Language } from "../../../src/engine/say.js"
import { PAPERS, type PaperSize } from "../../../src/report/document.js"
import { documentOf } from "../../../src/report/documents.js"
import { pdfOf } from "../../../src/report/pdf/pdf.js"
import { blocksOf, demoChildren, inputOf, reported } from "./child.js"

const LINK = "https://practice.example/f/3kd93kdk93kd93k20dk30dk30d"

function pagesOf(
  child: ReturnType<typeof demoChildren>[number],
  language: Language,
  paper: PaperSize,
): number {
  const document = documentOf("family", inputOf({ ...child, language, familyLink: LINK }))
  if (document.kind === "refused") throw new Error(document.why)
  const pdf = pdfOf([document], paper)
  if (pdf.kind === "refused") throw new Error(pdf.why)
  return pdf.pages
}

describe("The paper has two sides", () => {
  // Spanish on Letter is the tightest: the longest words on the shortest page.
  it.each(demoChildren().map((child) => [child.course.child.id ?? "", child] as const))(
    "%s in Spanish on Letter",
    (_, child) => {
      expect(pagesOf(child, "es", "letter")).toBe(2)
    },
  )

  it("in every language on either paper", () => {
    const some = demoChildren().filter(({ course }) =>
      /^(slowed|combined|too-early|pre-myopic|exchanged-eyes)-1$/.test(course.child.id ?? ""),
    )
    expect(some).toHaveLength(5)
    for (const child of some)
      for (const language of ["en", "zh-Hans"] as const)
        for (const paper of PAPERS) expect(pagesOf(child, language, paper)).toBe(2)
  })
})

describe("Paper and screen are set from the same parts", () => {
  const [child] = demoChildren().filter(({ course }) => course.child.id === "slowed-1")
  if (!child) throw new Error("the child is meant to be there")
  const names = (on: "paper" | "screen") =>
    reported({ ...child, familyLink: LINK }, { on }).parts.map(({ name }) => name)

  it("in this order", () => {
    expect(names("paper")).toEqual([
      "lead",
      "what-we-saw",
      "figure-eyes",
      "what-it-means",
      "figure-growth",
      "second-side",
      "what-we-do-next",
      "watch-for",
      "urgent",
      "questions",
      "about",
      "code",
    ])
    expect(names("screen")).toEqual(
      names("paper").map((name) => (name === "second-side" ? "figure-length" : name)),
    )
  })

  it("with three figures at most", () => {
    for (const each of demoChildren()) {
      const figures = (on: "paper" | "screen") =>
        blocksOf(reported(each, { on })).filter(({ kind }) => kind === "figure").length
      expect(figures("paper")).toBeLessThanOrEqual(2)
      expect(figures("screen")).toBeLessThanOrEqual(3)
    }
  })

  it("with a code only where the family has a link, and nothing of the child in it", () => {
    expect(blocksOf(reported(child), "code")).toEqual([])
    const [code] = blocksOf(reported({ ...child, familyLink: LINK }), "code")
    expect(code).toMatchObject({ kind: "code", svg: expect.stringContaining("<svg") })
    expect(JSON.stringify(code)).not.toContain(child.name)
  })
})
