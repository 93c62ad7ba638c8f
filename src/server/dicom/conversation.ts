import type { Socket } from "node:net"
import type { Refusal } from "../contract/instruments.js"
import { admission, isLoopback, plainAddress } from "./admission.js"
import { associateAccept, readAssociateRequest } from "./associate.js"
import { printable } from "./bytes.js"
import { commandAnswer, FIELD, STATUS } from "./command.js"
import { ConversationFault, type Fault } from "./fault.js"
import { type Message, messageAssembler } from "./message.js"
import {
  type AgreedContext,
  agreedContexts,
  answeredContexts,
  isDocumentClass,
  rejectionOf,
} from "./negotiate.js"
import type { ReceiverParts } from "./parts.js"
import { PDU, type Pdu, pduReader } from "./pdu-reader.js"
import { ABORT_REASON, associateReject, commandPdus, providerAbort, releaseReply } from "./pdu-writer.js"
import { storeObject } from "./store.js"
import { isUid } from "./stored-object.js"

/** How often the times of a conversation are looked at, unless one of them is shorter. */
const LOOK_MS = 1000

export interface Conversation {
  /** Resolves when the socket is gone. */
  readonly ended: Promise<void>
  /** Lets an object that is being stored be stored and answered, then breaks off. */
  readonly end: () => Promise<void>
}

/**
 * Speaks with one sender: the acceptor's half of the state machine of PS3.8 9.2. Bytes are read one after another and
 * only when what came before was dealt with, so a fast sender waits in the network and not in our memory.
 */
export function converse(socket: Socket, parts: ReceiverParts): Conversation {
  const { limits, log, hold } = parts
  const address = plainAddress(socket.remoteAddress ?? "")
  const isFromHere = isLoopback(address)
  const reader = pduReader(limits.pduBytes)
  const connectedMs = performance.now()
  let phase: "request" | "associated" | "closing" = "request"
  let title = ""
  let mostBytes = 0
  let agreed: ReadonlyMap<number, AgreedContext> = new Map()
  let objects = 0
  let handling: Promise<void> | null = null
  let heardMs = connectedMs
  let pduBeganMs = connectedMs
  let closingMs = 0

  const assembler = messageAssembler({
    ...limits,
    hold,
    dataSetBytes: (contextId, { field }) => {
      const context = agreed.get(contextId)
      if (!context || field !== FIELD.store || objects >= limits.objectsPerAssociation) return 0
      return isDocumentClass(context.abstractSyntax) ? limits.documentBytes : limits.measurementBytes
    },
  })

  const refuse = (refusal: Refusal, what = "", why: string | null = null) =>
    log.add({ title, address, what, outcome: "refused", refusal, why })

  /** Says the last word; what still comes is read past until the other side closes, or has had its time. */
  const goodbye = (last: Uint8Array) => {
    if (phase === "associated") parts.leave()
    phase = "closing"
    closingMs = performance.now()
    assembler.drop()
    socket.end(last)
  }

  /** Writes and waits until it is on its way: who asks without reading the answers is not answered into memory. */
  const send = async (bytes: Uint8Array): Promise<void> => {
    if (socket.write(bytes) || socket.destroyed) return
    await new Promise<void>((resolve) => {
      const done = () => {
        socket.off("drain", done).off("close", done)
        resolve()
      }
      socket.once("drain", done).once("close", done)
    })
  }

  const associate = async (body: Uint8Array): Promise<void> => {
    const request = readAssociateRequest(body)
    title = printable(request.calling)
    log.hear({ title, address }, "association")
    const { isForThisMachineOnly } = parts
    const admitted = admission(await parts.rules(), { isFromHere, isForThisMachineOnly })
    const rejection = rejectionOf(request, admitted) ?? (parts.enter() ? null : "too-many-associations")
    if (rejection) {
      refuse(rejection, "", rejection === "unknown-called-title" ? printable(request.called) : null)
      return goodbye(associateReject(rejection))
    }
    phase = "associated"
    mostBytes = request.mostBytes
    const contexts = answeredContexts(request.contexts)
    agreed = agreedContexts(request.contexts, contexts)
    if (agreed.size === 0)
      refuse(
        "no-class-agreed",
        request.contexts.map(({ abstractSyntax }) => abstractSyntax).find(isUid) ?? "",
      )
    await send(associateAccept({ request, contexts, mostBytes: limits.pduBytes }))
  }

  const answerMessage = async (message: Message): Promise<void> => {
    const { command, contextId } = message
    const context = agreed.get(contextId)
    if (!context) throw new ConversationFault("unexpected-fragment")
    if (command.field & FIELD.response) throw new ConversationFault("unexpected-pdu")
    if (command.field === FIELD.cancel) return
    const answer = (status: number, comment?: string) =>
      send(commandPdus(commandAnswer(command, { status, comment }), { contextId, mostBytes }))
    if (command.field === FIELD.echo) {
      log.hear({ title, address }, "echo")
      return answer(STATUS.success)
    }
    if (command.field !== FIELD.store) {
      refuse("unknown-operation", context.abstractSyntax)
      return answer(STATUS.unknownOperation)
    }
    objects += 1
    const peer = { title, isFromHere }
    const { status, comment, ...event } = await storeObject(message, { context, peer, count: objects, parts })
    log.add({ title, address, what: context.abstractSyntax, ...event })
    if (event.outcome !== "refused") log.hear({ title, address }, "object")
    return answer(status, comment)
  }

  const take = async ({ type, body }: Pdu): Promise<void> => {
    if (type === PDU.abort) return leftOff()
    if (phase === "request") {
      if (type !== PDU.associateRequest) throw new ConversationFault("unexpected-pdu")
      return associate(body)
    }
    if (type === PDU.releaseRequest) return goodbye(releaseReply())
    if (type !== PDU.data) throw new ConversationFault("unexpected-pdu")
    for (const message of assembler.push(body)) {
      try {
        await answerMessage(message)
      } finally {
        message.release()
      }
    }
  }

  /** The other side is gone, or says that it will say no more. */
  const leftOff = () => {
    if (phase !== "closing" && (assembler.isWithin() || reader.isWithin())) refuse("cut-short")
    goodbye(new Uint8Array())
  }

  const breakOff = (error: unknown) => {
    if (phase === "closing") return
    const fault = error instanceof ConversationFault ? error.fault : null
    refuse(fault ?? "our-failure")
    goodbye(providerAbort(fault ? REASON_OF[fault] : ABORT_REASON.none))
  }

  const takeBytes = async (bytes: Uint8Array): Promise<void> => {
    heardMs = performance.now()
    let isNew = !reader.isWithin()
    try {
      for (const pdu of reader.push(bytes)) {
        isNew = true
        await take(pdu)
        heardMs = performance.now()
        if ((phase as string) === "closing") return
      }
    } catch (error) {
      breakOff(error)
    }
    if (isNew) pduBeganMs = performance.now()
  }

  const look = () => {
    const now = performance.now()
    if (phase === "closing") {
      if (now - closingMs > limits.closingMs) socket.destroy()
      return
    }
    // Time that we take ourselves is not the other side's; an answer that nobody reads is.
    if (handling && !socket.writableNeedDrain) return
    const late = lateness(now)
    if (late === null) return
    if (late !== "silent" || assembler.isWithin() || reader.isWithin()) refuse(late)
    goodbye(late === "request-late" ? new Uint8Array() : providerAbort(ABORT_REASON.none))
  }

  const lateness = (now: number): Refusal | null => {
    if (phase === "request") return now - connectedMs > limits.requestMs ? "request-late" : null
    if (now - connectedMs > limits.associationMs) return "association-too-long"
    if (now - heardMs > limits.silenceMs) return "silent"
    return reader.isWithin() && now - pduBeganMs > limits.pduMs ? "too-slow" : null
  }

  const looks = setInterval(look, Math.min(LOOK_MS, ...TIMES.map((time) => limits[time] / 4)))
  const listen = async (): Promise<void> => {
    try {
      for await (const bytes of socket) {
        // The phase changes while this waits.
        if ((phase as string) === "closing") continue
        handling = takeBytes(bytes)
        await handling
        handling = null
      }
      if ((phase as string) !== "closing") leftOff()
    } catch {
      // A connection that broke; nothing of an unfinished object was given to anybody.
      if ((phase as string) !== "closing") leftOff()
    } finally {
      clearInterval(looks)
      socket.destroy()
    }
  }
  const ended = listen()
  return {
    ended,
    end: async () => {
      await handling?.catch(() => undefined)
      if (phase !== "closing") goodbye(providerAbort(ABORT_REASON.none))
      await ended
    },
  }
}

const TIMES = ["requestMs", "silenceMs", "pduMs", "associationMs", "closingMs"] as const

const REASON_OF: Readonly<Record<Fault, (typeof ABORT_REASON)[keyof typeof ABORT_REASON]>> = {
  "unknown-pdu": ABORT_REASON.unknownPdu,
  "unexpected-pdu": ABORT_REASON.unexpectedPdu,
  "pdu-too-long": ABORT_REASON.invalidParameter,
  "malformed-pdu": ABORT_REASON.invalidParameter,
  "malformed-command": ABORT_REASON.none,
  "unexpected-fragment": ABORT_REASON.invalidParameter,
  "command-too-long": ABORT_REASON.none,
  "too-much-dropped": ABORT_REASON.none,
}
