import { useEffect, useState } from "react"

const NARROWEST = 320

/** The width a figure has to live in, in whole px, as the page is resized. */
export function useWidth(box: { readonly current: HTMLElement | null }): number {
  const [width, setWidth] = useState(800)
  useEffect(() => {
    const element = box.current
    if (!element) return
    const measure = () => setWidth(Math.max(NARROWEST, Math.floor(element.clientWidth)))
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    return () => observer.disconnect()
  }, [box])
  return width
}
