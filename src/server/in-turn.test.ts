import { expect, it } from "vitest"
import { inTurn } from "./in-turn.js"

const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms))

it("a task starts when the one before has ended", async () => {
  const queue = inTurn()
  const log: string[] = []
  const task = (name: string, ms: number) => async () => {
    log.push(`${name} starts`)
    await later(ms)
    log.push(`${name} ends`)
  }
  await Promise.all([queue(task("slow", 20)), queue(task("fast", 1))])
  expect(log).toEqual(["slow starts", "slow ends", "fast starts", "fast ends"])
})

it("a task that fails stops none of those behind it, and its own caller learns of it", async () => {
  const queue = inTurn()
  const failing = queue(() => Promise.reject(new Error("no")))
  const next = queue(async () => "done")
  await expect(failing).rejects.toThrow("no")
  expect(await next).toBe("done")
})
