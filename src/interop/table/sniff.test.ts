import { describe, expect, it } from "vitest"
import { guessedMapping, guessMapping } from "./guess-mapping.js"
import { questions } from "./questions.js"
import { possibleOrders, sniff } from "./sniff.js"

const of = (text: string) => sniff(Buffer.from(text))
const asked = (text: string, settled: Parameters<typeof questions>[2] = {}) => {
  const sniffed = of(text)
  return questions(sniffed, guessedMapping(sniffed), settled).map(({ kind, choices }) => ({ kind, choices }))
}

describe("what the beginning of a table says", () => {
  it.each([
    ["a,b\n1,2\n", ","],
    ["a;b\n1,5;2,5\n", ";"],
    ["a\tb\n1,5\t2\n", "\t"],
    ["a|b\n1|2\n", "|"],
    ['"a;b",c\n"x;y;z",2\n', ","],
    ["sep=;\na;b\n1;2\n", ";"],
  ])("%j is delimited by %j", (text, delimiter) => {
    expect(of(text)).toMatchObject({ delimiter, fault: null })
  })

  it("a table without headings is known and said; its columns are numbered", () => {
    expect(of("17,2025-01-28,24.1\n18,2025-01-29,23.9\n")).toMatchObject({
      hasHeadings: false,
      headings: ["#1", "#2", "#3"],
      firstRows: [
        ["17", "2025-01-28", "24.1"],
        ["18", "2025-01-29", "23.9"],
      ],
      notes: [expect.stringContaining("no headings")],
    })
  })

  it("a heading that stands twice is told apart by its column", () => {
    expect(of("SPH,CYL,SPH,\n-1,0,-2,3\n").headings).toEqual(["SPH", "CYL", "SPH #3", "#4"])
  })

  it.each([
    ["24.1", "."],
    ["24,1", ","],
    ["1.234", "unclear"],
    ["24", "unclear"],
  ])("decimals as in %s are written with %s", (figure, decimalSign) => {
    expect(of(`a;b\n${figure};x\n`).decimalSign).toBe(decimalSign)
  })

  it.each([
    [["28/01/2025", "03/04/2025"], ["day-month-year"]],
    [["01/28/2025", "03/04/2025"], ["month-day-year"]],
    [
      ["03/04/2025", "05/06/2025"],
      ["day-month-year", "month-day-year"],
    ],
    [
      ["03/04/2025", "31/02/2025", "05/06/2025"],
      ["day-month-year", "month-day-year"],
    ],
    [["28/01/2025", "01/28/2025"], []],
    [["2025-01-28"], ["year-month-day"]],
  ] as const)("days as %j can be in the orders %j", (dates, orders) => {
    expect(possibleOrders(dates)).toEqual(orders)
  })

  it.each([
    ["%PDF-1.7", "PDF"],
    ["<html><table>", "web page"],
    ["", "empty"],
  ])("%j is no table", (text, why) => {
    expect(of(text).fault).toContain(why)
  })
})

describe("columns are guessed by their headings and held against their values", () => {
  const guess = (headings: readonly string[], ...rows: readonly (readonly string[])[]) =>
    Object.fromEntries(guessMapping(headings, rows).columns.map(({ heading, field }) => [heading, field]))

  it("in English and Spanish, with the eye before, after or glued", () => {
    expect(
      guess([
        "Patient ID",
        "DOB",
        "Visit Date",
        "OD AL",
        "AL OS",
        "SPHOD",
        "Left Cyl",
        "R Axis",
        "IOP (mmHg) OD",
      ]),
    ).toEqual({
      "Patient ID": "number",
      DOB: "born",
      "Visit Date": "date",
      "OD AL": "right.axialLengthMm",
      "AL OS": "left.axialLengthMm",
      SPHOD: "right.sphere",
      "Left Cyl": "left.cylinder",
      "R Axis": "right.axis",
      "IOP (mmHg) OD": "right.pressureMmHg",
    })
    expect(
      guess([
        "Nº historia",
        "Nombre",
        "Apellidos",
        "Fecha de nacimiento",
        "Fecha",
        "Longitud axial OI",
        "Esfera ojo derecho",
        "Eje izq",
        "Observaciones",
      ]),
    ).toEqual({
      "Nº historia": "number",
      Nombre: "givenName",
      Apellidos: "familyName",
      "Fecha de nacimiento": "born",
      Fecha: "date",
      "Longitud axial OI": "left.axialLengthMm",
      "Esfera ojo derecho": "right.sphere",
      "Eje izq": "left.axis",
      Observaciones: "comment",
    })
  })

  it("what is not sure is left unmapped", () => {
    // Values that are no lengths, two columns for one field, a figure without an eye, an unknown word.
    expect(guess(["AL OD", "x"], ["-2.25", "1"])).toEqual({})
    expect(guess(["Date", "Visit date"])).toEqual({})
    expect(guess(["AL", "Sph"], ["24.1", "-1"])).toEqual({})
    expect(guess(["VA OD"], ["0.5"])).toEqual({})
    expect(guess(["VA OD"], ["20/40"])).toEqual({ "VA OD": "right.distanceSnellen" })
  })

  it("one row per eye is seen by a column of eyes", () => {
    expect(guessMapping(["ID", "Date", "Eye", "AL"], [["1", "2025-01-28", "OD", "24.1"]])).toMatchObject({
      rowIs: "eye",
      columns: [{}, {}, { heading: "Eye", field: "eye" }, { heading: "AL", field: "axialLengthMm" }],
    })
  })
})

describe("what has to be asked", () => {
  it("nothing when the table says it all", () => {
    expect(asked("ID,Date,AL OD\n1,28/01/2025,24.1\n")).toEqual([])
  })

  it("the order of days when no value of any date column shows it, and not again", () => {
    const open = "ID,DOB,Date,AL OD\n1,03/04/2017,05/06/2025,24.1\n"
    expect(asked(open)).toEqual([{ kind: "date-order", choices: ["day-month-year", "month-day-year"] }])
    expect(asked(open.replace("03/04/2017", "30/04/2017"))).toEqual([])
    const sniffed = of(open)
    const answered = { ...guessedMapping(sniffed), dateOrder: "month-day-year" as const }
    expect(questions(sniffed, answered, { settled: ["date-order"] })).toEqual([])
  })

  it("an answer that the values contradict is asked again", () => {
    const sniffed = of("ID,Date,AL OD\n1,28/01/2025,24.1\n")
    const wrong = { ...guessedMapping(sniffed), dateOrder: "month-day-year" as const }
    expect(questions(sniffed, wrong, { settled: ["date-order"] })).toMatchObject([
      { kind: "date-order", choices: ["day-month-year"] },
    ])
  })

  it("columns of two orders cannot be settled by one answer", () => {
    const sniffed = of("ID,DOB,Date,AL OD\n1,04/30/2017,28/01/2025,24.1\n")
    expect(questions(sniffed, guessedMapping(sniffed), { settled: ["date-order"] })).toMatchObject([
      { kind: "date-order", choices: [] },
    ])
  })

  it("an unclear decimal sign, which child, which day, a unit, the first day of a treatment", () => {
    expect(asked("ID;Date;SNR OD\n1;2025-01-28;1.234\n")).toEqual([
      { kind: "decimal-sign", choices: [".", ","] },
    ])
    expect(asked("AL OD,x\n24.1,1\n").map(({ kind }) => kind)).toEqual(["child-column", "date-column"])
    expect(asked("ID,Date,K1 OD,K2 OD\n1,2025-01-28,43.5,44.25\n").map(({ kind }) => kind)).toEqual([
      "unit",
      "unit",
    ])
    expect(asked("ID,Sex\n1,M\n")).toEqual([{ kind: "unit", choices: ["F/M", "H/M"] }])
    expect(asked("ID,Date,Treatment\n1,2025-01-28,none\n").map(({ kind }) => kind)).toEqual([
      "treatment-start",
    ])
  })
})
