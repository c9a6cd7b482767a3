/** What rules produce: things mentioned at a place in the text, before cues, plots and times settle what they say. */

import type { Tense } from '../engine/forms.ts';
import type { ActionKind, Attribute, FindingKind, FindingStatus, Stage, Taxon } from '../record.ts';

export interface Place {
  /** Token indexes, last included. */
  first: number;
  last: number;
  rule: string;
}
export interface FindingMention extends Place {
  is: 'finding';
  kind: FindingKind;
  taxon?: Taxon;
  says?: FindingStatus;
  weak: boolean;
  sign: boolean;
}
export type WorkKind = ActionKind | 'remove' | 'fill' | 'finish' | 'mend';
export interface ActionMention extends Place {
  is: 'action';
  kind: WorkKind;
  form: 'verb' | 'object first' | 'noun';
  tense: Tense;
}
export interface StageMention extends Place {
  is: 'stage';
  stage: Stage;
  /** `done`: said to be over (`past flowering`). */
  near: boolean;
}
export interface AgeMention extends Place {
  is: 'age';
  days: number;
  since: 'transplanting' | 'sowing';
}
export interface UnvisitedMention extends Place {
  is: 'unvisited';
}
export interface LessonMention extends Place {
  is: 'lesson';
}
export interface ComparisonMention extends Place {
  is: 'comparison';
  attribute: Attribute;
  /** Plot codes or, where the text names none, null: the plot that rules there. */
  more: string | null;
  less: string | null;
}
export type Mention =
  | FindingMention
  | ActionMention
  | StageMention
  | AgeMention
  | UnvisitedMention
  | LessonMention
  | ComparisonMention;
