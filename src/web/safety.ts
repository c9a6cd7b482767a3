import type { RequestHandler } from 'express';

const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Headers of every answer: only our own files run, nothing is guessed, nothing is framed, no address leaks. */
export const safetyHeaders: RequestHandler = (_req, res, next) => {
  res.set({
    'Content-Security-Policy': POLICY,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'same-origin',
    'X-Frame-Options': 'DENY',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Permissions-Policy': 'camera=(self), microphone=(self), geolocation=(self)',
    'Cache-Control': 'no-cache',
  });
  next();
};

/**
 * Another site may not write here through somebody's browser. Browsers send Sec-Fetch-Site to secure addresses and
 * Origin with every post; a program that sends neither is no browser and carries nobody's cookies.
 */
export const refuseCrossSite: RequestHandler = (req, res, next) => {
  if (req.method === 'GET' || req.method === 'HEAD' || comesFromHere(req)) return next();
  const words =
    'This was sent from another site, so nothing was changed. Open Bundwalk itself and do it there.';
  // The body is not read: the connection ends with the answer.
  res.status(403).set('Connection', 'close');
  if (req.accepts(['html', 'json']) === 'json') res.json({ refused: words });
  else res.type('text/plain').send(words);
};

function comesFromHere(req: Parameters<RequestHandler>[0]): boolean {
  const site = req.get('sec-fetch-site');
  if (site) return site === 'same-origin' || site === 'none';
  const origin = req.get('origin');
  if (!origin) return true;
  return URL.canParse(origin) && new URL(origin).host === req.get('host');
}
