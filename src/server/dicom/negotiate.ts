import { STORED_CLASSES } from "../contract/instruments.js"
import type { Admission } from "./admission.js"
import {
  type AnsweredContext,
  APPLICATION_CONTEXT,
  type AssociateRequest,
  CONTEXT_RESULT,
  type ProposedContext,
} from "./associate.js"
import type { Rejection } from "./pdu-writer.js"

export const VERIFICATION = "1.2.840.10008.1.1"
export const EXPLICIT_LITTLE = "1.2.840.10008.1.2.1"
export const IMPLICIT_LITTLE = "1.2.840.10008.1.2"
const ENCAPSULATED_PDF = "1.2.840.10008.5.1.4.1.1.104.1"

export interface AgreedContext {
  readonly abstractSyntax: string
  readonly transferSyntax: string
}

/** Why an association is not to be; null when it is welcome. */
export function rejectionOf(request: AssociateRequest, admission: Admission): Rejection | null {
  // Bit 0 stands for version 1, the only one there is (PS3.8 table 9-11).
  if (request.protocolVersion % 2 === 0) return "unknown-protocol-version"
  if (request.application !== APPLICATION_CONTEXT) return "no-such-application"
  if (!admission.isCalled(request.called)) return "unknown-called-title"
  return admission.isAllowed(request.calling) ? null : "unknown-calling-title"
}

/** What becomes of each proposed context: our classes, little endian without compression, and nothing else. */
export const answeredContexts = (proposed: readonly ProposedContext[]): readonly AnsweredContext[] =>
  proposed.map(({ id, abstractSyntax, transferSyntaxes }) => {
    const transferSyntax = [EXPLICIT_LITTLE, IMPLICIT_LITTLE].find((one) => transferSyntaxes.includes(one))
    const result = !(abstractSyntax === VERIFICATION || isStoredClass(abstractSyntax))
      ? CONTEXT_RESULT.noSuchAbstractSyntax
      : transferSyntax
        ? CONTEXT_RESULT.accepted
        : CONTEXT_RESULT.noSuchTransferSyntax
    // Where a context is refused the syntax has no meaning, but some clients want one there (PS3.8 9.3.3.2).
    return { id, result, transferSyntax: transferSyntax ?? IMPLICIT_LITTLE }
  })

export function agreedContexts(
  proposed: readonly ProposedContext[],
  answered: readonly AnsweredContext[],
): ReadonlyMap<number, AgreedContext> {
  const agreed = new Map<number, AgreedContext>()
  answered.forEach(({ id, result, transferSyntax }, index) => {
    const abstractSyntax = proposed[index]?.abstractSyntax
    if (result === CONTEXT_RESULT.accepted && abstractSyntax !== undefined)
      agreed.set(id, { abstractSyntax, transferSyntax })
  })
  return agreed
}

export const isStoredClass = (uid: string): boolean => Object.hasOwn(STORED_CLASSES, uid)
export const isDocumentClass = (uid: string): boolean => uid === ENCAPSULATED_PDF
