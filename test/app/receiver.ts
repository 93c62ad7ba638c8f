import { createServer, type IncomingHttpHeaders, type Server, type ServerResponse } from "node:http"
import type { AddressInfo } from "node:net"

export interface Received {
  readonly headers: IncomingHttpHeaders
  readonly body: string
}

/** What a program that is told of news does with it; answers 204 unless told otherwise. */
export type Answering = (response: ServerResponse, received: Received) => void

export interface Receiver {
  readonly url: string
  readonly received: readonly Received[]
  answer: Answering
  readonly close: () => Promise<void>
}

export const accept: Answering = (response) => response.writeHead(204).end()

/** A real HTTP server on this machine. */
export async function receiver(options: { readonly server?: Server; readonly scheme?: string } = {}) {
  const { server = createServer(), scheme = "http" } = options
  const received: Received[] = []
  const self: { answer: Answering } = { answer: accept }
  server.on("request", (request, response: ServerResponse) => {
    let body = ""
    request.on("data", (chunk: Buffer) => {
      body += chunk.toString()
    })
    request.on("end", () => {
      const each = { headers: request.headers, body }
      received.push(each)
      self.answer(response, each)
    })
  })
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve))
  const { port } = server.address() as AddressInfo
  return Object.assign(self, {
    url: `${scheme}://127.0.0.1:${port}/news?from=lengthwise`,
    received,
    close: () =>
      new Promise<void>((resolve) => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  }) satisfies Receiver
}
