import { describe, expect, it } from "vitest"
import { readCourse } from "../../src/interop/course/read-course.js"

/** Every bad input a course file must meet with a clear fault: path, value, what is allowed, one sentence. */

const child = { born: "2017-03-14", sex: "female" }
const today = "2025-08-01"

const visit = (right: object, date = "2025-01-10") => ({ lengthwise: 1, child, visits: [{ date, right }] })
const length = (mm: unknown) => visit({ axialLength: { mm } })
const refraction = (value: object) => visit({ refraction: { sphere: -2.25, ...value } })
const treatments = (...list: object[]) => ({ lengthwise: 1, child, treatments: list })
const drops = { kind: "atropine", concentrationPercent: 0.05 }

function problems(file: unknown) {
  const read = readCourse(typeof file === "string" ? file : JSON.stringify(file), { today })
  return "problems" in read ? read.problems : []
}

const cases: readonly (readonly [what: string, file: unknown, path: string, words: RegExp])[] = [
  [
    "a length of 2.41",
    length(2.41),
    "visits[0].right.axialLength.mm",
    /15 to 40 mm, not 2\.41.*mean 24\.1\?/,
  ],
  ["a length of 241", length(241), "visits[0].right.axialLength.mm", /15 to 40 mm, not 241.*mean 24\.1\?/],
  ["a length of 2412", length(2412), "visits[0].right.axialLength.mm", /mean 24\.12\?/],
  ["a length of 0", length(0), "visits[0].right.axialLength.mm", /15 to 40 mm, not 0\.$/],
  ["a length as text", length("24.1"), "visits[0].right.axialLength.mm", /a number.*not "24\.1"/],
  [
    "a length that overflows",
    '{"child":{"born":"2017-03-14","sex":"male"},"visits":[{"date":"2025-01-10","left":{"axialLength":{"mm":1e999}}}]}',
    "visits[0].left.axialLength.mm",
    /not Infinity/,
  ],
  [
    "no readings at all",
    visit({ axialLength: { mm: 24, readings: 0 } }),
    "visits[0].right.axialLength.readings",
    /whole number from 1 to 50/,
  ],
  [
    "half a reading",
    visit({ axialLength: { mm: 24, readings: 2.5 } }),
    "visits[0].right.axialLength.readings",
    /whole number/,
  ],
  [
    "a visit before birth",
    visit({}, "2016-01-10"),
    "visits[0].date",
    /on or after the day of birth \(2017-03-14\)/,
  ],
  ["a visit in the future", visit({}, "2025-08-02"), "visits[0].date", /up to 2025-08-01/],
  ["a birth in the future", { child: { ...child, born: "2026-01-01" } }, "child.born", /up to 2025-08-01/],
  [
    "a treatment years in the future",
    treatments({ ...drops, from: "2036-01-01" }),
    "treatments[0].from",
    /up to 2026-08-02/,
  ],
  [
    "a consent before birth",
    { child, consents: [{ date: "2010-01-01", covers: drops }] },
    "consents[0].date",
    /day of birth/,
  ],
  ["31 February", visit({}, "2025-02-31"), "visits[0].date", /a day of the calendar/],
  ["a date the other way round", visit({}, "10.01.2025"), "visits[0].date", /YYYY-MM-DD/],
  [
    "an axis of 190",
    refraction({ cylinder: -0.5, axis: 190 }),
    "visits[0].right.refraction.axis",
    /0 to 180 degrees, not 190/,
  ],
  [
    "a cylinder without axis",
    refraction({ cylinder: -0.5 }),
    "visits[0].right.refraction.axis",
    /missing.*cylinder is -0\.5 D/,
  ],
  [
    "a sphere of -31",
    visit({ refraction: { sphere: -31 } }),
    "visits[0].right.refraction.sphere",
    /-30 to 30 D/,
  ],
  [
    "a cylinder of 11",
    refraction({ cylinder: 11, axis: 90 }),
    "visits[0].right.refraction.cylinder",
    /-10 to 10 D/,
  ],
  [
    "a visit twice",
    { child, visits: [{ date: "2025-01-10" }, { date: "2025-01-10" }] },
    "visits[1].date",
    /visits\[0\] has this one/,
  ],
  [
    "a treatment ending before it starts",
    treatments({ ...drops, from: "2025-01-10", to: "2025-01-09" }),
    "treatments[0].to",
    /after the day it starts \(2025-01-10\)/,
  ],
  [
    "a treatment ending as it starts",
    treatments({ ...drops, from: "2025-01-10", to: "2025-01-10" }),
    "treatments[0].to",
    /after the day it starts/,
  ],
  [
    "two strengths at once",
    treatments({ ...drops, from: "2025-01-10" }, { ...drops, from: "2025-05-10" }),
    "treatments[1].from",
    /end of treatments\[0\].*has no end/,
  ],
  [
    "atropine without a strength",
    treatments({ kind: "atropine", from: "2025-01-10" }),
    "treatments[0].concentrationPercent",
    /missing.*since the treatment is atropine/,
  ],
  [
    "a strength of 5 %",
    treatments({ ...drops, from: "2025-01-10", concentrationPercent: 5 }),
    "treatments[0].concentrationPercent",
    /up to 1\.5 % w\/v, not 5/,
  ],
  [
    "a strength of 0",
    treatments({ ...drops, from: "2025-01-10", concentrationPercent: 0 }),
    "treatments[0].concentrationPercent",
    /above 0/,
  ],
  [
    "a treatment nobody knows",
    treatments({ kind: "atropin", from: "2025-01-10" }),
    "treatments[0].kind",
    /one of atropine, .*not "atropin"/,
  ],
  [
    "a bottle opened before it was dispensed",
    { child, supplies: [{ dispensed: "2025-01-12", opened: "2025-01-11" }] },
    "supplies[0].opened",
    /on or after the day it was dispensed/,
  ],
  [
    "a symptom of grade 4",
    { child, visits: [{ date: "2025-01-10", symptoms: [{ kind: "redness", grade: 4 }] }] },
    "visits[0].symptoms[0].grade",
    /0, 1, 2 or 3, not 4/,
  ],
  ["a pupil of 12 mm", visit({ pupil: { photopic: 12 } }), "visits[0].right.pupil.photopic", /1 to 10 mm/],
  [
    "an amplitude of 30 D",
    visit({ accommodation: { dioptres: 30 } }),
    "visits[0].right.accommodation.dioptres",
    /0 to 25 D/,
  ],
  [
    "an acuity of 6/6",
    visit({ acuity: { distanceLogMAR: 6 } }),
    "visits[0].right.acuity.distanceLogMAR",
    /-0\.5 to 3 logMAR/,
  ],
  [
    "a corneal radius in dioptres",
    visit({ corneaRadius: { flat: 43, steep: 7.7 } }),
    "visits[0].right.corneaRadius.flat",
    /5\.5 to 10 mm, not 43/,
  ],
  ["a latitude of 95", { child, practice: { latitude: 95 } }, "practice.latitude", /-90 to 90 degrees/],
  ["no day of birth", { child: { sex: "female" } }, "child.born", /child\.born is missing/],
  [
    "no sex",
    { child: { born: "2017-03-14" } },
    "child.sex",
    /child\.sex is missing: it must be female or male/,
  ],
  ["no child", {}, "child", /child is missing/],
  ["a visit without a day", { child, visits: [{}] }, "visits[0].date", /visits\[0\]\.date is missing/],
  [
    "a file of another version",
    { lengthwise: 2, child },
    "lengthwise",
    /reads course files of version 1; this file says 2/,
  ],
  ["an empty file", "", "(file)", /empty/],
  ["a file of blanks", " \n\t", "(file)", /empty/],
  ["a text that is not JSON", '{\n  "child": {,\n', "(file)", /line 2, column 13: , cannot stand there/],
  ["half a file", '{ "child": { "born": "2017-', "(file)", /line 1, column 22/],
  ["a list", [], "(file)", /a JSON object/],
  ["50 MB of junk", "x".repeat(50_000_000), "(file)", /at most 10 MB; it is 50\.0 MB/],
  [
    "four million visits that are none",
    `{"visits":[${"1,".repeat(4_000_000)}1]}`,
    "visits",
    /a list of at most 2000/,
  ],
]

describe("a course file with one fault", () => {
  it.each(cases)("%s", (_, file, path, words) => {
    const found = problems(file)
    expect(found.map((problem) => problem.path)).toEqual([path])
    expect(found[0]?.message).toMatch(words)
    expect(found[0]?.allowed).not.toBe("")
  })
})

describe("a course file with many faults", () => {
  it("is told all of them at once, those between two fields too", () => {
    const file = {
      lengthwise: 7,
      child: { born: "2017-02-30", sex: "girl" },
      visits: [
        {
          date: "2025-01-10",
          right: { axialLength: { mm: 241 }, refraction: { sphere: -2, cylinder: -1 } },
          left: { axialLength: { mm: 2.41 }, refraction: { sphere: -2, cylinder: -1, axis: 190 } },
        },
        { date: "2025-01-10" },
        { date: "2031-01-10" },
      ],
      treatments: [{ from: "2025-01-10", to: "2024-01-10", kind: "atropine" }],
    }
    expect(
      problems(file)
        .map(({ path }) => path)
        .toSorted(),
    ).toEqual(
      [
        "lengthwise",
        "child.born",
        "child.sex",
        "visits[0].right.axialLength.mm",
        "visits[0].right.refraction.axis",
        "visits[0].left.axialLength.mm",
        "visits[0].left.refraction.axis",
        "visits[1].date",
        "visits[2].date",
        "treatments[0].to",
        "treatments[0].concentrationPercent",
      ].toSorted(),
    )
  })

  it("is not flooded by them", () => {
    const visits = Array.from({ length: 2000 }, () => ({ date: "junk" }))
    expect(problems({ child, visits }).at(-1)?.message).toMatch(/1500 more/)
  })

  it("shows no more of a long value than a line", () => {
    const found = problems({ child: { ...child, id: "x".repeat(5000) } })
    expect(found[0]?.message.length).toBeLessThan(300)
  })

  it("keeps every fault fit for JSON", () => {
    const found = problems({ child: { sex: ["female"] } })
    expect(JSON.parse(JSON.stringify(found))).toEqual(found)
    expect(found.map(({ value }) => value)).toEqual([null, "a list of 1"])
  })
})
