import type { Canvas } from './canvas.js';
import { drawCell, type PlacedColumn } from './columns.js';
import type { Fact } from './model.js';
import type { Tag } from './tags.js';
import { ACCENT, STYLES } from './theme.js';
import { textWidth, wrap } from './wrap.js';

/** Points above and below the text of a row. */
export const PAD = 3;
export const HEADER_HEIGHT = STYLES.columnHeader.leading + 5;
const ABOVE_TITLE = 7;
const SUBTOTAL_GAP = 14;

/** Something laid out before it is drawn, so that the page can be broken above it. */
export interface Mark {
  readonly height: number;
  draw(table: Tag): void;
}

/** The column headers. Read aloud once; on later pages they are for the eye only. */
export function drawColumnHeaders(canvas: Canvas, columns: readonly PlacedColumn[], table: Tag | 'repeated'): void {
  const cell = (placed: PlacedColumn) => drawCell(canvas, [placed.column.header], canvas.y, STYLES.columnHeader, placed);
  if (table === 'repeated') {
    canvas.tags.artifact('Pagination', () => columns.forEach(cell));
  } else {
    const row = canvas.tags.open(table, 'TR');
    for (const placed of columns) canvas.tags.leaf(row, 'TH', () => cell(placed), { scope: 'Column' });
    canvas.tags.close(row);
  }
  canvas.y += HEADER_HEIGHT;
  canvas.rule(canvas.left, canvas.y - 2, canvas.width, 0.8, ACCENT);
}

export function sectionTitle(canvas: Canvas, title: string): Mark {
  const lines = wrap(title, STYLES.section, canvas.width);
  const height = lines.length * STYLES.section.leading + ABOVE_TITLE + 1;
  const draw = (table: Tag) => {
    const row = canvas.tags.open(table, 'TR');
    canvas.tags.leaf(row, 'TH', () => canvas.lines(lines, canvas.left, canvas.y + ABOVE_TITLE, STYLES.section), { scope: 'Row' });
    canvas.tags.close(row);
    canvas.y += height;
  };
  return { height, draw };
}

/** Which section goes on at the top of a new page. */
export function drawContinued(canvas: Canvas, title: string): void {
  const [line = ''] = wrap(title, STYLES.continued, canvas.width * 0.8);
  canvas.tags.artifact('Pagination', () => canvas.line(`${line}, continued`, canvas.left, canvas.y + 3, STYLES.continued));
  canvas.y += STYLES.continued.leading + 4;
}

export function subtotalRow(canvas: Canvas, { label, value }: Fact, last: PlacedColumn | undefined): Mark {
  const right = canvas.right - Math.max(textWidth(value, STYLES.subtotal), last?.width ?? 0) - SUBTOTAL_GAP;
  const lines = wrap(label, STYLES.subtotalLabel, right - canvas.left);
  const height = lines.length * STYLES.subtotal.leading + 2 * PAD;
  const draw = (table: Tag) => {
    const y = canvas.y + PAD;
    const row = canvas.tags.open(table, 'TR');
    canvas.tags.leaf(row, 'TH', () => canvas.linesRight(lines, right, y, STYLES.subtotalLabel), { scope: 'Row' });
    canvas.tags.leaf(row, 'TD', () => canvas.lineRight(value, canvas.right, y, STYLES.subtotal));
    canvas.tags.close(row);
    canvas.y += height;
  };
  return { height, draw };
}
