/** The prey the Book knows, by name, length and the sizes sold. */
import { counted, sentenceCase } from '../format.ts';
import { paths } from '../paths.ts';

export interface BookPrey {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  /** '2 to 25 mm'. */
  readonly lengths: string;
  /** 'pinhead, small, medium ...'. */
  readonly sizes: string;
  /** Numbers the keeper changed. */
  readonly changed: number;
}

export const Prey = ({ prey, open }: { prey: readonly BookPrey[]; open: boolean }) => (
  <details class="book-group" open={open}>
    <summary>Prey: {prey.length} species</summary>
    <table class="stacks book-kinds">
      <thead>
        <tr>
          <th scope="col">Species</th>
          <th scope="col">Lengths fed</th>
          <th scope="col">Sold as</th>
        </tr>
      </thead>
      <tbody>
        {prey.map(({ code, name, commonName, lengths, sizes, changed }) => (
          <tr>
            <th scope="row">
              <a href={paths.prey(code)}>{sentenceCase(commonName)}</a>
              <small>
                <i>{name}</i>
                {changed === 0 ? '' : `, ${counted(changed, 'value')} changed`}
              </small>
            </th>
            <td data-label="Lengths">{lengths}</td>
            <td data-label="Sold as">{sizes}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </details>
);
