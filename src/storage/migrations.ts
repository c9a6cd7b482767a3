/**
 * Append-only: a migration that has landed is never edited, only followed by another.
 * Portable SQL: text, integer and real columns; instants as ISO 8601 UTC text, local days and times as text, JSON as text.
 */
export const MIGRATIONS: readonly { name: string; sql: readonly string[] }[] = [
  {
    name: '001 farm, plots, crops, notes, photos, readings, corrections, steps',
    sql: [
      `create table farm (
        id text primary key, name text not null, time_zone text not null,
        latitude real, longitude real, as_of text, updated_at text not null)`,
      `create table people (name text primary key, role text)`,
      `create table varieties (name text primary key, days_to_maturity integer)`,
      `create table seasons (
        id text primary key, name text not null, starts_on text not null, ends_on text not null)`,
      `create table crews (
        id text primary key, name text not null unique, leader text, people integer)`,
      `create table fields (code text primary key, name text not null)`,
      `create table plots (
        code text primary key, names text not null, field text references fields(code), treatment text not null,
        replicate integer, walk integer, width_m real, length_m real, boundary text, updated_at text not null)`,
      `create table crops (
        id text primary key, plot text not null references plots(code), season text references seasons(id),
        variety text, days_to_maturity integer, establishment text, sown_on text, planted_on text,
        row_cm real, hill_cm real, protocol text not null, updated_at text not null)`,
      `create index crops_of_plot on crops (plot, planted_on)`,
      `create table notes (
        id text primary key, observed_at text not null, received_at text not null, author text not null,
        plot text, channel text not null, text text not null, position text)`,
      `create index notes_by_time on notes (observed_at, id)`,
      `create table photos (
        id text primary key, bytes integer not null, kind text not null, name text not null, received_at text not null,
        width integer, height integer, taken_wall text, taken_offset text, taken_offset_source text, taken_utc text,
        position_status text not null, latitude real, longitude real, accuracy_m real, metadata text not null,
        plot text, placed_by text, straight_down integer not null default 0, cover_percent real, cover text,
        developed_at text, fault text)`,
      `create table note_photos (
        note_id text not null references notes(id), photo_id text not null references photos(id), place integer not null,
        primary key (note_id, photo_id))`,
      `create index notes_of_photo on note_photos (photo_id)`,
      `create table readings (
        note_id text primary key references notes(id), reader text not null, read_at text not null, reading text not null)`,
      `create table facts (
        id text primary key, note_id text not null references notes(id), place integer not null, list text not null,
        plot text, other_plot text, kind text not null, status text, observed_at text not null, origin text not null,
        fact text not null, words text not null, evidence text not null, trace text)`,
      `create index facts_of_note on facts (note_id)`,
      `create index facts_of_plot on facts (plot, observed_at, note_id)`,
      `create index facts_beside on facts (other_plot, observed_at)`,
      `create index notes_of_plot on notes (plot, observed_at)`,
      `create index photos_of_plot on photos (plot, taken_wall)`,
      `create table corrections (
        id text primary key, note_id text not null references notes(id), at text not null, by_whom text not null,
        verb text not null, target text, fact text, undone_at text)`,
      `create index corrections_of_note on corrections (note_id, at)`,
      `create table farm_words (said text primary key, meant text not null, added_at text not null)`,
      `create table steps (
        id text primary key, item_id text not null, at text not null, by_whom text not null, kind text not null,
        plot text, step text not null)`,
      `create table follow_ups (
        id text primary key, plot text, kind text not null, state text not null, bucket text not null,
        due_from text, due_to text, who text, item text not null)`,
      `create index follow_ups_by_due on follow_ups (bucket, due_to, id)`,
      `create index follow_ups_of_plot on follow_ups (plot)`,
      `create table follow_ups_day (id text primary key, day text not null)`,
      `create table handed_on (
        token text primary key, day text not null, who text, made_at text not null, expires_at text not null)`,
      `create table look_after (
        action text not null, look_at text not null, row text not null, changed_at text not null,
        primary key (action, look_at))`,
    ],
  },
  {
    name: '002 follow-ups by person',
    sql: [`create index follow_ups_of_person on follow_ups (who, bucket)`],
  },
  {
    name: '003 the shift of a photo’s clock, changes that can be taken back',
    sql: [
      `alter table photos add column clock_shift_min integer not null default 0`,
      `create table changes (
        id text primary key, at text not null, by_whom text not null, words text not null,
        was text not null, became text not null, undone_at text)`,
      `create index changes_by_time on changes (at)`,
    ],
  },
  {
    name: '004 follow-ups of a plot by list',
    sql: [`create index follow_ups_of_plot_by_due on follow_ups (plot, bucket, due_to, id)`],
  },
];
