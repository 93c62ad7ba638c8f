import { METHOD_VERSION } from "../../engine/method.js"
import { defaultSettings } from "../../engine/settings.js"
import { effectParameter, growthParameters } from "../../engine/why/model-parameters.js"
import { citations, tableOf } from "../../engine/why/why.js"
import { evidence } from "../../evidence/index.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson } from "../told.js"
import { parameterText, sourceRegister, sourceText, tableText } from "../why-text.js"
import { CAUTION, paragraph, section } from "../words.js"

export interface MethodArguments {
  readonly json?: boolean | undefined
}

/** What this program reckons with: version, every parameter with its source, every reference with its grade. */
export async function run({ json = false }: MethodArguments, io: Io): Promise<ExitCode> {
  const { growth, emmetropic, references } = evidence
  const parameters = growthParameters(growth)
  const effects = growth.effects.map(effectParameter)
  const sources = citations(
    [...parameters, ...effects].flatMap(({ source }) => source),
    await sourceRegister(),
  )
  const tables = [emmetropic, ...references].map(tableOf)
  if (json) {
    return toldJson(
      {
        version: METHOD_VERSION,
        parameters: growth.version,
        dated: growth.dated,
        settings: defaultSettings,
        values: parameters,
        effects,
        references: [emmetropic, ...references].map((reference, index) => ({
          ...tables[index],
          youngestAgeYears: reference.youngestAgeYears,
          oldestAgeYears: reference.oldestAgeYears,
        })),
        sources,
      },
      io,
    )
  }
  const { alpha, beta, certainty, cuts, settingFactor } = defaultSettings
  io.out(
    [
      paragraph(`Method ${METHOD_VERSION}, parameters ${growth.version} of ${growth.dated}.`, 0),
      "\n",
      section("Settings of the practice (our own defaults)", [
        `Error rates of the test: ${alpha} and ${beta}.`,
        `Certainty asked before a growth state is said: ${certainty}.`,
        `Cuts from emmetropic (0) to natural growth (1): near-normal below ${cuts.nearNormal}, slowed below ${cuts.slowed}, as untreated below ${cuts.asUntreated}, faster above.`,
        `Setting factor: ${settingFactor}.`,
      ]),
      section("Parameters of the growth model", parameters.map(parameterText)),
      section("What the trials report that treatments withhold", effects.map(parameterText)),
      section("References and curves", tables.map(tableText)),
      section("Sources", sources.map(sourceText)),
      paragraph(CAUTION, 0),
    ].join(""),
  )
  return 0
}
