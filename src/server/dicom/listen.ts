import { createServer, type Server, type Socket } from "node:net"
import { createServer as createTlsServer } from "node:tls"
import type { LISTENER_PROBLEMS } from "../contract/instruments.js"
import { plainAddress } from "./admission.js"
import { type Conversation, converse } from "./conversation.js"
import type { ReceiverParts } from "./parts.js"

export interface Keys {
  readonly certificate: string
  readonly key: string
}

export interface Listening {
  readonly port: number
  /** Takes no more callers; those who are being heard go on. */
  readonly stop: () => void
  /** Ends every conversation as well, after the object that it is storing. */
  readonly close: () => Promise<void>
}

export type ListenerProblem = (typeof LISTENER_PROBLEMS)[number]

/** The receiver can't listen where it is asked to. */
export class CannotListen extends Error {
  override readonly name = "CannotListen"
  constructor(
    readonly problem: ListenerProblem,
    options: ErrorOptions,
  ) {
    super(problem, options)
  }
}

const PROBLEMS: Readonly<Record<string, ListenerProblem>> = {
  EADDRINUSE: "port-taken",
  EACCES: "port-not-allowed",
  EADDRNOTAVAIL: "address-not-here",
}

/** Listens for senders, with TLS 1.2 or later where there are a certificate and its key. */
export async function listen(
  { host, port, keys }: { readonly host: string; readonly port: number; readonly keys: Keys | null },
  parts: ReceiverParts,
): Promise<Listening> {
  const conversations = new Set<Conversation>()
  const heard = (socket: Socket) => {
    socket.setNoDelay(true)
    // A broken connection ends its conversation; without a listener it would end the process.
    socket.on("error", () => socket.destroy())
    const conversation = converse(socket, parts)
    conversations.add(conversation)
    conversation.ended.finally(() => conversations.delete(conversation))
  }
  const refused = (refusal: "no-tls" | "too-many-connections", address: string) =>
    parts.log.add({
      title: "",
      address: plainAddress(address),
      what: "",
      outcome: "refused",
      refusal,
      why: null,
    })
  const server: Server = keys
    ? createTlsServer(
        {
          cert: keys.certificate,
          key: keys.key,
          minVersion: "TLSv1.2",
          handshakeTimeout: parts.limits.requestMs,
        },
        heard,
      ).on("tlsClientError", (_error, socket) => {
        refused("no-tls", socket.remoteAddress ?? "")
        socket.destroy()
      })
    : createServer(heard)
  server.maxConnections = parts.limits.connections
  server.on("drop", (data) => refused("too-many-connections", data?.remoteAddress ?? ""))
  await new Promise<void>((resolve, reject) => {
    server.once("error", (cause: NodeJS.ErrnoException) =>
      reject(new CannotListen(PROBLEMS[cause.code ?? ""] ?? "other", { cause })),
    )
    server.listen({ host, port }, resolve)
  })
  const at = server.address()
  return {
    port: typeof at === "object" && at ? at.port : port,
    stop: () => void server.close(),
    close: async () => {
      server.close()
      await Promise.all([...conversations].map((conversation) => conversation.end()))
    },
  }
}
