import { Link } from "@tanstack/react-router"
import { PageHeading } from "../parts/page-heading.js"

export function NotFoundPage() {
  return (
    <>
      <PageHeading title="There is no such page" />
      <p>
        <Link to="/children">To the children</Link>
      </p>
    </>
  )
}
