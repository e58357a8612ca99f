import type { Canvas } from './canvas.js';
import type { DocumentModel } from './model.js';
import { ACCENT, STYLES } from './theme.js';
import { wrap } from './wrap.js';

/** The letterhead: who writes on the left, what this is on the right, and one rule below both. */
export function drawHeader(canvas: Canvas, model: DocumentModel): void {
  const top = canvas.y;
  const leftBottom = drawCompany(canvas, model, top, canvas.width * 0.54);
  const rightBottom = drawHeading(canvas, model, top, canvas.width * 0.42);
  canvas.y = Math.max(leftBottom, rightBottom) + 10;
  canvas.rule(canvas.left, canvas.y, canvas.width, 1.2, ACCENT);
  canvas.y += 14;
}

function drawCompany(canvas: Canvas, model: DocumentModel, top: number, width: number): number {
  let y = top + 4;
  const name = wrap(model.company.name, STYLES.company, width);
  const lines = model.company.lines.flatMap((line) => wrap(line, STYLES.companyLine, width));
  canvas.tags.leaf(canvas.tags.root, 'P', () => canvas.lines(name, canvas.left, y, STYLES.company));
  y += name.length * STYLES.company.leading + 2;
  canvas.tags.leaf(canvas.tags.root, 'P', () => canvas.lines(lines, canvas.left, y, STYLES.companyLine));
  return y + lines.length * STYLES.companyLine.leading;
}

function drawHeading(canvas: Canvas, model: DocumentModel, top: number, width: number): number {
  let y = top;
  const parts = [
    { tag: 'H1', text: model.heading, style: STYLES.heading },
    { tag: 'P', text: model.reference, style: STYLES.reference },
    { tag: 'P', text: model.status ?? '', style: STYLES.status },
  ];
  for (const { tag, text, style } of parts) {
    if (text === '') continue;
    const lines = wrap(text, style, width);
    const at = y;
    canvas.tags.leaf(canvas.tags.root, tag, () => canvas.linesRight(lines, canvas.right, at, style));
    y += lines.length * style.leading + 2;
  }
  return y;
}
