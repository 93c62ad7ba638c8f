import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { firstVisitCourse, slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let treated = ""
let unconsented = ""

beforeAll(async () => {
  app = await startApp()
  treated = await app.addCourse({ name: "Ilse Varga", number: "E-2042", course: slowedCourse })
  unconsented = await app.addCourse({
    name: "Tomas Brandl",
    number: "E-2043",
    course: {
      ...firstVisitCourse,
      treatments: [{ from: "2026-11-02", kind: "atropine", concentrationPercent: 0.025 }],
    },
  })
})
afterAll(() => app?.close())

const openOrders = async (child: string, width?: number) => {
  const page = await app.open(`/children/${child}/supply`, width === undefined ? {} : { width })
  await page.getByRole("heading", { name: "Orders" }).waitFor()
  return page
}
const newOrder = async (page: Page) => {
  await page.getByRole("button", { name: "New order" }).click()
  const form = page.getByRole("form", { name: "New order" })
  await form.getByLabel("Pharmacy").selectOption({ label: "Lantern Street Pharmacy" })
  return form
}

describe("pharmacies in the settings", () => {
  it("are those of the practice, each with its own habits", async () => {
    const page = await app.open("/settings/pharmacies")
    await page.getByRole("button", { name: "Edit Ninth Well Pharmacy" }).waitFor()
    await expectAccessible(page)
    await picture(page, "pharmacies-one")
    await page.context().close()
  })

  it("are added with every fault at its field, and show at once what their figures do", async () => {
    const page = await app.open("/settings/pharmacies")
    await page.getByRole("button", { name: "Add pharmacy" }).click()
    const dialog = page.getByRole("dialog", { name: "Add pharmacy" })
    await dialog.getByLabel("Volume of a bottle, mL").fill("five")
    await dialog.getByRole("button", { name: "Record" }).click()
    await expect.poll(() => dialog.locator(".field-fault").count()).toBe(2)
    await dialog.getByLabel("Name").fill("Lantern Street Pharmacy")
    await dialog.getByLabel("Volume of a bottle, mL").fill("5")
    await dialog.getByLabel("Tolerance of the stock, %").fill("6")
    await dialog.getByText(/outside 0.0093 to 0.0107 %/).waitFor()
    await dialog.getByLabel("Tolerance of the stock, %").fill("2")
    await dialog.getByText(/within 0.0093 to 0.0107 %/).waitFor()
    await dialog.getByRole("button", { name: "Add device" }).click()
    await dialog.getByLabel("Device, device 1").fill("syringe 10 mL")
    await dialog.getByLabel("From, mL, device 1").fill("0.5")
    await dialog.getByLabel("Read to, mL, device 1").fill("0.05")
    await dialog.getByLabel("Within, %, device 1").fill("2")
    await expectAccessible(page)
    await picture(page, "pharmacy-form")
    await dialog.getByRole("button", { name: "Record" }).click()
    await page.getByText("Recorded: Lantern Street Pharmacy.").waitFor()
    await page.getByRole("button", { name: "Edit Lantern Street Pharmacy" }).waitFor()
    await picture(page, "pharmacies")
    await page.context().close()
  })
})

describe("a new order", () => {
  it("is worked out beside the form: bottles with their range, steps with limits, the caution when it is due", async () => {
    const page = await openOrders(treated)
    const form = await newOrder(page)
    expect(await form.getByLabel("Strength, % w/v").inputValue()).toBe("0.05")
    expect(await form.getByLabel("Bottles").inputValue()).toBe("3")
    await form.getByText(/Consent in force, given on 18 Mar 2025/).waitFor()
    const sheet = page.getByRole("region", { name: "Sheet for the pharmacist" })
    await sheet.getByRole("cell", { name: /0.75 mL \(0.735 to 0.765\), syringe 10 mL/ }).waitFor()
    await sheet.getByText(/90 nights. The drops of one bottle last 39 to 102 nights/).waitFor()
    expect(await sheet.getByText(/severe poisoning/).count()).toBe(0)
    await form.getByLabel("Volume of one, mL").fill("10")
    await sheet.getByText(/severe poisoning of a child who swallows it is possible/).waitFor()
    await form.getByLabel("Strength, % w/v").fill("0.01")
    await form.getByText(/The order is for 0.01 %; the treatment in use is atropine 0.05 %/).waitFor()
    await form.getByText("Held back for consent.").waitFor()
    await expectAccessible(page)
    await picture(page, "order-other-strength-1280")
    await page.context().close()
  })

  it("is recorded, confirmed, and received as bottles with their lot", async () => {
    const page = await openOrders(treated)
    const form = await newOrder(page)
    await picture(page, "order-new-1280")
    await form.getByRole("button", { name: "Record order" }).click()
    await page.getByText(/Recorded: 3 bottles of atropine 0.05 % ordered/).waitFor()
    await page.getByText(/Not confirmed yet, expected by 9 Dec 2026/).waitFor()
    await page.getByRole("button", { name: /Confirm the order/ }).click()
    await page.getByRole("dialog").getByRole("button", { name: "Record" }).click()
    await page.getByText(/Confirmed on 25 Nov 2026/).waitFor()
    await page.getByRole("button", { name: /Receive the order/ }).click()
    const dialog = page.getByRole("dialog", { name: "3 bottles received" })
    await dialog.getByLabel("Lot").fill("LS-118")
    await dialog.getByLabel("First one opened").fill("2026-11-25")
    expect(await dialog.getByLabel("Its last day of use").inputValue()).toBe("2026-12-25")
    await expectAccessible(page)
    await picture(page, "order-received")
    await dialog.getByRole("button", { name: "Record" }).click()
    await page.getByText("Recorded: 3 bottles received, lot LS-118.").waitFor()
    await page.getByText("Received on 25 Nov 2026.").waitFor()
    await picture(page, "orders-1280")
    await page.context().close()
  })

  it("without a consent in force is held back until a reason is given, which stays in view", async () => {
    const page = await openOrders(unconsented, 768)
    const form = await newOrder(page)
    await form.getByRole("button", { name: "Record order" }).click()
    await form.locator(".field-fault").waitFor()
    await picture(page, "order-blocked-768")
    await form.getByLabel("Reason to order all the same").fill("signed on paper, scan follows")
    await form.getByRole("button", { name: "Record order" }).click()
    await page.getByText("Without a consent in force: signed on paper, scan follows").waitFor()
    await expectAccessible(page)
    await picture(page, "orders-768")
    await page.context().close()
  })

  it("is called off with its reason", async () => {
    const page = await openOrders(unconsented)
    await page.getByRole("button", { name: /call off the order/ }).click()
    const dialog = page.getByRole("dialog", { name: "Call off the order" })
    await dialog.getByRole("button", { name: "Call off" }).click()
    await dialog.locator(".field-fault").waitFor()
    await dialog.getByLabel("Why?").fill("the family decided against drops")
    await dialog.getByRole("button", { name: "Call off" }).click()
    await page.getByText("Called off on 25 Nov 2026: the family decided against drops.").waitFor()
    await page.context().close()
  })
})

describe("the sheet for the pharmacist", () => {
  it("is one page of A4 on which nothing else is printed", async () => {
    const page = await openOrders(treated)
    await page.getByRole("button", { name: /sheet of the order/ }).click()
    await page
      .getByRole("dialog", { name: "Sheet for the pharmacist" })
      .getByText("Two people check")
      .waitFor()
    await expectAccessible(page)
    await picture(page, "order-sheet")
    const pdf = await page.pdf({ format: "A4", path: "test/output/pages/order-sheet.pdf" })
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)).toHaveLength(1)
    await page.emulateMedia({ media: "print" })
    await page.setViewportSize({ width: 690, height: 1020 })
    expect(await page.getByRole("link", { name: "Lengthwise" }).isVisible()).toBe(false)
    await picture(page, "order-sheet-printed")
    await page.context().close()
  })
})
