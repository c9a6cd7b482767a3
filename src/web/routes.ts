/** Every address of Bundwalk, on one screen. */
import express from 'express';
import type { Diary } from '../diary/diary.ts';
import { addFactForm } from './forms/add-fact.ts';
import { changeFactForm } from './forms/change-fact.ts';
import { saveSeasonEntry } from './forms/save-season-entry.ts';
import { sendNote } from './forms/send-note.ts';
import { sendSeasonFile } from './forms/send-season-file.ts';
import { strikeFactForm } from './forms/strike-fact.ts';
import { takeStepForm } from './forms/take-step.ts';
import { undoCorrectionForm } from './forms/undo-correction.ts';
import { media } from './media.ts';
import { capturePage } from './pages/capture-page.ts';
import { factPage } from './pages/fact-page.ts';
import { followUpsPage } from './pages/follow-ups-page.ts';
import { notePage } from './pages/note-page.ts';
import { notesPage } from './pages/notes-page.ts';
import { plotFormPage } from './pages/plot-form-page.ts';
import { plotPage } from './pages/plot-page.ts';
import { plotsPage } from './pages/plots-page.ts';
import { seasonPage } from './pages/season-page.ts';
import { takeOutFile } from './pages/take-out-file.ts';
import { takeOutPage } from './pages/take-out-page.ts';
import { walkPage } from './pages/walk-page.ts';
import { makeReceiver } from './uploads.ts';

export function routes(diary: Diary): express.Router {
  const to = express.Router({ caseSensitive: true });
  const receive = makeReceiver(diary.mediaFolder);

  to.get('/', (_req, res) => res.redirect('/capture'));
  to.get('/capture', capturePage(diary));
  to.get('/walk', walkPage(diary));
  to.get('/plots', plotsPage(diary));
  to.get('/plots/:code', plotPage(diary));

  to.get('/follow-ups', followUpsPage(diary));
  to.post('/follow-ups/steps', takeStepForm(diary));

  to.get('/notes', notesPage(diary));
  to.post('/notes', sendNote(diary, receive));
  to.get('/notes/:id', notePage(diary));
  to.get('/notes/:id/fact', factPage(diary));
  to.post('/notes/:id/fact/add', addFactForm(diary));
  to.post('/notes/:id/fact/change', changeFactForm(diary));
  to.post('/notes/:id/fact/strike', strikeFactForm(diary));
  to.post('/corrections/:id/undo', undoCorrectionForm(diary));

  to.get('/season', seasonPage(diary));
  to.get('/season/plot', plotFormPage(diary));
  to.post('/season/file', sendSeasonFile(diary, receive));
  to.post('/season/:entry', saveSeasonEntry(diary));

  to.get('/take-out', takeOutPage(diary));
  to.get('/take-out/:file', takeOutFile(diary));
  to.get('/media/:hash/:copy', media(diary));
  return to;
}
