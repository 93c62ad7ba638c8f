import { courseTable } from "../../chart/course-table.js"
import type { CourseFigureInput } from "../../chart/index.js"

/** The figure of a course as tables, for who reads figures rather than lines. */
export function CourseTables({ input }: { readonly input: CourseFigureInput }) {
  return courseTable(input).map((table) => (
    // A wide table scrolls by itself, and is reached by the keyboard for that.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section key={table.caption} className="scroll" tabIndex={0} aria-label={table.caption}>
      <table className="data">
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            {table.headers.map((header) => (
              <th key={header} scope="col">
                {header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.join("|")}>
              {row.map((cell, i) =>
                i === 0 ? (
                  <th key={table.headers[i]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={table.headers[i]}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  ))
}
