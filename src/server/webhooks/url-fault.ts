import { isIP } from "node:net"
import { say } from "../../engine/say.js"
import { hostOf, isPublicAddress, namesThisMachine } from "./addresses.js"

/**
 * What an address must be, in words that stand after "must be"; null when it is fine as it stands. Where its name leads is
 * looked at again before everything that is sent.
 *
 * @example
 * urlFault("https://program.example/news", { loopback: false }) // => null
 */
export function urlFault(text: string, { loopback }: { readonly loopback: boolean }): string | null {
  const url = URL.canParse(text) ? new URL(text) : null
  const isWeb = url?.protocol === "https:" || url?.protocol === "http:"
  if (!url || !isWeb) return say("an address such as https://program.example/news")
  if (url.username || url.password) return say("an address without a name and password in it")
  if (url.hash) return say("an address without a # part")
  if (namesThisMachine(url))
    return loopback
      ? null
      : say("an address of another machine, since this server is open to others than this machine")
  if (url.protocol === "http:")
    return say("an address that begins with https, since it is not on this machine")
  const host = hostOf(url)
  if (isIP(host) !== 0 && !isPublicAddress(host))
    return say("an address of the internet, not of a network inside")
  return null
}
