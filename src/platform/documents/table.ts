import type { Canvas } from './canvas.js';
import { drawCell, placeColumns, type PlacedColumn } from './columns.js';
import type { DocumentTable, TableRow, TableSection } from './model.js';
import { linesThatFit } from './prose.js';
import { drawColumnHeaders, drawContinued, HEADER_HEIGHT, PAD, sectionTitle, subtotalRow } from './table-marks.js';
import type { Tag } from './tags.js';
import { HAIRLINE, STYLES } from './theme.js';
import { wrap } from './wrap.js';

/** Lines of a long description that stay together at a page break. */
const TOGETHER = 3;
const { leading } = STYLES.cell;

/**
 * A table that breaks over pages with its header repeated.
 * @param tail points to keep free below the last row, so that the totals do not stand on a page without any row
 */
export function drawTable(canvas: Canvas, table: DocumentTable, tail: number): void {
  new TableDrawing(canvas, table).draw(tail);
}

class TableDrawing {
  private readonly columns: readonly PlacedColumn[];
  private readonly tag: Tag;

  constructor(private readonly canvas: Canvas, private readonly table: DocumentTable) {
    this.columns = placeColumns(canvas, table);
    this.tag = canvas.tags.open(canvas.tags.root, 'Table');
  }

  draw(tail: number): void {
    const { sections } = this.table;
    this.canvas.ensure(HEADER_HEIGHT + rowHeight(2 * TOGETHER));
    drawColumnHeaders(this.canvas, this.columns, this.tag);
    sections.forEach((section, index) => this.drawSection(section, index === sections.length - 1 ? tail : 0));
    this.canvas.tags.close(this.tag);
  }

  private drawSection({ title, rows, subtotal }: TableSection, tail: number): void {
    const laidOut = rows.map((row) => this.layOut(row));
    const heading = title === undefined ? undefined : sectionTitle(this.canvas, title);
    const sum = subtotal && subtotalRow(this.canvas, subtotal, this.columns.at(-1));
    // More than half a page can't be kept together with a row: the row would never find a page that has room.
    const ending = Math.min((sum?.height ?? 0) + tail, this.canvas.bodyHeight / 2);
    laidOut.forEach((cells, index) => {
      const next = laidOut[index + 1];
      const after = next ? 0 : ending;
      const opening = index === 0 ? heading : undefined;
      // A title is followed by two rows, and a subtotal follows two: one row alone looks like a slip of the page break.
      const closing = next && index === laidOut.length - 2 ? ending : 0;
      const second = next && (opening || closing > 0) ? this.leastHeight(next) + closing : 0;
      const needed = (opening?.height ?? 0) + this.leastHeight(cells) + second + after;
      if (needed > this.canvas.room) this.breakPage(opening ? undefined : title);
      opening?.draw(this.tag);
      this.drawRow(cells, title, after);
    });
    sum?.draw(this.tag);
  }

  private layOut(row: TableRow): string[][] {
    return this.columns.map(({ column, width }) => wrap(row[column.key] ?? '', STYLES.cell, width));
  }

  /** A row stays whole unless keeping it whole could leave a third of a page empty. */
  private leastHeight(cells: readonly string[][]): number {
    const height = rowHeight(lineCount(cells));
    return height > this.canvas.bodyHeight / 3 ? rowHeight(2 * TOGETHER) : height;
  }

  private drawRow(cells: readonly string[][], title: string | undefined, after: number): void {
    const { canvas } = this;
    const row = canvas.tags.open(this.tag, 'TR');
    const tags = cells.map(() => canvas.tags.open(row, 'TD'));
    const lines = lineCount(cells);
    for (let done = 0; done < lines; ) {
      const take = this.linesForThisPage(lines - done, after);
      if (take === 0) this.breakPage(title);
      else this.drawPiece(cells, tags, done, done + take);
      done += take;
      // Only below the whole row: a rule at the foot of the page would say that the description ends there.
      if (done === lines) canvas.rule(canvas.left, canvas.y, canvas.width, 0.5, HAIRLINE);
    }
    tags.forEach((tag) => canvas.tags.close(tag));
    canvas.tags.close(row);
  }

  private linesForThisPage(lines: number, after: number): number {
    const { room } = this.canvas;
    if (rowHeight(lines) + after <= room) return lines;
    // What follows the row does not fit here, so at least one line goes over to the next page with it.
    return linesThatFit(lines, Math.min(Math.floor((room - 2 * PAD) / leading), lines - 1), TOGETHER);
  }

  private drawPiece(cells: readonly string[][], tags: readonly Tag[], from: number, to: number): void {
    const { canvas } = this;
    this.columns.forEach((placed, index) => {
      const tag = tags[index];
      const lines = cells[index]?.slice(from, to) ?? [];
      if (!tag || (from > 0 && lines.length === 0)) return;
      canvas.tags.mark(tag, () => drawCell(canvas, lines, canvas.y + PAD, STYLES.cell, placed));
    });
    canvas.y += rowHeight(to - from);
  }

  private breakPage(title: string | undefined): void {
    this.canvas.newPage();
    drawColumnHeaders(this.canvas, this.columns, 'repeated');
    if (title !== undefined) drawContinued(this.canvas, title);
  }
}

function lineCount(cells: readonly string[][]): number {
  return Math.max(1, ...cells.map((lines) => lines.length));
}

/** Points of a row, or of the part of one, with `lines` lines. */
function rowHeight(lines: number): number {
  return lines * leading + 2 * PAD;
}
