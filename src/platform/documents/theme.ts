import type { Weight } from './fonts.js';

/** How a line of text looks. Sizes and leading in points. */
export interface TextStyle {
  readonly weight: Weight;
  readonly size: number;
  readonly leading: number;
  readonly color: string;
}

// Every gray and the accent keep a contrast of at least 4.5:1 on white, so that a photocopy can still be read.
const INK = '#1d2528';
const MUTED = '#566166';
export const ACCENT = '#1b5a68';
export const HAIRLINE = '#cbd3d6';
export const WRITING_LINE = '#7d888d';

function style(weight: Weight, size: number, leading: number, color: string): TextStyle {
  return { weight, size, leading, color };
}

export const STYLES = {
  company: style('bold', 14, 18, ACCENT),
  companyLine: style('regular', 8.5, 11.5, MUTED),
  heading: style('bold', 24, 27, INK),
  reference: style('regular', 10.5, 14, INK),
  status: style('bold', 9.5, 13, ACCENT),
  label: style('bold', 7.5, 12, MUTED),
  party: style('regular', 9.5, 13, INK),
  partyName: style('bold', 9.5, 13, INK),
  fact: style('regular', 9, 13, INK),
  factLabel: style('regular', 9, 13, MUTED),
  subject: style('bold', 13, 17, INK),
  body: style('regular', 9.5, 13.5, INK),
  columnHeader: style('bold', 8, 11, MUTED),
  section: style('bold', 9.5, 13, ACCENT),
  continued: style('regular', 9, 13, MUTED),
  cell: style('regular', 9, 12.5, INK),
  subtotalLabel: style('regular', 9, 12.5, MUTED),
  subtotal: style('bold', 9, 12.5, INK),
  total: style('regular', 9.5, 13.5, INK),
  totalStrong: style('bold', 12, 16, INK),
  blockHeading: style('bold', 10, 14, ACCENT),
  small: style('regular', 8.5, 12, INK),
  footer: style('regular', 7.5, 10, MUTED),
} as const satisfies Record<string, TextStyle>;

/** Points; pdfkit's own page names would do, but the numbers are needed to lay out before a page exists. */
export const PAPER = { letter: [612, 792], a4: [595.28, 841.89] } as const;

/** Points. The foot leaves room for the page number on printers that cannot reach the last half inch. */
export const MARGIN = { side: 54, top: 44, bottom: 52, footer: 34 } as const;
