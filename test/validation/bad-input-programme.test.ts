import { describe, expect, it } from "vitest"
import { readCourse } from "../../src/interop/course/read-course.js"

/** Bad input in what a course file holds besides measurements: every fault with its path, its value and what is allowed. */

const today = "2025-08-01"
const day = "2025-01-10"
const drops = { from: day, kind: "atropine", concentrationPercent: 0.05 }
const order = { date: day, concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }
const concern = { opened: day, kind: "light", what: "squints in the sun" }
const covers = { kind: "atropine", concentrationPercent: 0.05 }
const answers = (...list: unknown[]) => ({ visits: [{ date: day, answers: list }] })

const fileOf = (parts: object) =>
  JSON.stringify({ lengthwise: 1, child: { born: "2017-03-14", sex: "female" }, visits: [], ...parts })
function problems(parts: object) {
  const read = readCourse(fileOf(parts), { today })
  return "problems" in read ? read.problems : []
}

const cases: readonly (readonly [what: string, parts: object, path: string, words: RegExp])[] = [
  [
    "courses of drops that overlap",
    { treatments: [drops, { ...drops, from: "2025-03-01", concentrationPercent: 0.01 }] },
    "treatments[1].from",
    /on or after the end of treatments\[0\].*no end, not "2025-03-01"/,
  ],
  [
    "drops for one eye over drops for both",
    {
      treatments: [
        { ...drops, eye: "right" },
        { ...drops, from: "2025-03-01" },
      ],
    },
    "treatments[1].from",
    /on or after the end of treatments\[0\]/,
  ],
  ["an eye that nobody has", { treatments: [{ ...drops, eye: "both" }] }, "treatments[0].eye", /right, left/],
  [
    "eight nights a week",
    { treatments: [{ ...drops, nightsPerWeek: 8 }] },
    "treatments[0].nightsPerWeek",
    /from 1 to 7, not 8/,
  ],
  [
    "nights a week without drops",
    { treatments: [{ from: day, kind: "orthokeratology", nightsPerWeek: 3 }] },
    "treatments[0].nightsPerWeek",
    /only drops are given some nights/,
  ],
  [
    "a bottle opened before it was dispensed",
    { supplies: [{ dispensed: day, opened: "2025-01-09" }] },
    "supplies[0].opened",
    /on or after the day it was dispensed \(2025-01-10\), not "2025-01-09"/,
  ],
  [
    "a lot used for two strengths",
    {
      supplies: [
        { dispensed: day, lot: "LT-7", concentrationPercent: 0.05 },
        { dispensed: day, lot: "lt-7 ", concentrationPercent: 0.01 },
      ],
    },
    "supplies[1].lot",
    /a lot of one strength \(supplies\[0\] has 0\.05 %.*this one 0\.01 %\)/,
  ],
  [
    "a consent that ends before it is given",
    { consents: [{ date: day, covers, until: "2025-01-09" }] },
    "consents[0].until",
    /on or after date \(2025-01-10\)/,
  ],
  [
    "a consent to half a hash",
    { consents: [{ date: day, covers, wording: { id: "w", version: "1", sha256: "abc" } }] },
    "consents[0].wording.sha256",
    /64 hexadecimal digits, not "abc"/,
  ],
  [
    "an assent nobody knows",
    { consents: [{ date: day, covers, assent: "maybe" }] },
    "consents[0].assent",
    /given, declined, not-asked, not "maybe"/,
  ],
  [
    "an answer nobody knows",
    answers({ question: "asthma", answer: "maybe" }),
    "visits[0].answers[0].answer",
    /yes, no, not-done, not "maybe"/,
  ],
  [
    "an answer below nothing",
    answers({ question: "outdoors", answer: "yes", value: -1 }),
    "visits[0].answers[0].value",
    /from 0 to 10000, not -1/,
  ],
  [
    "one question answered yes and no",
    answers({ question: "asthma", answer: "yes" }, { question: "asthma", answer: "no" }),
    "visits[0].answers[1].question",
    /has not answered yet \(answers\[0\] has this one\), not "asthma"/,
  ],
  [
    "an answer to no question",
    answers({ question: " ", answer: "yes" }),
    "visits[0].answers[0].question",
    /the id of a question/,
  ],
  [
    "a decision nobody can take",
    { decisions: [{ date: day, kind: "wait", reason: "holidays" }] },
    "decisions[0].kind",
    /one of start, continue.*decline, not "wait"/,
  ],
  [
    "a decision with a blank for its reason",
    { decisions: [{ date: day, kind: "stop", reason: " " }] },
    "decisions[0].reason",
    /why, in words, not " "/,
  ],
  [
    "a decision without a reason",
    { decisions: [{ date: day, kind: "stop" }] },
    "decisions[0].reason",
    /missing/,
  ],
  [
    "a decision on drops of 5 %",
    {
      decisions: [
        { date: day, kind: "start", reason: "r", treatment: { ...covers, concentrationPercent: 5 } },
      ],
    },
    "decisions[0].treatment.concentrationPercent",
    /up to 1\.5 % w\/v, not 5/,
  ],
  ["a decision that is nothing", { decisions: [null] }, "decisions[0]", /an object/],
  [
    "more nights missed than there were",
    { missedNights: [{ from: "2025-01-01", to: "2025-01-07", nights: 9 }] },
    "missedNights[0].nights",
    /at most 7, the nights from 2025-01-01 to 2025-01-07, not 9/,
  ],
  [
    "half a night missed",
    { missedNights: [{ from: "2025-01-01", to: "2025-01-07", nights: 0.5 }] },
    "missedNights[0].nights",
    /whole number from 1 to 3660, not 0\.5/,
  ],
  [
    "missed nights that end before they begin",
    { missedNights: [{ from: day, to: "2025-01-01", nights: 1 }] },
    "missedNights[0].to",
    /on or after from \(2025-01-10\)/,
  ],
  [
    "a concern closed without an outcome",
    { concerns: [{ ...concern, closed: "2025-02-01" }] },
    "concerns[0].outcome",
    /how it ended, in words, since it was closed on 2025-02-01/,
  ],
  [
    "a concern closed before it was opened",
    { concerns: [{ ...concern, closed: "2025-01-01", outcome: "gone" }] },
    "concerns[0].closed",
    /on or after opened \(2025-01-10\)/,
  ],
  [
    "a concern about nothing",
    { concerns: [{ ...concern, what: "" }] },
    "concerns[0].what",
    /in words, not ""/,
  ],
  [
    "a seriousness nobody knows",
    { concerns: [{ ...concern, seriousness: "bad" }] },
    "concerns[0].seriousness",
    /mild, moderate, serious, not "bad"/,
  ],
  [
    "an order of no bottles",
    { orders: [{ ...order, bottles: 0 }] },
    "orders[0].bottles",
    /from 1 to 100, not 0/,
  ],
  [
    "an order received before it was made",
    { orders: [{ ...order, received: "2025-01-01" }] },
    "orders[0].received",
    /on or after date \(2025-01-10\)/,
  ],
  [
    "an order received and cancelled",
    { orders: [{ ...order, received: "2025-01-20", cancelled: "2025-01-21" }] },
    "orders[0].cancelled",
    /absent, since the bottles came on 2025-01-20, not "2025-01-21"/,
  ],
  [
    "half a cent",
    { payments: [{ date: day, cents: 12.5, currency: "EUR" }] },
    "payments[0].cents",
    /whole number/,
  ],
  [
    "a currency in small letters",
    { payments: [{ date: day, cents: 100, currency: "eur" }] },
    "payments[0].currency",
    /ISO 4217 code such as EUR, not "eur"/,
  ],
  [
    "a pressure of nothing",
    { visits: [{ date: day, left: { intraocularPressure: { mmHg: 0 } } }] },
    "visits[0].left.intraocularPressure.mmHg",
    /from 1 to 80 mmHg, not 0/,
  ],
  [
    "a protocol that is a number",
    { child: { born: "2017-03-14", sex: "male", protocol: 7 } },
    "child.protocol",
    /text, not 7/,
  ],
]

describe("what stands beside the measurements", () => {
  it.each(cases)("%s is a fault", (_what, parts, path, words) => {
    const found = problems(parts)
    expect(found.map((fault) => fault.path)).toEqual([path])
    expect(found[0]?.message).toMatch(words)
  })
})

it("many faults at once are all told", () => {
  const found = problems({
    decisions: [{ date: day, kind: "stop", reason: "" }],
    orders: [{ ...order, bottles: -1, received: "2025-01-01" }],
    payments: [{ date: "2026-01-01", cents: -5, currency: "EUR" }],
  })
  expect(found.map(({ path }) => path).sort()).toEqual([
    "decisions[0].reason",
    "orders[0].bottles",
    "orders[0].received",
    "payments[0].cents",
    "payments[0].date",
  ])
})
