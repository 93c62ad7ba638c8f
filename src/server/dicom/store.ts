import type { Outcome, Refusal } from "../contract/instruments.js"
import type { Taken } from "../intake/taken.js"
import { admission } from "./admission.js"
import { STATUS } from "./command.js"
import type { Message } from "./message.js"
import type { AgreedContext } from "./negotiate.js"
import type { ReceiverParts } from "./parts.js"
import { isUid, namesInDataSet, part10File } from "./stored-object.js"

/** What is answered to a C-STORE, and what is remembered of it. */
export interface Stored {
  readonly status: number
  readonly comment?: string | undefined
  readonly outcome: Outcome
  readonly refusal: Refusal | null
  readonly why: string | null
}

/** Comments that go back to the sender, in English: instruments show them in their logs. */
const REFUSED = {
  "no-longer-allowed": [STATUS.notAuthorized, "this title may not send here"],
  "class-not-agreed": [STATUS.noSuchClass, "another class than the context was agreed for"],
  "invalid-instance": [STATUS.invalidInstance, "the SOP instance is no UID"],
  "does-not-match": [STATUS.doesNotMatchClass, "the data set names another class or instance"],
  "too-large": [STATUS.outOfResources, "larger than is taken here, or no memory now"],
  "too-many-objects": [STATUS.outOfResources, "too many objects in one association"],
  "too-fast": [STATUS.outOfResources, "too many objects in a minute; send again later"],
  "our-failure": [STATUS.failed, "the object could not be stored; send again later"],
  "not-stored": [STATUS.outOfResources, "no room to store; nothing was kept"],
} as const satisfies Partial<Record<Refusal, readonly [number, string]>>

/**
 * Answers a C-STORE. Success is answered once the record has the object, never before: the sender may then delete its
 * own.
 */
export async function storeObject(
  message: Message,
  {
    context,
    peer,
    count,
    parts,
  }: {
    readonly context: AgreedContext
    readonly peer: { readonly title: string; readonly isFromHere: boolean }
    /** The how manieth object of the association it is. */
    readonly count: number
    readonly parts: ReceiverParts
  },
): Promise<Stored> {
  const { command, dataSet } = message
  const { isForThisMachineOnly, limits } = parts
  // Read again for every object: a title taken out of the settings stops in the middle of an association.
  const admitted = admission(await parts.rules(), { isFromHere: peer.isFromHere, isForThisMachineOnly })
  if (!admitted.isAllowed(peer.title)) return refused("no-longer-allowed")
  if (command.sopClass !== context.abstractSyntax) return refused("class-not-agreed")
  if (!isUid(command.sopInstance)) return refused("invalid-instance")
  if (count > limits.objectsPerAssociation) return refused("too-many-objects")
  if (!parts.isInTime(peer.title)) return refused("too-fast")
  if (dataSet === null) return refused("too-large")
  const { transferSyntax } = context
  const named = namesInDataSet(dataSet, transferSyntax)
  if ((named.sopClass ?? command.sopClass) !== command.sopClass) return refused("does-not-match")
  if ((named.sopInstance ?? command.sopInstance) !== command.sopInstance) return refused("does-not-match")
  try {
    const bytes = part10File({ ...command, transferSyntax }, dataSet)
    return answerTo(await parts.take({ file: `${command.sopInstance}.dcm`, bytes, title: peer.title }))
  } catch (error) {
    return refused(isFull(error) ? "not-stored" : "our-failure")
  }
}

function refused(refusal: keyof typeof REFUSED): Stored {
  const [status, comment] = REFUSED[refusal]
  return { status, comment, outcome: "refused", refusal, why: null }
}

const isFull = (error: unknown): boolean =>
  /SQLITE_FULL|ENOSPC|ENOMEM/.test(String((error as { readonly code?: unknown } | null)?.code ?? ""))

function answerTo(taken: readonly Taken[]): Stored {
  const kept = taken.filter(({ outcome }) => outcome !== "skipped")
  const why = taken.find(({ outcome }) => outcome === "skipped")?.why ?? null
  const [first] = kept
  if (first === undefined || first.outcome === "skipped")
    return {
      status: STATUS.cannotUnderstand,
      comment: why ?? "not an object that is read here",
      outcome: "refused",
      refusal: "not-taken",
      why,
    }
  return {
    status: kept.length === taken.length ? STATUS.success : STATUS.elementsDiscarded,
    ...(kept.length === taken.length ? {} : { comment: why ?? undefined }),
    outcome:
      (["recorded", "waiting"] as const).find((one) => kept.some(({ outcome }) => outcome === one)) ??
      "known",
    refusal: null,
    why,
  }
}
