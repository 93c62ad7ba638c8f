import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App

beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

describe("protocols", () => {
  it("lists what ships, each saying where it comes from, without a fault that axe finds", async () => {
    const page = await app.open("/settings/protocols")
    await page.getByRole("heading", { name: "Standard protocol" }).waitFor()
    expect(await page.locator(".protocols article").count()).toBe(4)
    expect(await page.getByText("Common practice, no source").count()).toBe(4)
    await page.getByText("15 steps").click()
    await expectAccessible(page)
    await picture(page, "protocols")
    await page.context().close()
  })

  it("copies one; faults stand at their fields, and the preview of two years follows the steps", async () => {
    const page = await app.open("/settings/protocols")
    await page.getByRole("button", { name: "Copy and edit Standard protocol" }).click()
    const preview = page.getByRole("region", { name: "The next two years" })
    await preview.getByText("25 Nov 2028").first().waitFor()
    const review = page.locator("details", { hasText: "6-month review" }).first()
    await review.locator("summary").click()
    const months = review.getByLabel("Months after")
    await months.fill("-6")
    await review.getByText("must be a whole number of months from 0 to 240").waitFor()
    await preview.getByText("Shown once nothing is wrong with the steps.").waitFor()
    await expectAccessible(page)
    await picture(page, "protocol-fault")
    await months.fill("4")
    await review.getByLabel("Title").fill("4-month review")
    await preview.getByText("25 Mar 2027").first().waitFor()
    await preview.getByLabel("For a child who begins today").selectOption("on no treatment")
    await preview.getByText("Observation").first().waitFor()
    await preview.getByLabel("For a child who begins today").selectOption("on drops")
    await expectAccessible(page)
    await picture(page, "protocol-editor")
    await page.getByRole("button", { name: "Record", exact: true }).click()
    await page.getByText("Recorded: Standard protocol, ours, version 1.").waitFor()
    await page.context().close()
  })

  it("a recorded copy takes the place of what ships, and its next version asks why", async () => {
    const page = await app.open("/settings/protocols")
    await page.getByText("the practice’s own takes its place").waitFor()
    await page.getByRole("button", { name: "Edit Standard protocol, ours" }).click()
    await page.getByRole("button", { name: "Record", exact: true }).click()
    await page.getByText("must be said in words").waitFor()
    await page.getByLabel("Why it is changed").fill("reviews more often in the first year")
    await page.getByRole("button", { name: "Record", exact: true }).click()
    await page.getByText("Recorded: Standard protocol, ours, version 2.").waitFor()
    await page.getByText(/Reviews more often in the first year/).waitFor()
    await page.context().close()
  })

  it("the last version is in force and the first one stays on record", async () => {
    const page = await app.open("/settings/protocols")
    const { rules, papers } = await page.evaluate(async () => (await fetch("/api/rules")).json())
    expect(rules.protocols.map((one: { id: string; version: string }) => `${one.id} ${one.version}`)).toEqual(
      ["standard 2"],
    )
    expect(papers.filter(({ kind }: { kind: string }) => kind === "protocol")).toHaveLength(2)
    await page.context().close()
  })

  it("can be edited by keyboard alone", async () => {
    const page = await app.open("/settings/protocols", { width: 768 })
    const copy = page.getByRole("button", { name: "Copy and edit Optical treatments" })
    await copy.focus()
    await page.keyboard.press("Enter")
    await page.getByLabel("Title").first().focus()
    await page.keyboard.press("End")
    await page.keyboard.type(" 2026")
    const summary = page.locator(".protocol-steps summary").nth(1)
    await summary.focus()
    await page.keyboard.press("Enter")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Control+a")
    await page.keyboard.type("first morning")
    await page.getByRole("region", { name: "Steps" }).getByText("First morning").waitFor()
    await expectAccessible(page)
    await picture(page, "protocol-editor-768")
    await page.context().close()
  })
})
