import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { editsBetween, lettersApart, namesAgree } from "./name-key.js"
import { type KnownChild, sameChild } from "./same-child.js"

const MIRA: KnownChild = {
  id: "a",
  name: "Mira Solberg",
  number: "A-7",
  born: "2017-03-04",
  sex: "female",
}
const JOSE: KnownChild = { id: "b", name: "José Núñez Ortiz", number: null, born: "2016-05-01", sex: "male" }
const CHILDREN = [MIRA, JOSE]
const LETTERS = "abcdefghijklmnopqrstuvwxyz"

describe("a child is taken", () => {
  it.each([
    [{ name: "SOLBERG, mira", born: "2017-03-04" }],
    [{ name: "Mira Sölberg", born: "2017-03-04", number: "a-7", sex: "female" as const }],
    [{ number: "A-7", born: "2017-03-04" }],
    [{ number: "a", born: "2017-03-04" }],
  ])("when name or number and birth date agree: %o", (identity) => {
    expect(sameChild(identity, CHILDREN)).toEqual({ kind: "same", child: MIRA })
  })

  it("whatever the accents, the spacing and the order of the names", () => {
    const names = ["NUNEZ-ORTIZ JOSE", "Ortiz José Núñez", "Jose NunezOrtiz", "Núñez Ortiz, José"]
    for (const name of names)
      expect(sameChild({ name, born: "2016-05-01", number: "unknown here" }, CHILDREN)).toMatchObject({
        kind: "same",
      })
  })
})

describe("a child is only suggested", () => {
  it.each([
    [{ name: "Mira Solbergg", born: "2017-03-04" }, "the name differs by one letter"],
    [{ name: "Mria Solberg", born: "2017-03-04" }, "the name differs by one letter"],
    [{ name: "Mira Solberg", born: "2017-04-03" }, "day and month of birth are exchanged"],
    [{ name: "Mira Solberg", born: "2017-03-05" }, "born 2017-03-04 here, 2017-03-05 in the file"],
    [{ name: "Mira Solberg" }, "the file gives no birth date"],
    [{ name: "Mira Solberg", born: "2017-03-04", sex: "male" as const }, "the file says boy"],
    [{ name: "Mira Solberg", born: "2017-03-04", number: "B-9" }, "number A-7 here, B-9 in the file"],
    [{ number: "A-7", born: "2018-03-04" }, "born 2017-03-04 here"],
    [{ number: "A-7", name: "Somebody Else", born: "2017-03-04" }, "another name"],
    [{ number: "A-7" }, "the file gives no birth date"],
    [{ name: "Solberg", born: "2017-03-04" }, "a part of the name agrees"],
    [{ born: "2017-03-04" }, "the file gives no name"],
  ])("%o: %s", (identity, why) => {
    const found = sameChild(identity, CHILDREN)
    expect(found).toMatchObject({ kind: "near", candidates: [{ child: MIRA }] })
    expect(found.kind === "near" && found.candidates[0]?.why).toContain(why)
  })

  it("when two children of the same name were born on the same day", () => {
    const other = { ...MIRA, id: "c", number: null }
    expect(sameChild({ name: "Mira Solberg", born: MIRA.born }, [MIRA, other])).toMatchObject({
      kind: "near",
      candidates: [{}, {}],
    })
  })

  it("when a twin's name is one letter off and no number tells them apart", () => {
    const twin = { ...MIRA, id: "c", name: "Mara Solberg", number: "A-8" }
    const identity = { name: "Mira Solberg", born: MIRA.born }
    expect(sameChild(identity, [MIRA, twin]).kind).toBe("near")
    expect(sameChild({ ...identity, number: "A-7" }, [MIRA, twin])).toEqual({ kind: "same", child: MIRA })
  })

  it("when the number is another child's", () => {
    expect(sameChild({ name: JOSE.name, born: JOSE.born, number: "A-7" }, CHILDREN).kind).toBe("near")
  })
})

it("knows nobody by nothing, and nobody who shares nothing", () => {
  expect(sameChild({}, CHILDREN)).toEqual({ kind: "none" })
  expect(sameChild({ name: "Ivo Brandt", born: "2012-01-01" }, CHILDREN)).toEqual({ kind: "none" })
  expect(sameChild({ name: "?", born: undefined }, CHILDREN)).toEqual({ kind: "none" })
})

describe("names", () => {
  it("do not agree by their letters alone", () => {
    expect(namesAgree("Ann Abel", "Anna Bel")).toBe(false)
    expect(namesAgree("Annabel", "Ann Abel")).toBe(false)
  })
  it("are counted apart in letters, whichever stands first", () => {
    expect(editsBetween("marta", "matra")).toBe(1)
    expect(lettersApart("Solberg Mirra", "Mira Solberg")).toBe(1)
  })
})

describe("for any child and any name", () => {
  const word = fc.string({ unit: fc.constantFrom(...LETTERS), minLength: 3, maxLength: 10 })
  const date = fc
    .date({ min: new Date("2005-01-01"), max: new Date("2024-12-31"), noInvalidDate: true })
    .map((day) => day.toISOString().slice(0, 10))
  const anyChild = fc.record({ given: word, family: word, born: date }).map(
    ({ given, family, born }): KnownChild => ({
      id: "x",
      name: `${given} ${family}`,
      number: null,
      born,
      sex: "female",
    }),
  )

  it("one edit of the name is never taken", () => {
    fc.assert(
      fc.property(
        anyChild,
        fc.nat(),
        fc.constantFrom(...LETTERS),
        fc.constantFrom(0, 1, 2, 3),
        (child, where, letter, how) => {
          const letters = [...child.name]
          const place = where % letters.length
          if (how === 0) letters.splice(place, 1)
          else if (how === 1) letters.splice(place, 0, letter)
          else if (how === 2) letters.splice(place, 1, letter)
          else letters.splice(place, 2, letters[place + 1] ?? "", letters[place] ?? "")
          const name = letters.join("")
          if (namesAgree(name, child.name)) return
          expect(sameChild({ name, born: child.born }, [child]).kind).not.toBe("same")
        },
      ),
    )
  })

  it("another day of birth, sex or number is never taken", () => {
    fc.assert(
      fc.property(anyChild, date, (child, born) => {
        if (born !== child.born) expect(sameChild({ name: child.name, born }, [child]).kind).not.toBe("same")
        const identity = { name: child.name, born: child.born }
        expect(sameChild({ ...identity, sex: "male" }, [child]).kind).toBe("near")
        expect(sameChild({ ...identity, number: "2" }, [{ ...child, number: "1" }]).kind).toBe("near")
        expect(sameChild(identity, [child]).kind).toBe("same")
      }),
    )
  })

  it("what is taken does not hang on the order of the children", () => {
    fc.assert(
      fc.property(fc.array(anyChild, { minLength: 1, maxLength: 6 }), (some) => {
        const children = some.map((child, index) => ({ ...child, id: String(index) }))
        const [first] = children
        if (!first) return
        const identity = { name: first.name, born: first.born }
        expect(sameChild(identity, children.toReversed()).kind).toBe(sameChild(identity, children).kind)
      }),
    )
  })
})
