import { Canvas } from './canvas.js';
import { drawFooters } from './footer.js';
import { drawHeader } from './header.js';
import type { DocumentModel } from './model.js';
import { drawParties } from './parties.js';
import { drawCaution, drawNote, drawSubject } from './prose.js';
import { drawSignature } from './signature.js';
import { drawTable } from './table.js';
import { cleanAll } from './text.js';
import { TotalsBlock } from './totals.js';

/**
 * A tagged PDF of the model. The same model gives the same bytes, whatever the process printed before: a stored
 * document can be proven to be what was issued. Any text is safe to put in; what the font cannot draw shows as a
 * replacement mark.
 */
export function renderDocument(model: DocumentModel): Promise<Buffer> {
  const fit = cleanAll(model);
  const canvas = new Canvas(fit);
  const totals = new TotalsBlock(canvas, fit.totals);
  drawHeader(canvas, fit);
  drawParties(canvas, fit);
  drawSubject(canvas, fit);
  drawTable(canvas, fit.table, totals.height);
  totals.draw();
  for (const note of fit.notes) drawNote(canvas, note);
  if (fit.signature) drawSignature(canvas, fit.signature);
  for (const caution of fit.cautions) drawCaution(canvas, caution);
  drawFooters(canvas, fit.footer);
  return canvas.finish();
}
