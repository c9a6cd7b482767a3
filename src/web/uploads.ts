/** Everything that arrives as multipart: limits, temporary files, and nothing left behind when it goes wrong. */
import { randomUUID } from 'node:crypto';
import { mkdirSync, rmSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Request, Response } from 'express';
import multer from 'multer';
import type { Refusal } from '../diary/diary.ts';

export const MOST_PHOTOS = 30;
export const LARGEST_PHOTO_MB = 60;
const MB = 1024 * 1024;

export interface Received {
  /** Of the form's field. */
  field: string;
  /** A temporary file; whoever keeps it moves it. */
  path: string;
  name: string;
}
export type Receive = (req: Request, res: Response) => Promise<Received[] | Refusal>;

/** Empties the folder of half-received files (a crash may have left some) and answers with the receiver. */
export function makeReceiver(mediaFolder: string, mostPhotos = MOST_PHOTOS): Receive {
  const incoming = join(mediaFolder, 'incoming');
  rmSync(incoming, { recursive: true, force: true });
  mkdirSync(incoming, { recursive: true });
  const upload = multer({
    storage: multer.diskStorage({
      destination: incoming,
      filename: (_req, _file, done) => done(null, randomUUID()),
    }),
    defParamCharset: 'utf8',
    limits: {
      files: mostPhotos,
      fileSize: LARGEST_PHOTO_MB * MB,
      fields: 80,
      fieldSize: MB,
      fieldNameSize: 100,
      parts: 80 + mostPhotos,
      headerPairs: 30,
      fieldNestingDepth: 1,
      fieldArrayIndexLimit: 0,
    },
  }).any();
  return (req, res) =>
    new Promise((resolve) => {
      upload(req, res, (error: unknown) => {
        if (error) return resolve(inWords(error));
        const files = (req.files ?? []) as Express.Multer.File[];
        resolve(
          files.map((file) => ({
            field: file.fieldname,
            path: file.path,
            name: plainName(file.originalname),
          })),
        );
      });
    });
}

/** Removes what nobody took. */
export const letGo = (files: Received[]): Promise<unknown> =>
  Promise.all(files.map(({ path }) => rm(path, { force: true })));

/** The last part of the name, as some browsers send a whole path. */
const plainName = (name: string): string =>
  (name.split(/[/\\]/).at(-1) ?? '').replace(/\p{Cc}/gu, '').slice(-150);

function inWords(error: unknown): Refusal {
  const { code } = error as { code?: string };
  switch (code) {
    case 'LIMIT_FILE_SIZE':
      return {
        refused: `A photo is larger than ${LARGEST_PHOTO_MB} MB. Nothing was kept yet; choose the photos again without it. Your words still stand below.`,
        field: 'photos',
        status: 413,
      };
    case 'LIMIT_FILE_COUNT':
      return {
        refused: `More than ${MOST_PHOTOS} photos came at once. Nothing was kept yet; send them in several notes. Your words still stand below.`,
        field: 'photos',
        status: 413,
      };
    case 'LIMIT_FIELD_VALUE':
      return {
        refused:
          'The note is longer than one note can be. Nothing was kept; it is still in this browser: send it in parts.',
        field: 'text',
        status: 413,
      };
    case 'ENOSPC':
      return {
        refused:
          'The disk of the server is full, so nothing was kept. Your words still stand below; free some space, then send again.',
        status: 507,
      };
    default:
      return {
        refused:
          'What was sent broke off or could not be read, so nothing was kept of it. Your words are still in this browser: send again.',
        status: 400,
      };
  }
}
