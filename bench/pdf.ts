import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { composeQuoteDocument, type QuoteDocumentInput } from '../src/features/quotes/quote-document.js';
import { renderDocument, type DocumentModel } from '../src/platform/documents/index.js';
import { median, type Measurement } from './measure.js';
import { manyLines, quoteInput, sums } from '../test/documents/samples.js';

const LINES = 60;
const WARM_UP = 10;
const ROUNDS = 40;

/**
 * A 60-line quote composed, laid out, tagged and written, beside a bare pdfkit program that draws the same strings
 * with the same font, opened from memory for each document as pdfkit's own guide does it. Medians, in milliseconds,
 * both in turn in one process; each round has amounts of its own, so that no remembered word shapes flatter us.
 */
export async function benchPdf(): Promise<Measurement> {
  const regular = readFileSync(createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'));
  const ours: number[] = [];
  const bare: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const input = quoteInput(sums(manyLines(LINES, round), '6.25'));
    const strings = textsOf(composeQuoteDocument(input));
    const [mine, other] = [await timed(() => ourQuote(input)), await timed(() => bareProgram(strings, regular))];
    if (round < WARM_UP) continue;
    ours.push(mine);
    bare.push(other);
  }
  const [own, yardstick] = [median(ours), median(bare)];
  return { name: `PDF of a ${LINES}-line quote`, ours: own, yardstick, ratio: own / yardstick, unit: 'ms', target: 'ratio under 2', met: own / yardstick < 2 };
}

function ourQuote(input: QuoteDocumentInput): Promise<Buffer> {
  return renderDocument(composeQuoteDocument(input));
}

function bareProgram(strings: readonly string[], font: Buffer): Promise<Buffer> {
  const pdf = new PDFDocument({ size: 'letter', margin: 54 });
  const chunks: Buffer[] = [];
  pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
  const done = new Promise<Buffer>((resolve) => pdf.on('end', () => resolve(Buffer.concat(chunks))));
  pdf.font(font).fontSize(9);
  for (const text of strings) pdf.text(text);
  pdf.end();
  return done;
}

/** Every string that our document shows, in order. */
function textsOf(value: DocumentModel | DocumentModel[keyof DocumentModel]): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object') return [];
  return Object.values(value).flatMap((each) => textsOf(each as DocumentModel[keyof DocumentModel]));
}

async function timed(work: () => Promise<Buffer>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
