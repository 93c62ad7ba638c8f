import { readFileSync } from "node:fs"
import { createSecureContext } from "node:tls"
import type { ListenerAnswer } from "../contract/instruments.js"
import { ServerStartError } from "../server-start-error.js"
import { isLoopback } from "./admission.js"
import type { Keys } from "./listen.js"
import type { InstrumentReceiver } from "./receiver.js"

/** The certificate and its key, read and tried once at the start; null where neither was named. */
export function receiverKeys(
  named: { readonly certificate?: string | undefined; readonly key?: string | undefined } | undefined,
): Keys | null {
  if (!named?.certificate && !named?.key) return null
  if (!named.certificate || !named.key)
    throw new ServerStartError(
      "DICOM over TLS needs both --dicom-cert and --dicom-key; one of them is missing",
    )
  const keys = { certificate: textOf(named.certificate), key: textOf(named.key) }
  try {
    createSecureContext({ cert: keys.certificate, key: keys.key })
  } catch (cause) {
    throw new ServerStartError(
      `--dicom-cert and --dicom-key must be a certificate and its key, both PEM; ${named.certificate} and ${named.key} are not`,
      { cause },
    )
  }
  return keys
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8")
  } catch (cause) {
    throw new ServerStartError(`the file ${file} of DICOM over TLS cannot be read`, { cause })
  }
}

/** Starts the receiver. A port that was named at the start and can't be had stops it; one of the settings does not. */
export async function startReceiver(
  receiver: InstrumentReceiver,
  {
    host,
    port,
    keys,
  }: { readonly host: string; readonly port?: number | undefined; readonly keys: Keys | null },
): Promise<ListenerAnswer> {
  const listener = await receiver.start({
    host,
    port,
    keys,
    write: (line) => process.stderr.write(`${line}\n`),
  })
  if (listener.state === "failed" && port !== undefined)
    throw new ServerStartError(`port ${port} of ${host} cannot be had for instruments; choose another`)
  return listener
}

/** What is told of the receiver at the start; nothing where nobody asked for it. */
export function receiverGreeting(listener: ListenerAnswer): readonly string[] {
  const { state, host, port, title, isTls, isSet, isOpenToThisMachine, isPortFromStart } = listener
  if (state === "unset" || state === "stopped") return []
  if (state === "off")
    return isPortFromStart ? ["Receiving from instruments is turned off in Settings, Instruments."] : []
  if (state === "failed")
    return [`Port ${port} of ${host} cannot be had for instruments; see Settings, Instruments.`]
  const where = `${host.includes(":") ? `[${host}]` : host}:${port}`
  return [
    `Receives from instruments as ${title} at ${where}${isTls ? " (TLS)" : ""}`,
    ...(isOpenToThisMachine
      ? [
          "Any title of this machine may send until Settings, Instruments says which may; programs of other machines are refused.",
        ]
      : []),
    ...(isSet || isOpenToThisMachine
      ? []
      : ["Nobody may send until Settings, Instruments says which titles may."]),
    ...(isTls || isLoopback(host)
      ? []
      : [
          "Caution: what instruments send crosses the network unencrypted; name --dicom-cert and --dicom-key, or keep it to a network of its own.",
        ]),
  ]
}
