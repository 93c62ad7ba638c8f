import { describe, expect, it } from "vitest"
import { courseTable } from "../../src/chart/course-table.js"
import { courseFigure, openingWindow } from "../../src/chart/index.js"
import { inLanguage, type Language, learn } from "../../src/engine/say.js"
import { spanish } from "../../src/words/es/index.js"
import { empty, full, oneEye, stopped, untreated } from "./figures.js"
import { overlapping, textBoxes } from "./texts.js"

const stopAt = (layout: ReturnType<typeof courseFigure>["layout"], date: string) =>
  layout.stops.find((stop) => stop.date === date)

describe("the window that opens", () => {
  it("is from a year before the first data to about three after the last", () => {
    expect(openingWindow(full)).toEqual([6, 13])
  })

  it("never goes beyond 18 for what is only expected", () => {
    const late = {
      ...full,
      course: { ...full.course, visits: [{ date: "2032-09-14" }] },
      today: "2032-09-14",
    }
    expect(openingWindow(late)[1]).toBe(18)
  })

  it("has room around today when nothing is recorded", () => {
    expect(openingWindow(empty)).toEqual([9, 14])
  })
})

describe("the layout that a page lays its cursor on", () => {
  const { layout } = courseFigure(full)

  it("places every stop on the age scale it states", () => {
    const { domain, range } = layout.age
    const x = (age: number) =>
      range[0] + ((age - domain[0]) / (domain[1] - domain[0])) * (range[1] - range[0])
    for (const stop of layout.stops) expect(stop.x).toBeCloseTo(x(stop.ageYears), 6)
    expect(layout.today?.x).toBeCloseTo(x(layout.today?.ageYears ?? 0), 6)
  })

  it("has its stops in order of age, one a date, all inside the window", () => {
    const ages = layout.stops.map(({ ageYears }) => ageYears)
    expect(ages).toEqual([...ages].sort((a, b) => a - b))
    expect(new Set(layout.stops.map(({ date }) => date)).size).toBe(ages.length)
    expect(Math.min(...ages)).toBeGreaterThanOrEqual(layout.age.domain[0])
    expect(Math.max(...ages)).toBeLessThanOrEqual(layout.age.domain[1] + 1 / 365.25)
  })

  it("reads out at a visit all that was found there", () => {
    expect(stopAt(layout, "2025-09-12")?.lines).toEqual([
      "9 y 5 m · 12 Sep 2025",
      "Length: right 23.81 mm ± 0.05, left 23.74 mm ± 0.05",
      "Growth before: 0.14 mm a year (0.04 to 0.23)",
      "Refraction: right −2.00 D, left −2.00 D",
      "Pupil in daylight: right 4.5 mm, left 4.4 mm",
      "Symptoms: light sensitivity 1, near blur 0",
    ])
  })

  it("says of old glasses where they come from", () => {
    expect(stopAt(layout, "2023-05-02")?.lines).toContain(
      "Refraction: right −0.75 D, left −0.50 D (old glasses)",
    )
  })

  it("reads out the start of a treatment and a duty at their dates", () => {
    expect(stopAt(layout, "2025-03-10")?.lines).toContain("Treatment: atropine 0.05 % from this day")
    expect(stopAt(layout, "2027-03-10")?.lines).toContain("Duty: 24-month review: upcoming")
  })

  it("reads out the forecast at each birthday after the last length", () => {
    const lines = stopAt(layout, "2027-03-14")?.lines ?? []
    expect(lines.filter((text) => text.startsWith("Forecast, right eye"))).toHaveLength(2)
  })

  it("marks today", () => {
    expect(stopAt(layout, full.today)?.lines[0]).toBe("10 y 6 m · 14 Sep 2026 · today")
  })

  it("stacks the tracks without overlap, from length to duties", () => {
    const bottoms = layout.tracks.map(({ y, height }) => y + height)
    expect(layout.tracks.map(({ name }) => name)).toEqual([
      "length",
      "growth",
      "refraction",
      "treatment",
      "safety",
      "duties",
    ])
    layout.tracks.slice(1).forEach(({ y }, i) => {
      expect(y).toBeGreaterThan(bottoms[i] as number)
    })
    expect(layout.height).toBeGreaterThan(bottoms.at(-1) as number)
  })

  it("has no today when the window ends before it", () => {
    expect(courseFigure(full, { ageDomain: [6, 9] }).layout.today).toBeNull()
  })
})

learn("es", spanish)

const figuresIn = (language: Language) =>
  inLanguage(language, () =>
    Object.entries({ full, oneEye, untreated, stopped, empty }).flatMap(([child, input]) =>
      [880, 560, 360].flatMap((width) => [
        { name: `${language} ${child} ${width}`, svg: courseFigure(input, { width }).svg, width },
        {
          name: `${language} ${child} ${width} to 18`,
          svg: courseFigure(input, { width, ageDomain: [0, 18] }).svg,
          width,
        },
      ]),
    ),
  )

describe("the figure", () => {
  const everyFigure = [...figuresIn("en"), ...figuresIn("es")]

  it("sets no text smaller than 11", () => {
    const sizes = everyFigure.flatMap(({ svg }) =>
      [...svg.matchAll(/font-size="([\d.]+)"/g)].map((m) => Number(m[1])),
    )
    expect(sizes.length).toBeGreaterThan(100)
    expect(Math.min(...sizes)).toBe(11)
  })

  it("writes no text over another", () => {
    expect(
      everyFigure.flatMap(({ name, svg }) => overlapping(textBoxes(svg)).map((pair) => `${name}: ${pair}`)),
    ).toEqual([])
  })

  it("cuts no text off at its edges", () => {
    for (const { svg, width } of everyFigure) {
      const outside = textBoxes(svg).filter(({ left, right }) => left < -1 || right > width + 1)
      expect(outside).toEqual([])
    }
  })

  it("draws nothing left or right of its own width", () => {
    for (const { svg, width } of everyFigure) {
      const xs = [...svg.matchAll(/ (?:x|x1|x2|cx)="(-?[\d.]+)"/g)].map((m) => Number(m[1]))
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(-1)
      expect(Math.max(...xs)).toBeLessThanOrEqual(width)
    }
  })

  it("tells its message in words to those who hear it", () => {
    const { svg } = courseFigure(full)
    expect(svg).toContain("<title>Course of a girl from age 6 to 13</title>")
    expect(svg).toContain(
      "Growth 0.14 mm a year (0.05 to 0.23), expected of an untreated myope 0.27, of an emmetrope 0.08: slowed growth.",
    )
    expect(svg).toContain("Finding: cannot tell yet whether it is the treatment.")
    expect(svg).toContain("Next: 18-month review, open, due 10 Sep 2026.")
  })

  it("uses no custom property when drawn plain", () => {
    expect(courseFigure(full).svg).toContain("var(--ink, #1d2328)")
    expect(courseFigure(full, { colours: "plain" }).svg).not.toContain("var(")
  })

  it("keeps names apart from markup", () => {
    const from = `Dr. A & B's "<script>" practice`
    const visits = full.course.visits.map((visit) => ({ ...visit, from }))
    const input = {
      ...full,
      course: { ...full.course, visits },
      duties: [{ ...(full.duties.at(-1) as (typeof full.duties)[number]), step: "<b>&" }],
      referenceBand: {
        label: "<i>&",
        rows: [
          { age: 7, lowMm: 22, highMm: 25 },
          { age: 12, lowMm: 22, highMm: 25 },
        ],
      },
    }
    const { svg } = courseFigure(input)
    expect(svg).toContain("&lt;b&gt;&amp;")
    expect(svg).toContain("&lt;i&gt;&amp;")
    expect(svg).not.toMatch(/<script|<b>|<i>/)
  })

  it("draws one forecast only where treating makes no difference", () => {
    expect(courseFigure(untreated).svg).not.toContain(">as treated<")
    expect(courseFigure(full).svg).toContain(">as treated<")
  })

  it("says the reason in each track that has nothing to show", () => {
    const { svg } = courseFigure(empty)
    for (const why of [
      "no axial length recorded yet",
      "growth needs two axial lengths at different dates",
      "no refraction recorded yet",
      "no treatment recorded",
      "no pupil or symptom recorded",
      "nothing is owed by the protocol",
    ]) {
      expect(svg).toContain(`>${why}<`)
    }
  })

  it("names the emmetropic length at the edge when the eye is far from it", () => {
    const visits = full.course.visits.map(({ date }) => ({ date, right: { axialLength: { mm: 26.5 } } }))
    const { svg } = courseFigure({
      ...full,
      course: { ...full.course, visits },
      lengthSd: [],
      forecast: undefined,
    })
    expect(svg).toContain(">below, 23.5<")
  })

  it("refuses a width or window that cannot be drawn", () => {
    expect(() => courseFigure(full, { width: 200 })).toThrow("width must be at least 320: 200")
    expect(() => courseFigure(full, { ageDomain: [9, 9] })).toThrow("ageDomain must rise: 9 to 9")
  })
})

describe("the figure in Spanish", () => {
  const { svg, layout } = inLanguage("es", () => courseFigure(full))

  it("reads out at a visit all that was found there, with the decimal comma and the eyes as the trade writes them", () => {
    expect(stopAt(layout, "2025-09-12")?.lines).toEqual([
      "9 a 5 m · 12 sept 2025",
      "Longitud: OD 23,81 mm ± 0,05, OI 23,74 mm ± 0,05",
      "Crecimiento previo: 0,14 mm por año (0,04 a 0,23)",
      "Refracción: OD −2,00 D, OI −2,00 D",
      "Pupila con luz de día: OD 4,5 mm, OI 4,4 mm",
      "Síntomas: sensibilidad a la luz 1, visión borrosa de cerca 0",
    ])
    expect(stopAt(layout, "2023-05-02")?.lines).toContain(
      "Refracción: OD −0,75 D, OI −0,50 D (gafas previas)",
    )
  })

  it("tells its message in words to those who hear it", () => {
    expect(svg).toContain("<title>Evolución de una niña de los 6 a los 13 años</title>")
    expect(svg).toContain(
      "Crecimiento de 0,14 mm por año (0,05 a 0,23), se espera de un miope sin tratamiento 0,27, de un emétrope 0,08: crecimiento frenado.",
    )
  })

  it("writes coordinates with the decimal point", () => {
    expect(svg).not.toMatch(/ (?:x|y|x1|x2|y1|y2|cx|cy|r|width|height)="[^"]*,/)
  })

  it("has its tables in Spanish", () => {
    const tables = inLanguage("es", () => courseTable(full))
    expect(tables.map(({ caption }) => caption)).toEqual([
      "Evolución por fecha",
      "Pronóstico de la longitud del ojo derecho: mediana e intervalo del 5 al 95 %",
      "Noches cubiertas por los frascos suministrados",
    ])
  })
})

describe("the same as tables", () => {
  const tables = courseTable(full)

  it("has a cell for each header in every row", () => {
    for (const { headers, rows } of tables) for (const row of rows) expect(row).toHaveLength(headers.length)
  })

  it("has the visit in one row, with units", () => {
    const row = tables[0]?.rows.find(([date]) => date === "12 Sep 2025")
    expect(row?.slice(1, 7)).toEqual([
      "9 y 5 m",
      "23.81 mm ± 0.05",
      "23.74 mm ± 0.05",
      "0.14 mm a year (0.04 to 0.23)",
      "−2.00 D",
      "−2.00 D",
    ])
  })

  it("has the forecast by birthday to 18 and the nights covered by month", () => {
    expect(tables.map(({ rows }) => rows.length)).toEqual([13, 8, 18])
    expect(tables[1]?.headers).toEqual(["Date", "Age", "Untreated", "As treated"])
    expect(tables[2]?.rows[8]).toEqual(["10 Nov 2025", "9 y 7 m", "20 %"])
  })

  it("leaves out tables that would be empty", () => {
    expect(courseTable(empty).map(({ caption }) => caption)).toEqual(["Course by date"])
  })
})
