import { describe, expect, it } from "vitest"
import { commandLine } from "./fake-io.js"

describe("a command that is not understood exits 2, with nothing on stdout", () => {
  it.each([
    ["no verb", []],
    ["an unknown verb", ["measure"]],
    ["no file", ["assess"]],
    ["two files", ["assess", "a.json", "b.json"]],
    ["an unknown option", ["assess", "examples/slowed.json", "--loud"]],
    ["a day that is none", ["assess", "examples/slowed.json", "--as-of", "2025-02-31"]],
    ["a word for a day", ["due", "examples/slowed.json", "--as-of", "today"]],
    ["no age to forecast to", ["forecast", "examples/slowed.json"]],
    ["a word for a number", ["centile", "--al", "long", "--age", "9", "--sex", "male"]],
    ["an empty number", ["centile", "--al", "", "--age", "9", "--sex", "male"]],
    ["a sex that is none of the two", ["centile", "--al", "24", "--age", "9", "--sex", "girl"]],
    ["no readings", ["refraction"]],
    ["a port that cannot be", ["serve", "--data", "d", "--port", "70000"]],
  ])("%s", async (_, argv) => {
    const { code, stdout, stderr } = await commandLine(argv)
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" })
    expect(stderr).not.toBe("")
  })
})

describe("an input at fault exits 1", () => {
  it("when the file is not there, also as JSON", async () => {
    const { code, stdout } = await commandLine(["assess", "nowhere.json", "--json"])
    expect(code).toBe(1)
    expect(JSON.parse(stdout).problems[0]).toMatchObject({ path: "(file)", value: "nowhere.json" })
  })

  it("with the readable form alone on stderr when JSON was not asked for", async () => {
    const { code, stdout, stderr } = await commandLine(["assess", "examples/with-faults.json"])
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" })
    expect(stderr).toContain("Did you mean 24.1?")
  })
})

describe("what is understood exits 0", () => {
  it.each([[["--help"]], [["--version"]], [["assess", "--help"]]])("%j", async (argv) => {
    const { code, stdout, stderr } = await commandLine(argv)
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" })
    expect(stdout).not.toBe("")
  })

  it("a course from stdin, as of today when no day is named", async () => {
    const child = { born: "2017-03-14", sex: "female" }
    const { code, stdout } = await commandLine(["assess", "-", "--json"], {
      files: { "-": { lengthwise: 1, child, visits: [] } },
      today: "2026-07-31",
    })
    expect(code).toBe(0)
    expect(JSON.parse(stdout).asOf).toBe("2026-07-31")
  })
})
