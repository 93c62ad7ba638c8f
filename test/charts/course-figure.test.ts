import { describe, it } from "vitest"
import { courseFigure } from "../../src/chart/index.js"
import { empty, full, oneEye, stopped, untreated } from "./figures.js"
import { expectFigure } from "./snapshot.js"

describe("the course figure is drawn as it was looked at and accepted", () => {
  const accepted = [
    { name: "course-full", input: full, options: {} },
    { name: "course-full-narrow", input: full, options: { width: 560 } },
    { name: "course-full-birth-to-18", input: full, options: { ageDomain: [0, 18] } },
    { name: "course-full-plain", input: full, options: { colours: "plain" } },
    { name: "course-one-eye", input: oneEye, options: {} },
    { name: "course-untreated", input: untreated, options: {} },
    { name: "course-untreated-narrow", input: untreated, options: { width: 560 } },
    { name: "course-stopped", input: stopped, options: {} },
    { name: "course-stopped-narrow", input: stopped, options: { width: 560 } },
    { name: "course-empty", input: empty, options: {} },
    { name: "course-empty-narrow", input: empty, options: { width: 560 } },
  ] as const
  for (const { name, input, options } of accepted) {
    it(name, () => expectFigure(name, courseFigure(input, options).svg))
  }
})
