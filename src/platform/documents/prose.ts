import type { Canvas } from './canvas.js';
import type { Caution, DocumentModel, Note } from './model.js';
import type { Tag } from './tags.js';
import { STYLES, type TextStyle } from './theme.js';
import { wrap } from './wrap.js';

const PARAGRAPH_GAP = 3;
const BULLET_INDENT = 11;
const NUMBER_INDENT = 15;
const ITEM_GAP = 2;
const HEADING_GAP = 11;
const HEADING_BELOW = 2;
/** Points of a block heading with the space around it. */
export const BLOCK_HEADING = HEADING_GAP + STYLES.blockHeading.leading + HEADING_BELOW;
/** Fewest lines of a paragraph left alone at the foot or the head of a page. */
const TOGETHER = 2;

/** What the work is, before what it costs. */
export function drawSubject(canvas: Canvas, model: DocumentModel): void {
  drawParagraph(canvas, model.subject, STYLES.subject, 'H2');
  for (const text of model.introduction) drawParagraph(canvas, text, STYLES.body);
  canvas.y += 8;
}

export function drawNote(canvas: Canvas, note: Note): void {
  const { body } = STYLES;
  const lines = note.paragraphs.flatMap((text) => wrap(text, body, canvas.width - (note.numbered ? NUMBER_INDENT : 0)));
  keepWhole(canvas, lines.length * body.leading + note.paragraphs.length * PARAGRAPH_GAP);
  drawBlockHeading(canvas, note.heading);
  if (note.numbered) drawList(canvas, note.paragraphs, (index) => `${index + 1}.`, { style: body, indent: NUMBER_INDENT, gap: PARAGRAPH_GAP });
  else for (const text of note.paragraphs) drawParagraph(canvas, text, body);
}

export function drawCaution(canvas: Canvas, caution: Caution): void {
  const { small } = STYLES;
  const lead = wrap(caution.lead, small, canvas.width);
  const items = caution.items.flatMap((item) => wrap(item, small, canvas.width - BULLET_INDENT));
  keepWhole(canvas, (lead.length + items.length) * small.leading + PARAGRAPH_GAP + caution.items.length * ITEM_GAP);
  drawBlockHeading(canvas, caution.heading);
  drawParagraph(canvas, caution.lead, STYLES.small);
  drawList(canvas, caution.items, () => '•', { style: small, indent: BULLET_INDENT, gap: ITEM_GAP });
}

/** A short block moves to the next page whole: steps and cautions are read as one list or not at all. */
function keepWhole(canvas: Canvas, text: number): void {
  const height = BLOCK_HEADING + text;
  if (height <= canvas.bodyHeight / 3) canvas.ensure(height);
}

interface ListLook {
  readonly style: TextStyle;
  readonly indent: number;
  /** Points below each item. */
  readonly gap: number;
}

function drawList(canvas: Canvas, items: readonly string[], label: (index: number) => string, look: ListLook): void {
  const list = canvas.tags.open(canvas.tags.root, 'L');
  items.forEach((text, index) => drawItem(canvas, list, label(index), text, look));
  canvas.tags.close(list);
}

function drawItem(canvas: Canvas, list: Tag, label: string, text: string, { style, indent, gap }: ListLook): void {
  const lines = wrap(text, style, canvas.width - indent);
  canvas.ensure(lines.length * style.leading);
  const item = canvas.tags.open(list, 'LI');
  canvas.tags.leaf(item, 'Lbl', () => canvas.line(`${label} `, canvas.left + 1, canvas.y, style));
  canvas.tags.leaf(item, 'LBody', () => canvas.lines(lines, canvas.left + indent, canvas.y, style));
  canvas.tags.close(item);
  canvas.y += lines.length * style.leading + gap;
}

/** A heading never stands alone at the foot of a page. */
export function drawBlockHeading(canvas: Canvas, text: string): void {
  const style = STYLES.blockHeading;
  canvas.ensure(HEADING_GAP + style.leading + TOGETHER * STYLES.body.leading);
  if (!canvas.atTop) canvas.y += HEADING_GAP;
  canvas.tags.leaf(canvas.tags.root, 'H2', () => canvas.line(text, canvas.left, canvas.y, style));
  canvas.y += style.leading + HEADING_BELOW;
}

function drawParagraph(canvas: Canvas, text: string, style: TextStyle, type = 'P'): void {
  let rest = wrap(text, style, canvas.width);
  const tag = canvas.tags.open(canvas.tags.root, type);
  while (rest.length > 0) {
    const take = linesThatFit(rest.length, Math.floor(canvas.room / style.leading));
    if (take === 0) {
      canvas.newPage();
      continue;
    }
    const part = rest.slice(0, take);
    canvas.tags.mark(tag, () => canvas.lines(part, canvas.left, canvas.y, style));
    canvas.y += part.length * style.leading;
    rest = rest.slice(take);
  }
  canvas.tags.close(tag);
  canvas.y += PARAGRAPH_GAP;
}

/**
 * How many of `count` lines to set where `room` lines fit, leaving no single line behind on either page; 0 asks for
 * the next page.
 */
export function linesThatFit(count: number, room: number, together = TOGETHER): number {
  if (count <= room) return count;
  const take = Math.min(room, count - together);
  return take < together ? 0 : take;
}
