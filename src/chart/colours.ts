/** The few inks of every figure. One accent; no meaning rests on colour alone. */
export interface Colours {
  readonly ink: string
  readonly soft: string
  readonly line: string
  readonly faint: string
  readonly paper: string
  readonly ground: string
  readonly accent: string
  readonly accentMiddle: string
  readonly wash: string
  readonly shade: string
  readonly shadeDark: string
  readonly warm: string
}

/** `themed` lets a page set its own inks through custom properties; `plain` is for paper and for PDF writers. */
type ColourKind = "themed" | "plain"

const PLAIN: Colours = {
  ink: "#1d2328",
  soft: "#5d6870",
  line: "#e3e7ea",
  faint: "#eef1f3",
  paper: "#ffffff",
  ground: "#f3f5f6",
  accent: "#0b6b62",
  accentMiddle: "#7fb8b1",
  wash: "#d8ebe8",
  shade: "#e6e9eb",
  shadeDark: "#7d878e",
  warm: "#8a5a12",
}

/** The names of the custom properties a page may set. */
const PROPERTIES: Colours = {
  ink: "--ink",
  soft: "--soft",
  line: "--line",
  faint: "--line-faint",
  paper: "--paper",
  ground: "--figure-ground",
  accent: "--accent",
  accentMiddle: "--accent-middle",
  wash: "--accent-wash",
  shade: "--shade",
  shadeDark: "--shade-dark",
  warm: "--warm",
}

export function colours(kind: ColourKind): Colours {
  if (kind === "plain") return PLAIN
  const names = Object.keys(PLAIN) as (keyof Colours)[]
  return Object.fromEntries(
    names.map((name) => [name, `var(${PROPERTIES[name]}, ${PLAIN[name]})`]),
  ) as unknown as Colours
}
