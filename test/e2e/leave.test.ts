import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, expect, it } from "vitest"
import { restoreArchive } from "../../src/server/leave/restore-archive.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
const folder = mkdtempSync(join(tmpdir(), "lengthwise-leave-"))
beforeAll(async () => {
  app = await startApp()
})
afterAll(async () => {
  await app.close()
  rmSync(folder, { recursive: true, force: true })
})

it("a clinician takes everything out on the page, and a new folder is restored from it", async () => {
  const page = await app.open("/settings/leave")
  await page.getByRole("heading", { name: "Archive", level: 1 }).waitFor()
  await expectAccessible(page)
  await picture(page, "leave-before")

  // A wrong password is told at its field, and nobody is logged out.
  await page.getByLabel("Your password").fill("not the password at all")
  await page.getByRole("button", { name: "Make the archive" }).click()
  await page.getByText("Must be the password in use").waitFor()
  await expectAccessible(page)

  // With papers it takes long enough to be seen and cancelled.
  await page.getByLabel("Your password").fill(app.logIn.password)
  await page.keyboard.press("Enter")
  await page.getByRole("progressbar").waitFor()
  await expectAccessible(page)
  await picture(page, "leave-running")
  await page.getByRole("button", { name: "Cancel" }).click()
  await page.getByText("Cancelled").waitFor()

  await page.getByLabel(/With the full record of each child/).uncheck()
  await page.getByLabel("Your password").fill(app.logIn.password)
  await page.getByRole("button", { name: "Make the archive" }).click()
  await page.getByText("Ready", { exact: true }).waitFor({ timeout: 60_000 })
  await expectAccessible(page)
  await picture(page, "leave-ready")
  const head = await page.getByText(/^Last entry [0-9a-f]{64}/).textContent()

  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Download" }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/^lengthwise-archive-\d{4}-\d{2}-\d{2}\.zip$/)
  const file = join(folder, "archive.zip")
  await download.saveAs(file)
  await page.getByText("Downloaded, then removed here").waitFor()
  const restored = await restoreArchive({ file, folder: join(folder, "new") })
  expect(head).toContain(restored.head)
  await page.context().close()
})

it("fits a tablet, in English and in Spanish", async () => {
  const page = await app.open("/settings/leave", { width: 768 })
  await page.getByRole("heading", { name: "Last archives" }).waitFor()
  await expectAccessible(page)
  await picture(page, "leave-768")
  await page.evaluate("localStorage.setItem('lengthwise-language', 'es')")
  await page.reload()
  await page.getByRole("heading", { name: "Archivo completo", level: 1 }).waitFor()
  await expectAccessible(page)
  await picture(page, "leave-768-es")
  const overflow = await page.evaluate("document.documentElement.scrollWidth > window.innerWidth")
  expect(overflow).toBe(false)
  await page.context().close()
})
