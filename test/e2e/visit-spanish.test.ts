import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"
import { field, question } from "./visit-steps.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

const openInSpanish = async (width: number) => {
  const id = await app.addCourse({ name: `Ilse Varga ${width}`, course: slowedCourse })
  const page = await app.open("/", { width })
  await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
  await page.goto(`${app.address}/children/${id}/visit`)
  await field(page, "Longitud, OD").waitFor()
  return page
}

const FORMS = [
  "Gafas anteriores",
  "Inicio de un tratamiento",
  "Cambio de un tratamiento",
  "Fin de un tratamiento",
  "Frasco",
  "Datos del niño",
]

describe("a visit in Spanish", () => {
  it.each([1280, 768])("is written, read and saved at %i pixels", async (width) => {
    const page = await openInSpanish(width)
    await question(page, "¿Destellos de luz nuevos?").getByLabel("sí").focus()
    await page.keyboard.press("s")
    await page
      .getByRole("alert")
      .getByText(/^Atención el mismo día: destellos\./)
      .first()
      .waitFor()
    for (const [label, text] of [
      ["Longitud, OD", "24,03 24,02"],
      ["Longitud, OI", "241"],
      ["Refracción, OD", "-2,00 -0,50 x 175"],
    ] as const)
      await field(page, label).fill(text)
    await page.keyboard.press("Tab")
    await page.getByText("debe ser un número de 15 a 40 mm, no 241; ¿quiso decir 24,1?").first().waitFor()
    await page.getByText(/^−2,25 D de equivalente esférico · −0,25 desde el 10 mar 2026$/).waitFor()
    await page.getByRole("button", { name: "Más", exact: true }).click()
    await picture(page, `visit-spanish-${width}`)
    await expectAccessible(page)
    // What the practice itself wrote is in its own language; the form around it holds no English word.
    const said = ((await page.locator("form .examination").textContent()) ?? "").replace(
      /: front desk of[^.]*\./,
      "",
    )
    expect(said.match(/\b(the|of|and|with|your|since|from|eye|not)\b/g)).toBeNull()
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(over).toBeLessThanOrEqual(0)
    await field(page, "Longitud, OI").fill("23,95")
    await page.getByRole("button", { name: "Guardar la visita" }).click()
    await page.getByRole("button", { name: "Guardar sin estos datos" }).click()
    await page.getByText(/^Visita del 25 nov 2026 guardada\. Crecimiento ahora: /).waitFor()
    for (const name of FORMS) {
      await page.getByRole("button", { name: /^Registrar( ▾)?$/ }).click()
      await page.getByRole("button", { name, exact: true }).click()
      await page.getByRole("dialog", { name }).waitFor()
      await expectAccessible(page)
      await page.keyboard.press("Escape")
    }
    await page.context().close()
  })
})
