import { deepFreeze } from "./freeze.js"
import { citations } from "./generated/citations.js"
import type { Source } from "./types.js"

// Made when first asked for: nothing runs on import, so that a bundle can load the citations apart.
let byId: ReadonlyMap<string, Source> | undefined

/** The citation behind a parameter or effect, e.g. "treatments/yam2019"; undefined for the word "assumption". */
export function citationOf(id: string): Source | undefined {
  byId ??= new Map(deepFreeze(citations).map((source) => [source.id, source]))
  return byId.get(id)
}
