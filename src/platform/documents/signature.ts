import type { Canvas } from './canvas.js';
import type { Signature, SignatureField } from './model.js';
import { BLOCK_HEADING, drawBlockHeading } from './prose.js';
import { STYLES, WRITING_LINE } from './theme.js';
import { wrap } from './wrap.js';

const GAP = 20;
/** Room to write by hand above each line. */
const WRITING = 34;

/** Where to sign: heading, statement and lines stay on one page, so that nobody signs a sheet without the words. */
export function drawSignature(canvas: Canvas, signature: Signature): void {
  const statement = wrap(signature.statement, STYLES.body, canvas.width);
  const rows = [...(signature.above ? [signature.above] : []), signature.fields];
  const row = WRITING + STYLES.label.leading + 4;
  canvas.ensure(BLOCK_HEADING + statement.length * STYLES.body.leading + rows.length * row);
  drawBlockHeading(canvas, signature.heading);
  canvas.tags.leaf(canvas.tags.root, 'P', () => canvas.lines(statement, canvas.left, canvas.y, STYLES.body));
  canvas.y += statement.length * STYLES.body.leading;
  for (const fields of rows) {
    canvas.y += WRITING;
    drawFields(canvas, fields);
    canvas.y += STYLES.label.leading + 4;
  }
}

function drawFields(canvas: Canvas, fields: readonly SignatureField[]): void {
  const share = fields.reduce((sum, field) => sum + field.weight, 0);
  const free = canvas.width - GAP * (fields.length - 1);
  let x = canvas.left;
  for (const field of fields) {
    const width = (free * field.weight) / share;
    const at = x;
    canvas.rule(at, canvas.y, width, 0.6, WRITING_LINE);
    canvas.tags.leaf(canvas.tags.root, 'P', () => canvas.line(field.label, at, canvas.y + 2, STYLES.label));
    x += width + GAP;
  }
}
