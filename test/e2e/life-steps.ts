import type { Page } from "playwright-core"
import type { Child } from "./living.js"

/** Steps taken once or twice in a child's life: who it is, its earlier glasses, the consent, an order, a bottle opened. */

export async function addChild(
  { page, name, number }: Child,
  who: { readonly born: string; readonly ancestry: string; readonly myopicParents: string },
): Promise<void> {
  await page.getByRole("button", { name: "Add child" }).click()
  const dialog = page.getByRole("dialog", { name: "Add child" })
  await dialog.getByLabel("Name").fill(name)
  await dialog.getByLabel("Number").fill(number)
  await dialog.getByLabel("Birth date").fill(who.born)
  await dialog.getByLabel("girl").check()
  await dialog.getByLabel("Ancestry").selectOption(who.ancestry)
  await dialog.getByLabel("Myopic parents").selectOption(who.myopicParents)
  await dialog.getByRole("button", { name: "Add child" }).click()
}

export async function addGlasses(
  page: Page,
  { date, sphere }: { readonly date: string; readonly sphere: string },
): Promise<void> {
  await page.getByRole("button", { name: /^Enter ▾|^Enter$/ }).click()
  await page.getByRole("button", { name: "Earlier glasses" }).click()
  await page.getByLabel("Date, glasses 1").fill(date)
  await page.getByLabel("Right, glasses 1").fill(sphere)
  await page.getByLabel("Left, glasses 1").fill(sphere)
  await page.getByRole("button", { name: "Record glasses" }).click()
  await page.getByText("Recorded: 1 pair of earlier glasses.").waitFor()
}

/** Orders what the form proposes, once the consent of a day covers it. */
export async function orderBottles(page: Page, consented: string): Promise<void> {
  await page.getByRole("button", { name: "New order" }).click()
  await page.getByText(`Consent in force, given on ${consented}.`).waitFor()
  await page.getByRole("button", { name: "Record order" }).click()
  await page.getByText(/^Recorded: 3 bottles of atropine 0.05 % ordered/).waitFor()
}

/** The pharmacy said yes, today. */
export async function confirmOrder(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^Confirm the order/ }).click()
  await page.getByRole("dialog").getByRole("button", { name: "Record" }).click()
  await page.getByText(/^Recorded: the pharmacy confirmed/).waitFor()
}

/** The bottles came today; none is opened yet. */
export async function receiveOrder(
  page: Page,
  { bottles, lot }: { readonly bottles: number; readonly lot: string },
): Promise<void> {
  await page.getByRole("button", { name: /^Receive the order/ }).click()
  const dialog = page.getByRole("dialog", { name: `${bottles} bottles received` })
  await dialog.getByLabel("Lot").fill(lot)
  await dialog.getByRole("button", { name: "Record" }).click()
  await page.getByText(`Recorded: ${bottles} bottles received, lot ${lot}.`).waitFor()
}

/** Signs what the consent part offers, with the name typed in place of a signature. */
export async function signConsent(
  page: Page,
  { name, relation }: { readonly name: string; readonly relation: string },
): Promise<void> {
  await page.getByRole("button", { name: "New consent" }).click()
  await page.getByRole("heading", { name: /^Consent to treatment with/ }).waitFor()
  await page.getByLabel("name typed").check()
  await page.getByLabel("Who signs", { exact: true }).fill(name)
  await page.getByLabel("Relation to the child").fill(relation)
  await page.getByLabel("agrees", { exact: true }).check()
  await page.getByLabel(/^Name, typed by who signs/).fill(name)
  await page.getByRole("button", { name: "Record consent" }).click()
}

/** Opens a bottle that nobody has opened, on the supply part, today. */
export async function openBottle(page: Page, today: string): Promise<void> {
  await page.getByRole("button", { name: "Record opening" }).first().click()
  await page.getByRole("dialog").getByRole("button", { name: "Record opening" }).click()
  await page.getByText(`Recorded: bottle opened, ${today}.`).waitFor()
}
