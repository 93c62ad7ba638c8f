import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { addDays, addMonths } from "../../src/engine/calendar.js"
import { expectCommandLineAgrees } from "./command-line-agrees.js"
import {
  addChild,
  addGlasses,
  confirmOrder,
  openBottle,
  orderBottles,
  receiveOrder,
  signConsent,
} from "./life-steps.js"
import {
  type Child,
  comeTo,
  decide,
  examine,
  expectNextDuty,
  expectToday,
  fillVisit,
  openCourse,
  openPart,
  saveVisit,
  takeAction,
} from "./living.js"
import { type App, picture, startApp } from "./support.js"

/**
 * The whole course of one child, from first visit to discharge and back for another year, lived through on the pages of
 * the demo practice with its day moved forward. test/app/life.test.ts does the same through the API.
 */

let app: App
let child: Child
const NAME = "Mira Aldersey"

beforeAll(async () => {
  app = await startApp()
  child = { app, page: await app.open("/children"), name: NAME, number: "L-2026", id: "" }
})
afterAll(() => app?.close())

describe("the life of one course on the pages", () => {
  it("begins with a child that is added, and its earlier glasses", async () => {
    const { page } = child
    await addChild(child, { born: "2018-03-14", ancestry: "east-asian", myopicParents: "2" })
    await page.getByRole("heading", { name: NAME }).waitFor()
    child = { ...child, id: page.url().split("/").at(-1) ?? "" }
    await addGlasses(page, { date: "2025-10-20", sphere: "-1.00" })
    await expectNextDuty(child, /Baseline Due 25 Nov 2026, open until 25 Dec 2026\./)
    await expectToday(child, ["Enter visit: baseline"])
  })

  it("asks for the baseline in the visit form, and then for nothing", async () => {
    const { page } = child
    await takeAction(child, "Enter visit: baseline")
    await page.getByRole("heading", { name: "Still missing for the baseline" }).waitFor()
    await fillVisit(page, { mm: 23.9, sphere: -2 })
    await saveVisit(child)
    await expectToday(child, [])
  })

  it("starts 0.05 % by a decision with its reason, after which consent is owed", async () => {
    await openPart(child, "Choices")
    await decide(child, {
      decision: "Start a treatment",
      treatment: "Atropine 0.05 %",
      from: "2026-12-01",
      why: "Half a dioptre a year by the old glasses; both parents myopic; the family wishes to start.",
    })
    await expectToday(child, ["Consent: consent to atropine 0.05 %"])
    await expectNextDuty(child, /Consent to atropine 0\.05 %/)
  })

  it("holds an order back until there is a consent, which is signed by a typed name", async () => {
    const { page } = child
    await openPart(child, "Supply")
    await page.getByRole("button", { name: "New order" }).click()
    await page.getByText("Held back for consent.").waitFor()
    await page.getByRole("button", { name: "Record order" }).click()
    await page.getByRole("form", { name: "New order" }).locator(".field-fault").waitFor()
    await picture(page, "life-10-order-held-back")
    await page.getByRole("link", { name: "To the consent" }).click()
    await signConsent(page, { name: "Ines Aldersey", relation: "mother" })
    await page.getByText("Recorded: consent to atropine 0.05 %.").waitFor()
    await expectToday(child, [])
  })

  it("orders then, and Today follows the order until it is confirmed", async () => {
    const { page } = child
    await openPart(child, "Supply")
    await orderBottles(page, "25 Nov 2026")
    await expectToday(child, ["Supply: order of 3 bottles of 0.05 % not confirmed"])
    await takeAction(child, "Supply: order of 3 bottles of 0.05 % not confirmed")
    await confirmOrder(page)
    await expectToday(child, [])
  })

  it("receives the bottles on the first day, and opens one", async () => {
    const { page } = child
    app.moveTo("2026-12-01")
    await expectNextDuty(child, /First bottle/)
    await page.getByRole("link", { name: "Go to supply" }).click()
    await receiveOrder(page, { bottles: 3, lot: "LS-201" })
    await openBottle(page, "1 Dec 2026")
    await picture(page, "life-15-opened")
    await expectToday(child, [])
  })

  it("owes a check after a month, with only what a check needs", async () => {
    const { page } = child
    app.moveTo("2027-01-01")
    await openPart(child, "Supply")
    await openBottle(page, "1 Jan 2027")
    // The spare left in the house follows the bottle opened today.
    await expectNextDuty(child, /1-month check .*3 Mar 2027 next bottle/)
    await expectToday(child, ["Enter visit: 1-month check"])
    await takeAction(child, "Enter visit: 1-month check")
    await page.getByRole("heading", { name: "Still missing for the 1-month check" }).waitFor()
    expect(await page.getByLabel("Length, right").count()).toBe(0)
    await fillVisit(page, { mm: 23.91, sphere: -2 })
    await picture(page, "life-17-check-filled")
    await saveVisit(child)
    await expectToday(child, [])
  })

  it("owes a review at 6 months", async () => {
    const { page } = child
    await comeTo(child, { day: "2027-06-01", bottlesFrom: "2027-01-31" })
    await expectNextDuty(child, /6-month review/)
    await expectToday(child, ["Enter visit: 6-month review"])
    await takeAction(child, "Enter visit: 6-month review")
    await fillVisit(page, { mm: 23.98, sphere: -2 })
    await saveVisit(child)
    await expectToday(child, [])
  })

  it.each([
    [12, "2027-12-01", 24.06],
    [18, "2028-06-01", 24.14],
  ] as const)("owes a review at %i months", async (months, date, mm) => {
    await comeTo(child, { day: date, bottlesFrom: addDays(addMonths(date, -6), 25) })
    await expectNextDuty(child, new RegExp(`${months}-month review`))
    await expectToday(child, [`Enter visit: ${months}-month review`])
    await examine(child, { date, mm, sphere: -2.25 })
    await expectToday(child, [])
  })

  it("owes at 24 months a review and a decision to stop", async () => {
    const { page } = child
    await comeTo(child, { day: "2028-12-01", bottlesFrom: "2028-06-26" })
    const stop = "Open choices: decision to stop at 24 months"
    await expectToday(child, [stop, "Enter visit: 24-month review"])
    await picture(page, "life-21-today-24")
    await expectCommandLineAgrees(child, "2028-12-01")
    await takeAction(child, "Enter visit: 24-month review")
    await fillVisit(page, { mm: 24.22, sphere: -2.5 })
    await saveVisit(child)
    await expectNextDuty(child, /Decision to stop at 24 months/)
    await picture(page, "life-22-stop-owed")
    await expectToday(child, [stop])
    await takeAction(child, stop)
    await decide(child, { decision: "Stop a treatment", why: "Two years as planned; growth was slow." })
    await expectToday(child, [])
    await openCourse(child)
  })

  it("looks after 6 months for growth that returned, and asks whether to go on", async () => {
    const { page } = child
    app.moveTo("2029-06-01")
    const goOn = "Open choices: decision on 12 more months"
    const check = "Enter visit: check 6 months after the stop"
    await expectToday(child, [goOn, check])
    await takeAction(child, check)
    await fillVisit(page, { mm: 24.57, sphere: -3.25 })
    await saveVisit(child)
    await picture(page, "life-27-returned")
    await expectToday(child, [goOn])
    await takeAction(child, goOn)
    await decide(child, {
      decision: "Start again after a stop",
      treatment: "Atropine 0.05 %",
      from: "2029-06-05",
      why: "Growth returned after the stop.",
    })
    await expectToday(child, [])
  })

  it("owes the year more its own check, reviews and stop", async () => {
    await comeTo(child, { day: "2029-07-05", bottlesFrom: "2029-06-05" })
    await expectToday(child, ["Enter visit: 1-month check"])
    await examine(child, { date: "2029-07-05", mm: 24.58, sphere: -3.25 })
    await expectToday(child, [])
    await comeTo(child, { day: "2029-12-05", bottlesFrom: "2029-08-04" })
    await expectToday(child, ["Enter visit: 6-month review"])
    await examine(child, { date: "2029-12-05", mm: 24.65, sphere: -3.25 })
    await expectToday(child, [])
    await comeTo(child, { day: "2030-06-05", bottlesFrom: "2030-01-01" })
    const stop = "Open choices: decision to stop after 12 more months"
    await expectToday(child, [stop, "Enter visit: 12-month review"])
    await examine(child, { date: "2030-06-05", mm: 24.71, sphere: -3.5 })
    await takeAction(child, stop)
    await decide(child, { decision: "Stop a treatment", why: "The year more is over; growth was slow." })
    await expectToday(child, [])
  })

  it("ends with a check and a discharge, after which nothing is owed", async () => {
    const { page } = child
    app.moveTo("2030-12-05")
    const goOn = "Open choices: decision on 12 more months"
    await expectToday(child, [goOn, "Enter visit: check 6 months after the stop"])
    await examine(child, { date: "2030-12-05", mm: 24.74, sphere: -3.5 })
    await expectToday(child, [goOn])
    await takeAction(child, goOn)
    await decide(child, {
      decision: "Discharge: end everything in use",
      why: "Growth stayed slow without drops.",
    })
    await expectNextDuty(child, /Nothing is owed/)
    await picture(page, "life-32-course-discharged")
    app.moveTo("2031-12-05")
    await expectToday(child, [])
    await page.getByText("Nothing is owed here today.").waitFor()
    await picture(page, "life-33-today-nothing")
    await expectNextDuty(child, /Nothing is owed/)
  })

  it("opens again when the child comes back for another year", async () => {
    const { page } = child
    await openCourse(child)
    await page.getByRole("link", { name: "Enter visit" }).click()
    await page.getByLabel("Examination", { exact: true }).selectOption({ label: "Review" })
    await fillVisit(page, { mm: 25.04, sphere: -4.25 })
    await saveVisit(child)
    await openPart(child, "Choices")
    await decide(child, {
      decision: "Start again after a stop",
      treatment: "Atropine 0.05 %",
      from: "2031-12-10",
      why: "Growth returned a year after the discharge.",
    })
    app.moveTo("2032-01-10")
    await expectToday(child, ["Enter visit: 1-month check", "Supply: next bottle"])
    await expectNextDuty(child, /Next bottle .*31 days late, was due 10 Dec 2031/)
    await picture(page, "life-39-back-course")
  })
})
