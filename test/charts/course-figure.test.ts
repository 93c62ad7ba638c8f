import { describe, it } from "vitest"
import { courseFigure } from "../../src/chart/index.js"
import { inLanguage, learn } from "../../src/engine/say.js"
import { spanish } from "../../src/words/es/index.js"
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
  it("course-full-es", () => {
    learn("es", spanish)
    // Titles as a practice writes them: they are drawn as they stand.
    const duties = full.duties.map((duty, i) => ({ ...duty, step: `revisión ${i + 1} de la consulta` }))
    expectFigure("course-full-es", inLanguage("es", () => courseFigure({ ...full, duties })).svg)
  })
})
