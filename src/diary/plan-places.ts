/** Where photos were taken and notes were written on one day, as dots on the field plan. */
import type { Diary } from './diary.ts';
import type { PlacedPoint } from './field-plan.ts';
import { showPhoto } from './shown.ts';
import { takenAt } from './taken-at.ts';

export interface PlanPlaces {
  day: string;
  /** Days that have any, newest first. */
  days: string[];
  points: PlacedPoint[];
}

/** Null where no photo and no note has a position. Without a day asked for, the last one. */
export async function planPlaces(diary: Diary, asked?: string): Promise<PlanPlaces | null> {
  const points = [...(await photoPoints(diary)), ...(await notePoints(diary))].sort((a, b) =>
    a.at < b.at ? -1 : 1,
  );
  const days = [...new Set(points.map(({ at }) => at.slice(0, 10)))].sort().reverse();
  const day = days.find((one) => one === asked) ?? days[0];
  return day ? { day, days, points: points.filter(({ at }) => at.startsWith(day)) } : null;
}

async function photoPoints({ db }: Diary): Promise<PlacedPoint[]> {
  const rows = await db.selectFrom('photos').selectAll().where('latitude', 'is not', null).execute();
  return rows.map((row) => ({
    what: 'photo',
    href: showPhoto(row, '').href,
    at: (takenAt(row) ?? row.received_at).slice(0, 16),
    plot: row.plot,
    words: '',
    latitude: row.latitude!,
    longitude: row.longitude!,
  }));
}

async function notePoints({ db }: Diary): Promise<PlacedPoint[]> {
  const rows = await db.selectFrom('notes').selectAll().where('position', 'is not', null).execute();
  return rows.flatMap((row): PlacedPoint[] => {
    const position = JSON.parse(row.position!) as { latitude: number; longitude: number } | null;
    if (!position) return [];
    const { latitude, longitude } = position;
    const words = row.text.replace(/\s+/g, ' ').trim().slice(0, 80);
    return [
      {
        what: 'note',
        href: `/notes/${encodeURIComponent(row.id)}`,
        at: row.observed_at,
        plot: row.plot,
        words,
        latitude,
        longitude,
      },
    ];
  });
}
