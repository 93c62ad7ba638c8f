import type { CONVERSATION_FAULTS } from "../contract/instruments.js"

export type Fault = (typeof CONVERSATION_FAULTS)[number]

/** The other side broke a rule of the conversation: PS3.8, PS3.7, or more than we take. */
export class ConversationFault extends Error {
  override readonly name = "ConversationFault"
  constructor(readonly fault: Fault) {
    super(fault)
  }
}
