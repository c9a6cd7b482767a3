/** Where a constant or a rule comes from; pages print it beside the figure. */
export interface Sourced {
  source: string;
  /** The source text was not read for this value: from memory or common practice. Pages say so. */
  unconfirmed?: true;
}
