import type { InstrumentRules } from "../../engine/practice-rules.js"
import type { Context } from "../context.js"
import type { HeardInstrument, ListenerAnswer } from "../contract/instruments.js"
import { inTurn } from "../in-turn.js"
import { takeFile } from "../intake/take-file.js"
import { admission, isLoopback, OWN_TITLE } from "./admission.js"
import { type EventLog, eventLog } from "./event-log.js"
import { type DicomLimits, dicomLimits } from "./limits.js"
import { CannotListen, type Keys, type ListenerProblem, type Listening, listen } from "./listen.js"
import { type ReceiverParts, sharedRoom } from "./parts.js"
import { perMinute } from "./per-minute.js"

export interface ReceiverStart {
  readonly host: string
  /** In place of the port of the practice's settings; 0 takes any free one. */
  readonly port?: number | undefined
  readonly keys: Keys | null
  /** Where a line about what was refused goes. */
  readonly write: (line: string) => void
}

export interface InstrumentReceiver {
  readonly start: (start: ReceiverStart) => Promise<ListenerAnswer>
  /** Brings the receiver in line with the practice's settings, and says how it then stands. */
  readonly look: () => Promise<ListenerAnswer>
  readonly heard: () => Promise<readonly HeardInstrument[]>
  readonly log: EventLog
  readonly close: () => Promise<void>
}

/** How long it takes at most until changed settings are in force without anybody asking for the page. */
const LOOK_EVERY_MS = 1000
/** How long a port that could not be had is left alone. Common practice, no source. */
const TRY_AGAIN_MS = 15_000

type Wish = { readonly state: "off" | "unset" } | { readonly state: "listening"; readonly port: number }

/** Receives from instruments as the practice's settings say, which are read live. */
export function instrumentReceiver(
  context: Pick<Context, "record" | "clock" | "oneAtATime" | "rules">,
  {
    limits = dicomLimits,
    take = ({ file, bytes, title }) =>
      takeFile(context, { file, bytes, from: { kind: "instrument", title } }),
  }: { readonly limits?: DicomLimits; readonly take?: ReceiverParts["take"] } = {},
): InstrumentReceiver {
  const { clock } = context
  let start: ReceiverStart | null = null
  let listening: (Listening & { readonly asked: number; readonly since: string }) | null = null
  let failure: { readonly problem: ListenerProblem; readonly asked: number; readonly atMs: number } | null =
    null
  let timer: NodeJS.Timeout | null = null
  let associations = 0
  const former = new Set<Listening>()
  const oneLook = inTurn()
  const log = eventLog({ nowMs: clock.nowMs, write: (line) => start?.write(line) })
  const rules = async () => (await context.rules.now()).instruments
  const isForThisMachineOnly = () => start !== null && isLoopback(start.host)

  const parts: ReceiverParts = {
    limits,
    log,
    rules,
    take,
    get isForThisMachineOnly() {
      return isForThisMachineOnly()
    },
    hold: sharedRoom(limits.heldBytes),
    enter: () => {
      if (associations >= limits.associations) return false
      associations += 1
      return true
    },
    leave: () => {
      associations -= 1
    },
    isInTime: perMinute({ most: limits.objectsPerMinute, nowMs: () => performance.now() }),
  }

  const stopListening = () => {
    if (!listening) return
    // Conversations under way go on; each object of them asks the settings again.
    listening.stop()
    former.add(listening)
    listening = null
  }

  const bringInLine = async (set: InstrumentRules | undefined): Promise<void> => {
    if (!start) return
    const wish = wishOf(set, start.port)
    if (wish.state !== "listening") {
      failure = null
      return stopListening()
    }
    if (listening?.asked === wish.port) return
    stopListening()
    if (failure?.asked === wish.port && performance.now() - failure.atMs < TRY_AGAIN_MS) return
    try {
      const at = await listen({ host: start.host, port: wish.port, keys: start.keys }, parts)
      listening = { ...at, asked: wish.port, since: new Date(clock.nowMs()).toISOString() }
      failure = null
    } catch (error) {
      if (!(error instanceof CannotListen)) throw error
      failure = { problem: error.problem, asked: wish.port, atMs: performance.now() }
      start.write(`instruments: cannot listen on port ${wish.port} of ${start.host}: ${error.problem}`)
    }
  }

  const standing = (set: InstrumentRules | undefined): ListenerAnswer => {
    const wish = start ? wishOf(set, start.port) : ({ state: "stopped" } as const)
    return {
      state: wish.state === "listening" && !listening ? "failed" : wish.state,
      host: start?.host ?? "",
      port: listening?.port ?? (wish.state === "listening" ? wish.port : null),
      title: set?.title ?? OWN_TITLE,
      isTls: start?.keys != null,
      isPortFromStart: start?.port !== undefined,
      isSet: set !== undefined,
      isOpenToThisMachine: set === undefined && isForThisMachineOnly(),
      isForThisMachineOnly: isForThisMachineOnly(),
      problem: failure?.problem ?? null,
      since: listening?.since ?? null,
    }
  }

  const look = () =>
    oneLook(async () => {
      const set = await rules()
      await bringInLine(set)
      return standing(set)
    })

  return {
    log,
    look,
    start: async (how) => {
      start = how
      timer = setInterval(() => void look().catch(() => undefined), LOOK_EVERY_MS).unref()
      return look()
    },
    heard: async () => {
      const { isAllowed } = admission(await rules(), {
        isFromHere: true,
        isForThisMachineOnly: isForThisMachineOnly(),
      })
      return log.heard().map((one) => ({ ...one, isAllowed: isAllowed(one.title) }))
    },
    close: async () => {
      if (timer) clearInterval(timer)
      await oneLook(async () => {
        stopListening()
        start = null
      })
      await Promise.all([...former].map((one) => one.close()))
    },
  }
}

function wishOf(set: InstrumentRules | undefined, portFromStart: number | undefined): Wish {
  if (set && !set.isOn) return { state: "off" }
  const port = portFromStart ?? set?.port
  return port === undefined ? { state: "unset" } : { state: "listening", port }
}
