import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { type MailServer, mailServer } from "../app/mail-server.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let server: MailServer
let before: string | undefined

/** A girl on drops whose last bottle is good for five days more. */
const bottleEnding: Course = {
  lengthwise: 1,
  child: { born: "2017-05-20", sex: "female", ancestry: "european" },
  visits: [
    {
      date: "2026-06-02",
      right: { axialLength: { mm: 24.1, readings: 5, method: "optical-biometry", device: "A" } },
      left: { axialLength: { mm: 24.2, readings: 5, method: "optical-biometry", device: "A" } },
    },
  ],
  treatments: [{ from: "2026-06-02", kind: "atropine", concentrationPercent: 0.05 }],
  supplies: [
    { dispensed: "2026-11-01", opened: "2026-11-01", concentrationPercent: 0.05, beyondUse: "2026-11-30" },
  ],
}
let first = ""
let second = ""

beforeAll(async () => {
  server = await mailServer({ port: 4620, login: { user: "practice", pass: "not-to-be-shown" } })
  before = process.env.LENGTHWISE_SMTP
  process.env.LENGTHWISE_SMTP = server.url
  app = await startApp()
  first = await app.addCourse({ name: "Mira Solberg", number: "M-2001", course: bottleEnding })
  second = await app.addCourse({ name: "Edda Brandl", number: "M-2002", course: bottleEnding })
})
afterAll(async () => {
  await app?.close()
  await server?.close()
  if (before === undefined) delete process.env.LENGTHWISE_SMTP
  else process.env.LENGTHWISE_SMTP = before
})

const noticed = (page: Page, text: RegExp) => page.getByRole("status").getByText(text).waitFor()

async function recordContact(page: Page, { name, email }: { readonly name: string; readonly email: string }) {
  await page.getByLabel("Name", { exact: true }).fill(name)
  await page.getByLabel("Relation to the child").fill("mother")
  await page.getByLabel("Messages call the child").fill("Mira")
  await page.getByLabel("E-mail", { exact: true }).fill(email)
  await page.getByLabel("By e-mail").check()
  await page.getByLabel("Notice of a bottle running out").check()
  await page.getByRole("button", { name: "Record contact" }).click()
}

describe("messages to families on the pages", () => {
  it("are off at first, and the page says so", async () => {
    const page = await app.open("/messages")
    await page.getByText("Messages are turned off").waitFor()
    expect(await page.getByRole("button", { name: "Look and send now" }).isDisabled()).toBe(true)
    await page.context().close()
  })

  it("are turned on in the settings, where a fault stands at its field", async () => {
    const page = await app.open("/settings/messages")
    const set = (label: string, value: string) => page.getByLabel(label, { exact: true }).fill(value)
    await page.getByLabel("Write to families that agreed").check()
    await set("Sender", "Seven Lanterns")
    await set("Telephone", "+353 1 555 0100")
    await set("E-mail address of the sender", "desk@lanterns.example")
    await set("Time zone", "Dublin")
    // The practice's clock of these tests is the machine's: no hour of it may be quiet.
    await set("Quiet from", "00:00")
    await set("Quiet until", "00:00")
    await page.getByRole("button", { name: "Record settings" }).click()
    await page.getByText(/IANA list such as Europe\/Dublin/).waitFor()
    await set("Time zone", "Europe/Dublin")
    await page.getByRole("button", { name: "Record settings" }).click()
    await noticed(page, /families that agreed are written to/)
    await expectAccessible(page)
    await picture(page, "messages-settings")
    await page.context().close()
  })

  it("need a contact who agreed; what is missing is said at its field", async () => {
    const page = await app.open(`/children/${first}/family-contact`)
    await recordContact(page, { name: "Ines Solberg", email: "" })
    await page.getByText(/since the family is reached by e-mail/).waitFor()
    await expectAccessible(page)
    await picture(page, "messages-contact-form")
    await recordContact(page, { name: "Ines Solberg", email: "ines@family.example" })
    await noticed(page, /Recorded: the family’s contact/)
    await page.getByText("Notice of a bottle running out, on 25 Nov 2026").waitFor()
    await expectAccessible(page)
    await picture(page, "messages-contact")
    await page.context().close()
  })

  it("leave once, and the page shows what was said and what happened", async () => {
    const page = await app.open("/messages")
    await page.getByText("E-mails go through 127.0.0.1:4620").waitFor()
    await page.getByRole("button", { name: "Look and send now" }).click()
    await noticed(page, /new message|e-mail/)
    await page.getByRole("cell", { name: /^Sent/ }).waitFor()
    await page.getByRole("button", { name: "Open: Bottle running out, Mira Solberg" }).click()
    const dialog = page.getByRole("dialog")
    await dialog.getByText("Something to arrange with us soon").waitFor()
    await dialog.getByText(/the last bottle for Mira is good until 30 November 2026/).waitFor()
    await dialog.getByText("What happened to it").click()
    await expectAccessible(page)
    await picture(page, "messages-dialog")
    expect(server.taken).toHaveLength(1)
    expect(await page.content()).not.toContain("not-to-be-shown")
    await page.context().close()
  })

  it("of which nobody knows whether it arrived are decided by a person", async () => {
    server.next("drop-after-message")
    const contact = await app.open(`/children/${second}/family-contact`)
    await recordContact(contact, { name: "Ana Brandl", email: "ana@family.example" })
    await noticed(contact, /Recorded/)
    await contact.context().close()
    const page = await app.open("/messages")
    await page.getByRole("button", { name: "Look and send now" }).click()
    await page.getByRole("link", { name: "Unknown 1" }).click()
    await page.getByRole("cell", { name: /^Unknown/ }).waitFor()
    await expectAccessible(page)
    await picture(page, "messages-unknown")
    await page.getByRole("button", { name: /^Open: .* Edda Brandl/ }).click()
    await picture(page, "messages-unknown-dialog")
    await page.getByRole("button", { name: "It was sent" }).click()
    await noticed(page, /Noted: the message was sent/)
    await page.getByText("No message matches.").waitFor()
    await page.context().close()
  })

  it("are called off only after asking", async () => {
    server.next("refuse-recipient")
    const third = await app.addCourse({ name: "Tilda Roos", number: "M-2003", course: bottleEnding })
    const contact = await app.open(`/children/${third}/family-contact`)
    await recordContact(contact, { name: "Jon Roos", email: "jon@family.example" })
    await noticed(contact, /Recorded/)
    await contact.context().close()
    const page = await app.open("/messages?search=roos")
    await page.getByRole("button", { name: "Look and send now" }).click()
    await page.getByRole("cell", { name: /^Not accepted/ }).waitFor()
    await page.getByRole("button", { name: /^Open: .* Tilda Roos/ }).click()
    await page.getByText("The mail server said: 550 no such mailbox").waitFor()
    await page.getByRole("button", { name: "Call off …" }).click()
    await page.getByText(/The family of Tilda Roos is then not told/).waitFor()
    await page.getByRole("button", { name: "Call off", exact: true }).click()
    await noticed(page, /called off/)
    await page.getByRole("cell", { name: /^Called off/ }).waitFor()
    await page.context().close()
  })

  it("go as a list to whoever sends SMS, and come back when that was a mistake", async () => {
    const fourth = await app.addCourse({ name: "Otto Lind", number: "M-2004", course: bottleEnding })
    const contact = await app.open(`/children/${fourth}/family-contact`)
    await contact.getByLabel("Name", { exact: true }).fill("Eva Lind")
    await contact.getByLabel("Relation to the child").fill("mother")
    await contact.getByLabel("Telephone").fill("+353 1 555 0144")
    await contact.getByLabel("By SMS").check()
    await contact.getByLabel("Notice of a bottle running out").check()
    await contact.getByRole("button", { name: "Record contact" }).click()
    await noticed(contact, /Recorded/)
    await contact.context().close()
    const page = await app.open("/messages")
    await page.getByRole("button", { name: "Look and send now" }).click()
    await page.getByRole("button", { name: "Export 1 SMS" }).click()
    await noticed(page, /1 message handed over/)
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Download the list" }).click(),
    ])
    const csv = readFileSync(await download.path(), "utf8")
    expect(csv).toContain('"Eva Lind","35315550144"')
    expect(download.suggestedFilename()).toMatch(/^messages-sms-.*\.csv$/)
    await page.getByRole("button", { name: "Undo: not handed over" }).click()
    await noticed(page, /1 message waits again/)
    await page.getByRole("button", { name: "Export 1 SMS" }).waitFor()
    await expectAccessible(page)
    await picture(page, "messages")
    await page.context().close()
  })

  it("stop at once when a family says so", async () => {
    const page = await app.open(`/children/${first}/family-contact`)
    await page.getByRole("button", { name: "Stop messages" }).click()
    await noticed(page, /No more messages to this family/)
    await page.getByText(/withdrawn from 25 Nov 2026: no message is sent/).waitFor()
    await page.context().close()
  })

  it("send a test to the person who asks", async () => {
    const page = await app.open("/messages")
    await page.getByRole("button", { name: "Send a test to me …" }).click()
    await page.getByLabel("Your e-mail address").fill("me@lanterns.example")
    await page.getByRole("button", { name: "Send a test", exact: true }).click()
    await noticed(page, /took the test/)
    expect(server.taken.at(-1)).toContain("me@lanterns.example")
    await page.context().close()
  })

  it("can be read at 768 pixels and with the keyboard", async () => {
    const page = await app.open("/messages", { width: 768 })
    await page.getByRole("heading", { name: "The coming 14 days" }).waitFor()
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
    await page.keyboard.press("/")
    await page.keyboard.type("nobody at all")
    await page.getByText("No message matches.").waitFor()
    await expectAccessible(page)
    await picture(page, "messages-narrow")
    await page.context().close()
  })
})
