/** Pieces of a JSON Schema: every mapping is closed, and its keys are needed unless they are named as optional. */
export type Schema = Readonly<Record<string, unknown>>;

export function text(description?: string): Schema {
  return description === undefined ? { type: 'string' } : { type: 'string', description };
}

export function list(items: Schema): Schema {
  return { type: 'array', items };
}

export function ref(name: string): Schema {
  return { $ref: `#/$defs/${name}` };
}

export function recordOf(name: string, description: string): Schema {
  return { type: 'object', additionalProperties: ref(name), description };
}

export function object(required: Readonly<Record<string, Schema>>, optional: Readonly<Record<string, Schema>> = {}): Schema {
  return { type: 'object', properties: { ...required, ...optional }, required: Object.keys(required), additionalProperties: false };
}
