import { useId } from "react"

/** A search over a list, labelled for those who do not see what stands in it. */
export function SearchBox(props: {
  readonly label: string
  readonly value: string
  readonly onChange: (value: string) => void
}) {
  const id = useId()
  return (
    <search className="search">
      <label className="unseen" htmlFor={id}>
        {props.label}
      </label>
      <input
        id={id}
        type="search"
        autoComplete="off"
        placeholder={props.label}
        value={props.value}
        onChange={({ target }) => props.onChange(target.value)}
      />
    </search>
  )
}
