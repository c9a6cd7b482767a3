/** What a form sent, as plain strings, whatever was sent. */
import type { Request } from 'express';

export type Form = Record<string, string>;

/** The form's fields; of a field that came several times, the last one that is not empty. */
export function formOf(req: Request): Form {
  const form: Form = {};
  for (const [name, value] of Object.entries((req.body ?? {}) as Record<string, unknown>)) {
    form[name] = typeof value === 'string' ? value : lastFilled(value);
  }
  return form;
}

/** Every value of one field, for fields that may come several times. */
export function allOf(req: Request, name: string): string[] {
  const value = ((req.body ?? {}) as Record<string, unknown>)[name];
  return (Array.isArray(value) ? value : [value]).filter((one): one is string => typeof one === 'string');
}

const lastFilled = (value: unknown): string =>
  Array.isArray(value) ? (value.filter((one) => typeof one === 'string' && one !== '').at(-1) ?? '') : '';

/** One word or phrase of the address's query; empty where it was left out or came twice. */
export const asked = (req: Request, name: string): string => {
  const value = req.query[name];
  return typeof value === 'string' ? value.slice(0, 300) : '';
};

/** The page to go back to: a path of ours, never another site. */
export function backTo(req: Request, otherwise: string): string {
  const path = formOf(req).back ?? '';
  return /^\/(?![/\\])[^\s\\]*$/.test(path) ? path : otherwise;
}
