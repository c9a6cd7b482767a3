/** Yellow leaves beside a named disease are its symptom; burnt tips from hot wind are the weather's work. */

import { type Passage, wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { ComparisonMention, FindingMention } from './mentions.ts';

const SYMPTOM = /^(yellow|yellowing|yellowish|orange|pale|stunted|white|bronzed|brown|short)/;
const WEATHER = /^(wind|degrees|sun|cold|heat|frost|hot|chill|chilly|typhoon|storm|hail)$/;
const CHEMICAL =
  /^(spray|sprayed|sprayer|herbicide|propanil|clomazone|drift|knapsack|boom|chemical|granule|insecticide|fungicide|command|2|dicamba|glyphosate|roundup|tank)$/;

export function withoutSymptoms(passage: Passage, problems: FindingMention[]): FindingMention[] {
  return problems
    .filter((one) => !isSymptom(passage, one, problems))
    .map(
      (one): FindingMention =>
        one.kind === 'gap' && /^blank/.test(passage.tokens[one.first]!.lower) && isWeather(passage, one)
          ? { ...one, kind: 'weather_damage', rule: 'blanked-by-weather' }
          : one,
    )
    .map(
      (one): FindingMention =>
        one.kind === 'spray_injury' && isWeather(passage, one)
          ? { ...one, kind: 'weather_damage', weak: false, rule: 'burnt-by-weather' }
          : one,
    );
}

/** `weeds are fewer than in B2`: the problem is the measure of a comparison. */
export const withoutCompared = (
  problems: FindingMention[],
  comparisons: readonly ComparisonMention[],
): FindingMention[] =>
  comparisons.length === 0
    ? problems
    : problems.filter(
        (one) => !comparisons.some(({ first, last }) => one.first <= last && one.last >= first),
      );

function isSymptom(passage: Passage, one: FindingMention, problems: readonly FindingMention[]): boolean {
  const symptomatic =
    (one.kind === 'nutrient' || one.kind === 'uneven_stand') &&
    SYMPTOM.test(passage.tokens[one.first]!.lower);
  const headed = one.sign && one.taxon === 'stem_borer' && /^white/.test(passage.tokens[one.first]!.lower);
  if (one.kind === 'dry' && /roll/.test(passage.tokens[one.first]!.lower + passage.tokens[one.last]!.lower))
    return within(problems, one.first - 12, one.first + 12).some(({ kind }) => kind === 'insects');
  if (!symptomatic && !headed) return false;
  return within(problems, one.first - 20, one.first + 20).some(
    (other) =>
      other.kind === 'disease' &&
      !other.sign &&
      Math.abs(other.first - one.first) < (headed ? 14 : 18) &&
      passage.wallsTo.sentence[Math.max(other.first, one.first)]! -
        passage.wallsTo.sentence[Math.min(other.first, one.first)]! <=
        (headed ? 3 : 1) &&
      !/^(no|not|is|isn't)$/.test(passage.tokens[other.first - 1]?.lower ?? '') &&
      plotBetween(passage, one, other),
  );
}

const plotBetween = (passage: Passage, a: FindingMention, b: FindingMention): boolean => {
  for (let at = Math.min(a.last, b.last) + 1; at < Math.max(a.first, b.first); at++)
    if (passage.plotOver[at]) return false;
  return true;
};

function isWeather(passage: Passage, one: FindingMention): boolean {
  let weather = false;
  for (let at = Math.max(0, one.first - 14); at <= one.last + 14 && at < passage.tokens.length; at++) {
    if (wallBetween(passage, Math.min(at, one.first), Math.max(at, one.first)) >= 3) continue;
    if (CHEMICAL.test(passage.tokens[at]!.lower)) return false;
    weather ||= WEATHER.test(passage.tokens[at]!.lower);
  }
  return weather;
}
