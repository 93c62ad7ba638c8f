/** The server can't start for a reason outside of it, told in words its operator can act on. */
export class ServerStartError extends Error {
  override readonly name = "ServerStartError"
}
