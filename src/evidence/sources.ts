import { deepFreeze } from "./freeze.js"
import { sources as registers } from "./generated/sources.js"
import type { Source } from "./types.js"

/** Every source of every register: what was read, how, and its caveats. Large; a browser takes `citationOf` instead. */
export const sources: readonly Source[] = deepFreeze(registers)

const byId = new Map(sources.map((source) => [source.id, source]))

/**
 * The source named "folder/id".
 *
 * @example sourceById("treatments/yam2019")?.doi // "10.1016/j.ophtha.2018.05.029"
 */
export function sourceById(id: string): Source | undefined {
  return byId.get(id)
}
