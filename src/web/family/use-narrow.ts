import { useSyncExternalStore } from "react"

/** Below this, px, a figure drawn for a wide page would be shrunk until its words cannot be read. */
const NARROW_PX = 700
const SETTLED_MS = 250

/** Whether the page is as narrow as a phone's. Not asked of a media query, which would change while the page is printed. */
export const useNarrow = (): boolean =>
  useSyncExternalStore(onResize, () => document.documentElement.clientWidth < NARROW_PX)

/** Told once the width has settled: a window that is dragged would ask for the figures again and again. */
function onResize(changed: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined
  const later = () => {
    clearTimeout(timer)
    timer = setTimeout(changed, SETTLED_MS)
  }
  addEventListener("resize", later)
  return () => {
    clearTimeout(timer)
    removeEventListener("resize", later)
  }
}
