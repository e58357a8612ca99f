import type { Canvas } from './canvas.js';
import type { Total } from './model.js';
import { ACCENT, STYLES, type TextStyle } from './theme.js';
import { textWidth, wrap } from './wrap.js';

const SHARE = 0.54;
const GAP = 16;
const LINE_GAP = 2.5;
/** Sets the sums off from the last row. */
const ABOVE = 8;
const STRONG_GAP = 5;

interface TotalLine {
  readonly total: Total;
  readonly label: readonly string[];
  readonly style: TextStyle;
  readonly height: number;
}

/** The sums under the table, laid out once so that the table can keep room for all of them on one page. */
export class TotalsBlock {
  private readonly rows: readonly TotalLine[];
  private readonly width: number;

  constructor(private readonly canvas: Canvas, totals: readonly Total[]) {
    this.width = canvas.width * SHARE;
    this.rows = totals.map((total) => this.layOut(total));
  }

  get height(): number {
    return this.rows.reduce((sum, row) => sum + row.height, 0) + ABOVE;
  }

  draw(): void {
    const { canvas } = this;
    canvas.ensure(this.height);
    canvas.y += ABOVE;
    const table = canvas.tags.open(canvas.tags.root, 'Table');
    for (const row of this.rows) {
      // Only sums longer than a page come to this.
      canvas.ensure(row.height);
      this.drawRow(row, table);
      canvas.y += row.height;
    }
    canvas.tags.close(table);
  }

  private layOut(total: Total): TotalLine {
    const style = total.strong ? STYLES.totalStrong : STYLES.total;
    const label = wrap(total.label, style, this.width - textWidth(total.value, style) - GAP);
    return { total, label, style, height: label.length * style.leading + LINE_GAP + (total.strong ? 2 * STRONG_GAP : 0) };
  }

  private drawRow({ total, label, style }: TotalLine, table: Parameters<Canvas['tags']['open']>[0]): void {
    const { canvas } = this;
    const x = canvas.right - this.width;
    const y = canvas.y + (total.strong ? STRONG_GAP : 0);
    if (total.strong) canvas.rule(x, canvas.y + STRONG_GAP / 2, this.width, 0.8, ACCENT);
    const row = canvas.tags.open(table, 'TR');
    canvas.tags.leaf(row, 'TH', () => canvas.lines(label, x, y, style), { scope: 'Row' });
    canvas.tags.leaf(row, 'TD', () => canvas.lineRight(total.value, canvas.right, y, style));
    canvas.tags.close(row);
  }
}
