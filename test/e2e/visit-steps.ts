import type { Page } from "playwright-core"
import type { Course } from "../../src/engine/course.js"
import type { App } from "./support.js"

/** Steps that the tests of the visit form share. */

export async function openVisit(
  app: App,
  { name, course }: { readonly name: string; readonly course: Course },
): Promise<{ page: Page; id: string }> {
  const id = await app.addCourse({ name, course })
  const page = await app.open(`/children/${id}/visit`)
  await page.getByLabel("Length, right").waitFor()
  return { page, id }
}

export const field = (page: Page, label: string) => page.getByLabel(label, { exact: true })

/** Which item of the examination has the focus, by its id. */
export const focusedEntry = (page: Page) =>
  page.evaluate(
    () => document.activeElement?.getAttribute("data-entry") ?? document.activeElement?.textContent,
  )

export const question = (page: Page, words: string) => page.getByRole("group", { name: words, exact: true })

export async function saveAnyway(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Save visit" }).click()
  await page.getByRole("button", { name: "Save without these" }).click()
}
