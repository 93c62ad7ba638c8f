import { Fragment, type ReactNode } from "react"
import { sayParts } from "../../engine/say.js"

/** A message with more than text in it: `<Said message="Read {link} first" values={{ link: <a …/> }} />`. */
export function Said({
  message,
  values,
}: {
  readonly message: string
  readonly values: Readonly<Record<string, ReactNode>>
}) {
  const parts = sayParts<ReactNode>(
    message,
    values as Readonly<Record<string, Exclude<ReactNode, undefined>>>,
  )
  return parts.map((part, place) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a sentence have their place and nothing else
    <Fragment key={place}>{part}</Fragment>
  ))
}
