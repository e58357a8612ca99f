import type { DocumentLine } from '../../src/features/customer-documents/index.js';
import type { DocumentScope, DocumentSection } from '../../src/features/quotes/document-scope.js';
import { labor, part, quoteInput, sums } from './samples.js';

const CLEANOUT = labor('Clean-out', 'Drain, move fish and frogs, take out sediment, rinse down', '20.50', '1394.00');
const CIRCULATION = [
  labor('Filtration', 'Set the skimmer and plumb the loop', '9.00', '612.00'),
  labor('Plumbing', 'Trench and lay the return pipe', '4.00', '272.00'),
  part('Filtration', 'Skimmer with basket and brush filter', '1', 'each', '556.67', '556.67'),
  part('Plumbing', 'Flexible pipe, 2 in', '60', 'ft', '3.10', '186.00'),
];
const LIGHTS = [part('Lighting', 'Lights at the edge', '4', 'each', '88.40', '353.60')];
const LINER = [part('Liner', 'Underlayment, non-woven, 8 oz', '640', 'ft2', '1.22', '780.80')];
const WATERFALL = [
  labor('Waterfall', 'Build the spillway of the stone that is there', '16.00', '1088.00'),
  part('Waterfall', 'Asynchronous pump, 2,600 gph', '2', 'each', '242.32', '484.64'),
];
const FISH = [labor('Planting', 'Divide and repot the lilies that are there', '3.00', '204.00')];

/** Two phases with a base section each, an option in either, and one more that is not taxed. */
export function sectionedInput(change: (scope: DocumentScope) => Partial<DocumentScope> = () => ({})) {
  const scope = {
    always: [CLEANOUT],
    sections: [
      section('Waterfall and stream', 2, true, WATERFALL),
      section('Skimmer and circulation', 1, false, CIRCULATION),
      section('Lights', 1, true, LIGHTS),
      section('Liner', 2, false, LINER),
      section('Water lilies', 2, true, FISH),
    ],
  };
  return quoteInput({ ...sums([CLEANOUT, ...CIRCULATION, ...LINER], '6.25'), scope: { ...scope, ...change(scope) } });
}

export function section(title: string, phase: number, optional: boolean, lines: readonly DocumentLine[]): DocumentSection {
  const { netTotal, taxes, grossTotal } = sums(lines, '6.25');
  return { title, phase, optional, lines, netTotal, taxTotal: taxes[0]?.tax ?? '0.00', grossTotal };
}
