import { Link } from "@tanstack/react-router"
import { say } from "../../engine/say.js"
import { CHILD_PARTS } from "./child-parts.js"

/** The parts of a child's page, the course first. */
export function ChildTabs({ childId }: { readonly childId: string }) {
  const parts = Object.entries(CHILD_PARTS)
  if (parts.length === 0) return null
  return (
    <nav className="tabs" aria-label={say("Parts of the child’s page")}>
      <Link
        to="/children/$childId"
        params={{ childId }}
        activeOptions={{ exact: true }}
        activeProps={{ "aria-current": "page" }}
      >
        {say("Course")}
      </Link>
      {parts.map(([name, { title }]) => (
        <Link
          key={name}
          to="/children/$childId/$part"
          params={{ childId, part: name }}
          activeProps={{ "aria-current": "page" }}
        >
          {say(title)}
        </Link>
      ))}
    </nav>
  )
}
