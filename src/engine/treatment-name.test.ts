import { describe, expect, it } from "vitest"
import { spanish } from "../words/es/index.js"
import { simplifiedChinese } from "../words/zh-Hans/index.js"
import { TREATMENT_KINDS } from "./course.js"
import { inLanguage, LANGUAGES, learn } from "./say.js"
import { isPluralName, prescriptionName, treatmentName } from "./treatment-name.js"

learn("es", spanish)
learn("zh-Hans", simplifiedChinese)

it("drops are named with their strength, as each language writes it", () => {
  const drops = { kind: "atropine", concentrationPercent: 0.05 } as const
  const names = LANGUAGES.map((language) => inLanguage(language, () => treatmentName(drops)))
  expect(names).toEqual(["atropine 0.05 %", "atropina al 0,05 %", "0.05% 阿托品"])
})

it.each(LANGUAGES)("no two treatments have one name in %s", (language) => {
  inLanguage(language, () => {
    const names = TREATMENT_KINDS.map((kind) => treatmentName({ kind }))
    expect(new Set(names).size).toBe(TREATMENT_KINDS.length)
  })
})

describe.each(["en", "es"] as const)("the verb beside a name in %s", (language) => {
  const isPlural = (kind: (typeof TREATMENT_KINDS)[number]) =>
    inLanguage(language, () => isPluralName(treatmentName({ kind })))

  it.each(["defocus-spectacles", "lenslet-spectacles", "dual-focus-lens", "multifocal-lens"] as const)(
    "%s are several: they work",
    (kind) => {
      expect(isPlural(kind)).toBe(true)
    },
  )

  it.each(["atropine", "orthokeratology"] as const)("%s is one: it works", (kind) => {
    expect(isPlural(kind)).toBe(false)
  })
})

it("of several given together the first decides", () => {
  expect(isPluralName("atropine 0.01 % with lenslet spectacles")).toBe(false)
})

it("neither the eye that is treated nor a capital changes anything", () => {
  expect(isPluralName("Lenslet spectacles in the right eye")).toBe(true)
})

it("what is special about how it is given stands after the name", () => {
  const drops = { kind: "atropine", concentrationPercent: 0.05 } as const
  expect(prescriptionName(drops)).toBe("atropine 0.05 %")
  expect(prescriptionName({ ...drops, eye: "left" })).toBe("atropine 0.05 %, left eye")
  expect(prescriptionName({ ...drops, nightsPerWeek: 1 })).toBe("atropine 0.05 %, 1 night a week")
  const tapered = { ...drops, eye: "right", nightsPerWeek: 3 } as const
  expect(prescriptionName(tapered)).toBe("atropine 0.05 %, right eye, 3 nights a week")
  expect(inLanguage("es", () => prescriptionName(tapered))).toBe(
    "atropina al 0,05 %, ojo derecho, 3 noches por semana",
  )
})
