import { MAX_DEPTH_M, MAX_OUTLINE_POINTS, MAX_READINGS } from '../../domain/trade/index.js';
import { type QuantityKind, unitsOf } from '../../domain/quantity/index.js';

type Schema = Record<string, unknown>;

const LENGTH_UNIT: Schema = { type: 'string', enum: unitsOf('length'), description: 'The unit of every length beside it.' };

function quantity(kind: QuantityKind, description: string): Schema {
  return object({ value: { type: 'number', exclusiveMinimum: 0, description: 'The number, in the unit beside it.' }, unit: { type: 'string', enum: unitsOf(kind), description: 'The unit.' } }, description);
}

function object(properties: Record<string, Schema>, description: string, optional: readonly string[] = []): Schema {
  const required = Object.keys(properties).filter((name) => !optional.includes(name));
  return { type: 'object', description, required, properties, additionalProperties: false };
}

function pairs(description: string): Schema {
  return { type: 'array', minItems: 3, maxItems: MAX_OUTLINE_POINTS + 1, description, items: { type: 'array', minItems: 2, maxItems: 2, items: { type: 'number' } } };
}

/** The four ways to give an outline, for the API reference; the domain checks them. */
export const OUTLINE_SCHEMA: Schema = {
  oneOf: [
    object({ shape: { type: 'string', enum: ['rectangle', 'ellipse'], description: 'The shape.' }, length: quantity('length', 'The full length, not half of it.'), width: quantity('length', 'The full width, not half of it.') }, 'A rectangle or an ellipse.'),
    object({ shape: { type: 'string', enum: ['polygon'], description: 'The shape.' }, unit: LENGTH_UNIT, points: pairs('The edge points [x, y] in walking order, in `unit`; a list closed with its first point means the same.') }, 'A polygon that does not cross itself.'),
    object({ shape: { type: 'string', enum: ['two-stake'], description: 'The shape.' }, unit: LENGTH_UNIT, baseline: { type: 'number', exclusiveMinimum: 0, description: 'How far stake B stands from stake A, in `unit`.' }, ranges: pairs('The tape distances [from stake A, from stake B] to each edge point in walking order, in `unit`; all points lie on one side of the stakes.') }, 'Taped from two stakes.'),
    object({ shape: { type: 'string', enum: ['measured'], description: 'The shape.' }, area: quantity('area', 'The surface area.'), perimeter: quantity('length', 'The length of the edge.') }, 'Area and perimeter measured elsewhere.'),
  ],
};

const DEPTH: Schema = { type: 'number', minimum: 0 };

/** Rod readings, for the API reference; the domain checks them. */
export const PROBES_SCHEMA: Schema = {
  type: 'object',
  required: ['unit', 'readings'],
  additionalProperties: false,
  properties: {
    unit: { type: 'string', enum: unitsOf('length'), description: `The unit of the depths; no depth is over ${MAX_DEPTH_M} m.` },
    readings: {
      type: 'array',
      minItems: 1,
      maxItems: MAX_READINGS,
      description: 'The readings.',
      items: object({
        at: { type: 'array', minItems: 2, maxItems: 2, items: { type: 'number' }, description: 'Where, as [x, y] in the unit and axes of the outline.' },
        toSediment: { ...DEPTH, description: 'From the full-water line down to the top of the sediment, in `unit`.' },
        toBottom: { ...DEPTH, description: 'From the full-water line down to the hard bottom, in `unit`; not less than toSediment.' },
      }, 'One rod reading.', ['at']),
    },
  },
};
