import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const inbox: Catalogue = {
  "one file says {first}, another {second}; the first was kept":
    "un archivo dice {first}, otro {second}; se conservó el primero",
}
