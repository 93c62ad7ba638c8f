import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type Receiver, receiver } from "../app/receiver.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let r: Receiver
beforeAll(async () => {
  app = await startApp()
  r = await receiver()
})
afterAll(async () => {
  await r?.close()
  await app?.close()
})

const noticed = (page: Page, text: RegExp) => page.getByRole("status").getByText(text).first().waitFor()

describe("connections of other programs", () => {
  it("a token is made by keyboard, shown once, used and revoked", async () => {
    const page = await app.open("/settings/connections")
    await page.getByText("No token yet.").waitFor()
    await expectAccessible(page)
    await page.getByRole("button", { name: "New token" }).focus()
    await page.keyboard.press("Enter")
    const dialog = page.getByRole("dialog")
    await dialog.getByRole("button", { name: "Make the token" }).click()
    await dialog.getByText("must be a name").waitFor()
    await page.keyboard.type("Scheduling")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Space")
    await expectAccessible(page)
    await picture(page, "connections-new-token")
    await dialog.getByRole("button", { name: "Make the token" }).click()
    const secret = await dialog.getByLabel("The token").inputValue()
    expect(secret).toMatch(/^lw_/)
    await expectAccessible(page)
    await dialog.getByRole("button", { name: "I have kept it" }).click()
    const row = page.getByRole("row", { name: /Scheduling/ })
    await row.getByText("Read children and courses and Record entries").waitFor()
    expect(await page.content()).not.toContain(secret)

    const asked = () =>
      fetch(`${app.address}/api/practice`, { headers: { authorization: `Bearer ${secret}` } })
    expect((await asked()).status).toBe(200)
    await row.getByRole("button", { name: "Revoke Scheduling" }).click()
    await page.getByRole("dialog").getByRole("button", { name: "Revoke it" }).click()
    await noticed(page, /The token Scheduling is revoked/)
    expect((await asked()).status).toBe(401)
  })

  it("an address is added, told of what is new, searched and removed", async () => {
    const page = await app.open("/settings/connections")
    await page.getByText("No address yet; nothing is sent.").waitFor()
    await page.getByRole("button", { name: "New address" }).click()
    const dialog = page.getByRole("dialog")
    await dialog.getByLabel("Address").fill("http://program.example/news")
    await dialog.getByRole("button", { name: "Add the address" }).click()
    await dialog
      .getByText(/begins with https/)
      .last()
      .waitFor()
    await dialog.getByLabel("Address").fill(r.url)
    await dialog.getByRole("button", { name: "Add the address" }).click()
    await dialog.getByLabel("The secret of the signature").waitFor({ timeout: 60_000 })
    await dialog.getByRole("button", { name: "I have kept it" }).click()

    // The first look at all children of the demo goes on in the background; what is new comes after it.
    await page.getByRole("button", { name: "Look and send now" }).click()
    await noticed(page, /Nothing is new/)
    await app.addCourse({
      name: "Mira Solberg",
      number: "M-3001",
      course: {
        lengthwise: 1,
        child: { born: "2017-05-20", sex: "female" },
        visits: [
          { date: "2026-11-20", right: { axialLength: { mm: 24.1 } }, left: { axialLength: { mm: 24.2 } } },
        ],
        treatments: [{ from: "2026-11-20", kind: "atropine", concentrationPercent: 0.05 }],
      },
    })
    await page.getByRole("button", { name: "Look and send now" }).click()
    await noticed(page, /delivered/)
    expect(r.received.length).toBeGreaterThan(0)
    await page.getByLabel("Search by child, address or id").fill("solberg")
    await page
      .getByRole("row", { name: /Solberg.*Delivered/ })
      .first()
      .waitFor()
    await expectAccessible(page)
    await picture(page, "connections")

    await page.getByRole("button", { name: `Remove ${r.url}` }).click()
    await page.getByRole("dialog").getByRole("button", { name: "Remove it" }).click()
    await noticed(page, /The address is removed/)
  })

  it("is read in Spanish on a narrow page", async () => {
    const page = await app.open("/settings/connections", { width: 768 })
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    await page.getByText("Scheduling").first().waitFor()
    await expectAccessible(page)
    await picture(page, "connections-es-768")
    const wide = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(wide).toBeLessThanOrEqual(768)
  })
})
