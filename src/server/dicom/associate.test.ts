import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { AXIAL, associateRequest, EXPLICIT, IMPLICIT, VERIFICATION } from "../../../test/app/dicom-raw.js"
import { admission, isLoopback, plainAddress } from "./admission.js"
import { associateAccept, readAssociateRequest } from "./associate.js"
import { commandAnswer, readCommand } from "./command.js"
import { ConversationFault } from "./fault.js"
import { agreedContexts, answeredContexts, rejectionOf } from "./negotiate.js"
import { commandPdus } from "./pdu-writer.js"

const read = (...proposal: Parameters<typeof associateRequest>) =>
  readAssociateRequest(associateRequest(...proposal).subarray(6))

const free = { isFromHere: true, isForThisMachineOnly: true }
const rules = { isOn: true, port: 11112, title: "EYES", allowed: ["BIOMETER", "REFRACTOR"] }

describe("a request to associate", () => {
  it("is read with its titles, contexts and longest PDU", () => {
    expect(read({ contexts: [[3, AXIAL, EXPLICIT, IMPLICIT]], mostBytes: 99 })).toMatchObject({
      protocolVersion: 1,
      called: "LENGTHWISE",
      calling: "BIOMETER",
      contexts: [{ id: 3, abstractSyntax: AXIAL, transferSyntaxes: [EXPLICIT, IMPLICIT] }],
      mostBytes: 99,
    })
  })

  it("that was cut short or made up is a fault, never another error", () => {
    const whole = associateRequest().subarray(6)
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.integer({ min: 0, max: 255 }), (cut, place, value) => {
        const changed = Buffer.from(whole)
        changed[place % whole.length] = value
        for (const bytes of [whole.subarray(0, cut % whole.length), changed]) {
          try {
            readAssociateRequest(bytes)
          } catch (error) {
            expect(error).toBeInstanceOf(ConversationFault)
          }
        }
      }),
      { numRuns: 3000 },
    )
  })

  it("is rejected for its version, application, called or calling title", () => {
    const unwelcome = (proposal: Parameters<typeof associateRequest>[0]) =>
      rejectionOf(read(proposal), admission(rules, free))
    expect(unwelcome({ called: "EYES" })).toBeNull()
    expect(unwelcome({ called: "EYES", version: 2 })).toBe("unknown-protocol-version")
    expect(unwelcome({ called: "EYES", application: "1.2.3" })).toBe("no-such-application")
    expect(unwelcome({})).toBe("unknown-called-title")
    expect(unwelcome({ called: "EYES", calling: "STRANGER" })).toBe("unknown-calling-title")
  })

  it("gets each context answered: our classes in little endian, explicit first", () => {
    const { contexts } = read({
      contexts: [
        [1, AXIAL, IMPLICIT, EXPLICIT],
        [3, AXIAL, "1.2.840.10008.1.2.2"],
        [5, "1.2.840.10008.5.1.4.1.1.2", EXPLICIT],
        [7, VERIFICATION, IMPLICIT],
      ],
    })
    const answered = answeredContexts(contexts)
    expect(answered.map(({ result }) => result)).toEqual([0, 4, 3, 0])
    expect([...agreedContexts(contexts, answered)]).toEqual([
      [1, { abstractSyntax: AXIAL, transferSyntax: EXPLICIT }],
      [7, { abstractSyntax: VERIFICATION, transferSyntax: IMPLICIT }],
    ])
    const accept = associateAccept({ request: read(), contexts: answered, mostBytes: 16384 })
    // Titles go back as they came.
    expect(accept.subarray(10, 42).toString("latin1")).toBe("LENGTHWISE      BIOMETER        ")
  })
})

describe("who may send", () => {
  it("is what the practice's settings say, once there are any", () => {
    const { isCalled, isAllowed } = admission(rules, free)
    expect([isCalled("EYES"), isCalled("LENGTHWISE"), isAllowed("BIOMETER"), isAllowed("ANY")]).toEqual([
      true,
      false,
      true,
      false,
    ])
    expect(admission({ ...rules, isOn: false }, free).isAllowed("BIOMETER")).toBe(false)
  })

  it("is anybody of this machine before, where no other machine can reach us", () => {
    const { isCalled, isAllowed } = admission(undefined, free)
    expect([isCalled("LENGTHWISE"), isCalled("ANY-SCP"), isCalled("EYES")]).toEqual([true, true, false])
    expect(isAllowed("STORESCU")).toBe(true)
    expect(admission(undefined, { ...free, isFromHere: false }).isAllowed("STORESCU")).toBe(false)
    expect(admission(undefined, { ...free, isForThisMachineOnly: false }).isAllowed("STORESCU")).toBe(false)
  })

  it("tells this machine's addresses from others", () => {
    expect(["127.0.0.1", "::1", "localhost", "::ffff:127.0.0.1", "127.9.9.9"].every(isLoopback)).toBe(true)
    expect(["0.0.0.0", "::", "10.0.0.1", "127.example", "::ffff:10.0.0.1"].some(isLoopback)).toBe(false)
    expect(plainAddress("::ffff:10.0.0.1")).toBe("10.0.0.1")
  })
})

describe("an answer to a command", () => {
  const asked = { field: 1, messageId: 7, sopClass: AXIAL, sopInstance: "2.25.1", hasDataSet: true }

  it("repeats what was asked, with a comment no longer than the standard allows", () => {
    const answer = commandAnswer(asked, { status: 0xc000, comment: `a\\b ${"x".repeat(90)}` })
    expect(readCommand(answer)).toMatchObject({ field: 0x8001, sopClass: AXIAL, hasDataSet: false })
    expect(answer.toString("latin1")).toContain(`a/b ${"x".repeat(60)}`)
    expect(answer.toString("latin1")).not.toContain("x".repeat(61))
    expect(answer.length % 2).toBe(0)
  })

  it("goes in units no longer than the other side takes", () => {
    const answer = commandAnswer(asked, { status: 0, comment: "y".repeat(64) })
    const pdus = commandPdus(answer, { contextId: 1, mostBytes: 130 })
    expect(pdus.readUInt32BE(2)).toBe(130)
    expect(pdus.length).toBe(answer.length + 12 * Math.ceil(answer.length / 124))
    expect(commandPdus(answer, { contextId: 1, mostBytes: 0 }).length).toBe(answer.length + 12)
  })
})
