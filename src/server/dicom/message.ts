import { byteReader } from "./bytes.js"
import { type Command, readCommand } from "./command.js"
import { ConversationFault } from "./fault.js"

/** A command with its data set, put together from the fragments of P-DATA units (PS3.8 9.3.5). */
export interface Message {
  readonly contextId: number
  readonly command: Command
  /** Null where none was announced, or where it went over its limit and was dropped. */
  readonly dataSet: Uint8Array | null
  readonly isTooLarge: boolean
  /** To be called when the data set is no longer needed: its memory then counts as free. */
  readonly release: () => void
}

export interface MessageLimits {
  readonly commandBytes: number
  /** How long the data set of this command may be; 0 to read it past without keeping anything. */
  readonly dataSetBytes: (contextId: number, command: Command) => number
  readonly droppedBytes: number
  /** Asks for room in the memory that all associations share, and gives it back with a negative number. */
  readonly hold: (bytes: number) => boolean
}

const COMMAND = 1
const LAST = 2
const FIRST_ROOM_BYTES = 8192

/** Puts messages together. What it holds is bounded by the limits, whatever the fragments claim. */
export function messageAssembler(limits: MessageLimits) {
  let pending: Pending | null = null

  const take = (contextId: number, isCommand: boolean, isLast: boolean, part: Uint8Array): Message | null => {
    pending ??= { contextId, command: null, bytes: growing(limits.commandBytes, () => true) }
    if (pending.contextId !== contextId || isCommand !== (pending.command === null))
      throw new ConversationFault("unexpected-fragment")
    const { bytes } = pending
    if (!bytes.add(part) && isCommand) throw new ConversationFault("command-too-long")
    if (bytes.seen() > limits.droppedBytes) throw new ConversationFault("too-much-dropped")
    if (!isLast) return null
    if (isCommand) {
      const command = readCommand(bytes.whole() ?? new Uint8Array())
      if (command.hasDataSet) {
        pending = { contextId, command, bytes: growing(limits.dataSetBytes(contextId, command), limits.hold) }
        return null
      }
      pending = null
      return { contextId, command, dataSet: null, isTooLarge: false, release: () => {} }
    }
    const { command } = pending
    if (command === null) throw new ConversationFault("unexpected-fragment")
    const dataSet = bytes.whole()
    pending = null
    return { contextId, command, dataSet, isTooLarge: dataSet === null, release: bytes.drop }
  }

  return {
    /** The messages that end with this P-DATA unit. To be read to the end before the next. */
    *push(body: Uint8Array): Generator<Message> {
      const reader = byteReader(body)
      while (reader.left() > 0) {
        const length = reader.u32()
        if (length < 2) throw new ConversationFault("malformed-pdu")
        const contextId = reader.u8()
        const control = reader.u8()
        const part = reader.take(length - 2)
        const message = take(contextId, (control & COMMAND) !== 0, (control & LAST) !== 0, part)
        if (message) yield message
      }
    },
    /** Whether a message has begun and not ended. */
    isWithin: () => pending !== null,
    /** Gives back what an unfinished message holds. */
    drop: (): void => {
      pending?.bytes.drop()
      pending = null
    },
  }
}

interface Pending {
  readonly contextId: number
  /** Null while the command itself is still coming. */
  readonly command: Command | null
  readonly bytes: Growing
}

type Growing = ReturnType<typeof growing>

/**
 * Bytes that grow by doubling up to a limit: a million fragments of one byte cost no more than one of a megabyte. Over
 * the limit everything is let go, and only counted from then on.
 */
function growing(mostBytes: number, hold: (bytes: number) => boolean) {
  let room: Uint8Array | null = new Uint8Array(0)
  let filled = 0
  let seen = 0
  const drop = () => {
    if (room && room.length > 0) hold(-room.length)
    room = null
  }
  const enlarge = (needed: number): void => {
    if (!room || needed <= room.length) return
    const size = Math.min(Math.max(needed, room.length * 2, FIRST_ROOM_BYTES), mostBytes)
    if (needed > mostBytes || !hold(size - room.length)) {
      drop()
      return
    }
    const larger = new Uint8Array(size)
    larger.set(room.subarray(0, filled))
    room = larger
  }
  return {
    /** False once it was too much. */
    add: (part: Uint8Array): boolean => {
      seen += part.length
      enlarge(filled + part.length)
      room?.set(part, filled)
      filled += part.length
      return room !== null
    },
    seen: () => seen,
    drop,
    /** Everything; null when it was too much. */
    whole: (): Uint8Array | null => room?.subarray(0, filled) ?? null,
  }
}
