import type { Arbitrary } from "fast-check"

/** A reader that is fed broken files. One file of `test/fuzz/targets` exports one as `target`. */
export interface FuzzTarget {
  /** Also the name of its file. */
  readonly name: string
  /** Valid files to be broken. */
  seeds(): Promise<readonly Uint8Array[]>
  /** Reads the bytes and throws on what must not be, such as a figure outside its limits. */
  read(bytes: Uint8Array): Promise<unknown>
  /** How much of a run over all formats is its own, against the others; 1 when absent. */
  readonly share?: number
  /** Files made from nothing; bytes of any kind when absent. */
  readonly generated?: Arbitrary<Uint8Array>
}
