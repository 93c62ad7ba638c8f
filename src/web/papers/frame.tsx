import { Outlet, useLocation } from "@tanstack/react-router"
import { Shell } from "../parts/shell.js"
import { useSession } from "../queries.js"

/** What stands around a page: the practice's menu, or nothing where the screen is turned round to a family. */
export function Frame() {
  const isForFamily = useLocation({
    select: ({ pathname }) => /^\/children\/[^/]+\/family\/?$/.test(pathname),
  })
  const session = useSession()
  return isForFamily && session.data ? <Outlet /> : <Shell />
}
