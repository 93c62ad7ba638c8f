/** Keys of other programs and their notices. */
export interface TokenTables {
  api_tokens: ApiTokensTable
  webhooks: WebhooksTable
  webhook_deliveries: WebhookDeliveriesTable
  webhook_told: WebhookToldTable
}

/** A key of another program. It opens what its person may do, within its scopes. */
export interface ApiTokensTable {
  practice: string
  id: string
  name: string
  /** SHA-256 of the token; the token itself is shown once and kept nowhere. */
  token_hash: string
  /** Its last characters, by which a person tells two of them apart. */
  ending: string
  /** JSON list of scopes. */
  scopes: string
  created_at: string
  created_by: string
  expires_at: string
  /** To the hour. */
  last_used_at: string | null
  revoked_at: string | null
  revoked_by: string | null
}

/** An address that is told of what is new. */
export interface WebhooksTable {
  practice: string
  id: string
  url: string
  /** JSON list of events. */
  events: string
  /** Signs what is sent: 256 random bits, base64url. Needed at every delivery, so it is kept as it is. */
  secret: string
  /** on, off (by a person), disabled (after many failures), removed. */
  state: string
  /** Failed attempts in a row. */
  failures: number
  /** Nothing is sent before this instant. */
  paused_until: string | null
  created_at: string
  created_by: string
  changed_at: string
  /** Who brought it into its state; null for the program. */
  changed_by: string | null
}

export interface WebhookDeliveriesTable {
  practice: string
  /** What the receiver knows it by, the same at every attempt. */
  id: string
  /** 1, 2, 3 ... within the practice: the order in which things are told. */
  position: number
  webhook: string
  /** What it is about: the same is told to one address once. */
  key: string
  event: string
  /** Null for what is about no child. */
  child: string | null
  /** JSON as it is sent. */
  body: string
  state: string
  attempts: number
  next_attempt_at: string | null
  /** The last answer's HTTP status. */
  status: number | null
  /** Why it is in its state, as a word of `DELIVERY_PROBLEMS`. */
  problem: string | null
  created_at: string
  changed_at: string
  changed_by: string | null
}

/** What was last told of a child; of the practice itself under the practice's id. */
export interface WebhookToldTable {
  practice: string
  child: string
  /** What it was read from: the same again need not be read. */
  read_from: string
  /** JSON. */
  told: string
}
