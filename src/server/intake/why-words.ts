import { figureName } from "../../engine/figure-names.js"
import { say } from "../../engine/say.js"
import type { InboxItem } from "../../record/index.js"
import type { InboxWhy } from "../contract/inbox-words.js"
import { contradictionsOf, type Plan } from "./plan.js"

/** Why an object waits, in words for who sent it. */
export function whyWords(why: InboxWhy, plan: Plan | null = null): string {
  switch (why) {
    case "no-child":
      return say("no child of this practice is named so")
    case "near-child":
      return say("a child is like it but not the same in everything")
    case "contradiction": {
      const paths = plan
        ? contradictionsOf(plan).map(({ date, path }) => `${figureName(path)} (${date})`)
        : []
      return paths.length === 0
        ? say("something is recorded otherwise")
        : say("recorded otherwise: {figures}", { figures: paths.join(", ") })
    }
    case "rules": {
      const [first] = plan?.problems ?? []
      return first?.message ?? say("something in it is outside of what can be recorded")
    }
    case "confirm":
      return say("it holds more than measurements, such as treatments or consents: a person has to take it")
    case "other-content":
      return say("the same object came before with other content")
    case "undone":
      return say("it was taken back")
  }
}

/** What is said of an object that is there already. */
export function knownWords({ state }: Pick<InboxItem, "state">): string {
  switch (state) {
    case "taken":
      return say("received before; it is recorded")
    case "waiting":
      return say("received before; it waits in the Inbox")
    case "set-aside":
      return say("received before; it was set aside")
  }
}
