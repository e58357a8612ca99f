/** An element of the document's logical structure, the tree that a screen reader walks. */
export interface Tag {
  readonly type: string;
  readonly element: PDFKit.PDFStructureElement;
}

type ElementOptions = PDFKit.Mixins.StructureElementOptions & { scope?: 'Column' | 'Row' };

/**
 * The tagged structure of one PDF. Everything drawn is either content of a tag or an artifact; what is neither makes
 * a tagged file lie about itself.
 */
export class Tags {
  readonly root: Tag;

  constructor(private readonly pdf: PDFKit.PDFDocument) {
    this.root = { type: 'Document', element: pdf.struct('Document') };
    pdf.addStructure(this.root.element);
  }

  open(parent: Tag, type: string, options: ElementOptions = {}): Tag {
    const element = this.pdf.struct(type, options);
    parent.element.add(element);
    return { type, element };
  }

  /** Content of an open tag; once for each page it stands on. */
  mark(tag: Tag, draw: () => void): void {
    tag.element.add(this.pdf.markStructureContent(tag.type));
    draw();
    this.pdf.endMarkedContent();
  }

  close(tag: Tag): void {
    tag.element.end();
  }

  leaf(parent: Tag, type: string, draw: () => void, options: ElementOptions = {}): void {
    const tag = this.open(parent, type, options);
    this.mark(tag, draw);
    this.close(tag);
  }

  /** Rules, page numbers, repeated table headers: nothing to be read aloud. */
  artifact(type: 'Layout' | 'Pagination', draw: () => void): void {
    this.pdf.markContent('Artifact', { type });
    draw();
    this.pdf.endMarkedContent();
  }
}
