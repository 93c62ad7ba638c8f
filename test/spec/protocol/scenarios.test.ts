import { readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { Duty } from "../../../src/engine/assessment.js"
import { noRules } from "../../../src/engine/practice-rules.js"
import { protocolFor } from "../../../src/engine/protocol/choose-protocol.js"
import { duties } from "../../../src/engine/protocol/duties.js"
import { type ExpectedDay, type ExpectedDuty, knownOn, parseScenario } from "./scenario.js"

// Every interval and window in these stories is common practice, no source.
const folder = new URL("scenarios/", import.meta.url)
const stories = readdirSync(folder).filter((name) => name.endsWith(".txt"))

it("there are stories to tell", () => {
  expect(stories.length).toBeGreaterThanOrEqual(14)
})

describe.each(stories)("%s", (name) => {
  const {
    title,
    protocol: expected,
    course: told,
    days,
  } = parseScenario(readFileSync(new URL(name, folder), "utf8"))

  it.each(days.map((day) => [day.on, day] as const))(`${title}, on %s`, (today, day) => {
    const course = knownOn(told, today)
    const protocol = protocolFor({ course, today, rules: noRules })
    expect(protocol.id).toBe(expected)
    const owed = duties({ course, protocol, today }).filter((duty) => isTold(duty, day))
    expect(owed.map((duty, index) => lineOf(duty, day, index))).toEqual(
      day.duties.map(({ state, due, step, needs }) => written({ state, due, step, needs: needs ?? "..." })),
    )
  })
})

const isTold = ({ kind, step }: Duty, { duties: told }: ExpectedDay): boolean =>
  kind === "examination" || kind === "decision" || told.some((one) => one.step === step)

function lineOf({ state, due, step, needs }: Duty, { duties: told }: ExpectedDay, index: number): string {
  const isAsked = state === "open" || state === "overdue"
  const leftOut = told[index]?.needs === null
  return written({ state, due, step, needs: leftOut ? "..." : isAsked ? needs.join(", ") : "" })
}

const written = ({ state, due, step, needs }: Omit<ExpectedDuty, "needs"> & { readonly needs: string }) =>
  `${state.padEnd(8)}  ${due}  ${step}${needs === "" ? "" : `: ${needs}`}`
