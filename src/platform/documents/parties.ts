import type { Canvas } from './canvas.js';
import type { DocumentModel, Fact, Party } from './model.js';
import { STYLES } from './theme.js';
import { textWidth, wrap } from './wrap.js';

const GAP = 24;
/** An address that goes on without end would run off the page, and take the price with it. */
const MOST_LINES = 12;

/** For whom and where on the left, the dates and numbers on the right, in columns of one width. */
export function drawParties(canvas: Canvas, model: DocumentModel): void {
  const columns = model.parties.length + 1;
  const width = (canvas.width - GAP * (columns - 1)) / columns;
  const top = canvas.y;
  const bottoms = model.parties.map((party, index) => drawParty(canvas, party, canvas.left + index * (width + GAP), top, width));
  bottoms.push(drawFacts(canvas, model.facts, canvas.right - width, top, width));
  canvas.y = Math.max(...bottoms) + 14;
}

function drawParty(canvas: Canvas, party: Party, x: number, top: number, width: number): number {
  const [name = '', ...rest] = party.lines;
  // The space keeps the name apart from the address for who reads the text alone.
  const nameLines = wrap(name, STYLES.partyName, width).slice(0, MOST_LINES).map((line) => `${line} `);
  const lines = shortened(rest.flatMap((line) => wrap(line, STYLES.party, width)));
  canvas.tags.leaf(canvas.tags.root, 'P', () => canvas.line(party.heading, x, top, STYLES.label));
  const y = top + STYLES.label.leading + 2;
  const below = y + nameLines.length * STYLES.partyName.leading;
  canvas.tags.leaf(canvas.tags.root, 'P', () => {
    canvas.lines(nameLines, x, y, STYLES.partyName);
    canvas.lines(lines, x, below, STYLES.party);
  });
  return below + lines.length * STYLES.party.leading;
}

function shortened(lines: readonly string[]): readonly string[] {
  return lines.length > MOST_LINES ? [...lines.slice(0, MOST_LINES - 1), '…'] : lines;
}

function drawFacts(canvas: Canvas, facts: readonly Fact[], x: number, top: number, width: number): number {
  let y = top;
  for (const fact of facts) {
    const label = `${fact.label} `;
    const lines = wrap(fact.value, STYLES.fact, width - textWidth(label, STYLES.factLabel) - 6);
    const at = y;
    canvas.tags.leaf(canvas.tags.root, 'P', () => {
      canvas.line(label, x, at, STYLES.factLabel);
      canvas.linesRight(lines, x + width, at, STYLES.fact);
    });
    y += lines.length * STYLES.fact.leading + 1.5;
  }
  return y;
}
