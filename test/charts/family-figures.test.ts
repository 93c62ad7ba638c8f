import { describe, expect, it } from "vitest"
import { eyeSizesFigure } from "../../src/chart/family/eye-sizes.js"
import { differenceWords } from "../../src/chart/family/figure-words.js"
import { growthBarsFigure } from "../../src/chart/family/growth-bars.js"
import type { FamilyFigureOptions } from "../../src/chart/family/large-text.js"
import { largeLines } from "../../src/chart/family/large-text.js"
import { type LengthPathInput, lengthPathFigure } from "../../src/chart/family/length-path.js"
import { textWidth } from "../../src/chart/text-size.js"
import { inLanguage } from "../../src/engine/say.js"
import * as inputs from "./family-inputs.js"
import { expectFigure } from "./snapshot.js"
import { overlapping, textBoxes } from "./texts.js"

const eye = inputs.eyeSizes.eyes
const shorter: LengthPathInput = {
  ...inputs.lengthPathInSpanish,
  usual: inputs.lengthPath.usual.map(({ ageYears, mm }) => ({ ageYears, mm: mm + 2 })),
}
const measuredOnce: LengthPathInput = {
  ...inputs.lengthPathInSpanish,
  measured: inputs.lengthPath.measured.slice(-1),
}
const noneAhead = (): LengthPathInput => {
  const { ahead: _, ...rest } = inputs.lengthPathInChinese
  return rest
}
type Draw = (options?: FamilyFigureOptions) => { readonly svg: string; readonly description: string }
const FIGURES: Readonly<Record<string, Draw>> = {
  "family-eye-sizes": (o) => eyeSizesFigure(inputs.eyeSizes, o),
  "family-eye-sizes-es": (o) => eyeSizesFigure(inputs.eyeSizesInSpanish, o),
  "family-eye-sizes-zh": (o) => eyeSizesFigure(inputs.eyeSizesInChinese, o),
  "family-eye-sizes-one": (o) => eyeSizesFigure({ ...inputs.eyeSizes, eyes: eye.slice(1, 2) }, o),
  "family-growth-bars": (o) => growthBarsFigure(inputs.growthBars, o),
  "family-growth-bars-es": (o) => growthBarsFigure(inputs.growthBarsInSpanish, o),
  "family-growth-bars-zh": (o) => growthBarsFigure(inputs.growthBarsInChinese, o),
  "family-length-path": (o) => lengthPathFigure(inputs.lengthPath, o),
  "family-length-path-es": (o) => lengthPathFigure(inputs.lengthPathInSpanish, o),
  "family-length-path-zh": (o) => lengthPathFigure(inputs.lengthPathInChinese, o),
  "family-length-path-none-ahead": (o) => lengthPathFigure(noneAhead(), o),
  "family-length-path-shorter": (o) => lengthPathFigure(shorter, o),
  "family-length-path-once": (o) => lengthPathFigure(measuredOnce, o),
}
const languageOf = (name: string) => (name.endsWith("-es") ? "es" : name.endsWith("-zh") ? "zh-Hans" : "en")
const drawn = (name: string, draw: Draw, options?: FamilyFigureOptions) =>
  inLanguage(languageOf(name), () => draw(options))

describe.each(Object.entries(FIGURES))("%s", (name, draw) => {
  it("is drawn as it was looked at and accepted", () => expectFigure(name, drawn(name, draw).svg))

  it.each([760, 560, 380])("has no text on another nor outside, and none too small, at %i px", (width) => {
    const { svg } = drawn(name, draw, { width })
    const height = Number(/viewBox="0 0 \d+ (\d+)"/.exec(svg)?.[1])
    const boxes = textBoxes(svg)
    expect(boxes.length).toBe(svg.split("<text ").length - 1)
    expect(overlapping(boxes)).toEqual([])
    for (const { left, right, top, bottom } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0)
      expect(right).toBeLessThanOrEqual(width)
      expect(top).toBeGreaterThanOrEqual(0)
      expect(bottom).toBeLessThanOrEqual(height)
    }
    for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g))
      expect(Number(size)).toBeGreaterThanOrEqual(15)
  })

  it("needs no page around it unless asked", () => {
    expect(drawn(name, draw).svg).not.toContain("var(")
    expect(drawn(name, draw, { colours: "themed" }).svg).toContain("var(--soft, #5d6870)")
  })

  it("gives its words beside the drawing and in it", () => {
    const { svg, description } = drawn(name, draw)
    expect(description).not.toBe("")
    expect(svg).toContain(`<desc>${description}</desc>`)
  })
})

describe("eyes to scale", () => {
  const { svg } = eyeSizesFigure(inputs.eyeSizes)
  const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"(.*?)\/>/g)]
  const back = (match: RegExpMatchArray | undefined) => Number(match?.[2]) + Number(match?.[3])

  it("puts the backs of the eyes as far apart as the lengths are, from one line of corneas", () => {
    const [usual, child, longest, shortest, expected] = circles
    const scale = (back(usual) - 10) / 23.4
    for (const [circle, mm] of [
      [child, 24.04],
      [longest, 25.8],
      [shortest, 24.5],
      [expected, 25.1],
    ] as const) {
      expect(back(circle) - 10).toBeCloseTo(scale * mm, 1)
    }
  })

  it("draws the broken line through the back of the first eye", () => {
    expect(svg).toMatch(new RegExp(`<line [^>]*y2="${back(circles[0])}"[^>]*stroke-dasharray="2 4"`))
  })

  it("breaks the outline of an eye that is only expected", () => {
    expect(circles.map(([, , , , rest = ""]) => rest.includes("dasharray"))).toEqual([
      false,
      false,
      false,
      false,
      true,
    ])
  })

  it("writes a difference as the written lengths give it, and none where they are alike", () => {
    expect(differenceWords(24.04, 23.36)).toBe("+0.6 mm")
    expect(differenceWords(23.0, 23.4)).toBe("−0.4 mm")
    expect(differenceWords(23.42, 23.38)).toBe("")
  })

  it("writes figures with the decimal sign of the language", () => {
    const spanish = inLanguage("es", () => eyeSizesFigure(inputs.eyeSizesInSpanish).svg)
    expect(spanish).toContain(">24,0 mm<")
    expect(spanish).toContain(">24,5–25,8 mm<")
  })

  it("refuses no eye, four eyes, and a range that does not hold the length", () => {
    const of = (eyes: typeof eye) => () => eyeSizesFigure({ ...inputs.eyeSizes, eyes })
    expect(of([])).toThrow("one to three eyes can be drawn: 0")
    expect(of([...eye, ...eye])).toThrow("one to three eyes can be drawn: 6")
    expect(of([{ ...eye[0], low: 24, high: 25 } as (typeof eye)[number]])).toThrow("24, 23.4, 25")
  })
})

describe("growth bars", () => {
  it("draws the bars as long as the growth is, the child's filled and the others hatched", () => {
    const { svg } = growthBarsFigure(inputs.growthBars)
    const bars = [...svg.matchAll(/<rect [^>]*width="([\d.]+)"[^>]*fill="(#\w+)"/g)]
    const [child, usual, other] = bars.map((match) => Number(match[1])) as [number, number, number]
    expect(usual / child).toBeCloseTo(0.27 / 0.14, 2)
    expect(other / child).toBeCloseTo(0.08 / 0.14, 2)
    expect(bars.map((match) => match[2])).toEqual(["#0b6b62", "#ffffff", "#ffffff"])
  })

  it("draws growth below nothing to the left of nothing", () => {
    const bars = [{ label: "a", mm: -0.03, low: -0.1, high: 0.04, isChild: true }]
    const { svg } = growthBarsFigure({ ...inputs.growthBars, bars })
    expect(svg).toContain(">−0.03 mm<")
    const zero = Number(/<line x1="([\d.]+)"/.exec(svg)?.[1])
    const [, x, width] = /<rect x="([\d.]+)" y="\d+" width="([\d.]+)"/.exec(svg) ?? []
    expect(Number(x) + Number(width)).toBeCloseTo(zero, 1)
  })

  it("can show that nothing grew, and refuses what is no number", () => {
    const of = (mm: number) =>
      growthBarsFigure({ ...inputs.growthBars, bars: [{ label: "a", mm, isChild: true }] })
    expect(of(0).svg).toContain(">0.00 mm<")
    expect(() => of(Number.NaN)).toThrow("growth must be a number of mm: NaN")
  })
})

describe("the path of the length", () => {
  it("names each line and no line that is not there", () => {
    const texts = textBoxes(lengthPathFigure(inputs.lengthPath).svg).map(({ text }) => text)
    for (const text of ["Measured here", "Expected with", "Expected without", "Children who"]) {
      expect(texts).toContain(text)
    }
    const { untreated } = inputs.lengthPath.ahead as { untreated: [] }
    const alone = lengthPathFigure({ ...inputs.lengthPath, ahead: { untreated } }).svg
    expect(alone).toContain(">Expected without<")
    expect(alone).not.toContain(">Expected with<")
  })

  it("puts the name of the measured line above where the eye is longer than usual, else below", () => {
    const name = (input: LengthPathInput) =>
      textBoxes(lengthPathFigure(input).svg).find(({ text }) => text.startsWith("Lo que hemos"))?.bottom ?? 0
    const lastPoint = (input: LengthPathInput) =>
      Number([...lengthPathFigure(input).svg.matchAll(/<circle cx="[\d.]+" cy="([\d.]+)"/g)].at(-1)?.[1])
    expect(name(inputs.lengthPathInSpanish)).toBeLessThan(lastPoint(inputs.lengthPathInSpanish))
    expect(name(shorter)).toBeGreaterThan(lastPoint(shorter))
  })

  it("refuses ages that do not rise and a path without a length", () => {
    const measured = inputs.lengthPath.measured.toReversed()
    expect(() => lengthPathFigure({ ...inputs.lengthPath, measured })).toThrow(
      "ages of measured must rise: 10",
    )
    expect(() => lengthPathFigure({ ...inputs.lengthPath, measured: [] })).toThrow(
      "a length path needs at least one measured length",
    )
  })

  it("refuses a width that has no room for words", () => {
    expect(() => lengthPathFigure(inputs.lengthPath, { width: 200 })).toThrow("must be at least 320: 200")
  })
})

describe("lines of large text", () => {
  const size = 16

  it("cuts Chinese between characters, and never before a closing sign", () => {
    const lines = largeLines("看近清楚，看远需要戴眼镜；眼轴越长，眼底越薄。", { width: 80, size })
    expect(lines.join("")).toBe("看近清楚，看远需要戴眼镜；眼轴越长，眼底越薄。")
    for (const line of lines) {
      expect(line).not.toMatch(/^[，；。]/)
      expect(textWidth(line, { size })).toBeLessThanOrEqual(80)
    }
  })

  it("keeps every word and blank of a text in Latin letters", () => {
    const text = "Lo que esperaríamos a los 18 años (sin gafas)"
    expect(largeLines(text, { width: 150, size }).join(" ")).toBe(text)
  })

  it("cuts a word that is wider than a whole line, from a line of its own", () => {
    const lines = largeLines("a extraordinariamente", { width: 90, size })
    expect(lines[0]).toBe("a")
    expect(lines.slice(1).join("")).toBe("extraordinariamente")
  })
})
