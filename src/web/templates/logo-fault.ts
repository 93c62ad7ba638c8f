import { say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"

export const LOGO_TYPES = ["image/png", "image/jpeg"] as const
const LARGEST_LOGO_BYTES = 1_000_000

/** What is wrong with a picture for the letterhead, in words; null when nothing is. It is not even sent then. */
export function logoFault({ name, type, size }: Pick<File, "name" | "type" | "size">): string | null {
  if (!(LOGO_TYPES as readonly string[]).includes(type)) {
    return say("must be a PNG or JPEG; {name} is neither", { name })
  }
  if (size === 0) return say("must be a file that is not empty")
  if (size > LARGEST_LOGO_BYTES) {
    // Up, so that a file a little too large is not said to have what is allowed.
    const megabytes = inDigits(Math.ceil(size / 100_000) / 10)
    return say("must be at most 1 MB; {name} has {megabytes} MB", { name, megabytes })
  }
  return null
}
