import { defaultSettings } from "../../src/engine/settings.js"
import { migrate, openEmbedded, practiceRecord } from "../../src/record/index.js"
import { childReadings } from "../../src/server/child-readings.js"
import { inTurn } from "../../src/server/in-turn.js"
import { mailJob } from "../../src/server/mail/mail-job.js"
import { smtpAddress } from "../../src/server/mail/smtp-address.js"
import { rulesInForce } from "../../src/server/rules.js"

// A process of its own that looks once after the outbox of a folder and says what it did; killed in between by the test.
const [folder = "", url = "", today = "", now = ""] = process.argv.slice(2)
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
const readings = childReadings(context)
const run = await mailJob(context, () => readings, { smtp: smtpAddress(url) }).run({ insist: true })
process.stdout.write(`${JSON.stringify(run)}\n`)
await database.close()
