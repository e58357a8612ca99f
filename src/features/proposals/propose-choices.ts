import { canBeQuoted } from './draft.js';
import { type Fitting, type Line, MOST_ALTERNATIVES } from './choice.js';
import type { ProposedParts } from './propose-parts.js';
import type { ProposedChoiceView, ProposedLineView, ProposedPartView } from './proposals.dto.js';

const MOST_RULED_OUT = 20;

/** What a scope takes from the catalog as it is shown, with what is missing and what to be careful about. */
export function proposeChoices({ needs, warnings }: ProposedParts, costCode: string): { choices: ProposedChoiceView[]; warnings: string[] } {
  const told: string[] = [];
  const nothing: string[] = [];
  const choices = needs.map(({ kind, what, proposed }): ProposedChoiceView => {
    if ('missing' in proposed) {
      told.push(proposed.missing);
      return { kind, what, suggested: null, alternatives: [], ruledOut: [] };
    }
    const [first, ...others] = proposed.fitting;
    if (first === undefined) nothing.push(what);
    else told.push(...first.cautions, ...tooMuch(first, costCode));
    const more = proposed.ruledOut.length - MOST_RULED_OUT;
    if (more > 0) told.push(`${more} more would not do for ${what}; GET /v1/parts?kind=${kind} lists them.`);
    return {
      kind,
      what,
      suggested: first === undefined ? null : toPartView(first, costCode),
      alternatives: others.slice(0, MOST_ALTERNATIVES).map((fitting) => toPartView(fitting, costCode)),
      ruledOut: proposed.ruledOut.slice(0, MOST_RULED_OUT).map(({ part, reason }) => ({ partId: part.id, name: part.name, reason })),
    };
  });
  if (nothing.length > 0) told.push(`The catalog has nothing to suggest for: ${nothing.join('; ')}.`);
  return { choices, warnings: [...new Set([...told, ...warnings])] };
}

function tooMuch({ part, quantity, also }: Fitting, costCode: string): string[] {
  const lines = [{ part, quantity }, ...also].filter((line) => !canBeQuoted(toLineView(line, costCode)));
  return lines.map((line) => `A line of a quote does not take ${line.quantity.toFixed()} ${line.part.unit} of ${line.part.name}; the draft leaves it out.`);
}

function toPartView(fitting: Fitting, costCode: string): ProposedPartView {
  return { ...toLineView(fitting, costCode), why: fitting.why, also: fitting.also.map((line) => toLineView(line, costCode)) };
}

function toLineView({ part, quantity }: Line, costCode: string): ProposedLineView {
  return { partId: part.id, name: part.name, quantity: quantity.toFixed(), unit: part.unit, costCode };
}
