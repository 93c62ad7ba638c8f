import { useEffect, useState } from "react"
import { say } from "../../engine/say.js"

/** A wait shorter than this is not worth a word, ms: text that comes and goes at once only flickers. */
const MOMENT_MS = 300

/** True once `waiting` has held for longer than a moment. */
export function useLate(waiting: boolean): boolean {
  const [late, setLate] = useState(false)
  useEffect(() => {
    setLate(false)
    if (!waiting) return
    const timer = setTimeout(() => setLate(true), MOMENT_MS)
    return () => clearTimeout(timer)
  }, [waiting])
  return late && waiting
}

/** Stands where something will be, and says so when it does not come within a moment. */
export function Waiting({ for: what }: { readonly for: string }) {
  const late = useLate(true)
  return (
    <p className="soft waiting" role="status">
      {late && say("Reading {what} …", { what })}
    </p>
  )
}
