import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { processIo } from "./process-io.js"

describe("reading a file", () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "read-"))
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  it("gives its text", async () => {
    writeFileSync(join(folder, "a.json"), '{"name":"眼"}')
    expect(await processIo.read(join(folder, "a.json"))).toEqual({ text: '{"name":"眼"}' })
  })

  it("refuses fifty megabytes by size, before it is parsed", async () => {
    writeFileSync(join(folder, "junk"), Buffer.alloc(50_000_000))
    expect(await processIo.read(join(folder, "junk"))).toMatchObject({ problem: { value: "50.0 MB" } })
  })

  it("says when there is no such file, and when it is a folder", async () => {
    expect(await processIo.read(join(folder, "b.json"))).toMatchObject({
      problem: { message: expect.stringContaining("there is no such file") },
    })
    expect(await processIo.read(folder)).toMatchObject({
      problem: { message: expect.stringContaining("it is a folder") },
    })
  })
})

describe("writing a file", () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "write-"))
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  it("puts text and bytes there, over what was there", async () => {
    const file = join(folder, "a.ics")
    expect(await processIo.write(file, "first and long")).toBeNull()
    expect(await processIo.write(file, new Uint8Array([65, 10]))).toBeNull()
    expect(readFileSync(file, "utf8")).toBe("A\n")
  })

  it("leaves a device what it is", async () => {
    expect(await processIo.write("/dev/null", "gone")).toBeNull()
    expect(statSync("/dev/null").isFile()).toBe(false)
  })

  it("says when there is no such folder, and when it is one", async () => {
    const lost = await processIo.write(join(folder, "no", "a.ics"), "")
    expect(lost).toMatchObject({ path: "--out", message: expect.stringContaining("its folder is not there") })
    expect(await processIo.write(folder, "")).toMatchObject({
      message: expect.stringContaining("it is a folder"),
    })
  })
})

it("knows today as a day of the calendar here", () => {
  expect(processIo.today()).toMatch(/^\d{4}-\d{2}-\d{2}$/)
})
