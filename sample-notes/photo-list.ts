import type { SeenAlongRows } from './drawing/along-rows.ts';
import type { BundSubject } from './drawing/bund.ts';
import type { SeenFromAbove } from './drawing/from-above.ts';

/** What is in a photo beyond the stand itself, which follows from the plot and the day. */
export type Scene =
  | { view: 'from above'; seen?: Partial<SeenFromAbove>; headed?: number }
  | { view: 'along the rows'; seen?: Partial<SeenAlongRows>; headed?: number }
  | { view: 'bund'; subject: BundSubject }
  | { view: 'leaves' };

export interface SamplePhoto {
  file: string;
  plot: string;
  /** Local time at the farm. */
  takenAt: string;
  scene: Scene;
  /** `never had`: taken with the position switched off; `zeroed`: its position was blanked on the way. */
  position?: 'never had' | 'zeroed';
  /** Some phones leave the offset from UTC out. */
  withoutOffset?: true;
}

const above = (seen: Partial<SeenFromAbove> = {}, headed = 0): Scene => ({
  view: 'from above',
  seen,
  headed,
});
const rows = (seen: Partial<SeenAlongRows> = {}, headed = 0): Scene => ({
  view: 'along the rows',
  seen,
  headed,
});
const bund = (subject: BundSubject): Scene => ({ view: 'bund', subject });

const photo = (
  file: string,
  plot: string,
  takenAt: string,
  scene: Scene,
  more: Pick<SamplePhoto, 'position' | 'withoutOffset'> = {},
): SamplePhoto => ({ file: `${file}.jpg`, plot, takenAt, scene, ...more });

const WEST_BUND = { fromX: -2.5, toX: -1.1, fromY: 0, toY: 9 };

export const SAMPLE_PHOTOS: readonly SamplePhoto[] = [
  photo('e1-0707', 'E1', '2031-07-07T06:38:20', rows()),
  photo('e1-gap-0710', 'E1', '2031-07-10T06:33:05', rows({ gap: { ...WEST_BUND, share: 0.55 } })),
  photo('e1-down-0710', 'E1', '2031-07-10T06:34:12', above({ missing: 0.2 })),
  photo('e8-inlet-0710', 'E8', '2031-07-10T06:53:40', bund('inlet-snails')),
  photo(
    'e12-floating-0714',
    'E12',
    '2031-07-14T07:18:02',
    rows({ afloat: { fromX: -1.2, toX: 1.2, fromY: 1.4, toY: 3.6, share: 0.45 } }),
  ),
  photo('e12-down-0714', 'E12', '2031-07-14T07:19:30', above({ afloat: 0.12 })),
  photo('w1-down-0714', 'W1', '2031-07-14T07:43:51', above(), { withoutOffset: true }),
  photo('e12-down-0717', 'E12', '2031-07-17T06:38:15', above({ missing: 0.02 })),
  photo(
    'w2-weeds-0717',
    'W2',
    '2031-07-17T07:22:48',
    rows({ ground: 'mud', weeds: { grassPerM2: 5, sedgePerM2: 14, heightCm: 9 } }),
  ),
  photo(
    'w2-down-0717',
    'W2',
    '2031-07-17T07:23:59',
    above({ ground: 'mud', weeds: { grassPerM2: 12, sedgePerM2: 34, sizeCm: 5 } }),
  ),
  photo('e1-filled-0721', 'E1', '2031-07-21T06:41:37', rows({ gap: { ...WEST_BUND, share: 0.04 } })),
  photo('e1-down-0721', 'E1', '2031-07-21T06:43:10', above({ missing: 0.03 })),
  photo('e4-tube-0721', 'E4', '2031-07-21T06:55:44', rows({ tube: { x: 0.3, y: 1.75, z: 0 } })),
  photo('e4-down-0721', 'E4', '2031-07-21T06:56:30', above()),
  photo(
    'e7-weeds-0724',
    'E7',
    '2031-07-24T07:02:16',
    rows({ weeds: { grassPerM2: 8, sedgePerM2: 4, heightCm: 17 } }),
  ),
  photo(
    'e7-down-0724',
    'E7',
    '2031-07-24T07:03:22',
    above({ weeds: { grassPerM2: 8, sedgePerM2: 4, sizeCm: 6 } }),
  ),
  photo(
    'e8-down-0724',
    'E8',
    '2031-07-24T07:12:05',
    above({ weeds: { grassPerM2: 25, broadleafPerM2: 16, sizeCm: 8 } }),
  ),
  photo(
    'e3-weeds-0724',
    'E3',
    '2031-07-24T10:27:33',
    rows({ weeds: { grassPerM2: 26, sedgePerM2: 10, heightCm: 34 } }),
    {
      position: 'zeroed',
    },
  ),
  photo('e7-crab-hole-0728', 'E7', '2031-07-28T06:49:58', bund('crab-hole')),
  photo('e7-bund-0731', 'E7', '2031-07-31T07:03:41', bund('mended'), { withoutOffset: true }),
  photo('e2-down-0731', 'E2', '2031-07-31T07:15:20', above()),
  photo('e1-down-0731', 'E1', '2031-07-31T07:13:02', above()),
  photo(
    'e8-down-0804',
    'E8',
    '2031-08-04T07:27:55',
    above({ weeds: { grassPerM2: 28, broadleafPerM2: 14, sizeCm: 16 } }),
  ),
  photo('w1-down-0804', 'W1', '2031-08-04T08:02:18', above()),
  photo('e4-down-0807', 'E4', '2031-08-07T06:35:09', above()),
  photo(
    'e9-cracks-0807',
    'E9',
    '2031-08-07T07:13:26',
    rows({ ground: 'cracked', tube: { x: 0.5, y: 1.7, z: 0 } }),
  ),
  photo('e1-drained-0811', 'E1', '2031-08-11T06:20:14', rows({ ground: 'mud' })),
  photo('e1-down-0811', 'E1', '2031-08-11T06:21:40', above({ ground: 'mud' })),
  photo(
    'e8-weedy-0811',
    'E8',
    '2031-08-11T06:27:03',
    rows({ ground: 'mud', weeds: { grassPerM2: 22, sedgePerM2: 6, heightCm: 72 } }),
  ),
  photo('e5-down-0811', 'E5', '2031-08-11T07:20:50', above()),
  photo('e5-yellow-0811', 'E5', '2031-08-11T07:22:11', rows()),
  photo('w2-down-0814', 'W2', '2031-08-14T06:36:45', above({ ground: 'mud' }), {
    position: 'never had',
    withoutOffset: true,
  }),
  photo('e10-runway-0814', 'E10', '2031-08-14T07:01:30', bund('runway')),
  photo('e10-rat-cut-0818', 'E10', '2031-08-18T06:33:17', rows({ cut: { x: 0.25, y: 2.0, radiusM: 0.75 } })),
  photo(
    'e3-weedy-0818',
    'E3',
    '2031-08-18T06:50:42',
    rows({ weeds: { grassPerM2: 24, sedgePerM2: 5, heightCm: 88 } }),
  ),
  photo('e1-down-0825', 'E1', '2031-08-25T06:49:33', above()),
  photo(
    'w2-leaning-0828',
    'W2',
    '2031-08-28T06:24:21',
    rows({
      sky: 'grey',
      leaning: {
        strips: [
          [-1.7, -0.5],
          [1.1, 2.3],
          [3.4, 4.4],
        ],
        by: 1,
      },
    }),
  ),
  photo(
    'e12-flooded-0828',
    'E12',
    '2031-08-28T06:52:37',
    rows({ sky: 'grey', waterDepthCm: 12, gap: { fromX: -0.9, toX: 0.3, fromY: 0, toY: 2.4, share: 0.7 } }),
  ),
  photo('w1-heading-0901', 'W1', '2031-09-01T06:36:54', rows({}, 0.12)),
  photo(
    'w1-off-type-0904',
    'W1',
    '2031-09-04T06:44:05',
    rows(
      {
        offTypes: [
          { x: 0.45, y: 2.5 },
          { x: -0.9, y: 3.6 },
        ],
      },
      0.6,
    ),
  ),
  photo('e7-margins-0904', 'E7', '2031-09-04T07:37:48', { view: 'leaves' }),
  photo('e1-down-0908', 'E1', '2031-09-08T06:14:25', above({}, 0.7)),
  photo('e12-bund-0908', 'E12', '2031-09-08T06:29:12', bund('slump'), { withoutOffset: true }),
  photo('w2-holes-0908', 'W2', '2031-09-08T07:46:39', bund('rat-holes')),
  photo('e1-flowering-0911', 'E1', '2031-09-11T06:36:01', rows({}, 0.95)),
  photo('e2-yellow-0911', 'E2', '2031-09-11T06:44:27', rows({}, 0.7)),
  photo('e11-down-0911', 'E11', '2031-09-11T07:20:08', above({}, 0.5)),
  photo('w2-booting-0911', 'W2', '2031-09-11T07:57:15', rows()),
];
