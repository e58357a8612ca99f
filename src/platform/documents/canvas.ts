import PDFDocument from 'pdfkit';
import { face, type Weight } from './fonts.js';
import type { DocumentModel } from './model.js';
import { Tags } from './tags.js';
import { MARGIN, PAPER, type TextStyle } from './theme.js';
import { textWidth } from './wrap.js';

const WEIGHTS: readonly Weight[] = ['regular', 'bold'];

/**
 * Pages to draw on, top to bottom, in points from the upper left corner. The only place that talks to pdfkit (beside
 * the tags), with its text flow unused: that one breaks pages where it likes.
 */
export class Canvas {
  readonly left = MARGIN.side;
  readonly width: number;
  readonly bottom: number;
  readonly tags: Tags;
  /** Where the next thing goes. */
  y: number = MARGIN.top;
  private readonly pdf: PDFKit.PDFDocument;
  private readonly pageHeight: number;
  private color = '';

  constructor(model: DocumentModel) {
    const [pageWidth, pageHeight] = PAPER[model.paperSize];
    this.width = pageWidth - 2 * MARGIN.side;
    this.pageHeight = pageHeight;
    this.bottom = pageHeight - MARGIN.bottom;
    this.pdf = open(model, [pageWidth, pageHeight]);
    this.tags = new Tags(this.pdf);
    this.newPage();
  }

  get right(): number {
    return this.left + this.width;
  }

  get bodyHeight(): number {
    return this.bottom - MARGIN.top;
  }

  get atTop(): boolean {
    return this.y === MARGIN.top;
  }

  get room(): number {
    return this.bottom - this.y;
  }

  newPage(): void {
    this.pdf.addPage();
    this.color = '';
    this.y = MARGIN.top;
  }

  /** A new page unless `height` points are left. */
  ensure(height: number): void {
    if (height > this.room) this.newPage();
  }

  /** One line, already wrapped, its line box beginning at `y`. */
  line(text: string, x: number, y: number, style: TextStyle): void {
    if (this.color !== style.color) this.pdf.fillColor(style.color);
    this.color = style.color;
    // An unbreakable space has done its work when the line is wrapped; a plain one copies out of the file cleanly.
    const drawn = text.replaceAll('\u00A0', ' ');
    const baseline = y + style.leading / 2 + style.size * 0.36;
    this.pdf.font(style.weight, style.size).text(drawn, x, baseline, { lineBreak: false, baseline: 'alphabetic' });
  }

  lineRight(text: string, right: number, y: number, style: TextStyle): void {
    this.line(text, right - textWidth(text, style), y, style);
  }

  /** Wrapped lines one below the other. The space at their ends keeps words apart for who reads the text alone. */
  lines(lines: readonly string[], x: number, y: number, style: TextStyle): void {
    lines.forEach((text, index) => {
      if (text !== '') this.line(index < lines.length - 1 ? `${text} ` : text, x, y + index * style.leading, style);
    });
  }

  linesRight(lines: readonly string[], right: number, y: number, style: TextStyle): void {
    lines.forEach((text, index) => this.lineRight(text, right, y + index * style.leading, style));
  }

  rule(x: number, y: number, width: number, thickness: number, color: string): void {
    this.tags.artifact('Layout', () => {
      this.pdf.rect(x, y, width, thickness).fill(color);
      this.color = '';
    });
  }

  /** Draws at the foot of every page, when it is known how many there are. */
  onEveryPage(draw: (page: number, pages: number, y: number) => void): void {
    const { count } = this.pdf.bufferedPageRange();
    for (let index = 0; index < count; index += 1) {
      this.pdf.switchToPage(index);
      this.color = '';
      this.tags.artifact('Pagination', () => draw(index + 1, count, this.pageHeight - MARGIN.footer));
    }
  }

  finish(): Promise<Buffer> {
    this.tags.close(this.tags.root);
    const chunks: Buffer[] = [];
    const done = new Promise<Buffer>((resolve, reject) => {
      this.pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
      this.pdf.on('end', () => resolve(Buffer.concat(chunks)));
      this.pdf.on('error', reject);
    });
    this.pdf.end();
    return done;
  }
}

function open(model: DocumentModel, size: [number, number]): PDFKit.PDFDocument {
  const instant = new Date(model.issuedAt);
  const options = {
    size,
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    pdfVersion: '1.7' as const,
    tagged: true,
    displayTitle: true,
    lang: model.language,
    info: { Title: metadataText(model.title), Creator: 'Rillbook', CreationDate: instant },
    // No default font: it would be one of those that cannot spell most names.
    font: null as unknown as string,
  };
  const pdf = new PDFDocument(options);
  for (const weight of WEIGHTS) {
    // pdfkit takes a parsed font, though its published types do not say so yet.
    pdf.registerFont(weight, face(weight).source as unknown as string);
  }
  return pdf;
}

/** pdfkit copies the title into XML as it is: without this, a title with `<` makes the metadata unreadable. */
function metadataText(text: string): string {
  return text.replace(/[<>&\p{C}]/gu, ' ').replace(/ +/gu, ' ').trim();
}
