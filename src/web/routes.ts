/** Every address of Bundwalk, on one screen. */
import express from 'express';
import type { Diary } from '../diary/diary.ts';
import { addFactForm } from './forms/add-fact.ts';
import { lookAsOfForm, useRealDateForm } from './forms/as-of.ts';
import { keepBoundariesForm, readBoundaryFile, readBoundaryGrid } from './forms/boundaries.ts';
import { changeFactForm } from './forms/change-fact.ts';
import { endHandOnForm, handOnForm } from './forms/hand-on.ts';
import { changeLookAfterForm, resetLookAfterForm } from './forms/look-after.ts';
import { placePhotoForm } from './forms/place-photo.ts';
import { saveSeasonEntry } from './forms/save-season-entry.ts';
import { sendNote } from './forms/send-note.ts';
import { sendPhotos } from './forms/send-photos.ts';
import { sendSeasonFile } from './forms/send-season-file.ts';
import { setStraightDownForm } from './forms/set-straight-down.ts';
import { shiftClockForm } from './forms/shift-clock.ts';
import { strikeFactForm } from './forms/strike-fact.ts';
import { takeStepForm } from './forms/take-step.ts';
import { tickHandedOnForm, untickHandedOnForm } from './forms/tick-handed-on.ts';
import { undoChangeForm } from './forms/undo-change.ts';
import { undoCorrectionForm } from './forms/undo-correction.ts';
import { media } from './media.ts';
import { boundariesPage } from './pages/boundaries-page.ts';
import { capturePage } from './pages/capture-page.ts';
import { crewSheetPage } from './pages/crew-sheet-page.ts';
import { factPage } from './pages/fact-page.ts';
import { followUpCalendarFile, followUpCsvFile } from './pages/follow-up-files.ts';
import { followUpItemPage } from './pages/follow-up-page.ts';
import { followUpsPage } from './pages/follow-ups-page.ts';
import { handedOnPage } from './pages/handed-on-page.ts';
import { lookAfterPage } from './pages/look-after-page.ts';
import { notePage } from './pages/note-page.ts';
import { notesPage } from './pages/notes-page.ts';
import { photoClockPage } from './pages/photo-clock-page.ts';
import { photoPage } from './pages/photo-page.ts';
import { photoTrayPage } from './pages/photo-tray-page.ts';
import { plotFormPage } from './pages/plot-form-page.ts';
import { plotPage } from './pages/plot-page.ts';
import { plotPhotosPage } from './pages/plot-photos-page.ts';
import { plotsPage } from './pages/plots-page.ts';
import { seasonPage } from './pages/season-page.ts';
import { MOST_PHOTOS_AT_ONCE, photosProgress, sendPhotosPage } from './pages/send-photos-page.ts';
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
  to.get('/plots/:code/photos', plotPhotosPage(diary));

  to.get('/photos/tray', photoTrayPage(diary));
  to.get('/photos/send', sendPhotosPage(diary));
  to.get('/photos/clock', photoClockPage(diary));
  to.post('/photos/clock', shiftClockForm(diary));
  to.get('/photos/progress', photosProgress(diary));
  to.post('/photos', sendPhotos(diary, makeReceiver(diary.mediaFolder, MOST_PHOTOS_AT_ONCE)));
  to.get('/photos/:id', photoPage(diary));
  to.post('/photos/:id/plot', placePhotoForm(diary));
  to.post('/photos/:id/straight-down', setStraightDownForm(diary));
  to.post('/changes/:id/undo', undoChangeForm(diary));

  to.get('/follow-ups', followUpsPage(diary));
  to.get('/follow-ups.ics', followUpCalendarFile(diary));
  to.get('/follow-ups.csv', followUpCsvFile(diary));
  to.post('/follow-ups/steps', takeStepForm(diary));
  to.get('/follow-ups/:id', followUpItemPage(diary));

  to.get('/crew-sheet', crewSheetPage(diary));
  to.post('/crew-sheet/hand-on', handOnForm(diary));
  to.post('/crew-sheet/hand-on/:token/end', endHandOnForm(diary));
  to.get('/handed-on/:token', handedOnPage(diary));
  to.post('/handed-on/:token', tickHandedOnForm(diary));
  to.post('/handed-on/:token/undo', untickHandedOnForm(diary));

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
  to.get('/season/boundaries', boundariesPage(diary));
  to.post('/season/boundaries/file', readBoundaryFile(diary, receive));
  to.post('/season/boundaries/grid', readBoundaryGrid(diary));
  to.post('/season/boundaries/keep', keepBoundariesForm(diary));
  to.post('/season/file', sendSeasonFile(diary, receive));
  to.get('/season/look-after', lookAfterPage(diary));
  to.post('/season/look-after', changeLookAfterForm(diary));
  to.post('/season/look-after/reset', resetLookAfterForm(diary));
  to.post('/season/as-of', lookAsOfForm(diary));
  to.post('/season/real-date', useRealDateForm(diary));
  to.post('/season/:entry', saveSeasonEntry(diary));

  to.get('/take-out', takeOutPage(diary));
  to.get('/take-out/:file', takeOutFile(diary));
  to.get('/media/:hash/:copy', media(diary));
  return to;
}
