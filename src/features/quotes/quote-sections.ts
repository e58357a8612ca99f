import type { Violation } from '../../platform/http/problem.js';
import { invalidInput, notPossible } from '../../platform/http/problems.js';
import type { Asked } from './asked.js';

/** A part of the scope that a customer may take or leave as a whole. */
export interface QuoteSection {
  readonly key: string;
  readonly title: string;
  /** From 1; a later one can be left for later. */
  readonly phase: number;
  /** Whether it is left out unless it is asked for. */
  readonly optional: boolean;
}

/**
 * The sections that were asked for, with what was left out filled in.
 * @throws Problem 400 for a key or a title that is there twice, 422 for an item that names a section that is not there
 */
export function sectionsOf(asked: Asked): QuoteSection[] {
  const sections = (asked.sections ?? []).map(({ key, title, phase, optional }) => ({ key, title, phase: phase ?? 1, optional: optional ?? false }));
  const keys = sections.map(({ key }) => key);
  const twice = keys.flatMap((key, index) => (keys.indexOf(key) < index ? [{ pointer: `/sections/${index}/key`, detail: `is the key of section ${keys.indexOf(key)} already; give each section its own` }] : []));
  if (twice.length > 0) throw invalidInput(twice);
  const alike = sameTitles(sections);
  if (alike.length > 0) throw invalidInput(alike);
  const lost = [...lostIn('labor', asked.labor, keys), ...lostIn('parts', asked.parts, keys), ...lostIn('other', asked.other, keys)];
  if (lost.length > 0) throw notPossible('An item names a section that the quote does not have. Add the section, or name another one.', lost);
  return sections;
}

/** The signed paper names what is taken by its title, so two sections that read alike could not be told apart. */
function sameTitles(sections: readonly QuoteSection[]): Violation[] {
  const titles = sections.map(({ title }) => title.trim().toLowerCase());
  return titles.flatMap((title, index) => (titles.indexOf(title) < index ? [{ pointer: `/sections/${index}/title`, detail: `is the title of section ${titles.indexOf(title)} already; the customer names sections by their titles, so give each its own` }] : []));
}

/** Whether a line is part of what is accepted when nothing is said; one without a section always is. */
export function isBase(line: { readonly section: string | null }, sections: readonly QuoteSection[]): boolean {
  return !sections.some(({ key, optional }) => optional && key === line.section);
}

function lostIn(list: string, items: readonly { readonly section?: string | null }[] | null | undefined, keys: readonly string[]): Violation[] {
  const there = keys.length === 0 ? 'the quote has no sections' : `the sections are ${keys.join(', ')}`;
  return (items ?? []).flatMap(({ section }, index) => (!section || keys.includes(section) ? [] : [{ pointer: `/${list}/${index}/section`, detail: `is no section of the quote; ${there}` }]));
}
