/** Words that grade a problem. `some` grades a mass, not a single thing; bare counts and `many` are no grade (guide). */
import type { Severity } from '../record.ts';

export interface SeverityRow {
  severity: Severity;
  words: string;
}

export const SEVERITY_WORDS: readonly SeverityRow[] = [
  {
    severity: 'slight',
    words:
      'slight, slightly, few, a few, odd, the odd, odd one, scattered, light, lightly, a bit, bit, a bit of, wee bit?, minor, little, a little, little bit, mild, mildly, isolated, occasional, couple, a couple, a handful, handful, sparse, trace, one or two, here and there, some few, only a few|little|bit, barely, not much, not bad, not many, a touch, touch of, faint, faintly, low level, hardly any, very few, just a few, a tad, tad, thin scatter, smattering, sprinkling, start of, kaunti, konti, un peu, pretty light, minimal, tiny bit',
  },
  {
    severity: 'moderate',
    words:
      'some, moderate, moderately, fair bit, fair amount, medium, quite a bit|few, middling, so so, decent amount, reasonable amount, noticeable',
  },
  {
    severity: 'severe',
    words:
      'heavy, heavily, bad, badly, thick, everywhere, severe, severely, serious, seriously, terrible, awful, all over, loaded, infested, massive, massively, huge, very bad, pretty bad, really bad, big time, wall to wall, extensive, choked, choking, smothered, smothering, carpet, carpeted, rampant, out of control, hammered, horrible, intense, extreme, full of, swarming, crawling, overrun, ugly, devastated, destroyed, riddled, solid, all the way across, rough, plenty bad, nasty, major, alarming, worst, dense, bumper, grave, strong, wiped out, lousy with, eaten up',
  },
];
/** Words behind a grade that take it for themselves: `heavy rain`, `light green`, `few days`. */
export const GRADE_OF_OTHERS = new Set(
  'rain rains wind winds storm drizzle shower dew soil soils clay loam days weeks hours day week hour minutes day green traffic bug news luck smell eggs egg road machine feed user morning crop stand head heads yield panicles'.split(
    ' ',
  ),
);
