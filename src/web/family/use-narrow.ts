import { useSyncExternalStore } from "react"

/** Below this, px, a figure drawn for a wide page would be shrunk until its words cannot be read. */
const NARROW_PX = 700

/** Whether the page is as narrow as a phone's. Not asked of a media query, which would change while the page is printed. */
export const useNarrow = (): boolean =>
  useSyncExternalStore(onResize, () => document.documentElement.clientWidth < NARROW_PX)

function onResize(changed: () => void): () => void {
  addEventListener("resize", changed)
  return () => removeEventListener("resize", changed)
}
