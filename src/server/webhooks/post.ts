import { request as httpRequest, type IncomingMessage } from "node:http"
import { request as httpsRequest } from "node:https"
import type { LookupFunction } from "node:net"
import type { DeliveryProblem } from "../../engine/access/webhook-events.js"
import { type Address, AddressRefused, addressesOf, hostOf, type Resolve } from "./addresses.js"

/** What became of one attempt. */
export type Posted =
  | { readonly kind: "accepted"; readonly status: number }
  | { readonly kind: "failed"; readonly problem: DeliveryProblem; readonly status?: number }

export interface PostOptions {
  readonly url: string
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
  /** Whether this machine itself may be named. */
  readonly loopback: boolean
  readonly timeoutMs?: number
  readonly resolve?: Resolve
  readonly signal?: AbortSignal
}

const TIMEOUT_MS = 10_000
/** An answer is read this far and no further: only its status is of interest. */
const READ_AT_MOST_BYTES = 4096

/**
 * Posts a body to an address of the internet. The name is looked up once and the connection goes to what was found and
 * looked at; redirects are not followed. Never throws: whatever went wrong is an outcome.
 */
export async function post(options: PostOptions): Promise<Posted> {
  const { timeoutMs = TIMEOUT_MS } = options
  const timeout = AbortSignal.timeout(timeoutMs)
  const signal = options.signal ? AbortSignal.any([timeout, options.signal]) : timeout
  try {
    const url = new URL(options.url)
    const { loopback, resolve } = options
    const addresses = await beforeAbort(
      addressesOf(url, { loopback, ...(resolve ? { resolve } : {}) }),
      signal,
    )
    return ofStatus(await answeredStatus(url, { ...options, addresses, signal }))
  } catch (error) {
    return { kind: "failed", problem: timeout.aborted ? "timeout" : problemOf(error) }
  }
}

function answeredStatus(
  url: URL,
  asked: PostOptions & { readonly addresses: readonly Address[]; readonly signal: AbortSignal },
): Promise<number> {
  const { headers, body, addresses, signal } = asked
  const send = url.protocol === "https:" ? httpsRequest : httpRequest
  return new Promise((resolve, reject) => {
    const request = send(
      {
        method: "POST",
        protocol: url.protocol,
        host: hostOf(url),
        port: url.port,
        path: url.pathname + url.search,
        headers: {
          ...headers,
          host: url.host,
          "content-type": "application/json",
          "content-length": Buffer.byteLength(body),
          "user-agent": "Lengthwise",
        },
        // A connection of its own: nothing of one receiver is kept open for another.
        agent: false,
        lookup: onlyTo(addresses),
        rejectUnauthorized: true,
        signal,
      },
      (answer) => drained(answer).then(() => resolve(answer.statusCode ?? 0), reject),
    )
    request.on("error", reject)
    request.end(body)
  })
}

/** Reads an answer to its end or to the limit, whichever comes first, and keeps nothing of it. */
function drained(answer: IncomingMessage): Promise<void> {
  return new Promise((resolve, reject) => {
    let bytes = 0
    answer.on("data", (chunk: Buffer) => {
      bytes += chunk.length
      if (bytes < READ_AT_MOST_BYTES) return
      resolve()
      answer.destroy()
    })
    answer.on("end", resolve)
    answer.on("error", reject)
  })
}

/** Stands in for the name service: the answer is what was looked at before. */
function onlyTo(addresses: readonly Address[]): LookupFunction {
  return (_host, { all }, callback) => {
    const [first] = addresses
    if (all) callback(null, [...addresses])
    else callback(null, first?.address ?? "", first?.family ?? 4)
  }
}

function beforeAbort<T>(task: Promise<T>, signal: AbortSignal): Promise<T> {
  return Promise.race([
    task,
    new Promise<never>((_, reject) => {
      signal.addEventListener("abort", () => reject(signal.reason), { once: true })
    }),
  ])
}

function ofStatus(status: number): Posted {
  if (status >= 200 && status < 300) return { kind: "accepted", status }
  const isRedirect = status >= 300 && status < 400
  return { kind: "failed", problem: isRedirect ? "redirect" : "status", status }
}

function problemOf(error: unknown): DeliveryProblem {
  if (error instanceof AddressRefused) return "private-address"
  const { code = "" } = error as { readonly code?: string }
  const isCertificate = /^(CERT_|ERR_TLS|ERR_SSL|DEPTH_ZERO|SELF_SIGNED|UNABLE_TO_|HOSTNAME_|EPROTO)/.test(
    code,
  )
  return isCertificate ? "tls" : "unreachable"
}
