/**
 * What a printed document says, as plain data. It knows no business word, so that a quote, an invoice or a care sheet
 * is laid out by the same code and can be compared in a test without reading a PDF.
 */
export interface DocumentModel {
  readonly paperSize: 'letter' | 'a4';
  /** BCP 47 tag of the language the document's own words are in; a screen reader picks its voice by it. */
  readonly language: string;
  /** Shown as the window title. Never put a customer's words here: pdfkit writes it into XML. */
  readonly title: string;
  /** RFC 3339. The only time in the file, so that the same model gives the same bytes for ever. */
  readonly issuedAt: string;
  readonly company: CompanyBlock;
  readonly heading: string;
  /** Stands under the heading: the document's number. */
  readonly reference: string;
  /** The one thing to see first: until when it holds, or what is owed. */
  readonly status?: string;
  readonly parties: readonly Party[];
  readonly facts: readonly Fact[];
  readonly subject: string;
  readonly introduction: readonly string[];
  readonly table: DocumentTable;
  readonly totals: readonly Total[];
  readonly notes: readonly Note[];
  readonly cautions: readonly Caution[];
  readonly signature?: Signature;
  /** At the foot of each page, so that a loose sheet can be put back. */
  readonly footer: string;
}

export interface CompanyBlock {
  readonly name: string;
  /** Address, phone, email, licence: each its own line. */
  readonly lines: readonly string[];
}

export interface Party {
  readonly heading: string;
  readonly lines: readonly string[];
}

export interface Fact {
  readonly label: string;
  readonly value: string;
}

export interface DocumentTable {
  readonly columns: readonly TableColumn[];
  readonly sections: readonly TableSection[];
}

export interface TableColumn {
  readonly key: string;
  readonly header: string;
  /** Right-aligned columns are as wide as their widest cell; left-aligned ones share the rest by weight. */
  readonly align: 'left' | 'right';
  readonly weight: number;
}

/** The text of each column by its key; a missing key is an empty cell. */
export type TableRow = Readonly<Record<string, string>>;

export interface TableSection {
  readonly title?: string;
  readonly rows: readonly TableRow[];
  readonly subtotal?: Fact;
}

export interface Total {
  readonly label: string;
  readonly value: string;
  readonly strong: boolean;
}

export interface Note {
  readonly heading: string;
  readonly paragraphs: readonly string[];
  /** Steps in an order: each paragraph hangs from its number. */
  readonly numbered?: boolean;
}

export interface Caution {
  readonly heading: string;
  readonly lead: string;
  readonly items: readonly string[];
}

export interface Signature {
  readonly heading: string;
  readonly statement: string;
  /** A row of lines to write on before those of the signature. */
  readonly above?: readonly SignatureField[];
  /** Each is a line to write on; they share the width by weight. */
  readonly fields: readonly SignatureField[];
}

export interface SignatureField {
  readonly label: string;
  readonly weight: number;
}
