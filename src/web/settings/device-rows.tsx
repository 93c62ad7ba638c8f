import { msg, say } from "../../engine/say.js"
import { fixed, inDigits } from "../../engine/words.js"
import { type DeviceDraft, newDevice } from "./pharmacy-draft.js"

const COLUMNS: readonly (readonly [keyof DeviceDraft, string])[] = [
  ["name", msg("Device")],
  ["smallestVolumeMl", msg("From, mL")],
  ["largestVolumeMl", msg("To, mL")],
  ["graduationMl", msg("Read to, mL")],
  ["tolerance", msg("Within, %")],
]

/** What a pharmacy measures with. Each volume is reckoned with the most exact device that measures it. */
export function DeviceRows(props: {
  readonly devices: readonly DeviceDraft[]
  readonly fault: string | undefined
  readonly onChange: (devices: readonly DeviceDraft[]) => void
}) {
  const { devices, fault, onChange } = props
  const change = (index: number, field: keyof DeviceDraft, value: string) =>
    onChange(devices.map((device, place) => (place === index ? { ...device, [field]: value } : device)))
  return (
    <fieldset className="field">
      <legend>{say("Measuring devices")}</legend>
      <p className="field-note">
        {devices.length === 0
          ? say(
              "None named: every volume is taken as measured within {percent} % (95 %; common practice, no source) and read to {graduation} mL.",
              { percent: inDigits(3), graduation: fixed(0.01) },
            )
          : say(
              "Each volume is reckoned with the most exact device that measures it; these take the place of the smallest volume above.",
            )}
      </p>
      {devices.length > 0 && (
        <table className="device-rows">
          <thead>
            <tr>
              {COLUMNS.map(([field, title]) => (
                <th key={field} scope="col">
                  {say(title)}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {devices.map((device, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows are typed into and have no name of their own yet
              <tr key={index}>
                {COLUMNS.map(([field, title]) => (
                  <td key={field}>
                    <input
                      aria-label={say("{title}, device {number}", { title: say(title), number: index + 1 })}
                      autoComplete="off"
                      value={device[field]}
                      onChange={(event) => change(index, field, event.target.value)}
                    />
                  </td>
                ))}
                <td>
                  <button
                    type="button"
                    className="link"
                    aria-label={say("remove device {number}", { number: index + 1 })}
                    onClick={() => onChange(devices.filter((_, place) => place !== index))}
                  >
                    {say("remove")}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {fault && <p className="field-fault">{fault}</p>}
      <div>
        <button type="button" onClick={() => onChange([...devices, newDevice])}>
          {say("Add device")}
        </button>
      </div>
    </fieldset>
  )
}
