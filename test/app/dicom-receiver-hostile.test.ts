import { connect } from "node:net"
import { describe, expect, it } from "vitest"
import { pdu } from "../../src/server/dicom/associate.js"
import {
  associateRequest,
  command,
  dataSet,
  fragment,
  release,
  say,
  store,
  VERIFICATION,
} from "./dicom-raw.js"
import { ABORT, ACCEPT, RELEASED, tried } from "./dicom-tried.js"

describe("hostile senders", () => {
  const hasAborted = (answers: Awaited<ReturnType<typeof say>>) => answers.at(-1)?.type === ABORT

  it("are broken off, each with its reason in the log, and the next is served", async () => {
    const { port, taken, refusals } = await tried()
    const long = pdu(1, [new Uint8Array(200_000)])
    expect(hasAborted(await say(port, [long]))).toBe(true)
    expect(hasAborted(await say(port, [Uint8Array.of(4, 0, 0xff, 0xff, 0xff, 0xff)]))).toBe(true)
    expect(hasAborted(await say(port, [Buffer.from("GET / HTTP/1.1\r\nHost: x\r\n\r\n")]))).toBe(true)
    expect(hasAborted(await say(port, [release()]))).toBe(true)
    const lying = pdu(4, [Uint8Array.of(0, 0, 0xff, 0xff, 1, 3, 9, 9)])
    expect(hasAborted(await say(port, [associateRequest(), lying]))).toBe(true)
    const garbled = fragment(Uint8Array.of(1, 2, 3, 4, 5), { isCommand: true })
    expect(hasAborted(await say(port, [associateRequest(), garbled]))).toBe(true)
    const unasked = store(dataSet()).subarray(fragment(command(), { isCommand: true }).length)
    expect(hasAborted(await say(port, [associateRequest(), unasked]))).toBe(true)
    expect(hasAborted(await say(port, [associateRequest(), associateRequest()]))).toBe(true)
    expect(refusals()).toEqual([
      "unexpected-pdu",
      "unexpected-fragment",
      "malformed-command",
      "malformed-pdu",
      "unexpected-pdu",
      "unknown-pdu",
      "pdu-too-long",
    ])
    expect(taken).toEqual([])
    expect((await say(port, [associateRequest(), store(dataSet()), release()]))[1]?.status).toBe(0)
  })

  it("of random bytes, at every stage, leave nothing behind", async () => {
    const { port, taken } = await tried()
    // Xorshift: the same bytes in every run.
    let seed = 20261126
    const random = (count: number) =>
      Uint8Array.from({ length: count }, () => {
        seed ^= seed << 13
        seed ^= seed >>> 17
        seed ^= seed << 5
        return seed & 255
      })
    const whole = Buffer.concat([associateRequest(), store(dataSet())])
    const tries = Array.from({ length: 200 }, (_, index) => {
      const changed = Buffer.from(whole)
      for (const place of random(3)) changed[(place * 7 + index) % changed.length] = random(1)[0] ?? 0
      return index % 3 === 0
        ? random(400)
        : index % 3 === 1
          ? Buffer.concat([associateRequest(), random(200)])
          : changed
    })
    for (let at = 0; at < tries.length; at += 20)
      await Promise.all(tries.slice(at, at + 20).map((bytes) => say(port, [bytes], { ms: 200 })))
    for (const { file } of taken) expect(file).toMatch(/^[\d.]+\.dcm$/)
    expect((await say(port, [associateRequest(), release()])).map(({ type }) => type)).toEqual([
      ACCEPT,
      RELEASED,
    ])
  })

  it("that leave in the middle of an object have sent nothing", async () => {
    const { port, taken, refusals } = await tried()
    const half = store(new Uint8Array(5000)).subarray(0, 2000)
    await say(port, [associateRequest(), half], { hangUp: true })
    await say(port, [associateRequest(), half.subarray(0, 150), pdu(7, [Uint8Array.of(0, 0, 0, 0)])], {
      ms: 500,
    })
    await expect.poll(() => refusals()).toEqual(["cut-short"])
    expect(taken).toEqual([])
  })

  it("that are slow, silent or say nothing at all are not waited for", async () => {
    const { port, taken, refusals } = await tried({
      limits: { requestMs: 400, silenceMs: 1200, pduMs: 1600, closingMs: 300 },
    })
    expect(await say(port, [])).toEqual([])
    expect(await say(port, [Uint8Array.of(1, 0, 0)])).toEqual([])
    const begun = store(new Uint8Array(5000)).subarray(0, 2000)
    expect(hasAborted(await say(port, [associateRequest(), begun]))).toBe(true)
    const dripping = Array.from({ length: 60 }, (_, at) => [begun.subarray(150 + at, 151 + at), 100]).flat()
    expect(hasAborted(await say(port, [associateRequest(), begun.subarray(0, 150), ...dripping]))).toBe(true)
    expect(refusals()).toEqual(["too-slow", "silent", "request-late"])
    expect(taken).toEqual([])
  })

  it("that ask and never read the answers do not fill our memory", async () => {
    const { port } = await tried({ limits: { silenceMs: 1500, closingMs: 300 } })
    const echo = fragment(command({ field: 0x30, sopClass: VERIFICATION, hasDataSet: false }), {
      isCommand: true,
    })
    const many = Buffer.concat(Array.from({ length: 20_000 }, () => echo))
    const before = process.memoryUsage().rss
    // What the sender itself has not got rid of is in this process as well: one buffer, sent again and again.
    const socket = connect(port, "127.0.0.1").pause()
    socket.on("error", () => {})
    const gone = new Promise<void>((resolve) => socket.once("close", () => resolve()))
    socket.write(associateRequest())
    for (let i = 0; i < 30; i++) socket.write(many)
    await gone
    expect(process.memoryUsage().rss - before).toBeLessThan(200_000_000)
  })
})
