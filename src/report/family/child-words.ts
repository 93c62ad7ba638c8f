import { fixed } from "../../engine/words.js"
import type { DocumentInput } from "../document-input.js"

/** What a sentence needs to name a child: its name where there is one, and its sex for the pronouns. */
interface ChildWords extends Readonly<Record<string, string>> {
  readonly name: string
  /** "no" where the file holds no name: the sentence says "your child" instead. */
  readonly named: "yes" | "no"
  readonly sex: "female" | "male"
}

export const childWords = ({
  childName,
  course,
}: Pick<DocumentInput, "childName" | "course">): ChildWords => ({
  name: childName ?? "",
  named: childName === null ? "no" : "yes",
  sex: course.child.sex,
})

/** A figure in mm with a true minus sign. */
export const millimetres = (mm: number): string => fixed(mm).replace("-", "\u2212")

/** Thousands apart by a thin gap, which is read alike in every language. */
export const thousandsApart = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, "\u202f")
