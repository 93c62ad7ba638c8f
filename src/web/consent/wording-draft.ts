import type { CalendarDate } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"

/** A new version as it is being written; `key` tells sections apart while they move. */
export interface WordingDraft extends Omit<ConsentWording, "sections"> {
  readonly sections: readonly DraftSection[]
}

export interface DraftSection {
  readonly key: number
  readonly heading: string
  readonly text: string
}

/** A copy of a version to be changed, in force from a day on, under a version that is not used yet. */
export function draftOf(
  wording: ConsentWording,
  { from, used }: { readonly from: CalendarDate; readonly used: readonly string[] },
): WordingDraft {
  return {
    ...wording,
    version: unusedVersion(from, used),
    from,
    isMaterial: true,
    sections: wording.sections.map((section, key) => ({ ...section, key })),
  }
}

/** As it is recorded; sections without any text are left out. */
export function wordingOf({ sections, ...draft }: WordingDraft): ConsentWording {
  return {
    ...draft,
    sections: sections
      .map(({ heading, text }) => ({ heading: heading.trim(), text: text.trim() }))
      .filter(({ heading, text }) => heading !== "" || text !== ""),
  }
}

/** The sections with the one at `at` moved up or down; the same when it can't. */
export function moved(
  sections: readonly DraftSection[],
  { at, by }: { readonly at: number; readonly by: -1 | 1 },
): readonly DraftSection[] {
  const [one, other] = [sections[at], sections[at + by]]
  if (!one || !other) return sections
  return sections.with(at, other).with(at + by, one)
}

function unusedVersion(from: CalendarDate, used: readonly string[]): string {
  const names = [from, ...Array.from({ length: used.length + 1 }, (_, index) => `${from} (${index + 2})`)]
  return names.find((name) => !used.includes(name)) ?? from
}
