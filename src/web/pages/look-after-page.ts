import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { lookAfterTable } from '../../diary/look-after-table.ts';
import { workWords } from '../../followups/words.ts';
import { statusOf } from '../errors.ts';
import type { Form } from '../form.ts';
import { showPage } from '../show-page.ts';
import { capital } from '../words.ts';

/** After which work a look is due, when, at what, and by whose word; each row can be set to the farm's own. */
export const lookAfterPage =
  (diary: Diary): RequestHandler =>
  (req, res) =>
    showLookAfter(diary, req, res);

export async function showLookAfter(
  diary: Diary,
  req: Request,
  res: Response,
  trouble?: { form: Form; refusal: Refusal },
): Promise<void> {
  const rows = await lookAfterTable(diary);
  const isOf = (form: Form, row: { action: string; lookAt: string }): boolean =>
    form.action === row.action && form.lookAt === row.lookAt;
  const shown = rows.map((row, at) => ({
    ...row,
    anchor: `row-${at + 1}`,
    work: capital(workWords(row.action)),
    refusal: trouble && isOf(trouble.form, row) ? trouble.refusal : null,
    form:
      trouble && isOf(trouble.form, row)
        ? trouble.form
        : { days: String(row.days), spanDays: String(row.spanDays), source: row.source },
  }));
  await showPage(
    req,
    res,
    'look-after',
    {
      title: 'The look afterwards',
      place: 'Season',
      rows: shown,
      refusal: trouble && !shown.some(({ refusal }) => refusal) ? trouble.refusal : null,
    },
    trouble ? statusOf(trouble.refusal) : 200,
  );
}
