const NUMBER_WORDS: ReadonlySet<string> = new Set(
  (
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
    'eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half dozen'
  ).split(' '),
);

export const isNumberWord = (word: string): boolean => NUMBER_WORDS.has(word);
