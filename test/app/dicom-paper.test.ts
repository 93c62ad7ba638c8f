import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { noRules } from "../../src/engine/practice-rules.js"
import type { ChildView } from "../../src/server/contract/child.js"
import { type InstrumentReceiver, instrumentReceiver } from "../../src/server/dicom/receiver.js"
import { inTurn } from "../../src/server/in-turn.js"
import { hasTool } from "../report/outside-tools.js"
import { run } from "./dicom-tried.js"
import { type TestApp, testApp } from "./test-app.js"

/** Made by pdf2dcm of dcmtk; of an invented girl, dated 16 March 2026. */
const OBJECT = "test/validation/dicom/objects/parent-report.dcm"
const CHILD = { name: "Child Sample", number: "LW-DEMO-0001", born: "2017-09-05", sex: "female" }
const TODAY = "2026-11-25"

let test: TestApp
let receiver: InstrumentReceiver
let port: number
beforeEach(async () => {
  test = await testApp()
  test.moveTo(TODAY)
  await test.logIn()
  receiver = instrumentReceiver({
    record: test.record,
    clock: { nowMs: () => Date.parse(`${TODAY}T10:00:00Z`), today: () => TODAY },
    oneAtATime: inTurn(),
    rules: { now: async () => noRules, changed: () => {} },
  })
  const answer = await receiver.start({ host: "127.0.0.1", port: 0, keys: null, write: () => {} })
  port = answer.port ?? 0
})
afterEach(async () => {
  await receiver.close()
  await test.close()
})

const sent = () => run("storescu", "-R", "-aec", "LENGTHWISE", "127.0.0.1", String(port), OBJECT)
const papersOf = async (child: string) => {
  const view: ChildView = (await test.ask("GET", `/api/children/${child}`)).json()
  return view.entries.filter(({ kind }) => kind === "document")
}

describe.skipIf(!hasTool("storescu"))(
  "a paper that an instrument sends as DICOM (skipped where storescu is absent)",
  () => {
    it("stands among the entries of its child, and opens as it was printed; sent twice it stands once", async () => {
      const { child } = await test.addChild(CHILD)
      expect(await sent()).toMatchObject({ code: 0 })
      expect(await sent()).toMatchObject({ code: 0 })
      const papers = await papersOf(child.id)
      expect(papers).toMatchObject([
        { date: "2026-03-16", author: "Instruments", body: { title: "Parent report" } },
      ])
      const { file } = (papers[0]?.body ?? {}) as { readonly file?: string }
      const opened = await test.ask("GET", `/api/files/${file}`)
      expect(opened.headers["content-type"]).toBe("application/pdf")
      expect(opened.headers["content-disposition"]).toMatch(/filename="file-[0-9a-f]{12}\.pdf"$/)
      // A DICOM value is of even length: a byte may follow the end of the paper.
      expect(opened.rawPayload.subarray(0, 5).toString()).toBe("%PDF-")
      expect(opened.rawPayload.toString("latin1")).toMatch(/%%EOF\s*\0?$/)
      const { items } = (await test.ask("GET", "/api/inbox?state=taken")).json()
      expect(items).toMatchObject([{ holds: "1 document", child: { id: child.id } }])
    })

    it("waits in the Inbox where no child is certain, and is taken by a person", async () => {
      const { child } = await test.addChild({ ...CHILD, name: "Childe Sample", number: "7" })
      expect(await sent()).toMatchObject({ code: 0 })
      expect(await papersOf(child.id)).toEqual([])
      const { items } = (await test.ask("GET", "/api/inbox")).json()
      expect(items).toMatchObject([{ state: "waiting", holds: "1 document" }])
      const taken = await test.ask("POST", `/api/inbox/${items[0].id}/take`, { body: { child: child.id } })
      expect(taken.statusCode).toBe(201)
      expect(taken.json().events).toMatchObject([
        { state: "waiting", by: null },
        { state: "taken", by: "Ada Lindqvist" },
      ])
      expect(await papersOf(child.id)).toHaveLength(1)
    })

    it("of a day that has not come is not put under its child", async () => {
      const { child } = await test.addChild(CHILD)
      await receiver.close()
      const early = instrumentReceiver({
        record: test.record,
        clock: { nowMs: () => Date.parse("2026-03-01T10:00:00Z"), today: () => "2026-03-01" },
        oneAtATime: inTurn(),
        rules: { now: async () => noRules, changed: () => {} },
      })
      port = (await early.start({ host: "127.0.0.1", port: 0, keys: null, write: () => {} })).port ?? 0
      await sent()
      await early.close()
      expect(await papersOf(child.id)).toEqual([])
    })
  },
)
