import type { Canvas } from './canvas.js';
import { STYLES } from './theme.js';
import { textWidth, wrap } from './wrap.js';

export function drawFooters(canvas: Canvas, text: string): void {
  canvas.onEveryPage((page, pages, y) => {
    const number = `Page ${page} of ${pages}`;
    const [line = ''] = wrap(text, STYLES.footer, canvas.width - textWidth(number, STYLES.footer) - 20);
    canvas.line(`${line} `, canvas.left, y, STYLES.footer);
    canvas.lineRight(number, canvas.right, y, STYLES.footer);
  });
}
