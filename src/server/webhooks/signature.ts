import { createHmac } from "node:crypto"

/** Seconds since 1970, signed along: a receiver refuses what is too old, so that nothing overheard can be sent again. */
const TIMESTAMP_HEADER = "lengthwise-timestamp"
const SIGNATURE_HEADER = "lengthwise-signature"

/**
 * What shows that a body comes from here: HMAC-SHA-256 (RFC 2104) of the timestamp, a full stop and the body, by the
 * secret as it was shown, in lower-case hex.
 *
 * @example
 * signedHeaders({ secret: "s", body: "{}", nowMs: 0 })["lengthwise-timestamp"] // => "0"
 */
export function signedHeaders({
  secret,
  body,
  nowMs,
}: {
  readonly secret: string
  readonly body: string
  readonly nowMs: number
}) {
  const timestamp = String(Math.floor(nowMs / 1000))
  const signature = createHmac("sha256", secret).update(`${timestamp}.${body}`).digest("hex")
  return { [TIMESTAMP_HEADER]: timestamp, [SIGNATURE_HEADER]: `sha256=${signature}` }
}
