import { spawn, spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { createServer } from "node:net"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest"
import { openEmbedded, practiceRecord, practicesIn } from "../../src/record/index.js"
import type { InstrumentsAnswer } from "../../src/server/contract/instruments.js"
import { type RunningServer, type ServerOptions, startServer } from "../../src/server/main.js"
import { hasTool } from "../report/outside-tools.js"
import { builtObjects, DUMPS, hasDcmtk, run } from "./dicom-tried.js"

const CLI = fileURLToPath(new URL("../../src/cli/main.ts", import.meta.url))
const folder = mkdtempSync(join(tmpdir(), "lengthwise-receiver-"))
const running: RunningServer[] = []
let files: readonly string[] = []

beforeAll(async () => {
  if (hasDcmtk) files = await builtObjects(folder, DUMPS)
})
afterEach(async () => {
  for (const server of running.splice(0)) await server.close()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

interface Served {
  readonly server: RunningServer
  readonly said: readonly string[]
  /** Where instruments are received. */
  readonly port: string
  readonly ask: (method: string, path: string, body?: unknown) => Promise<Response>
  readonly instruments: (query?: string) => Promise<InstrumentsAnswer>
}

let served = 0
async function serve(options: Partial<ServerOptions> = {}): Promise<Served> {
  const said: string[] = []
  served += 1
  const server = await startServer({
    dataFolder: join(folder, `practice-${served}`),
    port: 0,
    staticFolder: folder,
    dicom: { port: 0 },
    say: (line) => said.push(line),
    ...options,
  })
  running.push(server)
  const headers = { "content-type": "application/json", cookie: "" }
  const ask = (method: string, path: string, body?: unknown) =>
    fetch(`${server.address}/api${path}`, {
      method,
      headers,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    })
  const { name, password } = server.firstLogIn ?? {}
  const loggedIn = await ask("POST", "/session", { name, password })
  headers.cookie = loggedIn.headers.get("set-cookie")?.split(";")[0] ?? ""
  return {
    server,
    said,
    port: /instruments as .*:(\d+)/.exec(said.join("\n"))?.[1] ?? "",
    ask,
    instruments: async (query = "") =>
      (await (await ask("GET", `/instruments${query}`)).json()) as InstrumentsAnswer,
  }
}

const send = (port: string, ...args: readonly string[]) =>
  run("storescu", "-v", "-nh", "-R", "-aec", "LENGTHWISE", ...args, "127.0.0.1", port, ...files)

const paper = { isOn: true, port: 18140, title: "EYES", allowed: ["BIOMETER"] }

describe("a server without settings of instruments", () => {
  it("receives nothing unless it is told a port, and then says where and from whom", async () => {
    const quiet = await serve({ dicom: undefined })
    expect(quiet.said.join()).not.toMatch(/instruments/i)
    expect((await quiet.instruments()).listener).toMatchObject({ state: "unset", port: null })
    const { said, instruments, port } = await serve()
    expect(said).toContain(`Receives from instruments as LENGTHWISE at 127.0.0.1:${port}`)
    expect(said.join("\n")).toMatch(/Any title of this machine may send/)
    expect((await instruments()).listener).toMatchObject({
      state: "listening",
      isOpenToThisMachine: true,
      isPortFromStart: true,
    })
  })

  it("answers nobody's questions about instruments but those of who is logged in", async () => {
    const { server } = await serve()
    expect((await fetch(`${server.address}/api/instruments`)).status).toBe(401)
  })

  it("cautions where other machines can reach it, and lets none of them send", async () => {
    const { said, instruments } = await serve({ dicom: { port: 0, host: "0.0.0.0" } })
    expect(said.join("\n")).toMatch(/Nobody may send until/)
    expect(said.join("\n")).toMatch(/Caution: what instruments send crosses the network unencrypted/)
    expect((await instruments()).listener.isOpenToThisMachine).toBe(false)
  })

  it("does not start where its port is taken, and leaves the folder free", async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve))
    const { port } = other.address() as { port: number }
    const dataFolder = join(folder, "taken")
    await expect(serve({ dataFolder, dicom: { port } })).rejects.toThrow(
      `port ${port} of 127.0.0.1 cannot be had for instruments; choose another`,
    )
    await serve({ dataFolder })
    await new Promise((resolve) => other.close(resolve))
  })
})

describe.skipIf(!hasDcmtk)("instruments (skipped where echoscu, storescu or dump2dcm are absent)", () => {
  it("may send as the settings say, from the moment they are recorded", async () => {
    const { ask, instruments, port } = await serve()
    const echo = (aec: string, aet: string) => run("echoscu", "-aec", aec, "-aet", aet, "127.0.0.1", port)
    expect((await echo("LENGTHWISE", "ANYBODY")).code).toBe(0)
    expect((await ask("POST", "/rules/instruments", { body: paper })).status).toBe(201)
    expect((await echo("LENGTHWISE", "BIOMETER")).code).not.toBe(0)
    expect((await echo("EYES", "ANYBODY")).code).not.toBe(0)
    expect((await echo("EYES", "BIOMETER")).code).toBe(0)
    const { listener, heard, events } = await instruments("?only=refused")
    expect(listener).toMatchObject({ title: "EYES", isSet: true, isOpenToThisMachine: false })
    expect(heard.map(({ title, isAllowed }) => [title, isAllowed])).toEqual([
      ["BIOMETER", true],
      ["ANYBODY", false],
    ])
    expect(events.map(({ refusal, title }) => [refusal, title])).toEqual([
      ["unknown-calling-title", "ANYBODY"],
      ["unknown-called-title", "BIOMETER"],
    ])
    expect((await instruments("?search=not+among+the+allowed")).total).toBe(1)
    expect((await instruments("?search=nobody")).total).toBe(0)
  })

  it("are received where the settings say when no port was named, and no more when they are off", async () => {
    const { ask, instruments } = await serve({ dicom: undefined })
    const { rules, papers } = await (await ask("POST", "/rules/instruments", { body: paper })).json()
    expect(rules.instruments).toEqual(paper)
    expect((await instruments()).listener).toMatchObject({ state: "listening", port: 18140 })
    expect((await run("echoscu", "-aec", "EYES", "-aet", "BIOMETER", "127.0.0.1", "18140")).code).toBe(0)
    const off = { body: { ...paper, isOn: false }, supersedes: papers.at(-1).id, reason: "closed" }
    expect((await ask("POST", "/rules/instruments", off)).status).toBe(201)
    expect((await instruments()).listener.state).toBe("off")
    expect((await run("echoscu", "-aec", "EYES", "-aet", "BIOMETER", "127.0.0.1", "18140")).code).not.toBe(0)
  })

  it("send every kind of object once; sent again it is known", async () => {
    const { port, instruments, server } = await serve()
    const first = await send(port)
    expect(first.out.match(/Store Response \(Success\)/g)).toHaveLength(files.length)
    const again = await send(port, "-xi")
    expect(again.out.match(/Store Response \(Success\)/g)).toHaveLength(files.length)
    const { counts, events } = await instruments("?only=received")
    expect(counts).toEqual({ received: files.length * 2, refused: 0 })
    expect(new Set(events.slice(0, files.length).map(({ outcome }) => outcome))).toEqual(new Set(["known"]))
    await server.close()
    expect(await inboxOf(running.splice(0).length ? `practice-${served}` : "")).toEqual({
      items: files.length,
      isWhole: true,
    })
  })

  it("have lost nothing, and left nothing by halves, when the server is killed while they send", async () => {
    const dataFolder = join(folder, "killed")
    const first = await started(dataFolder)
    const sending = send(first.port)
    await first.until(/.*/)
    await new Promise((resolve) => setTimeout(resolve, 150))
    first.kill()
    const answered = (await sending).out.match(/Store Response \(Success\)/g)?.length ?? 0
    await first.ended
    const between = await inboxOf("killed")
    expect(between.isWhole).toBe(true)
    expect(between.items).toBeGreaterThanOrEqual(answered)
    const second = await started(dataFolder)
    expect((await send(second.port)).out.match(/Store Response \(Success\)/g)).toHaveLength(files.length)
    second.kill()
    await second.ended
    expect(await inboxOf("killed")).toEqual({ items: files.length, isWhole: true })
  }, 120_000)

  it.skipIf(!hasTool("openssl"))(
    "use TLS where there is a certificate, and are refused without it",
    async () => {
      const key = join(folder, "key.pem")
      const certificate = join(folder, "certificate.pem")
      const made = "req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=localhost".split(" ")
      expect(spawnSync("openssl", [...made, "-keyout", key, "-out", certificate]).status).toBe(0)
      const { port, said, instruments } = await serve({ dicom: { port: 0, certificate, key } })
      expect(said.join("\n")).toMatch(/at 127\.0\.0\.1:\d+ \(TLS\)/)
      expect((await send(port, "+tla", "-ic")).out.match(/Store Response \(Success\)/g)).toHaveLength(
        files.length,
      )
      expect((await run("echoscu", "-ta", "3", "127.0.0.1", port)).code).not.toBe(0)
      await expect.poll(async () => (await instruments("?only=refused")).events[0]?.refusal).toBe("no-tls")
    },
  )
})

describe("a certificate of DICOM", () => {
  it("is asked for with its key, and both must be what they are named", async () => {
    const file = join(folder, "nothing.pem")
    writeFileSync(file, "nothing")
    await expect(serve({ dicom: { port: 0, certificate: file } })).rejects.toThrow(/needs both/)
    await expect(serve({ dicom: { port: 0, certificate: file, key: file } })).rejects.toThrow(
      /must be a certificate and its key, both PEM/,
    )
    const absent = join(folder, "absent.pem")
    await expect(serve({ dicom: { port: 0, certificate: absent, key: file } })).rejects.toThrow(
      /cannot be read/,
    )
  })
})

/** What stands in the Inbox of a folder that nobody serves, and whether its chain is whole. */
async function inboxOf(name: string): Promise<{ readonly items: number; readonly isWhole: boolean }> {
  const database = openEmbedded(join(folder, name))
  try {
    const [practice] = await practicesIn(database.queries)
    if (!practice) throw new Error("no practice")
    const record = practiceRecord(database, practice)
    const { count } = await database.queries
      .selectFrom("inbox")
      .select(({ fn }) => fn.countAll<number>().as("count"))
      .executeTakeFirstOrThrow()
    return { items: Number(count), isWhole: (await record.verifyChain()).whole }
  } finally {
    await database.close()
  }
}

/** The server as a process of its own, to be killed without warning. */
async function started(dataFolder: string) {
  const server = spawn(
    process.execPath,
    ["--import", "tsx", CLI, "serve", "--data", dataFolder, "--port", "0", "--dicom-port", "0"],
    { stdio: ["ignore", "pipe", "inherit"] },
  )
  let text = ""
  server.stdout.on("data", (part) => {
    text += part
  })
  const until = (pattern: RegExp) => expect.poll(() => text, { timeout: 60_000 }).toMatch(pattern)
  await until(/instruments as .*:\d+/)
  return {
    port: /instruments as .*:(\d+)/.exec(text)?.[1] ?? "",
    until,
    kill: () => server.kill("SIGKILL"),
    ended: new Promise<void>((resolve) => server.once("close", () => resolve())),
  }
}
