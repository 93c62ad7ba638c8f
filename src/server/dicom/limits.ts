/**
 * How much a sender may ask of the receiver. Eye instruments send a few objects of some kilobytes a visit; every limit
 * leaves far more than that and still keeps memory, disk and time bounded when a sender is broken or hostile. None of
 * them is a figure of a standard unless its line says so: our own choice, common practice, no source.
 */
export interface DicomLimits {
  /** Associations under way; one more is asked to come again later. A practice has a handful of instruments. */
  readonly associations: number
  /** Open sockets, those that have asked for nothing yet included; one more is closed unheard. */
  readonly connections: number
  /** Objects of one association: the stored years of a large instrument fit, an endless loop does not. */
  readonly objectsPerAssociation: number
  /** Objects of one calling title in a minute: above what one sender on this machine reached in our bench. */
  readonly objectsPerMinute: number
  /** Longest PDU that is taken, told to the sender when it associates (PS3.8 D.1). Held whole, once an association. */
  readonly pduBytes: number
  /** Command of a message; ours hold some 200 bytes. */
  readonly commandBytes: number
  /** Largest measurement object; those of the fixtures hold 4 kB, private parts of a maker may be larger. */
  readonly measurementBytes: number
  /** Largest encapsulated PDF with its header. */
  readonly documentBytes: number
  /** Of all associations together, while their objects are put together. */
  readonly heldBytes: number
  /** An object over its limit is read to its end, so that the sender gets an answer, but not for longer than this. */
  readonly droppedBytes: number
  /** From connecting to the end of the request to associate (the ARTIM timer of PS3.8 9.1.5). */
  readonly requestMs: number
  /** Without a byte while we wait for one. */
  readonly silenceMs: number
  /** From the first byte of a PDU to its last: who sends a byte now and then is never silent. */
  readonly pduMs: number
  /** A whole association. */
  readonly associationMs: number
  /** For the other side to close, once we have said goodbye. */
  readonly closingMs: number
}

const KB = 1024
const MB = 1024 * KB
const SECOND_MS = 1000
const MINUTE_MS = 60 * SECOND_MS

export const dicomLimits: DicomLimits = {
  associations: 32,
  connections: 96,
  objectsPerAssociation: 20_000,
  objectsPerMinute: 30_000,
  pduBytes: 128 * KB,
  commandBytes: 16 * KB,
  measurementBytes: 4 * MB,
  documentBytes: 50 * MB,
  heldBytes: 256 * MB,
  droppedBytes: 512 * MB,
  requestMs: 10 * SECOND_MS,
  silenceMs: MINUTE_MS,
  pduMs: 30 * SECOND_MS,
  associationMs: 60 * MINUTE_MS,
  closingMs: 3 * SECOND_MS,
}
