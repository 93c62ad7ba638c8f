import { useEffect, useState } from "react"

/** A value once it has not changed for a moment, so that typing asks the server once and not at every key. */
export function useSettled<T>(value: T, afterMs = 400): T {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), afterMs)
    return () => clearTimeout(timer)
  }, [value, afterMs])
  return settled
}
