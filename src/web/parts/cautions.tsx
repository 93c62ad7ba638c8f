import { say } from "../../engine/say.js"

/** Said on every page (design, section 8). */
export function Cautions() {
  return (
    <footer className="foot">
      <p>
        {say(
          "Not a medical device. It supports and never replaces a licensed clinician's judgement; local law, product licences and the pharmacist decide, and off-label use needs consent. Drops are poisonous when swallowed: keep them from children, and know your poison centre's number. Flashes, floaters, a curtain, pain or sudden loss of vision: same-day care.",
        )}
      </p>
    </footer>
  )
}
