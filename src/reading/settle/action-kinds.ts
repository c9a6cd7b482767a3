/** Verbs whose work depends on what stands in the field: `pull them`, `fill it`, `finish the rest`. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { ActionKind, FindingKind } from '../record.ts';
import type { ActionMention, FindingMention } from '../rules/mentions.ts';
import { samePlots } from './draft.ts';

const REMOVES: Partial<Record<FindingKind, ActionKind>> = {
  weeds: 'hand_weed',
  off_types: 'rogue',
  disease: 'rogue',
  snails: 'control_snails',
};
const FILLS: Partial<Record<FindingKind, ActionKind>> = {
  gap: 'replant',
  poor_anchorage: 'replant',
  seepage: 'mend_bund',
  uneven_stand: 'replant',
};

const MENDS: Partial<Record<FindingKind, ActionKind>> = {
  gap: 'replant',
  seepage: 'mend_bund',
  rodents: 'control_rodents',
  birds: 'scare_birds',
  dry: 'mend_bund',
};

/** The kind of each work, or null where nothing in the field tells. */
export function kindOfWork(
  passage: Passage,
  mentions: readonly ActionMention[],
  findings: readonly FindingMention[],
): (ActionKind | null)[] {
  const kinds: (ActionKind | null)[] = [];
  for (const mention of mentions) {
    if (mention.kind === 'remove') kinds.push(byFinding(passage, mention, findings, REMOVES));
    else if (mention.kind === 'fill') kinds.push(byFinding(passage, mention, findings, FILLS));
    else if (mention.kind === 'mend') kinds.push(byFinding(passage, mention, findings, MENDS));
    else if (mention.kind === 'finish')
      kinds.push(
        workBefore(passage, mention, mentions, kinds) ?? byFinding(passage, mention, findings, REMOVES),
      );
    else kinds.push(mention.kind);
  }
  return kinds;
}

function byFinding(
  passage: Passage,
  mention: ActionMention,
  findings: readonly FindingMention[],
  kinds: Partial<Record<FindingKind, ActionKind>>,
): ActionKind | null {
  const ahead = findings.find(
    (finding) =>
      finding.first >= mention.first &&
      finding.first - mention.last <= 5 &&
      wallBetween(passage, mention.last, finding.first) < 2 &&
      kinds[finding.kind],
  );
  if (ahead) return kinds[ahead.kind]!;
  const behind = findings.filter(
    (finding) => finding.first < mention.first && mention.first - finding.last < 40 && kinds[finding.kind],
  );
  const nearest =
    behind.findLast(({ first }) => samePlots(passage, first, mention.first)) ??
    behind.findLast(({ last }) => mention.first - last < 24);
  return nearest ? kinds[nearest.kind]! : null;
}

/** `C4 gets hers tomorrow`, `the rest on Monday`: the work last spoken of, in these plots or in those before them. */
function workBefore(
  passage: Passage,
  mention: ActionMention,
  mentions: readonly ActionMention[],
  kinds: readonly (ActionKind | null)[],
): ActionKind | null {
  let elsewhere: ActionKind | null = null;
  for (let index = kinds.length - 1; index >= 0; index--) {
    const before = mentions[index]!;
    const kind = kinds[index];
    if (mention.first - before.last > 40) return elsewhere;
    if (!kind || kind === 'tell' || kind === 'leave') continue;
    if (samePlots(passage, before.first, mention.first)) return kind;
    if (mention.first - before.last < 25) elsewhere ??= kind;
  }
  return elsewhere;
}
