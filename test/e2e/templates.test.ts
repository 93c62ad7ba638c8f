import { execFileSync } from "node:child_process"
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { crc32, deflateSync } from "node:zlib"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let child = ""
const folder = mkdtempSync(join(tmpdir(), "lengthwise-letterhead-"))

beforeAll(async () => {
  app = await startApp()
  child = await app.addCourse({ name: "Mirel Sandvik", number: "T-1", course: slowedCourse })
})
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true })
  await app?.close()
})

function file(name: string, content: string | Buffer): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

/** A PNG of one colour. */
function png(width: number, height: number): Buffer {
  const chunk = (kind: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(kind), data])
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)]
    length.writeUInt32BE(data.length)
    sum.writeUInt32BE(crc32(body))
    return Buffer.concat([length, body, sum])
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  head.set([8, 2], 8)
  const row = Buffer.concat([Buffer.from([0]), Buffer.alloc(width * 3, Buffer.from([10, 95, 90]))])
  const rows = Buffer.concat(Array.from({ length: height }, () => row))
  return Buffer.concat([
    Buffer.from("89504e470d0a1a0a", "hex"),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ])
}

async function settings(part: string, { width = 1280, language = "en" } = {}): Promise<Page> {
  const page = await app.open(`/settings/${part}`, { width })
  page.setDefaultTimeout(10_000)
  if (language !== "en") {
    await page.evaluate((spoken) => localStorage.setItem("lengthwise-language", spoken), language)
    await page.reload()
  }
  return page
}

/** The family's report of the child as PDF. */
async function report(page: Page): Promise<string> {
  const answer = await page.request.get(
    `${app.address}/api/children/${child}/documents/family?as=pdf&language=en`,
  )
  expect(answer.ok()).toBe(true)
  return file("report.pdf", await answer.body())
}
const textOf = (path: string) => execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" })
const picturesOf = (path: string) =>
  execFileSync("pdfimages", ["-list", path], { encoding: "utf8" }).trim().split("\n").length - 2

describe("the letterhead", () => {
  it("refuses a picture of 40 MB and what is none in words, and sends neither", async () => {
    const page = await settings("letterhead")
    const sent: string[] = []
    page.on("request", (request) => request.method() === "POST" && sent.push(request.url()))
    const large = file("crest.png", png(4, 4))
    truncateSync(large, 40_000_000)
    await page.getByLabel("Picture", { exact: true }).setInputFiles(large)
    await page.getByText("must be at most 1 MB; crest.png has 40 MB").waitFor()
    await expectAccessible(page)
    await picture(page, "letterhead-refused")
    await page.getByLabel("Picture", { exact: true }).setInputFiles(file("crest.txt", "a crest"))
    await page.getByText("must be a PNG or JPEG; crest.txt is neither").waitFor()
    await page.getByLabel("Picture", { exact: true }).setInputFiles(file("empty.png", ""))
    await page.getByText("must be a file that is not empty").waitFor()
    expect(sent).toEqual([])
    // What only calls itself a picture the server refuses.
    await page
      .getByLabel("Picture", { exact: true })
      .setInputFiles(file("page.png", "<html>called a PNG</html>"))
    await page.getByText(/its content is something else/).waitFor()
    expect(await page.getByRole("img", { name: "The picture as it is stored" }).count()).toBe(0)
    await page.context().close()
  })

  it("takes a PNG, and it stands on the paper that is looked at and on the PDF", async () => {
    const page = await settings("letterhead")
    expect(picturesOf(await report(page))).toBe(0)
    await page.getByLabel("Address and telephone").fill("12 Harbour Steps\n\nTelephone 000 555")
    await page.getByLabel("Picture", { exact: true }).setInputFiles(file("crest.png", png(320, 160)))
    await page.getByRole("img", { name: "The picture as it is stored" }).waitFor()
    await page.getByRole("button", { name: "Record letterhead" }).click()
    await page.getByText("Recorded: the letterhead. It stands on every paper from now on.").waitFor()
    await expectAccessible(page)
    await picture(page, "letterhead")

    await page.goto(`${app.address}/children/${child}/papers`)
    const head = page.getByRole("article").locator("header")
    await head.getByText("Telephone 000 555").waitFor()
    const width = await head.locator("img").evaluate(async (image: HTMLImageElement) => {
      await image.decode()
      return image.naturalWidth
    })
    expect(width).toBe(320)
    await picture(page, "letterhead-on-paper")

    const pdf = await report(page)
    expect(textOf(pdf)).toMatch(/12 Harbour Steps\s+Telephone 000 555/)
    expect(picturesOf(pdf)).toBe(1)
    await page.context().close()
  })

  it("says in words what the server refuses, and the picture comes off again", async () => {
    const page = await settings("letterhead")
    await page
      .getByLabel("Address and telephone")
      .fill(Array.from({ length: 9 }, (_, i) => `Line ${i}`).join("\n"))
    await page.getByRole("button", { name: "Record letterhead" }).click()
    await page
      .getByText(/at most 8 lines/)
      .nth(1)
      .waitFor()
    await expectAccessible(page)
    await page.getByLabel("Address and telephone").fill("12 Harbour Steps")
    await page.getByRole("button", { name: "Take the picture off" }).click()
    await page.getByRole("button", { name: "Record letterhead" }).click()
    await page.getByText("Recorded: the letterhead. It stands on every paper from now on.").waitFor()
    expect(picturesOf(await report(page))).toBe(0)
    await page.context().close()
  })
})

describe("a template of the practice", () => {
  it("says the line of each fault, and shows what it gives once there is none", async () => {
    const page = await settings("templates")
    await page.getByLabel("Preview for").selectOption({ label: "Mirel Sandvik" })
    const text = page.getByLabel("Template", { exact: true })
    const shipped = await text.inputValue()
    expect(shipped.split("\n")).toContain("[urgent]")
    const preview = page.getByRole("region", { name: "Preview" })
    await preview
      .getByRole("article")
      .getByRole("heading", { name: /Mirel Sandvik/ })
      .waitFor()

    await text.fill(`# Dear family of {child}\n[lede]\n{grown}\n${shipped.replace("[urgent]\n", "")}`)
    await preview.getByText(/^line 2: there is no part \[lede\]/).waitFor()
    await preview.getByText(/^line 3: nothing is called \{grown\} here/).waitFor()
    await preview.getByText(/\[urgent\] must stand somewhere/).waitFor()
    expect(await preview.getByRole("article").count()).toBe(0)
    await expectAccessible(page)
    await picture(page, "template-faults")
    await page.getByRole("button", { name: "Record template" }).click()
    await page.getByText("not recorded: each fault stands in the preview with its line").waitFor()
    await picture(page, "template-refused")

    await text.fill(`# Dear family of {child}\nWe saw you on the way to {nextVisit}.\n${shipped}`)
    await preview.getByRole("heading", { name: "Dear family of Mirel Sandvik" }).waitFor()
    expect(await preview.locator(".template-faults").count()).toBe(0)
    await expectAccessible(page)
    await picture(page, "template-preview")
    await page.context().close()
  })

  it("is recorded, listed by version, read in the paper, and taken back to the order that ships", async () => {
    const page = await settings("templates")
    const text = page.getByLabel("Template", { exact: true })
    const shipped = await text.inputValue()
    await text.fill(`# Dear family of {child}\n${shipped}`)
    await page.getByRole("button", { name: "Record template" }).click()
    await page.getByText("Recorded: the template. Documents follow it from now on.").waitFor()
    const versions = page.getByRole("region", { name: "Versions" })
    await versions.getByText(/in force/).waitFor()
    await versions.locator("summary").first().click()
    await versions.getByText("# Dear family of {child}").waitFor()
    expect(textOf(await report(page))).toContain("Dear family of Mirel Sandvik")
    await expectAccessible(page)
    await picture(page, "template-recorded")

    await page.getByRole("button", { name: "Go back to the order that ships" }).click()
    await page.getByText("Recorded: the order that ships holds again.").waitFor()
    await expect.poll(() => text.inputValue()).toBe(shipped)
    expect(await versions.getByRole("listitem").count()).toBe(2)
    expect(await page.getByRole("button", { name: "Go back to the order that ships" }).count()).toBe(0)
    expect(textOf(await report(page))).not.toContain("Dear family of Mirel Sandvik")
    await page.context().close()
  })

  it.each(["letterhead", "templates"])("is read in Spanish and at 768 px: %s", async (part) => {
    const page = await settings(part, { width: 768, language: "es" })
    await page.getByText(part === "letterhead" ? "Guardar el membrete" : "Guardar la plantilla").waitFor()
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await expectAccessible(page)
    await picture(page, `${part}-es-768`)
    await page.context().close()
  })
})
