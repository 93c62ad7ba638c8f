import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Navigate,
} from "@tanstack/react-router"
import { type InboxSearch, inboxSearch } from "./inbox/inbox-search.js"
import { type MessagesSearch, messagesSearch } from "./messages/messages-search.js"
import { ChildPage } from "./pages/child-page.js"
import { FailedPage } from "./pages/failed-page.js"
import { NotFoundPage } from "./pages/not-found-page.js"
import { Frame } from "./papers/frame.js"
import { Waiting } from "./parts/waiting.js"
import { type TodaySearch, todaySearch } from "./today/today-search.js"

const root = createRootRoute({ component: Frame, notFoundComponent: NotFoundPage })

const home = createRoute({
  getParentRoute: () => root,
  path: "/",
  component: () => <Navigate to="/today" replace />,
})

const TodayPage = lazyRouteComponent(() => import("./today/today-page.js"), "TodayPage")

const today = createRoute({
  getParentRoute: () => root,
  path: "/today",
  validateSearch: (search: Record<string, unknown>): TodaySearch => todaySearch(search),
  component: function Today() {
    return <TodayPage asked={today.useSearch()} />
  },
})

// The child page is what must be quick; what it does not need is loaded when it is wanted.
const ChildrenPage = lazyRouteComponent(() => import("./pages/children-page.js"), "ChildrenPage")

const children = createRoute({
  getParentRoute: () => root,
  path: "/children",
  validateSearch: (search: Record<string, unknown>): { search?: string; page?: number } => ({
    // A practice's number for a child comes out of the address as a number.
    ...(search.search === undefined || search.search === "" ? {} : { search: String(search.search) }),
    ...(typeof search.page === "number" && search.page > 1 ? { page: Math.floor(search.page) } : {}),
  }),
  component: function Children() {
    const { search = "", page = 1 } = children.useSearch()
    return <ChildrenPage search={search} page={page} />
  },
})

const MessagesPage = lazyRouteComponent(() => import("./messages/messages-page.js"), "MessagesPage")

const messages = createRoute({
  getParentRoute: () => root,
  path: "/messages",
  validateSearch: (search: Record<string, unknown>): MessagesSearch => messagesSearch(search),
  component: function Messages() {
    return <MessagesPage asked={messages.useSearch()} />
  },
})

const InboxPage = lazyRouteComponent(() => import("./inbox/inbox-page.js"), "InboxPage")

const inbox = createRoute({
  getParentRoute: () => root,
  path: "/inbox",
  validateSearch: (search: Record<string, unknown>): InboxSearch => inboxSearch(search),
  component: function Inbox() {
    return <InboxPage asked={inbox.useSearch()} />
  },
})

const InboxItemPage = lazyRouteComponent(() => import("./inbox/inbox-item-page.js"), "InboxItemPage")

const inboxItem = createRoute({
  getParentRoute: () => root,
  path: "/inbox/$itemId",
  component: function InboxItem() {
    const { itemId } = inboxItem.useParams()
    return <InboxItemPage key={itemId} itemId={itemId} />
  },
})

const child = createRoute({
  getParentRoute: () => root,
  path: "/children/$childId",
  component: function Child() {
    const { childId } = child.useParams()
    return <ChildPage key={childId} childId={childId} />
  },
})

const VisitPage = lazyRouteComponent(() => import("./visit/visit-page.js"), "VisitPage")

const visit = createRoute({
  getParentRoute: () => root,
  path: "/children/$childId/visit",
  validateSearch: (search: Record<string, unknown>): { corrects?: string } =>
    typeof search.corrects === "string" ? { corrects: search.corrects } : {},
  component: function Visit() {
    const { childId } = visit.useParams()
    const { corrects } = visit.useSearch()
    return <VisitPage key={`${childId} ${corrects}`} childId={childId} corrects={corrects} />
  },
})

const ChildPartPage = lazyRouteComponent(() => import("./pages/child-part-page.js"), "ChildPartPage")

const childPart = createRoute({
  getParentRoute: () => root,
  path: "/children/$childId/$part",
  component: function ChildPart() {
    const { childId, part } = childPart.useParams()
    return <ChildPartPage key={`${childId} ${part}`} childId={childId} name={part} />
  },
})

const FamilyScreen = lazyRouteComponent(() => import("./papers/family-screen.js"), "FamilyScreen")

const family = createRoute({
  getParentRoute: () => root,
  path: "/children/$childId/family",
  component: function Family() {
    const { childId } = family.useParams()
    return <FamilyScreen key={childId} childId={childId} />
  },
})

const ImportPage = lazyRouteComponent(() => import("./import/import-page.js"), "ImportPage")

const importTable = createRoute({
  getParentRoute: () => root,
  path: "/import",
  component: function ImportTable() {
    return <ImportPage />
  },
})

const SettingsPage = lazyRouteComponent(() => import("./settings/settings-page.js"), "SettingsPage")

const settings = createRoute({
  getParentRoute: () => root,
  path: "/settings/$part",
  component: function Settings() {
    const { part } = settings.useParams()
    return <SettingsPage key={part} name={part} />
  },
})

export const router = createRouter({
  routeTree: root.addChildren([
    inbox,
    inboxItem,
    importTable,
    home,
    today,
    children,
    messages,
    child,
    visit,
    family,
    childPart,
    settings,
  ]),
  defaultPreload: "intent",
  scrollRestoration: true,
  defaultErrorComponent: FailedPage,
  // The page that is left stays in view for a moment while the next one is fetched, and then says so.
  defaultPendingMs: 300,
  defaultPendingMinMs: 0,
  defaultPendingComponent: () => <Waiting for="the page" />,
})

declare module "@tanstack/react-router" {
  interface Register {
    router: typeof router
  }
}
