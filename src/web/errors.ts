/** Everything that ends badly is answered here, in words: as a page, or as JSON where a script asked for it. */
import type { ErrorRequestHandler, Request, RequestHandler, Response } from 'express';
import { isRefusal, type Refusal } from '../diary/diary.ts';
import { showPage } from './show-page.ts';

export { isRefusal };

export const wantsJson = (req: Request): boolean => req.accepts(['html', 'json']) === 'json';

export const statusOf = (refusal: Refusal): number => refusal.status ?? 400;

/** A refusal that has no form to stand in. */
export async function showRefusal(req: Request, res: Response, refusal: Refusal): Promise<void> {
  const status = statusOf(refusal);
  if (wantsJson(req)) {
    res.status(status).json({ refused: refusal.refused, ...(refusal.field && { field: refusal.field }) });
    return;
  }
  const title = status === 404 ? 'Not here' : 'This could not be done';
  await showPage(req, res, 'refused', { title, place: null, words: refusal.refused }, status);
}

export const unknownPage: RequestHandler = (req, res) =>
  showRefusal(req, res, {
    refused: `There is nothing at ${req.path.slice(0, 120)}. Nothing was changed. Go on from one of these places.`,
    status: 404,
  });

export const answerErrors: ErrorRequestHandler = async (error, req, res, next) => {
  if (res.headersSent) return next(error);
  const refusal = inWords(error);
  if ((refusal.status ?? 500) >= 500) console.error(error);
  try {
    await showRefusal(req, res, refusal);
  } catch (again) {
    console.error(again);
    res
      .status(refusal.status ?? 500)
      .type('text/plain')
      .send(refusal.refused);
  }
};

interface Thrown {
  status?: number;
  type?: string;
  code?: string;
}

function inWords(error: unknown): Refusal {
  const { status, type, code } = (error ?? {}) as Thrown;
  if (error instanceof URIError) {
    return {
      refused: 'This address cannot be read: it holds a broken % sign. Nothing was changed.',
      status: 400,
    };
  }
  if (type === 'entity.too.large') {
    return {
      refused: 'What was sent is too large for this form. Nothing was changed; send it in smaller parts.',
      status: 413,
    };
  }
  if (code === 'ENOSPC') {
    return {
      refused:
        'The disk of the server is full, so nothing was kept. Your words are still in this browser: free some space, then send again.',
      status: 507,
    };
  }
  if (status && status >= 400 && status < 500) {
    return {
      refused:
        'What was sent could not be read, so nothing was changed. Go back, reload the page and send it again.',
      status,
    };
  }
  return {
    refused:
      'Something went wrong in Bundwalk itself; it was written to the server’s log. What was kept before is still there. Go back and try once more.',
    status: 500,
  };
}
