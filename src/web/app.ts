import express from 'express';
import type { Diary } from '../diary/diary.ts';
import { type Assets, readAssets } from './assets.ts';
import { answerErrors, unknownPage } from './errors.ts';
import { routes } from './routes.ts';
import { refuseCrossSite, safetyHeaders } from './safety.ts';

export interface AppOptions {
  /** Where the scripts for the browser were built. */
  buildFolder: string;
}

/** The whole web application over one diary; nothing is read from the environment. */
export function makeApp(diary: Diary, options: AppOptions): express.Express {
  const app = express();
  const assets: Assets = readAssets(options.buildFolder);
  app.disable('x-powered-by');
  app.set('query parser', 'simple');
  app.locals.assets = assets;
  app.locals.diary = diary;
  app.use(safetyHeaders);
  app.use(refuseCrossSite);
  app.use('/assets', assets.serve);
  app.use(express.urlencoded({ extended: false, limit: '2mb', parameterLimit: 500 }));
  app.use(routes(diary));
  app.use(unknownPage);
  app.use(answerErrors);
  return app;
}
