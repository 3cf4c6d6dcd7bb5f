import type { JSX } from 'preact';

/** The numbers behind a figure, as they are printed. */
export type FigureTable = {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** The numbers behind a figure, folded away until they are asked for. */
export function DataTable({ caption, heads, rows }: FigureTable): JSX.Element {
  return (
    <details class="vf-numbers">
      <summary>The numbers</summary>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([first = '', ...rest]) => (
            <tr key={first}>
              <th scope="row">{first}</th>
              {rest.map((cell, at) => (
                <td key={heads[at + 1]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
