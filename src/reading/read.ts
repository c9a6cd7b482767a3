/** A field note in, its record out: the passes in their order. Same note, same record, on the server and in the phone. */
import { findPeople } from './around/find-people.ts';
import { findPlaces } from './around/find-places.ts';
import { findCues } from './cues/find-cues.ts';
import { findDoses } from './doses/find-doses.ts';
import { readPassage } from './engine/passage.ts';
import { hear } from './hear/hear.ts';
import { eventReader } from './lexicon/events.ts';
import { findMeasurements } from './measurements/find-measurements.ts';
import { emptyRecord, type FarmWords, NO_FARM_WORDS, type NoteToRead, type Reading } from './record.ts';
import { findAges } from './rules/age-rules.ts';
import { findComparisons } from './rules/comparison-rules.ts';
import { findStages } from './rules/field-rules.ts';
import { findWork } from './rules/find-work.ts';
import { findProblems } from './rules/finding-rules.ts';
import { findLessons } from './rules/lesson-rules.ts';
import { withNones } from './rules/none-rule.ts';
import { isOffTopicNote } from './rules/off-topic-note.ts';
import { findUnvisited } from './rules/place-rules.ts';
import { withoutCompared, withoutSymptoms } from './rules/symptoms.ts';
import { withTopics } from './rules/topic-rule.ts';
import { settleActions } from './settle/actions.ts';
import { entriesOf } from './settle/entries.ts';
import { settleFindings } from './settle/findings.ts';
import { tokenise } from './text.ts';

export function readNote(note: NoteToRead, farmWords: FarmWords = NO_FARM_WORDS): Reading {
  const { tokens, heard } = hear(tokenise(note.text), {
    channel: note.channel,
    plots: note.plots,
    farmWords,
  });
  if (tokens.length === 0) return { record: emptyRecord(), entries: [], heard };
  const passage = readPassage(note, tokens, eventReader);
  if (isOffTopicNote(passage)) return { record: emptyRecord(), entries: [], heard };
  const lessons = findLessons(passage);
  const unvisited = findUnvisited(passage);
  const stages = findStages(passage);
  const ages = findAges(passage);
  const comparisons = outside(findComparisons(passage), lessons);
  const problems = withNones(
    passage,
    withTopics(
      passage,
      withoutSymptoms(passage, withoutCompared(outside(findProblems(passage), unvisited), comparisons)),
    ),
  );
  const work = findWork(passage, unvisited, stages, problems, ages);
  const cues = findCues(passage);
  const places = findPlaces(passage);
  const people = findPeople(passage, farmWords.people);
  const doses = findDoses(passage.masked, passage.numbers);
  const measurements = findMeasurements(
    passage.masked,
    passage.numbers,
    (index) => passage.plotOver[index] !== undefined,
  );
  const actions = settleActions(passage, work, { findings: problems, lessons, cues, people, doses });
  return entriesOf(passage, heard, {
    stages,
    ages,
    findings: settleFindings(passage, problems, work, actions, cues, places),
    measurements,
    actions,
    lessons,
    unvisited,
    comparisons,
    places,
  });
}

/** What stands in the words for something else (`for lack of time`, `a week later next year`) is no fact of its own. */
const outside = <One extends { first: number; last: number }>(
  found: One[],
  spans: readonly { first: number; last: number }[],
): One[] =>
  spans.length === 0
    ? found
    : found.filter(({ first, last }) => !spans.some((span) => first >= span.first && last <= span.last));
