import "./connections/connections.css"
import { say } from "../../engine/say.js"
import { DeliveryList } from "./connections/delivery-list.js"
import { TokenList } from "./connections/token-list.js"
import { WebhookList } from "./connections/webhook-list.js"
import type { SettingsPartProps } from "./settings-part-props.js"

/** Other programs of the practice: what lets them in, and what they are told. */
export function ConnectionsPart({ onDone }: SettingsPartProps) {
  return (
    <div className="connections">
      <p className="soft">
        {say("Other programs of the practice: what lets them in, and what they are told.")}{" "}
        <a href="/api/openapi.json">{say("Description of the interface (OpenAPI)")}</a>
      </p>
      <TokenList onDone={onDone} />
      <WebhookList onDone={onDone} />
      <DeliveryList onDone={onDone} />
    </div>
  )
}
