import type { ReactNode } from "react"
import { say } from "../../engine/say.js"

/** The pages of a long list; nothing where it has only one. `link` makes the link to a page under its words. */
export function PageLinks({
  page,
  pages,
  link,
}: {
  readonly page: number
  readonly pages: number
  readonly link: (to: { readonly page: number; readonly words: string }) => ReactNode
}) {
  if (pages <= 1) return null
  return (
    <nav className="pages" aria-label={say("Pages of the list")}>
      {page > 1 && link({ page: page - 1, words: say("Before") })}
      <span className="soft">{say("page {page} of {pages}", { page, pages })}</span>
      {page < pages && link({ page: page + 1, words: say("Next") })}
    </nav>
  )
}
