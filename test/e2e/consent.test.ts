import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let unsigned = ""
let signed = ""
const folder = mkdtempSync(join(tmpdir(), "lengthwise-scans-"))

beforeAll(async () => {
  app = await startApp()
  const { consents: _, ...withoutConsent } = slowedCourse
  unsigned = await app.addCourse({ name: "Ilse Varga", number: "C-1", course: withoutConsent })
  signed = await app.addCourse({ name: "Tomas Brandl", number: "C-2", course: slowedCourse })
})
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true })
  await app?.close()
})

/** The form for a new consent, with who signs already told. */
async function newConsent(child: string): Promise<Page> {
  const page = await app.open(`/children/${child}/consent`)
  await page.getByRole("button", { name: "New consent" }).click()
  await page.getByRole("heading", { name: "Consent to treatment with atropine 0.05 % eye drops" }).waitFor()
  await page.getByLabel("Who signs").fill("Ines Varga")
  await page.getByLabel("Relation to the child").fill("mother")
  await page.getByLabel("agrees", { exact: true }).check()
  return page
}

async function sign(page: Page): Promise<void> {
  const box = await page.locator("canvas.signature").boundingBox()
  if (!box) throw new Error("there is nothing to sign on")
  await page.mouse.move(box.x + 40, box.y + 90)
  await page.mouse.down()
  for (let step = 0; step < 40; step++)
    await page.mouse.move(box.x + 40 + step * 6, box.y + 90 + 30 * Math.sin(step / 3))
  await page.mouse.up()
  await page.getByText("Signed.", { exact: true }).waitFor()
}

const record = (page: Page) => page.getByRole("button", { name: "Record consent" }).click()
const recorded = (page: Page) => page.getByText("Recorded: consent to atropine 0.05 %.").waitFor()

describe("a consent signed on screen", () => {
  it("is owed, read with its figures, signed, and then no longer owed", async () => {
    const page = await app.open(`/children/${unsigned}/consent`)
    await page.getByText("Consent to atropine 0.05 %.").waitFor()
    await page.getByText(/days late, was due/).waitFor()
    await expectAccessible(page)
    await picture(page, "consent-owed")
    await page.context().close()

    const form = await newConsent(unsigned)
    await form
      .getByText(/eyes on drops without the drug 0\.41.mm/)
      .first()
      .waitFor()
    await expectAccessible(form)
    await sign(form)
    await picture(form, "consent-new")
    await record(form)
    await recorded(form)
    // Given today, after the start: the gap stays on record, and nothing is owed from now on.
    await form.getByText("Nothing. Whatever is in use or planned is covered.").waitFor()
    await form.context().close()
  })

  it("is shown again later: the very text and the signature", async () => {
    const page = await app.open(`/children/${unsigned}/consent`)
    await page.getByRole("button", { name: /^show the consent/ }).click()
    await page.getByText('Wording "drops", version 1').waitFor()
    await page.getByText(/^SHA-256 [0-9a-f]{64}\./).waitFor()
    const drawing = page.getByRole("img", { name: "Signature of Ines Varga" })
    await drawing.waitFor()
    expect(await drawing.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(0)
    await expectAccessible(page)
    await picture(page, "consent-signed")
    await page.context().close()
  })

  it("is not recorded without a signature, and says how to sign with a keyboard", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("Who signs").fill("")
    await record(page)
    await page.getByText("must be signed; with a keyboard choose “name typed”").waitFor()
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest(".field")?.textContent))
      .toMatch(/^Who signs/)
    await expectAccessible(page)
    await page.context().close()
  })

  it("is signed with a typed name by keyboard alone", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("drawn on this screen").focus()
    await page.keyboard.press("ArrowRight")
    await page.getByLabel(/^Name, typed by who signs/).focus()
    await page.keyboard.type("Ines Varga")
    await page.keyboard.press("Enter")
    await recorded(page)
    await page.getByRole("button", { name: /^show the consent of 25 Nov 2026/ }).click()
    await page.getByRole("dialog").getByText("Ines Varga", { exact: true }).waitFor()
    await page.context().close()
  })
})

describe("a consent in the family's language", () => {
  it("is read, signed and stored in it, and the page around it stays as it was", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("Español", { exact: true }).check()
    const sheet = page.locator(".consent-sheet")
    await page.getByRole("heading", { name: "Consentimiento para el tratamiento con gotas" }).waitFor()
    expect(await sheet.getAttribute("lang")).toBe("es")
    await sheet
      .getByText(/los ojos con gotas sin el medicamento, 0,41.mm/)
      .first()
      .waitFor()
    await page.getByLabel("Quién firma").fill("Ines Varga")
    await page.getByLabel("Relación con el niño o la niña").fill("madre")
    await page.getByLabel("está de acuerdo", { exact: true }).check()
    await page.getByLabel("name typed").check()
    await page.getByLabel("Nombre, escrito por quien firma en lugar de una firma").fill("Ines Varga")
    await expectAccessible(page)
    await picture(page, "consent-spanish")
    await record(page)
    await recorded(page)
    const row = page.getByRole("row", { name: /Español/ })
    await row.getByRole("button", { name: /^show the consent/ }).click()
    const stored = page.locator('.consent-stored [lang="es"]')
    await stored.getByText('Texto "drops", versión 1, es').waitFor()
    await page.getByText("Read in: Español.").waitFor()
    await expectAccessible(page)
    await page.context().close()
  })

  it("is in Chinese too, with the form the family fills in", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("简体中文", { exact: true }).check()
    await page.getByRole("heading", { name: /阿托品滴眼液治疗的知情同意书/ }).waitFor()
    await page.getByRole("heading", { name: "谁同意" }).waitFor()
    await page.getByText("请用笔、手指或鼠标在此签名。").waitFor()
    await record(page)
    await page.getByText("请填写签名人的姓名").waitFor()
    await expectAccessible(page)
    await picture(page, "consent-chinese")
    await page.setViewportSize({ width: 768, height: 1000 })
    await expectAccessible(page)
    await page.context().close()
  })
})

describe("a consent signed on paper", () => {
  it("is printed as the text with lines to sign on, and nothing else", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("on paper, scanned").check()
    await page.emulateMedia({ media: "print" })
    await page.setViewportSize({ width: 760, height: 1000 })
    for (const hidden of [
      page.getByLabel("Who signs"),
      page.getByRole("button"),
      page.getByRole("navigation"),
    ])
      expect(await hidden.first().isVisible(), String(hidden)).toBe(false)
    for (const line of ["What it may do, in figures", "Name of the parent or guardian", "Signature"])
      expect(await page.getByText(line, { exact: true }).last().isVisible()).toBe(true)
    await page.getByText(/Child: Tomas Brandl, born/).waitFor()
    await picture(page, "consent-print")
    await page.context().close()
  })

  it("takes a scan, and refuses what is none in words", async () => {
    const page = await newConsent(signed)
    await page.getByLabel("on paper, scanned").check()
    const chosen = page.getByLabel("Scan of the signed paper")
    const file = (name: string, content: string | Buffer) => {
      const path = join(folder, name)
      writeFileSync(path, content)
      return path
    }
    await chosen.setInputFiles(file("letter.txt", "not a scan"))
    await record(page)
    await page.getByText("must be PDF, PNG, JPEG; letter.txt is none of them").waitFor()
    await chosen.setInputFiles(file("large.pdf", Buffer.alloc(10_100_000)))
    await page.getByText("must be at most 10 MB; large.pdf has 10.1 MB").waitFor()
    await chosen.setInputFiles(file("page.pdf", "<html>called a PDF</html>"))
    await record(page)
    await page.getByText(/must be a PDF, as its media type .* says; its content is something else/).waitFor()
    await expectAccessible(page)
    await chosen.setInputFiles(file("signed.pdf", "%PDF-1.7\n%%EOF\n"))
    await record(page)
    await recorded(page)
    await page
      .getByRole("button", { name: /^show the consent of 25 Nov 2026/ })
      .first()
      .click()
    await page.getByRole("link", { name: "Download the scan of the signed paper" }).waitFor()
    await page.context().close()
  })
})

describe("what no longer holds", () => {
  it("is withdrawn with a reason, stays in the list, and is owed again", async () => {
    const page = await app.open(`/children/${unsigned}/consent`)
    await page.getByRole("button", { name: /^withdraw the consent/ }).click()
    await page.getByText("Atropine 0.05 % is in use. The stop is entered apart").waitFor()
    await expectAccessible(page)
    await page.getByLabel("Why, as the family says").fill("none given")
    await page.getByRole("button", { name: "Withdraw consent" }).click()
    await page.getByText("Withdrawn from 25 Nov 2026: the consent to atropine 0.05 %.").waitFor()
    await page.getByText("withdrawn on 25 Nov 2026", { exact: true }).waitFor()
    await page.getByText("Consent to atropine 0.05 % again.").waitFor()
    await picture(page, "consent-withdrawn")
    await page.context().close()
  })

  it("follows from a wording of the practice, which says what is wrong with it before it is recorded", async () => {
    const page = await app.open("/settings/wording")
    await page.getByRole("button", { name: "change a copy of version 1 of drops in English" }).click()
    await page.getByLabel("Heading").first().fill("What we talk about")
    await page.getByRole("heading", { name: "What we talk about" }).waitFor()
    await expectAccessible(page)
    await picture(page, "consent-wording")
    await page.getByLabel("Text").first().fill("{benefits}")
    await page.getByRole("button", { name: "Record this version" }).click()
    await page.getByText(/must be text with no other names in braces than/).waitFor()
    await page.getByLabel("Text").first().fill("In our own words: {benefit}")
    await page.getByRole("button", { name: "Record this version" }).click()
    await page.getByText("Recorded: version 2026-11-25 of the wording “drops”.").waitFor()
    await expectAccessible(page)
    await page.context().close()
  })

  it("shows the practice's own wording to the next family", async () => {
    const page = await newConsent(signed)
    await page.getByRole("heading", { name: "What we talk about" }).waitFor()
    // In Spanish the practice has none of its own: the one that ships is offered, and says so.
    await page.getByLabel("Español, as it ships").check()
    await page.getByText(/^The practice has no wording of its own in force in this language/).waitFor()
    await page.getByRole("heading", { name: "De qué se trata" }).waitFor()
    await page.context().close()
  })
})
