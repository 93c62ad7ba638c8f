import { type FormEvent, useDeferredValue, useMemo, useState } from "react"
import { msg, say } from "../../engine/say.js"
import type { GlassesBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"
import { EMPTY_ROW, type GlassesRow, glassesEffect, isEmptyRow, readGlasses } from "./glasses.js"

const FIELDS = ["date", "right", "left", "from"] as const
const LABELS = {
  date: msg("Date"),
  right: msg("Right"),
  left: msg("Left"),
  from: msg("Where from"),
} as const

/** Old prescriptions as a quick list; what they add to the chance of an answer is said while they are typed. */
export function EarlierGlasses({ view, reading, onClose, onDone }: EnterProps) {
  const [rows, setRows] = useState<readonly (GlassesRow & { readonly id?: string })[]>(() => [
    newRow(),
    newRow(),
  ])
  const [tried, setTried] = useState(false)
  const record = useRecord<GlassesBody>(view.child.id, "glasses")
  const filled = rows.filter((row) => !isEmptyRow(row))
  const read = useMemo(() => readGlasses(rows), [rows])
  const deferred = useDeferredValue(read.visits)
  const effect = useMemo(() => glassesEffect(reading, deferred), [reading, deferred])
  const faults = faultsOf(
    record.error,
    filled.flatMap((_, i) => FIELDS.map((field) => `[${i}].${field}`)),
  )
  const faultAt = (row: GlassesRow, field: (typeof FIELDS)[number]) =>
    faults.at(`[${filled.indexOf(row)}].${field}`) ??
    (tried
      ? read.faults.find((fault) => fault.row === rows.indexOf(row) && fault.field === field)?.message
      : undefined)

  const change = (index: number, field: (typeof FIELDS)[number], value: string) => {
    record.reset()
    setRows(rows.map((row, i) => (i === index ? { ...row, [field]: value } : row)))
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (read.faults.length > 0 || read.visits.length === 0) return
    const body = read.visits.map((visit, i) => ({
      ...(filled[i]?.id ? { id: filled[i].id } : {}),
      date: visit.date,
      ...(visit.right?.refraction ? { right: visit.right.refraction } : {}),
      ...(visit.left?.refraction ? { left: visit.left.refraction } : {}),
      ...(visit.from ? { from: visit.from } : {}),
    }))
    record.mutate(body, {
      onSuccess: () =>
        onDone(
          say("Recorded: {count, plural, one {# pair} other {# pairs}} of earlier glasses.", {
            count: body.length,
          }),
        ),
    })
  }

  return (
    <Dialog title={say("Earlier glasses")} onClose={onClose} failure={record.error} wide>
      <p className="soft small">
        {say(
          "Prescriptions from before the treatment are a second witness of how fast the eyes grew. Type them as −1.25 −0.50 x 180; where from is not required.",
        )}
      </p>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <table className="glasses">
          <thead>
            <tr>
              {FIELDS.map((field) => (
                <th key={field} scope="col">
                  {say(LABELS[field])}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              // Rows are only added at the end, so the index names a row for good.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <tr key={index}>
                {FIELDS.map((field) => {
                  const fault = faultAt(row, field)
                  const faultId = `glasses-${index}-${field}`
                  return (
                    <td key={field}>
                      <input
                        type={field === "date" ? "date" : "text"}
                        aria-label={say("{field}, glasses {number}", {
                          field: say(LABELS[field]),
                          number: index + 1,
                        })}
                        aria-invalid={fault !== undefined || undefined}
                        aria-describedby={fault ? faultId : undefined}
                        autoComplete="off"
                        max={field === "date" ? reading.today : undefined}
                        value={row[field]}
                        onChange={(event) => change(index, field, event.target.value)}
                      />
                      {fault && (
                        <p className="field-fault" id={faultId}>
                          {fault}
                        </p>
                      )}
                    </td>
                  )
                })}
              </tr>
            ))}
          </tbody>
        </table>
        <p className="effect" role="status">
          {effect}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending || read.visits.length === 0}>
            {say("Record glasses")}
          </button>
          <button type="button" onClick={() => setRows([...rows, newRow()])}>
            {say("One more row")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function newRow() {
  return { ...EMPTY_ROW, ...newEntryId() }
}
