/** Words that put something into a later season. */

/** Say that another one comes. */
const COMING = 'next|following|coming|another|future|new|subsequent|upcoming';
/** Kinds of season that may stand between, and the seasons themselves, as they are called where rice grows. */
const KINDS =
  'wet|dry|main|second|rainy|rice|crop|cropping|growing|planting|winter|summer|spring|autumn|hot|cold|monsoon|early|late|off|minor|major|trial';
const SEASONS =
  'year|yr|yrs|years|season|seasons|crop|crops|cycle|campaign|kharif|rabi|boro|aman|aus|yala|maha|samba|kuruvai|navarai|thaladi|winter|summer|spring|monsoon|planting|sowing|trial|panen|tanam|rotation';
const NAMED = 'kharif|rabi|boro|aman|aus|yala|maha|samba|kuruvai|navarai|thaladi|mt1|mt2|mt3';

export const LESSON_WORDS = `${COMING} ${KINDS}? ${SEASONS}, for|in|from ${NAMED}, lesson|lessons, lesson|lessons learned|learnt, note for|4|to ${NAMED}, note to self|myself for? next, note for next, in the future, for the future, for the next one, second time around,
  next time we|i|you|one|they plant|sow|transplant|seed|drill|grow|put|use|do|level|start|should|must, next time plant|sow|transplant|seed|drill|grow|level|start|use|put|fence|drain, when we plant this again, if we|i do|plant|grow this again, remember for next,
  should have been started|planted|drained|sprayed|weeded|sown, should of been`;
/** Speak of a later season without changing anything in it. */
export const NOT_A_LESSON =
  'next season be? far, last year, next season budget, next year budget, next year election, next year wedding, next year i retire, see you next year, new crop insurance, next round, english lesson, next crop cut, new year, the coming harvest, music lesson, driving lesson, lesson plan';
