import type { Canvas } from './canvas.js';
import { drawCell, type PlacedColumn } from './columns.js';
import type { Fact } from './model.js';
import type { Tag } from './tags.js';
import { ACCENT, STYLES } from './theme.js';
import { textWidth, wrap } from './wrap.js';

/** Points above and below the text of a row. */
export const PAD = 3;
export const HEADER_HEIGHT = STYLES.columnHeader.leading + 5;
export const TITLE_HEIGHT = STYLES.section.leading + 8;
export const SUBTOTAL_HEIGHT = STYLES.subtotal.leading + 2 * PAD;
const SUBTOTAL_GAP = 14;

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

export function drawSectionTitle(canvas: Canvas, title: string, table: Tag): void {
  const [line = ''] = wrap(title, STYLES.section, canvas.width);
  const row = canvas.tags.open(table, 'TR');
  canvas.tags.leaf(row, 'TH', () => canvas.line(line, canvas.left, canvas.y + 7, STYLES.section), { scope: 'Row' });
  canvas.tags.close(row);
  canvas.y += TITLE_HEIGHT;
}

/** Which section goes on at the top of a new page. */
export function drawContinued(canvas: Canvas, title: string): void {
  const [line = ''] = wrap(title, STYLES.continued, canvas.width * 0.8);
  canvas.tags.artifact('Pagination', () => canvas.line(`${line}, continued`, canvas.left, canvas.y + 3, STYLES.continued));
  canvas.y += STYLES.continued.leading + 4;
}

export function drawSubtotal(canvas: Canvas, subtotal: Fact, last: PlacedColumn | undefined, table: Tag): void {
  const y = canvas.y + PAD;
  const right = canvas.right - Math.max(textWidth(subtotal.value, STYLES.subtotal), last?.width ?? 0) - SUBTOTAL_GAP;
  const [label = ''] = wrap(subtotal.label, STYLES.subtotalLabel, right - canvas.left);
  const row = canvas.tags.open(table, 'TR');
  canvas.tags.leaf(row, 'TH', () => canvas.lineRight(label, right, y, STYLES.subtotalLabel), { scope: 'Row' });
  canvas.tags.leaf(row, 'TD', () => canvas.lineRight(subtotal.value, canvas.right, y, STYLES.subtotal));
  canvas.tags.close(row);
  canvas.y += SUBTOTAL_HEIGHT;
}
