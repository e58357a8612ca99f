import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadItem {
  readonly text: string;
  /** Points from the left and from the bottom of the page. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface ReadPdf {
  readonly pages: readonly (readonly ReadItem[])[];
  /** All that is printed, page after page in drawing order, with single spaces. */
  readonly text: string;
  readonly title: string;
  readonly xmp: string;
  readonly language: string;
  readonly roles: readonly string[];
}

/** Reads a PDF with a parser that has nothing to do with the writer. */
export async function readPdf(bytes: Buffer): Promise<ReadPdf> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await task.promise;
  const pages: ReadItem[][] = [];
  const roles: string[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const content = await page.getTextContent();
    pages.push(content.items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [readItem(item)] : [])));
    roles.push(...rolesOf(await page.getStructTree()));
  }
  const info = (await pdf.getMetadata()).info as Record<string, unknown>;
  await task.destroy();
  const text = pages.flat().map((item) => item.text).join(' ').replace(/\s+/gu, ' ');
  return { pages, text, title: String(info.Title), xmp: xmpOf(bytes), language: String(info.Language), roles };
}

export function pageText(page: readonly ReadItem[] | undefined): string {
  return (page ?? []).map((item) => item.text).join(' ').replace(/\s+/gu, ' ');
}

function readItem(item: { str: string; transform: number[]; width: number }): ReadItem {
  return { text: item.str, x: item.transform[4] ?? 0, y: item.transform[5] ?? 0, width: item.width };
}

function rolesOf(node: unknown): string[] {
  if (typeof node !== 'object' || node === null || !('role' in node)) return [];
  const children = 'children' in node && Array.isArray(node.children) ? node.children : [];
  return [String(node.role), ...children.flatMap(rolesOf)];
}

/** The XML metadata, which is written uncompressed. */
function xmpOf(bytes: Buffer): string {
  const text = bytes.toString('utf8');
  return text.slice(text.indexOf('<x:xmpmeta'), text.indexOf('</x:xmpmeta>') + '</x:xmpmeta>'.length);
}
