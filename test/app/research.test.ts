import { afterAll, beforeAll, expect, it } from "vitest"
import type { ResearchAnswer } from "../../src/server/contract/research.js"
import { type TestApp, testApp } from "./test-app.js"

let practice: TestApp
beforeAll(async () => {
  practice = await testApp()
  await practice.logIn()
  const { child } = await practice.addChild({ name: "Mira Hallow" })
  const visit = {
    date: "2025-11-20",
    right: { axialLength: { mm: 24.12 } },
    left: { axialLength: { mm: 24.0 } },
  }
  const added = await practice.ask("POST", `/api/children/${child.id}/visits`, { body: visit })
  expect(added.statusCode).toBe(201)
})
afterAll(() => practice.close())

it("is told before it is taken: rows, small groups, and what its columns mean", async () => {
  const answer = (await practice.ask("GET", "/api/research")).json<ResearchAnswer>()
  expect([answer.children, answer.rows, answer.smallestCell]).toEqual([1, 2, 5])
  expect(answer.smallCells).toMatchObject([{ children: 1 }])
  expect(answer.dictionary.map(({ column }) => column)).toContain("axial_length_mm")
})

it("is handed over as a .zip in which no name stands", async () => {
  const answer = await practice.ask("GET", "/api/research/table.zip")
  expect(answer.headers["content-type"]).toBe("application/zip")
  expect(answer.rawPayload.subarray(0, 2).toString("latin1")).toBe("PK")
  expect(answer.rawPayload.toString("latin1")).not.toContain("Mira")
})
