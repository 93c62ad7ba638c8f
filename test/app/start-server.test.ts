import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs"
import { createServer } from "node:net"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import {
  type RunningServer,
  type ServerOptions,
  ServerStartError,
  startServer,
} from "../../src/server/main.js"

let folder: string
const running: RunningServer[] = []
const said: string[] = []
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), "lengthwise-start-")), "practice")
})
afterEach(async () => {
  for (const server of running.splice(0)) await server.close()
  said.splice(0)
  rmSync(join(folder, ".."), { recursive: true, force: true })
})

async function start(options: Partial<ServerOptions> = {}): Promise<RunningServer> {
  const say = (line: string) => said.push(line)
  const server = await startServer({ dataFolder: folder, port: 0, staticFolder: folder, say, ...options })
  running.push(server)
  return server
}

async function logIn({ address }: RunningServer, password: string) {
  const headers = { "content-type": "application/json" }
  const body = JSON.stringify({ name: "clinician", password })
  const answer = await fetch(`${address}/api/session`, { method: "POST", headers, body })
  await answer.text()
  return answer
}

describe("the first start", () => {
  it("makes the folder, serves this machine only, and tells a log-in that works", async () => {
    const server = await start()
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/)
    expect((await fetch(`${server.address}/api/health`)).status).toBe(200)
    const { name, password = "" } = server.firstLogIn ?? {}
    expect(name).toBe("clinician")
    expect((await logIn(server, password)).status).toBe(201)
    expect(said).toContain(`Lengthwise is at ${server.address}`)
    expect(said).toContain(`Log in as clinician with the password ${password}`)
  })

  it("writes the first log-in where only the owner reads it", async () => {
    const { firstLogIn } = await start()
    const file = join(folder, "first-log-in.txt")
    expect(firstLogIn?.file).toBe(file)
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect(readFileSync(file, "utf8")).toContain(`password: ${firstLogIn?.password}`)
  })

  it("makes a password nobody can guess or has used before", async () => {
    const first = (await start()).firstLogIn?.password
    const second = (await start({ dataFolder: `${folder}-2` })).firstLogIn?.password
    expect(first).toMatch(/^([a-z]{6}-){3}[a-z]{6}$/)
    expect(second).not.toBe(first)
  })
})

describe("a later start", () => {
  it("keeps the password and says only where it is written", async () => {
    const first = await start()
    await first.close()
    said.splice(0)
    const second = await start()
    expect(second.firstLogIn).toEqual({ name: "clinician", file: join(folder, "first-log-in.txt") })
    expect(said.join()).not.toContain(first.firstLogIn?.password)
    expect((await logIn(second, first.firstLogIn?.password ?? "")).status).toBe(201)
  })

  it("takes the file away once the password has been changed", async () => {
    const first = await start()
    const { password = "", file = "" } = first.firstLogIn ?? {}
    const cookie = (await logIn(first, password)).headers.get("set-cookie")?.split(";")[0] ?? ""
    const changed = await fetch(`${first.address}/api/password`, {
      method: "POST",
      headers: { "content-type": "application/json", cookie },
      body: JSON.stringify({ current: password, next: "seven small boats at dawn" }),
    })
    expect(changed.status).toBe(204)
    await first.close()
    expect((await start()).firstLogIn).toBeUndefined()
    expect(existsSync(file)).toBe(false)
  })
})

describe("a start that can't be", () => {
  it("says that the folder is in use, and by which server", async () => {
    const { address } = await start()
    await expect(start()).rejects.toThrow(
      `is in use by another Lengthwise (serving ${address}, process ${process.pid})`,
    )
  })

  it("says that the port is taken, and leaves the folder free", async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve))
    const port = (other.address() as { port: number }).port
    await expect(start({ port })).rejects.toThrow(
      new ServerStartError(`port ${port} of 127.0.0.1 is taken; choose another`),
    )
    await start()
    await new Promise((resolve) => other.close(resolve))
  })

  it.each(["eyes.example", "https://eyes.example/page", "ftp://eyes.example", "https://me@eyes.example"])(
    "refuses %s as the address of families, before anything of it stands on a paper",
    async (address) => {
      await expect(start({ address })).rejects.toThrow(/such as https:\/\/eyes\.example/)
    },
  )
  it("says that the data folder is a file", async () => {
    writeFileSync(folder, "")
    await expect(start()).rejects.toThrow(/data folder/)
  })
})

it("a request to end closes the server in good order", async () => {
  const { address } = await start()
  process.emit("SIGTERM", "SIGTERM")
  await expect
    .poll(() =>
      fetch(`${address}/api/health`).then(
        () => "up",
        () => "down",
      ),
    )
    .toBe("down")
  await start()
})
