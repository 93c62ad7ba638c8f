import type { Identity } from "../../interop/intake/fragment.js"
import { nameWords } from "../../interop/intake/name-key.js"
import type { KnownChild } from "../../interop/intake/same-child.js"

/**
 * Children by what an identity can agree with: number, birth date, the letters of the name. Whoever `sameChild` could find
 * or suggest is among the candidates, so that it need not be asked of the whole practice for every child of a file.
 */
export class ChildIndex {
  private readonly byFact = new Map<string, KnownChild[]>()

  constructor(children: Iterable<KnownChild> = []) {
    for (const child of children) this.add(child)
  }

  add(child: KnownChild): void {
    for (const fact of facts({ ...child, number: child.number ?? undefined, id: child.id })) {
      const known = this.byFact.get(fact)
      if (known) known.push(child)
      else this.byFact.set(fact, [child])
    }
  }

  candidates(identity: Identity): readonly KnownChild[] {
    return [...new Set(facts(identity).flatMap((fact) => this.byFact.get(fact) ?? []))]
  }
}

function facts({ number, id, born, name }: Identity & { readonly id?: string }): readonly string[] {
  const plain = number?.trim().toLowerCase()
  // The same letters in whatever order and however spaced: `namesAgree` asks for nothing less.
  const letters = [...nameWords(name ?? "").join("")].sort().join("")
  return [
    ...(plain ? [`number ${plain}`] : []),
    ...(id ? [`number ${id.toLowerCase()}`] : []),
    ...(born ? [`born ${born}`] : []),
    ...(letters ? [`letters ${letters}`] : []),
  ]
}
