import { describe, expect, it } from "vitest"
import type { Sex } from "../../src/engine/course.js"
import { monotoneCubic } from "../../src/engine/numeric/monotone-cubic.js"
import { emmetropicGrowth, emmetropicLength } from "../../src/engine/reference/emmetropic.js"
import { infancyMeanAt } from "../../src/engine/reference/infancy-mean.js"
import { lmsValue } from "../../src/engine/reference/lms.js"
import { position } from "../../src/engine/reference/position.js"
import { valueAtCentile } from "../../src/engine/reference/value-at-centile.js"
import { emmetropicCurve, infancyMean, references } from "../../src/evidence/references.js"
import worked from "../../src/evidence/tables/growth-references/checks.json" with { type: "json" }
import { table } from "../../src/evidence/tables.js"

// Outside values: the worked checks of the growth references (src/evidence/tables/growth-references/checks.json),
// computed there from the tables by a script of its own in another language. Printed to 0.001 in z and mm and to 0.1 in
// centiles unless a cell shows fewer digits; half a unit of the last digit is allowed.
const Z = 0.00051
const MM = 0.00051
const CENTILE = 0.051
const CELL = 0.0051

interface Row {
  readonly id: string
  readonly case: string
  readonly dataset: string
  readonly input: Readonly<Record<string, number | string>>
  readonly expected: Readonly<Record<string, unknown>>
}
const rows = worked.checks as readonly Row[]
const checked = new Set<string>()

/** The rows whose id starts so, each to be checked exactly once. */
function rowsNamed(start: string): readonly Row[] {
  const found = rows.filter((row) => row.id.startsWith(start))
  for (const row of found) {
    if (checked.has(row.id)) throw new Error(`checked twice: ${row.id}`)
    checked.add(row.id)
  }
  return found
}

const ID_OF_TABLE: Readonly<Record<string, string>> = {
  "al_centiles_europe_derived_normal.csv": "tideman2018-derived",
  "al_mean_sd_europe_tideman2018.csv": "tideman2018-derived",
  "al_centiles_us_olsm.csv": "olsm-al",
  "al_lms_us_olsm_age6.csv": "olsm-lms",
  "se_centiles_germany_life2020.csv": "truckenbrod2020-se",
  "se_low_centiles_guangzhou2016.csv": "chen2016-se",
}

function reference(id: string) {
  const found = references.find((candidate) => candidate.id === id)
  if (found === undefined) throw new Error(`no reference ${id}`)
  return found
}

// In a table of both sexes together the sex of the child changes nothing.
const SEXES: Readonly<Record<string, Sex>> = { boy: "male", M: "male", girl: "female", F: "female" }

function asked({ dataset, input }: Row) {
  const value = (input.al ?? input.se) as number
  const child = {
    sex: SEXES[input.sex as string] ?? ("female" as const),
    ageYears: input.age as number,
    reference: reference(ID_OF_TABLE[dataset]!),
  }
  return { ...child, value, measure: child.reference.measure }
}

function placed(row: Row) {
  const answer = position(asked(row))
  if ("refused" in answer) throw new Error(answer.refused)
  return answer
}

function near(actual: unknown, expected: unknown, allowed: number) {
  expect(Math.abs((actual as number) - (expected as number))).toBeLessThanOrEqual(allowed)
}

const centileNumber = (name: unknown) => Number((name as string).slice(1))

function expectNeighbours(row: Row) {
  const names = row.expected.between as readonly string[]
  const centile = placed(row).centile
  expect(centile).toBeGreaterThan(centileNumber(names[0]))
  expect(centile).toBeLessThan(centileNumber(names[1]))
  for (const [i, name] of names.entries()) {
    const answer = valueAtCentile({ ...asked(row), centile: centileNumber(name) })
    near("value" in answer ? answer.value : null, (row.expected.neighbours_mm as number[])[i], CELL)
  }
}

describe("a length among European children, mean and SD", () => {
  it.each([1, 2, 3, 4].flatMap((n) => rowsNamed(`eu-${n}`)))("$id: $case", (row) => {
    near(placed(row).z, row.expected.z, Z)
    near(placed(row).centile, row.expected.centile_approx, CENTILE)
    expectNeighbours(row)
    expect(placed(row)).toMatchObject({ grade: "C", note: expect.stringContaining("approximate") })
  })

  it.each(rowsNamed("eu-interp"))("$id: $case", (row) => {
    const age = row.input.age as number
    const means = table("growth-references/al_mean_sd_europe_tideman2018.csv")
      .rows.filter((line) => line.age_years !== "adult")
      .map((line) => ({ x: Number(line.age_years), y: Number(line.al_mean_mm) }))
    near(monotoneCubic(means)(age), row.expected.mean_pchip, MM)
    near(placed(row).z, row.expected.z, Z)
    near(placed(row).centile, row.expected.centile_approx, CENTILE)
    const [mean, upper] = [50, 97].map((centile) => {
      const answer = valueAtCentile({ ...asked(row), centile })
      return "value" in answer ? answer.value : Number.NaN
    })
    near(mean, row.expected.mean_pchip, MM)
    // 1.8808 is the z of the 97th centile, as the evidence prints it.
    near((upper! - mean!) / 1.8808, row.expected.sd_linear, 0.0001)
  })
})

describe("a length among Californian children, printed centiles", () => {
  it.each(rowsNamed("us-"))("$id: $case", (row) => {
    near(placed(row).z, row.expected.z_by_linear_between_centiles, Z)
    near(placed(row).centile, row.expected.centile, CENTILE)
    expectNeighbours(row)
  })
})

describe("a length by L, M and S", () => {
  it.each(rowsNamed("lms-"))("$id: $case", (row) => {
    near(placed(row).z, row.expected.z, Z)
    near(placed(row).centile, row.expected.centile, CENTILE)
    const p90 = valueAtCentile({ ...asked(row), centile: 90 })
    near("value" in p90 ? p90.value : null, row.expected.inverse_p90_mm, MM)
  })
})

describe("a refraction among German children, split normal", () => {
  it.each(rowsNamed("se-"))("$id: $case", (row) => {
    const { z, centile } = placed(row)
    near(z, row.expected.split_normal_z, Z)
    const expected = row.expected.centile_approx
    if (expected === "<3") expect(centile).toBe("below p3")
    else near(centile, expected, CENTILE)
  })
})

describe("a refraction on the low centiles of Guangzhou", () => {
  const [exactly, between] = rowsNamed("cn-se-") as [Row, Row]
  it(`${exactly.id}: ${exactly.case}`, () => {
    expect(exactly.expected.position).toBe("exactly p3")
    near(placed(exactly).centile, 3, 1e-9)
  })

  it(`${between.id}: ${between.case}`, () => {
    const names = [...(between.expected.position as string).matchAll(/p(\d+) \(([-.\d]+)\)/g)]
    expect(names).toHaveLength(2)
    const [low, high] = names.map((name) => Number(name[1])) as [number, number]
    expect(placed(between).centile).toBeGreaterThan(low)
    expect(placed(between).centile).toBeLessThan(high)
    for (const [, centile, value] of names) {
      expect(valueAtCentile({ ...asked(between), centile: Number(centile) })).toEqual({
        value: Number(value),
      })
    }
  })
})

describe("emmetropic length and growth", () => {
  const growth = (fromAgeYears: number, toAgeYears: number) => {
    const answer = emmetropicGrowth({ fromAgeYears, toAgeYears, curve: emmetropicCurve })
    return "mm" in answer ? answer.mm : Number.NaN
  }
  const length = (ageYears: number) => {
    const answer = emmetropicLength({ ageYears, curve: emmetropicCurve })
    return "mm" in answer ? answer.mm : Number.NaN
  }

  it.each(rowsNamed("em-8"))("$id: $case", ({ input, expected }) => {
    const age = input.age as number
    near(length(age), expected.mean, MM)
    near(growth(age, age + 1), expected.gain_12m, MM)
  })

  it.each(rowsNamed("em-excess"))("$id: $case", ({ input, expected }) => {
    const usual = growth(input.age_from as number, input.age_to as number)
    near(usual, expected.expected_emmetrope, MM)
    near((input.gain as number) - usual, expected.excess, MM)
  })

  it.each([...rowsNamed("em-6m"), ...rowsNamed("em-24m")])("$id: $case", ({ input, expected }) => {
    near(growth(input.age_from as number, input.age_to as number), expected.gain, MM)
  })

  it.each(table("growth-references/al_emmetrope_curve.csv").rows)(
    "equals the table at $age_years years",
    (row) => {
      near(length(Number(row.age_years)), Number(row.al_mean_mm), MM)
      near(growth(Number(row.age_years), Number(row.age_years) + 1), Number(row.gain_next_12_months_mm), MM)
    },
  )
})

describe("the mean of infants and young children", () => {
  const mean = (sex: Sex, ageYears: number) => {
    const answer = infancyMeanAt({ ageYears, sex, curve: infancyMean })
    return "refused" in answer ? { axialLengthMm: Number.NaN, sphericalEquivalentD: Number.NaN } : answer
  }

  it.each(rowsNamed("inf-3"))("$id: $case", ({ input, expected }) => {
    near(mean("male", input.age as number).axialLengthMm, expected.boy, CELL)
    near(mean("female", input.age as number).axialLengthMm, expected.girl, CELL)
  })

  it.each(table("growth-references/al_se_mean_0_to_6y_mutti2018.csv").rows)(
    "equals the table for $sex at $age_years years",
    (row) => {
      const { axialLengthMm, sphericalEquivalentD } = mean(SEXES[row.sex!]!, Number(row.age_years))
      near(axialLengthMm, Number(row.al_mean_mm), CELL)
      near(sphericalEquivalentD, Number(row.se_mean_D), CELL)
    },
  )
})

describe("sources against each other", () => {
  it.each(rowsNamed("cross-6"))("$id: $case", ({ expected }) => {
    const pooled = valueAtCentile({
      reference: reference("tideman2018-derived"),
      sex: "male",
      ageYears: 6,
      centile: 50,
    })
    near("value" in pooled ? pooled.value : null, expected.tideman_pooled, MM)
    const cells = table("growth-references/al_centiles_us_olsm.csv").rows.filter(
      (row) => row.age_years === "6",
    )
    const [boys, girls] = ["M", "F"].map((sex) => Number(cells.find((row) => row.sex === sex)?.al_mean_mm))
    expect([boys, girls]).toEqual([expected.olsm_boys, expected.olsm_girls])
    near((boys! + girls!) / 2, expected.olsm_mean_of_sexes, MM)
    for (const [sex, key] of [
      ["male", "mutti_boy_6_5"],
      ["female", "mutti_girl_6_5"],
    ] as const) {
      const mean = infancyMeanAt({ ageYears: 6.5, sex, curve: infancyMean })
      near("refused" in mean ? null : mean.axialLengthMm, expected[key], CELL)
    }
    const emmetropic = emmetropicLength({ ageYears: 6, curve: emmetropicCurve })
    near("mm" in emmetropic ? emmetropic.mm : null, expected.emmetrope_meta, MM)
  })
})

describe("outside a reference there is a refusal and no number", () => {
  const refusals = rowsNamed("ref-")
  const answerTo = (row: Row): object => {
    const ageYears = row.input.age as number
    if (row.dataset === "al_se_mean_0_to_6y_mutti2018.csv")
      return infancyMeanAt({ ageYears, sex: "male", curve: infancyMean })
    if (row.dataset === "al_emmetrope_curve.csv")
      return emmetropicLength({ ageYears, curve: emmetropicCurve })
    if ("want" in row.input) return valueAtCentile({ ...asked(row), centile: centileNumber(row.input.want) })
    return position(asked(row))
  }

  it.each(refusals)("$id: $case", (row) => {
    expect(row.expected.result).toBeNull()
    const answer = answerTo(row) as { refused: string }
    expect(answer.refused).toMatch(/lies outside$/)
    for (const key of ["z", "centile", "value", "mm", "axialLengthMm"]) expect(answer).not.toHaveProperty(key)
  })
})

describe("L, M, S of a printed table", () => {
  // The European table by sex prints its centiles beside the mean and SD it was made from.
  const printed = table("growth-references/al_centiles_europe_sexed_approx.csv").rows
  it.each(printed)("the normal shape gives the printed centiles, $sex at $age_years", (row) => {
    const child = {
      reference: reference("al-europe-sexed-approx"),
      sex: SEXES[row.sex!]!,
      ageYears: Number(row.age_years),
    }
    for (const centile of [2, 5, 10, 25, 50, 75, 90, 95, 98]) {
      const answer = valueAtCentile({ ...child, centile })
      // Mean and SD are themselves printed to 0.01 and 0.001.
      near("value" in answer ? answer.value : null, Number(row[`p${centile}`]), 0.0076)
    }
  })

  it("L of 1 is the normal shape", () => {
    near(lmsValue({ z: 1.2816, l: 1, m: 23.1, s: 0.84 / 23.1 }), 24.18, CELL)
  })
})

it("every worked check is used, none twice", () => {
  expect([...checked].sort()).toEqual(rows.map((row) => row.id).sort())
})
