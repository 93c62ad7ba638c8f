import { lookup as systemLookup } from "node:dns/promises"
import { BlockList, isIP } from "node:net"

/**
 * IPv4 ranges that lead into a network, back to this machine or nowhere (RFC 6890): a webhook must not become a way for
 * whoever types an address to ask what only this server can reach.
 */
const NOT_PUBLIC_4 = [
  ["0.0.0.0", 8],
  ["10.0.0.0", 8],
  ["100.64.0.0", 10],
  ["127.0.0.0", 8],
  ["169.254.0.0", 16],
  ["172.16.0.0", 12],
  ["192.0.0.0", 24],
  ["192.0.2.0", 24],
  ["192.88.99.0", 24],
  ["192.168.0.0", 16],
  ["198.18.0.0", 15],
  ["198.51.100.0", 24],
  ["203.0.113.0", 24],
  ["224.0.0.0", 4],
  ["240.0.0.0", 4],
] as const

/** Of IPv6 only global unicast is let through, without the parts of it that wrap another address or are for documents. */
const PUBLIC_6 = ["2000::", 3] as const
const NOT_PUBLIC_6 = [
  ["2001::", 23],
  ["2001:db8::", 32],
  ["2002::", 16],
  ["3fff::", 20],
] as const

const closed = new BlockList()
for (const [network, prefix] of NOT_PUBLIC_4) closed.addSubnet(network, prefix, "ipv4")
for (const [network, prefix] of NOT_PUBLIC_6) closed.addSubnet(network, prefix, "ipv6")
const globalUnicast = new BlockList()
globalUnicast.addSubnet(...PUBLIC_6, "ipv6")
const loopback = new BlockList()
loopback.addSubnet("127.0.0.0", 8, "ipv4")
loopback.addAddress("::1", "ipv6")

/**
 * Whether an IP address is one of the internet's.
 *
 * @example
 * isPublicAddress("192.168.1.10") // => false
 */
export function isPublicAddress(address: string): boolean {
  const family = isIP(address)
  if (family === 4) return !closed.check(address, "ipv4")
  return family === 6 && globalUnicast.check(address, "ipv6") && !closed.check(address, "ipv6")
}

export function isLoopbackAddress(address: string): boolean {
  const family = isIP(address)
  return family !== 0 && loopback.check(address, family === 4 ? "ipv4" : "ipv6")
}

/** The host of a URL without the brackets of IPv6. */
export const hostOf = ({ hostname }: URL): string => hostname.replace(/^\[(.*)\]$/, "$1")

/** Whether a URL names this machine itself, not merely a name that leads here. */
export function namesThisMachine(url: URL): boolean {
  const host = hostOf(url)
  return host === "localhost" || isLoopbackAddress(host)
}

export interface Address {
  readonly address: string
  readonly family: number
}

export type Resolve = (host: string) => Promise<readonly Address[]>

const resolveBySystem: Resolve = (host) => systemLookup(host, { all: true })

/** A name that leads where nothing is sent. */
export class AddressRefused extends Error {
  override readonly name = "AddressRefused"
}

/**
 * Where a URL leads: every address of its name, looked up now. One that is not the internet's refuses the whole name, so
 * that a name with two faces cannot choose the other at the next look. This machine is allowed only when `loopback` is
 * and the URL names it openly.
 */
export async function addressesOf(
  url: URL,
  {
    loopback: isAllowed,
    resolve = resolveBySystem,
  }: { readonly loopback: boolean; readonly resolve?: Resolve },
): Promise<readonly Address[]> {
  const host = hostOf(url)
  const family = isIP(host)
  const addresses = family === 0 ? await resolve(host) : [{ address: host, family }]
  const isFine = ({ address }: Address) =>
    isPublicAddress(address) || (isAllowed && namesThisMachine(url) && isLoopbackAddress(address))
  const wrong = addresses.find((address) => !isFine(address))
  if (wrong) throw new AddressRefused(`${host} leads to ${wrong.address}`)
  if (addresses.length === 0) throw new Error(`${host} has no address`)
  return addresses
}
