import { defaultSettings } from "../../src/engine/settings.js"
import { migrate, openEmbedded, practiceRecord } from "../../src/record/index.js"
import { inTurn } from "../../src/server/in-turn.js"
import { rulesInForce } from "../../src/server/rules.js"
import { webhookJob } from "../../src/server/webhooks/webhook-job.js"

// A process of its own that looks once for news in a folder and sends what waits; killed in between by the test.
const [folder = "", today = "", now = ""] = process.argv.slice(2)
const database = openEmbedded(folder)
await migrate(database)
const record = practiceRecord(database, { id: "practice", name: "Practice", latitude: null, settings: {} })
const context = {
  record,
  clock: { nowMs: () => Date.parse(now), today: () => today },
  settings: defaultSettings,
  rules: rulesInForce(record),
  papers: { pdf: () => Promise.reject(new Error("no paper here")), close: () => Promise.resolve() } as never,
  oneAtATime: inTurn(),
}
const run = await webhookJob(context, { loopback: () => true }).run({ insist: true })
process.stdout.write(`${JSON.stringify(run)}\n`)
await database.close()
