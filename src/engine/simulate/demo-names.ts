import type { Ancestry, Sex } from "../course.js"

/** First names in use in many places; paired with made-up surnames so that no pair is meant to be anybody's. */
const FIRST_NAMES: Readonly<Record<Ancestry, Readonly<Record<Sex, readonly string[]>>>> = {
  "east-asian": {
    female: [
      "Mei",
      "Yuna",
      "Lihua",
      "Sakura",
      "Jia",
      "Minseo",
      "Xinyi",
      "Hana",
      "Anqi",
      "Rin",
      "Thuy",
      "Qing",
    ],
    male: ["Haoran", "Jun", "Kenta", "Minho", "Bowen", "Ren", "Zihao", "Taeyang", "Duc", "Yichen"],
  },
  european: {
    female: ["Clara", "Freya", "Ines", "Maeve", "Zofia", "Elin", "Giulia", "Petra", "Noor", "Tilda"],
    male: ["Felix", "Owen", "Mateus", "Jakub", "Henrik", "Luca", "Rory", "Anton", "Bram", "Tobias"],
  },
  "south-asian": {
    female: ["Anaya", "Meera", "Zara", "Ishani", "Tara", "Nimali"],
    male: ["Arjun", "Rohan", "Imran", "Kabir", "Dev", "Samir"],
  },
  african: {
    female: ["Amara", "Zuri", "Efua", "Halima", "Nia"],
    male: ["Kofi", "Tunde", "Jabari", "Sipho", "Yaw"],
  },
  other: {
    female: ["Leila", "Paloma", "Aroha", "Maya"],
    male: ["Nico", "Tariq", "Keoni", "Diego"],
  },
  unstated: {
    female: ["Robin", "Alex", "Sasha", "Kim"],
    male: ["Sam", "Jamie", "Charlie", "Noel"],
  },
}

const SURNAMES: readonly string[] = [
  "Ashdell",
  "Barrowlea",
  "Calverin",
  "Dunmoss",
  "Elverstone",
  "Farrowick",
  "Glenhollin",
  "Harlowen",
  "Inverlea",
  "Jessamor",
  "Kestwold",
  "Larkenby",
  "Merrowden",
  "Nettlefold-Ray",
  "Oakhurnell",
  "Pellinor",
  "Quillfeather",
  "Rosvalden",
  "Silverbeck",
  "Tarnwell",
  "Ulverdale",
  "Venlake",
  "Wrenfield-Oso",
  "Yarrowby",
  "Zellinger-Moor",
  "Akandor",
  "Bellamarsh",
  "Corvendish",
  "Delmarin",
  "Everlund",
  "Fennimoor",
  "Galwain",
  "Hollinshade",
  "Islemere",
  "Jorvendal",
  "Kallanby",
  "Lindhaven",
  "Marchetold",
  "Norrowmere",
  "Ombersten",
  "Penhallowen",
  "Quendrith",
  "Ravenlund",
  "Sorrelby",
  "Thistlewane",
  "Umberlin",
  "Valdermere",
  "Westrowan",
  "Xanderby",
  "Yewcombe",
  "Zephyrlea",
  "Arkwendel",
  "Brindlemoor",
  "Cressholm",
  "Dovenby",
  "Emberholt",
  "Frostenlee",
  "Gorsemoor",
  "Heronlake",
  "Ivorsand",
  "Junipell",
  "Kitterling",
  "Lowendale",
  "Mossgarth",
]

/**
 * A namer that gives every child another name, first name and surname both: the lists are walked in order, so a child
 * keeps its name whatever the seed and the day.
 */
export function demoNamer(): (child: { readonly ancestry: Ancestry; readonly sex: Sex }) => string {
  const given = new Map<string, number>()
  const next = (list: string, names: readonly string[]): string => {
    const at = given.get(list) ?? 0
    given.set(list, at + 1)
    const name = names[at]
    if (name === undefined) throw new RangeError(`the list of names "${list}" has only ${names.length}`)
    return name
  }
  return ({ ancestry, sex }) =>
    `${next(`${ancestry} ${sex}`, FIRST_NAMES[ancestry][sex])} ${next("surnames", SURNAMES)}`
}
