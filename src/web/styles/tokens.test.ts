import { readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { colours } from "../../chart/colours.js"

const tokens = readFileSync(fileURLToPath(new URL("tokens.css", import.meta.url)), "utf8")
const value = (property: string) => new RegExp(`${property}: ([^;]+);`).exec(tokens)?.[1]

describe("the inks that the figures read from the page", () => {
  const inks = Object.entries(colours("themed")).map(([ink, text]) => [ink, /--[\w-]+/.exec(text)?.[0] ?? ""])
  it.each(inks)("%s is set as %s", (_, property) => {
    expect(value(property ?? "")).toBeDefined()
  })
  it("shade the reference band on the page as in a saved figure, and never in the colour of the paper", () => {
    expect(value("--figure-ground")).toBe(colours("plain").ground)
    expect(value("--figure-ground")).not.toBe(value("--paper"))
  })
})
