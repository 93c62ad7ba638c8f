import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { pdu } from "./associate.js"
import { ConversationFault } from "./fault.js"
import { type Pdu, pduReader } from "./pdu-reader.js"

const MOST = 300

/** What a reader makes of bytes that come in these parts: the PDUs, then the fault if there was one. */
function readIn(parts: readonly Uint8Array[]): readonly unknown[] {
  const reader = pduReader(MOST)
  const read: unknown[] = []
  try {
    for (const part of parts) for (const one of reader.push(part)) read.push(plain(one))
  } catch (error) {
    read.push((error as ConversationFault).fault)
  }
  return read
}

const plain = ({ type, body }: Pdu) => ({ type, body: Buffer.from(body).toString("hex") })

function cut(bytes: Uint8Array, places: readonly number[]): readonly Uint8Array[] {
  const at = [...new Set(places.map((place) => place % (bytes.length + 1)))].sort((a, b) => a - b)
  return [0, ...at].map((from, index) => bytes.subarray(from, at[index] ?? bytes.length))
}

describe("a stream of PDUs", () => {
  it("is cut at the lengths that stand in it", () => {
    const bytes = Buffer.concat([pdu(4, [Uint8Array.of(1, 2, 3)]), pdu(5, [new Uint8Array(4)]), pdu(4, [])])
    expect(readIn([bytes])).toEqual([
      { type: 4, body: "010203" },
      { type: 5, body: "00000000" },
      { type: 4, body: "" },
    ])
  })

  it("gives the same PDUs however it was split on the way", () => {
    const pdus = fc.array(fc.tuple(fc.integer({ min: 1, max: 7 }), fc.uint8Array({ maxLength: MOST })), {
      maxLength: 6,
    })
    fc.assert(
      fc.property(pdus, fc.array(fc.nat()), (list, places) => {
        const bytes = Buffer.concat(list.map(([type, body]) => pdu(type, [body])))
        expect(readIn(cut(bytes, places))).toEqual(list.map(([type, body]) => plain({ type, body })))
      }),
    )
  })

  it("of anything at all gives the same faults however it was split, and never another error", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 1000 }), fc.array(fc.nat()), (bytes, places) => {
        expect(readIn(cut(bytes, places))).toEqual(readIn([bytes]))
      }),
      { numRuns: 2000 },
    )
  })

  it("is refused at a length that is too large, before anything of it is kept", () => {
    expect(readIn([Uint8Array.of(4, 0, 0xff, 0xff, 0xff, 0xff)])).toEqual(["pdu-too-long"])
    expect(readIn([pdu(4, [new Uint8Array(MOST + 1)])])).toEqual(["pdu-too-long"])
    expect(readIn([pdu(4, [new Uint8Array(MOST)])])).toHaveLength(1)
  })

  it("is refused at a type that there is not", () => {
    expect(readIn([Uint8Array.of(0x16, 3, 1, 2, 0, 1)])).toEqual(["unknown-pdu"])
    expect(new ConversationFault("unknown-pdu").fault).toBe("unknown-pdu")
  })

  it("knows whether a PDU is under way", () => {
    const reader = pduReader(MOST)
    expect(reader.isWithin()).toBe(false)
    expect([...reader.push(Uint8Array.of(5))]).toEqual([])
    expect(reader.isWithin()).toBe(true)
    expect([...reader.push(Uint8Array.of(0, 0, 0, 0, 0))]).toHaveLength(1)
    expect(reader.isWithin()).toBe(false)
  })
})
