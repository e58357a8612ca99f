import type { Canvas } from './canvas.js';
import type { DocumentTable, TableColumn } from './model.js';
import { STYLES, type TextStyle } from './theme.js';
import { textWidth } from './wrap.js';

export interface PlacedColumn {
  readonly column: TableColumn;
  readonly x: number;
  readonly width: number;
}

const GAP = 14;
/** The most of the width that figures may take from the words. */
const MOST_FOR_FIGURES = 0.62;

/**
 * Right-aligned columns as wide as their widest cell, so that an amount never breaks, and the left-aligned ones over
 * what remains. Figures too long for the page wrap rather than push the words off it.
 */
export function placeColumns(canvas: Canvas, table: DocumentTable): PlacedColumn[] {
  const { columns } = table;
  const free = canvas.width - GAP * (columns.length - 1);
  const natural = columns.map((column) => (column.align === 'right' ? naturalWidth(table, column) : 0));
  const wanted = natural.reduce((sum, width) => sum + width, 0);
  const shrink = Math.min(1, (free * MOST_FOR_FIGURES) / Math.max(wanted, 1));
  const weights = columns.reduce((sum, column) => sum + (column.align === 'left' ? column.weight : 0), 0);
  const words = free - wanted * shrink;
  let x = canvas.left;
  return columns.map((column, index) => {
    const width = column.align === 'right' ? (natural[index] ?? 0) * shrink : (words * column.weight) / weights;
    const placed = { column, x, width };
    x += width + GAP;
    return placed;
  });
}

function naturalWidth(table: DocumentTable, { key, header }: TableColumn): number {
  let widest = textWidth(header, STYLES.columnHeader);
  for (const { rows, subtotal } of table.sections) {
    for (const row of rows) widest = Math.max(widest, textWidth(row[key] ?? '', STYLES.cell));
    if (subtotal && key === table.columns.at(-1)?.key) widest = Math.max(widest, textWidth(subtotal.value, STYLES.subtotal));
  }
  // A hair more than measured: a rounding error must not wrap the widest amount.
  return widest + 0.01;
}

export function drawCell(canvas: Canvas, lines: readonly string[], y: number, style: TextStyle, placed: PlacedColumn): void {
  if (placed.column.align === 'right') canvas.linesRight(lines, placed.x + placed.width, y, style);
  else canvas.lines(lines, placed.x, y, style);
}
