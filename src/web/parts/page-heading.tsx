import { type ReactNode, useEffect, useRef } from "react"

let firstPage = true

/**
 * The heading of a page. Names the window, and takes the focus when the page was reached from another one, so that
 * a screen reader says where it is and the Tab key starts at the top.
 */
export function PageHeading({ title, children }: { readonly title: string; readonly children?: ReactNode }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    document.title = `${title} · Lengthwise`
  }, [title])
  useEffect(() => {
    if (!firstPage) heading.current?.focus({ preventScroll: true })
    firstPage = false
  }, [])
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children ?? title}
    </h1>
  )
}
