import { BATCH_LIMITS, type LimitedField, WHOLE_NUMBER_FIELDS } from '../job/batch/limits.js';
import { batchShape } from './shape/batch.js';
import { kitchenShape } from './shape/kitchen.js';
import { isGroup, requiredNames } from './shape/look-at.js';
import type { Fields, Shape } from './shape/types.js';

/** A JSON Schema as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schemas of the documents by file name, for editors and for other languages. They are
 * written when the library is built; nothing of this file is shipped.
 */
export function jsonSchemas(): Readonly<Record<string, JsonSchema>> {
  return {
    'batch.json': documentSchema(batchShape, {
      $id: 'urn:vitrose:batch:1',
      title: 'vitrose.batch/1',
      description:
        'What the cook of a batch of boiled sweets has and wants. Temperatures °C, masses g, pressures Pa, fractions 0 to 1.',
    }),
    'kitchen.json': documentSchema(kitchenShape, {
      $id: 'urn:vitrose:kitchen:1',
      title: 'vitrose.kitchen/1',
      description:
        'What stays the same from batch to batch: the air of a kitchen, its thermometer, hob, pan, room, water and mould.',
    }),
  };
}

function documentSchema(shape: Shape, head: JsonSchema): JsonSchema {
  const definitions = new Map<Shape, { readonly name: string; readonly schema: JsonSchema }>();

  /** A shape that stands in several branches is described once and pointed to. */
  const under = (name: string, held: Shape, path: readonly string[]): JsonSchema => {
    if (usesOf(held, shape) < 2) return schemaOf(held, path);
    const known = definitions.get(held) ?? { name, schema: schemaOf(held, path) };
    definitions.set(held, known);
    return { $ref: `#/$defs/${known.name}` };
  };

  const objectSchema = (fields: Fields, path: readonly string[]): JsonSchema => ({
    type: 'object',
    properties: Object.fromEntries(
      Object.entries(fields).map(([key, held]) => {
        const name = key.replace('?', '');
        return [name, under(name, held, [...path, name])];
      }),
    ),
    required: requiredNames(fields),
    additionalProperties: false,
  });

  const schemaOf = (one: Shape, path: readonly string[]): JsonSchema => {
    if (one === 'number') return numberSchema(path.join('/'));
    if (typeof one === 'string') return { type: one };
    if (!isGroup(one)) return one.length === 1 ? { const: one[0] } : { enum: one };
    if ('fields' in one) return objectSchema(one.fields, path);
    if ('either' in one) return { oneOf: one.either.map((branch) => schemaOf(branch, path)) };
    if ('list' in one) {
      return { type: 'array', items: schemaOf(one.list, [...path, '*']), maxItems: one.most };
    }
    return {
      type: 'object',
      ...(one.names && { propertyNames: { enum: one.names } }),
      additionalProperties: schemaOf(one.entries, [...path, '*']),
    };
  };

  const body = schemaOf(shape, []);
  const parts = [...definitions.values()].map(({ name, schema }) => [name, schema] as const);
  if (new Set(parts.map(([name]) => name)).size < parts.length) {
    throw new Error('Two shapes that are used more than once stand under the same name.');
  }
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...head,
    ...body,
    ...(parts.length > 0 && { $defs: Object.fromEntries(parts) }),
  };
}

function numberSchema(path: string): JsonSchema {
  const [minimum, maximum] = BATCH_LIMITS[path as LimitedField];
  const isCounted = (WHOLE_NUMBER_FIELDS as readonly string[]).includes(path);
  return { type: isCounted ? 'integer' : 'number', minimum, maximum };
}

/** How often one and the same list of words or group of fields stands in a shape. */
function usesOf(wanted: Shape, within: Shape): number {
  if (typeof wanted === 'string') return 0;
  if (within === wanted) return 1;
  if (!isGroup(within)) return 0;
  const held: readonly Shape[] =
    'fields' in within
      ? Object.values(within.fields)
      : 'either' in within
        ? within.either
        : ['list' in within ? within.list : within.entries];
  return held.reduce((total, one) => total + usesOf(wanted, one), 0);
}
