import { Field, type FieldOptions } from './field.js';

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i;

export function isUuid(value: unknown): value is string {
  return typeof value === 'string' && UUID.test(value);
}

/** A reference to another resource of the same company. */
export function IdField(options: FieldOptions): PropertyDecorator {
  return Field(options, { type: 'string', format: 'uuid' }, (value) => (isUuid(value) ? null : 'must be an id: a UUID such as 0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f'));
}

/** The id that a client may choose for what it makes, so that it can repeat the request safely. */
export function OwnIdField(): PropertyDecorator {
  return IdField({
    description: 'The id of the new resource, chosen by the client (UUIDv7 of RFC 9562 keeps lists in the order of making). With it the request may be repeated safely: the same id and body answer 200 with the first result. Left out, the service chooses one.',
    optional: true,
    example: '0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f',
  });
}

/** A list of references, none of them twice. */
export function IdListField(options: FieldOptions & { readonly most: number }): PropertyDecorator {
  const { most } = options;
  return Field(options, { type: 'array', items: { type: 'string', format: 'uuid' }, maxItems: most, uniqueItems: true }, (value) => {
    if (!Array.isArray(value)) return 'must be a list of ids';
    if (value.length > most) return `must have at most ${most} ids; it has ${value.length}`;
    const bad = value.findIndex((item) => !isUuid(item));
    if (bad >= 0) return `/${bad}: must be an id: a UUID such as 0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f`;
    const ids = (value as string[]).map((id) => id.toLowerCase());
    const twice = ids.findIndex((id, index) => ids.indexOf(id) < index);
    return twice < 0 ? null : `/${twice}: is there twice; name each once`;
  });
}
