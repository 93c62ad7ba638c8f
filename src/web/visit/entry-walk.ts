/** Moves from one entry of a form to the next, in the order of the page; after the last, to the button that saves. */
export function focusNextEntry(from: HTMLElement): void {
  const form = from.closest("form")
  const entries = [...(form?.querySelectorAll<HTMLElement>("[data-entry]") ?? [])]
  const next = entries.find(
    (entry) =>
      from.compareDocumentPosition(entry) & Node.DOCUMENT_POSITION_FOLLOWING && !isOfSameChoice(from, entry),
  )
  ;(next ?? form?.querySelector<HTMLElement>("button.primary"))?.focus()
}

/** The first entry of an item of the plan that is still empty, else its first. */
export function focusEntry(form: HTMLElement | null, id: string): void {
  const entries = [...(form?.querySelectorAll<HTMLElement>(`[data-entry="${id}"]`) ?? [])]
  const empty = entries.find((entry) => "value" in entry && entry.value === "")
  ;(empty ?? entries[0])?.focus()
}

const isOfSameChoice = (from: HTMLElement, entry: HTMLElement): boolean =>
  from instanceof HTMLInputElement &&
  entry instanceof HTMLInputElement &&
  from.type === "radio" &&
  entry.type === "radio" &&
  from.name === entry.name
