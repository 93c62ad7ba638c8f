import { useEffect, useRef } from "react"

/** What was recorded just now. It comes into view by itself: what was pressed may stand far below it. */
export function Notice({ message }: { readonly message: string | null }) {
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (message) place.current?.scrollIntoView({ block: "nearest" })
  }, [message])
  return (
    <div className="notice-place" role="status" ref={place}>
      {message && <p className="notice">{message}</p>}
    </div>
  )
}
