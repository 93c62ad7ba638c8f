import { useEffect } from "react"

/** "/" takes the typist to the search, unless something is being typed already. */
export function useSlashFocuses(box: { readonly current: HTMLInputElement | null }) {
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      const typing = (event.target as HTMLElement).closest("input, select, textarea, dialog")
      if (event.key !== "/" || typing || event.ctrlKey || event.metaKey || event.altKey) return
      event.preventDefault()
      box.current?.focus()
      box.current?.select()
    }
    document.addEventListener("keydown", onKey)
    return () => document.removeEventListener("keydown", onKey)
  }, [box])
}
