declare module 'natural/lib/natural/phonetics/double_metaphone.js' {
  /** Keys of a word by the double metaphone method, primary and secondary. */
  export default class DoubleMetaphone {
    process(word: string, maxLength?: number): [string, string];
  }
}
