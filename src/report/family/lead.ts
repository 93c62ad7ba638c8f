import { msg, say } from "../../engine/say.js"
import { childWords } from "./child-words.js"
import type { FamilyReading } from "./family-reading.js"
import { type Care, careOf, type GrowthAnswer, grownMm, growthAnswer, sureOfTwo } from "./growth-answer.js"

type Known = Extract<GrowthAnswer, "near-normal" | "slowed-growth" | "as-untreated" | "faster">

/** One sentence for each state of growth, by what the eyes had while they grew. Nothing here says why they grow so. */
const STATES: Readonly<Record<Known, Readonly<Record<Care, string>>>> = {
  "near-normal": {
    treated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew slowly in {months, plural, one {the month} other {the # months}} before the last visit, almost like eyes that are not short-sighted.",
    ),
    untreated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew slowly in {months, plural, one {the month} other {the # months}} before the last visit, almost like eyes that are not short-sighted.",
    ),
    stopped: msg(
      "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown slowly, almost like eyes that are not short-sighted.",
    ),
  },
  "slowed-growth": {
    treated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual without treatment.",
    ),
    untreated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual in short-sighted children of this age.",
    ),
    stopped: msg(
      "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown, but more slowly than is usual in short-sighted children of this age.",
    ),
  },
  "as-untreated": {
    treated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual without treatment.",
    ),
    untreated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual in short-sighted children of this age.",
    ),
    stopped: msg(
      "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown about as fast as is usual without treatment.",
    ),
  },
  faster: {
    treated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual without treatment.",
    ),
    untreated: msg(
      "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual in short-sighted children of this age.",
    ),
    stopped: msg(
      "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown faster than is usual without treatment.",
    ),
  },
}

const NO_STATE: Readonly<Record<Exclude<GrowthAnswer, Known>, string>> = {
  unsure: msg(
    "We cannot be sure yet whether {named, select, yes {{name}'s eyes} other {your child's eyes}} grow slowly or fast.",
  ),
  "too-early": msg(
    "It is too early to say how fast {named, select, yes {{name}'s eyes} other {your child's eyes}} grow.",
  ),
  ending: msg(
    "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have little growing left to do, so we can no longer tell slow from fast.",
  ),
  "in-doubt": msg(
    "One of our figures looks wrong, so we measure {named, select, yes {{name}'s eyes} other {your child's eyes}} again before we say how fast they grow.",
  ),
  "not-myopic": msg("{named, select, yes {{name} is} other {Your child is}} not short-sighted so far."),
  once: msg(
    "We have measured {named, select, yes {{name}'s eyes} other {your child's eyes}} once, so we cannot say yet how fast they grow.",
  ),
  never: msg(
    "We have not measured the length of {named, select, yes {{name}'s eyes} other {your child's eyes}} yet, so we cannot say how fast they grow.",
  ),
  "outside-ages": msg(
    "We have no figures for this age to compare {named, select, yes {{name}'s eyes} other {your child's eyes}} with.",
  ),
}

const isKnown = (answer: GrowthAnswer): answer is Known => answer in STATES

/** Where no state is certain enough alone and two neighbours are together. */
const SURE_OF_TWO = {
  slower: msg(
    "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown more slowly than is usual without treatment, but we cannot be sure yet by how much.",
  ),
  "not-faster": msg(
    "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely not grown faster than is usual without treatment, but we cannot be sure yet whether they grew more slowly.",
  ),
  "not-slower": msg(
    "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown at least as fast as is usual without treatment, but we cannot be sure yet.",
  ),
} as const

/** The answer about growth in one sentence: what a family is told first. */
export function leadSentence(reading: FamilyReading): string {
  const answer = growthAnswer(reading)
  const { name, named } = childWords(reading.input)
  const sure = answer === "unsure" ? sureOfTwo(reading) : null
  if (sure !== null) return say(SURE_OF_TWO[sure], { name, named })
  if (!isKnown(answer)) return say(NO_STATE[answer], { name, named })
  return say(STATES[answer][careOf(reading)], { name, named, months: grownMm(reading)?.months ?? 12 })
}
