import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { command, fragment } from "../../../test/app/dicom-raw.js"
import { ConversationFault } from "./fault.js"
import { messageAssembler } from "./message.js"
import { sharedRoom } from "./parts.js"

const body = (pdu: Buffer) => pdu.subarray(6)
const limits = { commandBytes: 1000, dataSetBytes: () => 5000, droppedBytes: 20_000, hold: () => true }

function read(bodies: readonly Uint8Array[], changes: Partial<typeof limits> = {}) {
  const assembler = messageAssembler({ ...limits, ...changes })
  return bodies.flatMap((one) => [...assembler.push(one)])
}

function faultOf(task: () => unknown): string {
  try {
    task()
  } catch (error) {
    if (error instanceof ConversationFault) return error.fault
    throw error
  }
  return "none"
}

describe("messages", () => {
  it("are put together from fragments of any size", () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 1, maxLength: 3000 }),
        fc.integer({ min: 1, max: 700 }),
        (data, size) => {
          const parts: Uint8Array[] = []
          for (let at = 0; at < data.length; at += size) parts.push(data.subarray(at, at + size))
          const bodies = [
            body(fragment(command(), { isCommand: true })),
            ...parts.map((part, index) => body(fragment(part, { isLast: index === parts.length - 1 }))),
          ]
          // In units of their own, or all in one.
          for (const split of [bodies, [Buffer.concat(bodies)]]) {
            const [message] = read(split)
            expect(Buffer.from(message?.dataSet ?? [])).toEqual(Buffer.from(data))
            expect(message?.command).toMatchObject({ field: 1, messageId: 7, sopInstance: "2.25.1" })
          }
        },
      ),
    )
  })

  it("that are too large are read past and said to be so", () => {
    const [message] = read([
      body(fragment(command(), { isCommand: true })),
      body(fragment(new Uint8Array(5000), { isLast: false })),
      body(fragment(new Uint8Array(1))),
    ])
    expect(message).toMatchObject({ dataSet: null, isTooLarge: true })
  })

  it("are given up where they never end", () => {
    const assembler = messageAssembler(limits)
    ;[...assembler.push(body(fragment(command(), { isCommand: true })))]
    const more = () => [...assembler.push(body(fragment(new Uint8Array(4000), { isLast: false })))]
    expect(faultOf(() => Array.from({ length: 9 }, more))).toBe("too-much-dropped")
  })

  it("hold no more memory than there is for all, and give it back", () => {
    const hold = sharedRoom(10_000)
    const begun = () => {
      const assembler = messageAssembler({ ...limits, dataSetBytes: () => 8000, hold })
      ;[...assembler.push(body(fragment(command(), { isCommand: true })))]
      ;[...assembler.push(body(fragment(new Uint8Array(7000), { isLast: false })))]
      return assembler
    }
    const first = begun()
    const second = begun()
    const [late] = [...second.push(body(fragment(new Uint8Array(1))))]
    expect(late?.isTooLarge).toBe(true)
    const [early] = [...first.push(body(fragment(new Uint8Array(1))))]
    expect(early?.dataSet).toHaveLength(7001)
    expect(hold(5000)).toBe(false)
    early?.release()
    early?.release()
    expect(hold(10_000)).toBe(true)
    expect(hold(1)).toBe(false)
  })

  it("are refused where fragments come in a wrong order or claim a wrong length", () => {
    const data = body(fragment(new Uint8Array(4)))
    const ordered = body(fragment(command(), { isCommand: true }))
    expect(faultOf(() => read([data]))).toBe("unexpected-fragment")
    expect(faultOf(() => read([ordered, ordered]))).toBe("unexpected-fragment")
    expect(faultOf(() => read([ordered, body(fragment(new Uint8Array(4), { context: 3 }))]))).toBe(
      "unexpected-fragment",
    )
    expect(faultOf(() => read([Uint8Array.of(0, 0, 0, 1, 1)]))).toBe("malformed-pdu")
    expect(faultOf(() => read([Uint8Array.of(0, 0, 1, 0, 1, 3)]))).toBe("malformed-pdu")
    expect(faultOf(() => read([body(fragment(new Uint8Array(1001), { isCommand: true }))]))).toBe(
      "command-too-long",
    )
    expect(faultOf(() => read([body(fragment(Uint8Array.of(1, 2, 3), { isCommand: true }))]))).toBe(
      "malformed-command",
    )
  })

  it("of anything at all are a message or a fault, never another error", () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 400 }), { maxLength: 5 }), (bodies) => {
        faultOf(() => read(bodies))
      }),
      { numRuns: 3000 },
    )
  })
})
