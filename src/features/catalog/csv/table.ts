import { CsvError, parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { invalidInput } from '../../../platform/http/problems.js';

/** More than a large catalog has; a longer table is sent in parts. */
export const MOST_ROWS = 10_000;

export interface TableRow {
  /** As a spreadsheet counts: the header is row 1. */
  readonly number: number;
  readonly cells: readonly string[];
}

export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly TableRow[];
}

/**
 * A cell that a spreadsheet would run as a formula. The apostrophe in front makes it text there; cells that begin with
 * apostrophes before such a sign get one more, so that reading takes away exactly what writing added.
 */
const FORMULA = /^'*[=+\-@\t\r＝＋－＠]/;
const ESCAPED = /^''*[=+\-@\t\r＝＋－＠]/;

const escaped = (cell: string): string => (FORMULA.test(cell) ? `'${cell}` : cell);
const unescaped = (cell: string): string => (ESCAPED.test(cell) ? cell.slice(1) : cell);

/** A table as RFC 4180 has it: commas, CRLF, quotes where a cell needs them; no cell is a formula. */
export function writeTable(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return stringify([header, ...rows].map((row) => row.map(escaped)), { record_delimiter: '\r\n' });
}

/**
 * Reads a table (RFC 4180; any line end; inch marks inside unquoted cells are kept). Empty rows count but are left out.
 * @throws Problem 400 when the text is no table, has no header, or more than MOST_ROWS rows
 */
export function readTable(text: string): Table {
  const records = parsed(text);
  const [header] = records;
  if (header === undefined || isEmpty(header)) throw invalidInput([{ pointer: '', detail: 'is empty; the first row must name the columns' }]);
  if (records.length > MOST_ROWS + 1) throw invalidInput([{ pointer: '', detail: `has more than ${MOST_ROWS} rows; send it in several parts` }]);
  const rows = records.map((cells, i) => ({ number: i + 1, cells: cells.map(unescaped) })).slice(1);
  return { header: header.map((name) => name.trim()), rows: rows.filter(({ cells }) => !isEmpty(cells)) };
}

function isEmpty(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

/** Reading stops one row after the bound, whatever follows. */
function parsed(text: string): string[][] {
  try {
    // Told, not found out from the first row: a table put together from two programs has the line ends of both.
    return parse(text, { record_delimiter: ['\r\n', '\n', '\r'], relax_column_count: true, relax_quotes: true, to: MOST_ROWS + 2, max_record_size: 100_000 });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error['lines'] === 'number' ? ` near line ${error['lines']}` : '';
    throw invalidInput([{ pointer: '', detail: `is no table${line}: a quote is never closed, or a row is longer than any part needs; write a quote inside a quoted cell twice` }]);
  }
}
