import { randomUUID } from 'node:crypto';

/** An id for a form that is about to be filled in: sending the form twice then does its work once. */
export const freshId = (): string => randomUUID();
