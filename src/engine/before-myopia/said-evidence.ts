import { msg, say } from "../say.js"

/**
 * The texts of the evidence that stand within sentences of a page, so that the languages are asked for them. What is
 * cited stays as it was published. A test holds this to the evidence.
 */
const KNOWN: ReadonlySet<string> = new Set([
  msg("grade 3"),
  msg("myopia at 8 to 14 years"),
  msg("myopia later"),
  msg("a child at risk of myopia"),
  msg("−0.75 D or more myopic at some time within 5 years"),
  msg("USA, 4512 children"),
  msg("Orinda, California, 554 children, 45 of whom became myopic"),
  msg("USA, grades 1 to 8, 4512 children, 414 of whom became myopic"),
  msg("California, 1989 to 2001, not myopic at entry, right eye"),
  msg("Orinda Longitudinal Study of Myopia, public file of 618 children"),
  msg("Zhang et al. 2015, cohorts"),
  msg("abstract"),
  msg("abstract (summary page)"),
  msg("secondary citation (professional-press answer quoting the 2015 study)"),
  msg("About 2 hours outdoors a day"),
  msg("Time outdoors at school against none, trials pooled: 0.09 mm less growth (95 % 0.05 to 0.13)"),
  msg("Becoming myopic, with time outdoors at school against without: risk ratio 0.76 (95 % 0.67 to 0.87)"),
  msg(
    "40 minutes more outdoors on school days: 30.4 % myopic after 3 years against 39.5 %; the length did not differ for certain",
  ),
  msg("randomised trials, pooled"),
  msg("one randomised trial"),
  msg("9437 children, mostly not yet myopic"),
  msg("3014 children"),
  msg("1903 children of about 6 in Guangzhou"),
  msg("A break from near work every 20 to 30 minutes, and the page more than 30 cm away"),
  msg("More near work against less, in children: odds ratio of myopia 1.31 (95 % 1.21 to 1.42)"),
  msg("observations, pooled: they show a link, not that less near work helps"),
  msg("78 studies"),
  msg("the bounds of pre-myopia"),
  msg("the text of the definition was not read, and it needs other risk factors beside the refraction"),
  msg("how well the age cut-offs of 2015 tell who becomes myopic"),
  msg("the figures were not read in any text"),
])

export const isSaidOfEvidence = (text: string): boolean => KNOWN.has(text)

/** A text of the evidence in the language in force; what is not known here stands as published. */
export const ofEvidence = (text: string): string => (KNOWN.has(text) ? say(text) : text)
