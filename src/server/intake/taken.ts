import type { Person } from "../../record/index.js"
import type { Context } from "../context.js"

/** What became of one thing in a received file. */
export interface Taken {
  readonly file: string
  readonly outcome: "recorded" | "known" | "waiting" | "skipped"
  /** In words, for who sent it. */
  readonly why?: string | undefined
  readonly child?: string | undefined
  readonly inboxId?: string | undefined
}

export type IntakeContext = Pick<Context, "record" | "clock" | "oneAtATime">

/** Who sent a file: an instrument by its name, or a person of the practice. */
export type From =
  | { readonly kind: "instrument"; readonly title: string }
  | { readonly kind: "person"; readonly person: Person }

export interface FileSent {
  readonly file: string
  readonly bytes: Uint8Array
  readonly from: From
  /** Whether a file of records may make a child nobody knows; a person who imports whole records wants that. */
  readonly makesChildren?: boolean | undefined
}
