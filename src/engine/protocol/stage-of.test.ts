import { expect, it } from "vitest"
import { stageOf } from "./stage-of.js"
import { standardProtocol } from "./standard.js"

it("gives each step of the standard protocol the stage its title speaks of", () => {
  const stages = standardProtocol.steps.map((step) => [step.id, stageOf(step)])
  expect(Object.fromEntries(stages)).toEqual({
    baseline: "baseline",
    "start-check-1": "safety-check",
    "start-review-6": "review",
    "start-review-12": "review",
    "start-review-18": "review",
    "start-review-24": "review",
    "start-stop-24": "review",
    "restart-check-1": "safety-check",
    "restart-review-6": "review",
    "restart-review-12": "review",
    "restart-stop-12": "review",
    "after-stop-6": "washout",
    "after-stop-restart": "washout",
    "going-on": "review",
    observation: "review",
  })
})

it("takes the stage that the protocol names before any it could find", () => {
  const [baseline] = standardProtocol.steps
  expect(stageOf({ ...baseline!, stage: "discharge" })).toBe("discharge")
})
