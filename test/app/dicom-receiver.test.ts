import { describe, expect, it } from "vitest"
import {
  AXIAL,
  associateRequest,
  command,
  dataSet,
  EXPLICIT,
  fragment,
  PDF,
  release,
  say,
  store,
  VERIFICATION,
} from "./dicom-raw.js"
import { ACCEPT, OURS, REJECT, RELEASED, tried } from "./dicom-tried.js"

const BIG_ENDIAN = "1.2.840.10008.1.2.2"

describe("associations", () => {
  it("are accepted for our classes and refused, context by context, for all else", async () => {
    const { port } = await tried()
    const contexts = [
      [1, AXIAL, EXPLICIT],
      [3, AXIAL, BIG_ENDIAN],
      [5, "1.2.840.10008.5.1.4.1.1.2", EXPLICIT],
    ] as const
    const [accept, last] = await say(port, [
      associateRequest({ contexts: contexts.map((one) => [...one]) }),
      release(),
    ])
    expect(accept?.type).toBe(ACCEPT)
    expect([1, 3, 5].map((id) => resultOf(accept?.body ?? Buffer.alloc(0), id))).toEqual([0, 4, 3])
    expect(last?.type).toBe(RELEASED)
  })

  it("are rejected with the reason of the standard", async () => {
    const { port, refusals, lines } = await tried({ rules: OURS })
    const reasonOf = async (proposal: Parameters<typeof associateRequest>[0]) => {
      const [answer] = await say(port, [associateRequest(proposal)])
      expect(answer?.type).toBe(REJECT)
      return [...(answer?.body.subarray(1) ?? [])]
    }
    expect(await reasonOf({ calling: "BIOMETER" })).toEqual([1, 1, 7])
    expect(await reasonOf({ called: "EYES", calling: "STRANGER" })).toEqual([1, 1, 3])
    expect(await reasonOf({ called: "EYES", version: 2 })).toEqual([1, 2, 2])
    expect(await reasonOf({ called: "EYES", application: "1.2.3" })).toEqual([1, 1, 2])
    expect(refusals()).toEqual([
      "no-such-application",
      "unknown-protocol-version",
      "unknown-calling-title",
      "unknown-called-title",
    ])
    expect(lines).toContain('instruments: unknown-calling-title association of "STRANGER" at 127.0.0.1')
  })

  it("are put off when there are too many, and room is free again when one ends", async () => {
    const { port } = await tried({ limits: { associations: 1 } })
    const long = say(port, [associateRequest(), 1500, release()])
    await new Promise((resolve) => setTimeout(resolve, 500))
    const [second] = await say(port, [associateRequest()])
    expect([second?.type, ...(second?.body.subarray(1) ?? [])]).toEqual([REJECT, 2, 3, 2])
    await long
    expect((await say(port, [associateRequest(), release()])).map(({ type }) => type)).toEqual([
      ACCEPT,
      RELEASED,
    ])
  })

  it("follow the practice's settings from one to the next, and in the middle", async () => {
    const { port, set, taken } = await tried({ rules: { ...OURS, title: "LENGTHWISE" } })
    const sending = say(port, [
      associateRequest(),
      store(dataSet("2.25.1")),
      1000,
      store(dataSet("2.25.2"), { instance: "2.25.2" }),
      release(),
    ])
    await expect.poll(() => taken.length).toBe(1)
    set({ ...OURS, title: "LENGTHWISE", allowed: ["OTHER"] })
    expect((await sending).map(({ status }) => status)).toEqual([null, 0, 0x0124, null])
    expect((await say(port, [associateRequest()]))[0]?.type).toBe(REJECT)
    expect((await say(port, [associateRequest({ calling: "OTHER" }), release()]))[0]?.type).toBe(ACCEPT)
    expect(taken).toHaveLength(1)
  })

  it("are taken on another port as soon as the settings name one, and not when they are off", async () => {
    const { receiver, set, port } = await tried({ rules: OURS })
    set({ ...OURS, isOn: false })
    expect((await receiver.look()).state).toBe("off")
    expect(await say(port, [associateRequest({ called: "EYES" })])).toEqual([])
    set(OURS)
    expect(await receiver.look()).toMatchObject({ state: "listening", title: "EYES" })
  })
})

/** What became of a proposed context: the items of the answer begin behind version, titles and what is reserved. */
function resultOf(body: Buffer, id: number): number | undefined {
  for (let at = 68; at < body.length; at += 4 + body.readUInt16BE(at + 2))
    if (body[at] === 0x21 && body[at + 4] === id) return body[at + 6]
  return undefined
}

describe("objects", () => {
  it("are answered with success only after they were taken", async () => {
    let release_ = () => {}
    const stored = new Promise<void>((resolve) => {
      release_ = resolve
    })
    const { port } = await tried({
      take: async (file) => {
        await stored
        return [{ file, outcome: "recorded" }]
      },
    })
    let answered = false
    const sending = say(port, [associateRequest(), store(dataSet()), release()]).then((answers) => {
      answered = true
      return answers
    })
    await new Promise((resolve) => setTimeout(resolve, 300))
    expect(answered).toBe(false)
    release_()
    expect((await sending).map(({ status }) => status)).toEqual([null, 0, null])
  })

  it.each([
    ["known", undefined, 0x0000],
    ["waiting", undefined, 0x0000],
    ["skipped", "no birth date", 0xc000],
  ] as const)("that are %s are answered so", async (outcome, why, status) => {
    const { port } = await tried({ take: async (file) => [{ file, outcome, why }] })
    const [, answer] = await say(port, [associateRequest(), store(dataSet()), release()])
    expect(answer?.status).toBe(status)
    if (why) expect(answer?.body.toString("latin1")).toContain(why)
  })

  it("of which a part was skipped are answered with a warning, and none at all with a refusal", async () => {
    const both = await tried({
      take: async (file) => [
        { file, outcome: "waiting" },
        { file, outcome: "skipped", why: "a part" },
      ],
    })
    const [, answer] = await say(both.port, [associateRequest(), store(dataSet()), release()])
    expect(answer?.status).toBe(0xb006)
    const none = await tried({ take: async () => [] })
    expect((await say(none.port, [associateRequest(), store(dataSet()), release()]))[1]?.status).toBe(0xc000)
  })

  it("that could not be stored are answered so that the sender keeps them", async () => {
    const full = await tried({
      take: () => Promise.reject(Object.assign(new Error(), { code: "SQLITE_FULL" })),
    })
    expect((await say(full.port, [associateRequest(), store(dataSet()), release()]))[1]?.status).toBe(0xa700)
    const broken = await tried({ take: () => Promise.reject(new Error("child of Sample")) })
    expect((await say(broken.port, [associateRequest(), store(dataSet()), release()]))[1]?.status).toBe(
      0xc001,
    )
    expect([...full.lines, ...broken.lines].join()).not.toContain("Sample")
  })

  it("are refused that are other than was announced", async () => {
    const { port, taken, refusals } = await tried()
    const answers = await say(port, [
      associateRequest(),
      store(dataSet("2.25.2")),
      store(dataSet("2.25.1", PDF)),
      store(dataSet(), { sopClass: PDF }),
      store(dataSet("../../x"), { instance: "../../x" }),
      release(),
    ])
    expect(answers.map(({ status }) => status)).toEqual([null, 0xa900, 0xa900, 0x0122, 0x0117, null])
    expect(taken).toEqual([])
    expect(refusals()).toEqual(["invalid-instance", "class-not-agreed", "does-not-match"])
  })

  it("are refused over the limits, and those after them taken", async () => {
    const { port, taken } = await tried({
      limits: { measurementBytes: 10_000, objectsPerAssociation: 3 },
    })
    const named = (instance: string) => store(dataSet(instance), { instance })
    const answers = await say(port, [
      associateRequest(),
      named("2.25.1"),
      fragment(command(), { isCommand: true }),
      fragment(new Uint8Array(9000), { isLast: false }),
      fragment(new Uint8Array(2000)),
      named("2.25.2"),
      named("2.25.3"),
      release(),
    ])
    expect(answers.map(({ status }) => status)).toEqual([null, 0, 0xa700, 0, 0xa700, null])
    expect(taken.map(({ file }) => file)).toEqual(["2.25.1.dcm", "2.25.2.dcm"])
    const slow = await tried({ limits: { objectsPerMinute: 1 } })
    const twice = await say(slow.port, [associateRequest(), named("2.25.1"), named("2.25.2"), release()])
    expect(twice.map(({ status }) => status)).toEqual([null, 0, 0xa700, null])
  })

  it("are not asked for by any other service", async () => {
    const { port, refusals } = await tried()
    const find = fragment(command({ field: 0x20, hasDataSet: false }), { isCommand: true })
    const echo = fragment(command({ field: 0x30, sopClass: VERIFICATION, hasDataSet: false }), {
      isCommand: true,
    })
    const answers = await say(port, [associateRequest(), find, echo, release()])
    expect(answers.map(({ status }) => status)).toEqual([null, 0x0211, 0, null])
    expect(refusals()).toEqual(["unknown-operation"])
  })
})
