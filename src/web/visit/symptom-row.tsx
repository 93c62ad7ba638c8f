import { symptomWords } from "../../chart/words.js"
import { SYMPTOM_KINDS, type Symptom } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import type { RowProps } from "./eye-row.js"

const GRADES: readonly Symptom["grade"][] = [0, 1, 2, 3]

export function SymptomRow({ draft, onChange }: Pick<RowProps, "draft" | "onChange">) {
  const unasked = SYMPTOM_KINDS.filter((kind) => draft.symptoms[kind] === undefined)
  return (
    <div className="examination-row symptoms">
      <div>
        <b>{say("Symptoms")}</b>{" "}
        <span className="soft small">{say("0 none to 3 severe; blank if not asked")}</span>
        {unasked.length > 0 && (
          <button
            type="button"
            className="small"
            onClick={() =>
              onChange({
                ...draft,
                symptoms: { ...Object.fromEntries(unasked.map((kind) => [kind, 0])), ...draft.symptoms },
              })
            }
          >
            {say("All others 0")}
          </button>
        )}
      </div>
      <div className="symptom-list">
        {SYMPTOM_KINDS.map((kind) => (
          <label key={kind}>
            {capitalised(symptomWords(kind))}
            <select
              data-entry="symptoms"
              value={draft.symptoms[kind] ?? ""}
              onChange={(event) => {
                const { [kind]: _, ...others } = draft.symptoms
                const grade = GRADES.find((value) => String(value) === event.target.value)
                onChange({ ...draft, symptoms: grade === undefined ? others : { ...others, [kind]: grade } })
              }}
            >
              <option value="">–</option>
              {GRADES.map((grade) => (
                <option key={grade} value={grade}>
                  {grade}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </div>
  )
}
