import type { ChangeEvent } from "react"
import { say } from "../../engine/say.js"
import { fixed } from "../../engine/words.js"
import {
  FILE_TYPES,
  type FileType,
  LARGEST_FILE_BYTES,
  SCAN_TYPES,
} from "../../server/contract/file-types.js"
import { Field } from "../parts/field.js"

const ALLOWED = SCAN_TYPES.map((type) => FILE_TYPES[type].name).join(", ")
const LARGEST = `${LARGEST_FILE_BYTES / 1_000_000} MB`

/** What is wrong with a file chosen as a scan, as "must be ..." goes on; null when nothing is. */
export function scanFault(file: File | null): string | null {
  if (file === null) return say("must be a file: {types}", { types: ALLOWED })
  if (!(SCAN_TYPES as readonly string[]).includes(file.type))
    return say("must be {types}; {name} is none of them", { types: ALLOWED, name: file.name })
  if (file.size === 0) return say("must be a file that is not empty")
  if (file.size > LARGEST_FILE_BYTES)
    return say("must be at most {most}; {name} has {size} MB", {
      most: LARGEST,
      name: file.name,
      size: fixed(file.size / 1_000_000, 1),
    })
  return null
}

export const typeOfScan = (file: File): FileType => file.type as FileType

/** The scan or photograph of the signed paper. */
export function ScanField(props: {
  readonly fault: string | undefined
  readonly onChange: (file: File | null) => void
}) {
  return (
    <Field
      label={say("Scan of the signed paper")}
      note={say("{types}; at most {most}.", { types: ALLOWED, most: LARGEST })}
      fault={props.fault}
    >
      {(control) => (
        <input
          {...control}
          type="file"
          accept={SCAN_TYPES.join(",")}
          onChange={(event: ChangeEvent<HTMLInputElement>) => props.onChange(event.target.files?.[0] ?? null)}
        />
      )}
    </Field>
  )
}
