import { describe, expect, it } from "vitest"
import { evidence } from "../../evidence/index.js"
import type { Course, Treatment } from "../course.js"
import { MYOPIA_FROM_D, protocolFor } from "./choose-protocol.js"
import { standardProtocol } from "./standard.js"

const today = "2026-01-10"
const drops: Treatment = { kind: "atropine", concentrationPercent: 0.05, from: "2025-01-10" }
const spectacles: Treatment = { kind: "lenslet-spectacles", from: "2025-01-10" }
const seen = (sphere: number, date = "2025-01-10") => ({ date, right: { refraction: { sphere } } })

function followed(story: Partial<Course>, { protocol, rules = { protocols: [] } }: Choice = {}) {
  const course: Course = {
    lengthwise: 1,
    child: { born: "2016-05-02", sex: "female", protocol },
    visits: [],
    ...story,
  }
  return protocolFor({ course, today, rules })
}
interface Choice {
  readonly protocol?: string
  readonly rules?: { readonly protocols: readonly (typeof standardProtocol)[] }
}

it.each<[string, Partial<Course>, string]>([
  ["on drops", { treatments: [drops] }, "standard"],
  ["on drops and spectacles", { treatments: [drops, spectacles] }, "standard"],
  ["on spectacles alone", { treatments: [spectacles] }, "optical"],
  [
    "on spectacles, after an earlier course of drops",
    { treatments: [{ ...drops, from: "2022-01-10", to: "2024-01-10" }, spectacles] },
    "optical",
  ],
  ["about to start spectacles", { treatments: [{ ...spectacles, from: "2026-02-01" }] }, "optical"],
  ["untreated and myopic", { visits: [seen(-0.5)] }, "standard"],
  ["untreated and not myopic", { visits: [seen(-0.25)] }, "watchful"],
  ["untreated, myopic since the last visit", { visits: [seen(-0.75, "2025-07-10"), seen(0)] }, "standard"],
  ["untreated and never refracted", { visits: [{ date: "2025-01-10" }] }, "standard"],
  ["untreated, refracted after the day asked about", { visits: [seen(1, "2026-02-01")] }, "standard"],
])("a child %s", (_, story, id) => {
  expect(followed(story).id).toBe(id)
})

it("a child with one myopic eye is myopic", () => {
  const visit = {
    date: "2025-01-10",
    right: { refraction: { sphere: 1 } },
    left: { refraction: { sphere: -1 } },
  }
  expect(followed({ visits: [visit] }).id).toBe("standard")
})

describe("a protocol named for the child", () => {
  it("comes before the one that fits", () => {
    expect(followed({ treatments: [drops] }, { protocol: "step-down" }).id).toBe("step-down")
  })

  it("that nobody knows counts as none", () => {
    expect(followed({ treatments: [spectacles] }, { protocol: "gold" }).id).toBe("optical")
  })
})

describe("a practice's own", () => {
  const own = { ...standardProtocol, version: "practice-3" }
  const gold = { ...standardProtocol, id: "gold" }

  it("takes the place of the shipped one of the same id", () => {
    expect(followed({ treatments: [drops] }, { rules: { protocols: [own] } }).version).toBe("practice-3")
  })

  it("of another id is followed where a child names it, and only there", () => {
    const rules = { protocols: [gold] }
    expect(followed({ treatments: [drops] }, { rules }).id).toBe("standard")
    expect(followed({ treatments: [drops] }, { rules, protocol: "gold" }).id).toBe("gold")
  })
})

it("calls myopic what the growth parameters call myopic", () => {
  expect(MYOPIA_FROM_D).toBe(evidence.growth.values.myopiaCutOffD.value)
})
