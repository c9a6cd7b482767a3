/** One interface a table, as the migrations lay them down. JSON columns hold text; the verbs parse them. */
export interface Tables {
  farm: FarmRow;
  people: { name: string; role: string | null };
  varieties: { name: string; days_to_maturity: number | null };
  seasons: SeasonRow;
  crews: CrewRow;
  fields: FieldRow;
  plots: PlotRow;
  crops: CropRow;
  notes: NoteRow;
  photos: PhotoRow;
  note_photos: { note_id: string; photo_id: string; place: number };
  readings: { note_id: string; reader: string; read_at: string; reading: string };
  facts: FactRow;
  corrections: CorrectionRow;
  farm_words: { said: string; meant: string; added_at: string };
  steps: StepRow;
  follow_ups: FollowUpRow;
  /** The day for which the follow-ups were last worked out, one row; none when something happened since. */
  follow_ups_day: { id: string; day: string };
  /** Crew sheets that can be read through a link until it expires. */
  handed_on: { token: string; day: string; who: string | null; made_at: string; expires_at: string };
  /** The farm's own rows of the look afterwards; where there are none, the table that it starts with rules. */
  look_after: { action: string; look_at: string; row: string; changed_at: string };
  changes: ChangeRow;
}

export interface FarmRow {
  id: string;
  name: string;
  /** IANA name, `Asia/Manila`. */
  time_zone: string;
  latitude: number | null;
  longitude: number | null;
  /** The day on which a season that is over is looked at (the sample); null: the real day. */
  as_of: string | null;
  updated_at: string;
}

export interface SeasonRow {
  id: string;
  name: string;
  starts_on: string;
  ends_on: string;
}

export interface CrewRow {
  id: string;
  name: string;
  leader: string | null;
  people: number | null;
}

export interface FieldRow {
  code: string;
  name: string;
}

export interface PlotRow {
  code: string;
  /** JSON: string[], the names that people say. */
  names: string;
  field: string | null;
  /** JSON: factor -> level. */
  treatment: string;
  replicate: number | null;
  /** Place in the walking order, from 1. */
  walk: number | null;
  width_m: number | null;
  length_m: number | null;
  /** JSON: [longitude, latitude][], not closed. */
  boundary: string | null;
  updated_at: string;
}

export interface CropRow {
  id: string;
  plot: string;
  season: string | null;
  variety: string | null;
  days_to_maturity: number | null;
  /** `transplanted`, `wet seeded` or `dry seeded`. */
  establishment: string | null;
  sown_on: string | null;
  planted_on: string | null;
  row_cm: number | null;
  hill_cm: number | null;
  /** JSON: string[], what the protocol wants of this plot. */
  protocol: string;
  updated_at: string;
}

export interface NoteRow {
  /** Made by the client, so that sending twice keeps one. */
  id: string;
  /** Local at the farm, `YYYY-MM-DDTHH:MM`. */
  observed_at: string;
  /** Instant, UTC. */
  received_at: string;
  author: string;
  plot: string | null;
  channel: 'typed' | 'dictated';
  text: string;
  /** JSON: the phone's own position at capture {latitude, longitude, accuracyM}, or null. */
  position: string | null;
}

export interface PhotoRow {
  /** SHA-256 of the original's bytes, hex. */
  id: string;
  bytes: number;
  /** `jpeg`, `png`, … by the first bytes of the file. */
  kind: string;
  name: string;
  received_at: string;
  width: number | null;
  height: number | null;
  taken_wall: string | null;
  taken_offset: string | null;
  taken_offset_source: string | null;
  taken_utc: string | null;
  position_status: string;
  latitude: number | null;
  longitude: number | null;
  accuracy_m: number | null;
  /** JSON: position and time as read, whole. */
  metadata: string;
  plot: string | null;
  /** `note`, `words`, `order`, `position` or `person`. */
  placed_by: string | null;
  straight_down: number;
  cover_percent: number | null;
  cover: string | null;
  /** When its metadata was read and its smaller copies were made; null while it waits. */
  developed_at: string | null;
  /** Why no picture could be made of it, in words; the original is kept all the same. */
  fault: string | null;
  /** Minutes that a person adds to the file's own time, because the phone's clock was wrong; `taken_wall` stays as read. */
  clock_shift_min: number;
}

/** What a change of photos or boundaries replaced, so that it can be taken back. */
export interface ChangeRow {
  id: string;
  at: string;
  by_whom: string;
  words: string;
  /** JSON: Rows as they stood before and as they stand after. */
  was: string;
  became: string;
  undone_at: string | null;
}

export interface FactRow {
  id: string;
  note_id: string;
  place: number;
  list: string;
  plot: string | null;
  /** The plot that it was held against, in a comparison. */
  other_plot: string | null;
  /** Kind, stage, quantity or attribute; `age`, `lesson`, `unvisited` where the list has no kinds. */
  kind: string;
  status: string | null;
  observed_at: string;
  /** `reading` or `person`. */
  origin: string;
  fact: string;
  words: string;
  /** JSON: Span[]. */
  evidence: string;
  trace: string | null;
}

export interface CorrectionRow {
  id: string;
  note_id: string;
  at: string;
  by_whom: string;
  verb: 'strike' | 'change' | 'add';
  /** JSON: the fact that stood there. */
  target: string | null;
  /** JSON: the fact that stands instead. */
  fact: string | null;
  undone_at: string | null;
}

export interface StepRow {
  id: string;
  item_id: string;
  at: string;
  by_whom: string;
  kind: string;
  plot: string | null;
  step: string;
}

export interface FollowUpRow {
  id: string;
  plot: string | null;
  kind: string;
  state: string;
  bucket: string;
  due_from: string | null;
  due_to: string | null;
  who: string | null;
  item: string;
}
