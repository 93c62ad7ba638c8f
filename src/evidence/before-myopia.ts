/**
 * What was read about children who are not myopic yet: who becomes myopic, and what lowers it. Taken over row by row from
 * progression/f_onset_predictors.csv, treatments/optical-treatments.json and growth-references/*olsm*, to which a test
 * holds every figure. Rows from memory are not here: the bounds of "pre-myopia" and areas under a curve among them.
 */
import { deepFreeze } from "./freeze.js"
import { table } from "./tables.js"
import type { BeforeMyopiaEvidence } from "./types.js"

const SECOND_HAND = "secondary citation (professional-press answer quoting the 2015 study)"

export const beforeMyopiaEvidence: BeforeMyopiaEvidence = deepFreeze({
  cutOffs: [
    {
      row: "f02",
      quantity: "spherical equivalent",
      youngestAge: 7,
      oldestAge: 7,
      lowD: 0.41,
      highD: 0.58,
      isAtCutOffAtRisk: false,
      outcome: "myopia at 8 to 14 years",
      sensitivity: "0.716 to 0.905",
      specificity: "0.622 to 0.762",
      population: "USA, 4512 children",
      source: "progression/zadnik_aao2011",
      cited: "Zadnik et al., AAO 2011",
      obtained: "abstract",
      isSecondHand: false,
    },
    {
      row: "f01",
      quantity: "sphere",
      // The study speaks of grade 3, not of an age; that third graders are mostly eight is common knowledge, no source.
      youngestAge: 8,
      oldestAge: 8,
      grade: "grade 3",
      lowD: 0.75,
      highD: 0.75,
      isAtCutOffAtRisk: false,
      outcome: "myopia later",
      sensitivity: "0.867",
      specificity: "0.733",
      population: "Orinda, California, 554 children, 45 of whom became myopic",
      source: "progression/zadnik1999",
      cited: "Zadnik et al., IOVS 1999",
      obtained: "abstract",
      isSecondHand: false,
    },
    ...(
      [
        ["f03", 6, 6, 0.75, false],
        ["f04", 7, 8, 0.5, true],
        ["f05", 9, 10, 0.25, true],
        ["f06", 11, 11, 0, true],
      ] as const
    ).map(([row, youngestAge, oldestAge, cutOffD, isAtCutOffAtRisk]) => ({
      row,
      quantity: "spherical equivalent" as const,
      youngestAge,
      oldestAge,
      lowD: cutOffD,
      highD: cutOffD,
      isAtCutOffAtRisk,
      outcome: "a child at risk of myopia",
      population: "USA, grades 1 to 8, 4512 children, 414 of whom became myopic",
      source: "progression/zadnik2015",
      cited: "Zadnik et al., JAMA Ophthalmol 2015",
      obtained: SECOND_HAND,
      isSecondHand: true,
    })),
  ],
  shares: {
    age: 6,
    outcome: "−0.75 D or more myopic at some time within 5 years",
    population: "California, 1989 to 2001, not myopic at entry, right eye",
    source: "growth-references/olsm",
    cited: "Orinda Longitudinal Study of Myopia, public file of 618 children",
    obtained: "computed here from the public 618-row file",
    bands: [
      { fromD: null, belowD: 0, n: 19, became: 13, percent: 68.4, low95: 46.0, high95: 84.6 },
      { fromD: 0, belowD: 0.5, n: 96, became: 27, percent: 28.1, low95: 20.1, high95: 37.8 },
      { fromD: 0.5, belowD: 0.75, n: 103, became: 15, percent: 14.6, low95: 9.0, high95: 22.6 },
      { fromD: 0.75, belowD: 1, n: 102, became: 2, percent: 2.0, low95: 0.5, high95: 6.9 },
      { fromD: 1, belowD: 1.5, n: 89, became: 1, percent: 1.1, low95: 0.2, high95: 6.1 },
      { fromD: 1.5, belowD: null, n: 47, became: 0, percent: 0.0, low95: 0.0, high95: 7.6 },
    ],
  },
  parents: [
    oddsOfParents("f08", 1, [1.53, 1.21, 1.85], "progression/zhang2015", "Zhang et al. 2015, cohorts"),
    oddsOfParents("f09", 2, [2.1, 1.42, 2.77], "progression/zhang2015", "Zhang et al. 2015, cohorts"),
    oddsOfParents("f10", 1, [2.0, 1.84, 2.18], "progression/zong2024", "Zong et al. 2024"),
    oddsOfParents("f11", 2, [2.9, 2.46, 3.42], "progression/zong2024", "Zong et al. 2024"),
  ],
  advice: [
    {
      duty: "CD-100",
      what: "About 2 hours outdoors a day",
      findings: [
        {
          words:
            "Time outdoors at school against none, trials pooled: 0.09 mm less growth (95 % 0.05 to 0.13)",
          kind: "randomised trials, pooled",
          people: "9437 children, mostly not yet myopic",
          source: "treatments/mei2024",
          cited: "Mei et al. 2024",
          obtained: "abstract",
        },
        {
          words:
            "Becoming myopic, with time outdoors at school against without: risk ratio 0.76 (95 % 0.67 to 0.87)",
          kind: "randomised trials, pooled",
          people: "3014 children",
          source: "treatments/cao2020",
          cited: "Cao et al. 2020",
          obtained: "abstract",
        },
        {
          words:
            "40 minutes more outdoors on school days: 30.4 % myopic after 3 years against 39.5 %; the length did not differ for certain",
          kind: "one randomised trial",
          people: "1903 children of about 6 in Guangzhou",
          source: "progression/he2015",
          cited: "He et al. 2015",
          obtained: "abstract (summary page)",
        },
      ],
    },
    {
      duty: "CD-100",
      what: "A break from near work every 20 to 30 minutes, and the page more than 30 cm away",
      findings: [
        {
          words: "More near work against less, in children: odds ratio of myopia 1.31 (95 % 1.21 to 1.42)",
          kind: "observations, pooled: they show a link, not that less near work helps",
          people: "78 studies",
          source: "progression/dutheil2023",
          cited: "Dutheil et al. 2023",
          obtained: "abstract",
        },
      ],
    },
  ],
  keptOff: [
    {
      what: "the bounds of pre-myopia",
      why: "the text of the definition was not read, and it needs other risk factors beside the refraction",
    },
    {
      what: "how well the age cut-offs of 2015 tell who becomes myopic",
      why: "the figures were not read in any text",
    },
  ],
  betweenEyesSd: table("growth-references/al_emmetrope_curve.csv").rows.map((row) => ({
    ageYears: Number(row.age_years),
    mm: Number(row.sd_between_eyes_mm),
  })),
})

function oddsOfParents(
  row: string,
  myopicParents: 1 | 2,
  [oddsRatio, low95, high95]: readonly [number, number, number],
  source: string,
  cited: string,
) {
  return { row, myopicParents, oddsRatio, low95, high95, source, cited, obtained: "abstract" }
}
