import type { Chance } from "../frame/chance.js"

/** What stands in cells, references, kinds and styles that a reader may stumble over; sound as XML. */
const VALUES = [
  ...[
    "",
    "0",
    "-1",
    "1e999",
    "-1e308",
    "NaN",
    "24,1",
    "241",
    "2.0000000000000001",
    "45667",
    "45667.99999999",
    "-45667",
  ],
  ...[
    "2958466",
    "99999999999",
    "1.5",
    "0x10",
    "s",
    "d",
    "b",
    "e",
    "str",
    "inlineStr",
    "1900",
    "true",
    "#REF!",
  ],
  ...[
    "A0",
    "A1",
    "XFD1048576",
    "XFE1",
    "AAAAAA1",
    "1A",
    "Ünï",
    "&#x202e;",
    "&lt;b&gt;",
    "&amp;amp;",
    "&unknown;",
    "&#0;",
  ],
  ...[
    "../../secret",
    "/xl/worksheets/sheet2.xml",
    "http://example.org/",
    "yyyy-mm-dd",
    "[$-409]d",
    "General",
    "0.00%",
  ],
  ...["2025-01-10", "2025-01-10T12:00:00Z", "31/02/2025", "__proto__", "constructor", "😀", "7".repeat(400)],
]

/** XML with a few values exchanged or replaced, or an element left out or repeated: as a rule still sound as XML. */
export function brokenXml(bytes: Uint8Array, chance: Chance): Uint8Array {
  let text = new TextDecoder().decode(bytes)
  for (let ways = 1 + chance.below(3); ways > 0; ways--) text = brokenOnce(text, chance)
  return new TextEncoder().encode(text)
}

function brokenOnce(text: string, chance: Chance): string {
  const isOfElement = chance.below(4) === 0
  const places = [
    ...text.matchAll(
      isOfElement ? /<(\w+)[^<>]*(?:\/>|>[^<]*<\/\1>)/g : /(?<==")[^"<]*(?=")|(?<=>)[^<]+(?=<)/g,
    ),
  ]
  if (places.length === 0) return text
  const place = chance.of(places)
  const other = chance.of(places)[0]
  const end = place.index + place[0].length
  const element = [``, other, place[0] + other, place[0].repeat(40)]
  const instead = isOfElement ? chance.of(element) : chance.below(3) === 0 ? other : chance.of(VALUES)
  return text.slice(0, place.index) + instead + text.slice(end)
}
