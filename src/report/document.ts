import type { Language } from "../engine/say.js"

/** A paper of the practice as content: what stands on it, in order. A page and a PDF are set from the same value. */
export interface PaperDocument {
  readonly kind: DocumentKind
  readonly title: string
  readonly language: Language
  /** ISO day it was made. */
  readonly date: string
  readonly letterhead: Letterhead
  readonly blocks: readonly Block[]
  /** At the foot of every page: what it is, and what it is not. */
  readonly foot: string
}

export const DOCUMENT_KINDS = [
  "family",
  "consent",
  "order",
  "letter",
  "estimate",
  "travel",
  "adverse-event",
  "record",
] as const
export type DocumentKind = (typeof DOCUMENT_KINDS)[number]

export const PAPERS = ["a4", "letter"] as const
export type PaperSize = (typeof PAPERS)[number]

/** Who sends it. A practice that set no letterhead has its name alone. */
export interface Letterhead {
  readonly practice: string
  /** Address, telephone, and whatever else stands there. */
  readonly lines: readonly string[]
  readonly logo?: Picture | undefined
}

export interface Picture {
  readonly mediaType: "image/png" | "image/jpeg"
  readonly bytes: Uint8Array
}

export type Block =
  | {
      readonly kind: "heading"
      readonly text: string /** 1 a section, 2 a part of one. */
      readonly level: 1 | 2
    }
  /** The answer, large. */
  | { readonly kind: "lead"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "list"; readonly items: readonly string[]; readonly isNumbered?: boolean | undefined }
  | { readonly kind: "pairs"; readonly pairs: readonly (readonly [label: string, value: string])[] }
  | {
      readonly kind: "table"
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
      /** Columns of figures, from 0: set to the right. */
      readonly figures?: readonly number[] | undefined
    }
  /** A question with its answer, which a page may fold. */
  | {
      readonly kind: "answer"
      readonly question: string
      readonly lines: readonly string[]
      readonly grade: string
    }
  | {
      readonly kind: "figure"
      /** SVG with inks of its own. */
      readonly svg: string
      /** What it shows, for who does not see it. */
      readonly alt: string
      readonly caption?: string | undefined
    }
  /** A QR code with the words beside it. */
  | { readonly kind: "code"; readonly svg: string; readonly alt: string; readonly lines: readonly string[] }
  /** To be seen first. */
  | { readonly kind: "caution"; readonly lines: readonly string[] }
  /** Small print: where figures come from. */
  | { readonly kind: "notes"; readonly lines: readonly string[] }
  /** A label to be cut out, or whom a letter goes to. */
  | { readonly kind: "label" | "address"; readonly lines: readonly string[] }
  /** A line each to be signed and dated; the name is filled in where it is known. */
  | {
      readonly kind: "signatures"
      readonly lines: readonly { readonly role: string; readonly name: string }[]
    }
  | { readonly kind: "page-break" }

/** A document that cannot be made, and why, in words for whoever asked for it. */
export interface DocumentRefused {
  readonly kind: "refused"
  readonly why: string
}

/** What a document consists of before the practice's template orders it. */
export interface DocumentContent {
  readonly title: string
  /** In the order they stand in where a practice has no template. */
  readonly parts: readonly DocumentPart[]
  /** What a template may put into its own sentences, by name. */
  readonly values: Readonly<Record<string, string>>
  readonly foot: string
}

export interface DocumentPart {
  /** As a template names it: "what-we-saw", "figure-eyes". */
  readonly name: string
  readonly blocks: readonly Block[]
}
