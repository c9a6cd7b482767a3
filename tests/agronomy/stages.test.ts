import { describe, expect, test } from 'vitest';
import { dayOfYear, dayPlus, daysAfter } from '../../src/agronomy/crop-day.ts';
import { sure } from '../../src/agronomy/fault.ts';
import { BBCH_RICE, bbchStage, furtherBbch } from '../../src/agronomy/stages/bbch-rice.ts';
import { bbchOfFieldWords, FIELD_WORDS } from '../../src/agronomy/stages/field-words.ts';
import { panicleInitiationByRule, phaseDates, phaseDays } from '../../src/agronomy/stages/phase-rules.ts';
import { stagesOfCode } from '../../src/agronomy/stages/stage-scales.ts';

describe('BBCH of rice', () => {
  test.each(['20', '31', '40', '70', '80', '90', '95'])(
    '%s has no meaning and names its neighbours',
    (code) => {
      expect(bbchStage(code)).toEqual({
        fault: expect.stringMatching(/no meaning in rice; the nearest are \d\d/),
      });
    },
  );

  test.each(['5', '555', 'PI', ''])('"%s" is no code', (code) => {
    expect(bbchStage(code)).toEqual({ fault: expect.stringContaining('two digits') });
  });

  test('of two stages at once the further counts', () => {
    expect(furtherBbch('16/22')).toMatchObject({ code: '22' });
    expect(furtherBbch('29/30')).toMatchObject({ code: '30' });
    expect(furtherBbch('16/40')).toHaveProperty('fault');
  });

  test('every word leads to codes that exist', () => {
    expect(
      FIELD_WORDS.filter(({ from, to }) => !BBCH_RICE.has(from) || !BBCH_RICE.has(to) || from > to),
    ).toEqual([]);
  });

  test('words are found whatever their case; transplanting has no code', () => {
    expect(bbchOfFieldWords(' Green  Ring ')).toMatchObject({ from: '30', to: '30', unconfirmed: true });
    expect(bbchOfFieldWords('transplanting')).toEqual({ fault: expect.stringContaining('event') });
    expect(bbchOfFieldWords('moonrise')).toHaveProperty('fault');
  });
});

describe('scales that look alike', () => {
  test('one digit, three stages', () => {
    const names = (scale: 'BBCH' | 'SES' | 'teaching', code: string) =>
      sure(stagesOfCode(scale, code)).map(({ stage }) => stage);
    expect(names('SES', '3')).toEqual(['tillering']);
    expect(names('teaching', '3')).toEqual(['stem elongation']);
    expect(names('BBCH', '2x')).toEqual(['tillering']);
    expect(names('SES', '6')).toEqual(['heading', 'flowering']);
  });

  test('a code from elsewhere is refused', () => {
    expect(stagesOfCode('SES', '0')).toEqual({ fault: expect.stringContaining('not on the SES scale') });
  });
});

describe('phases', () => {
  test.each([
    ['Yoshida', '2024-02-20', '2024-03-21', 'heading'],
    ['IRRI guide', '2024-02-15', '2024-03-21', 'flowering'],
  ] as const)('110 days from 1 January, %s', (rule, initiation, ends, event) => {
    expect(phaseDates('2024-01-01', 110, rule)).toMatchObject({
      panicleInitiationOn: initiation,
      endsOn: ends,
      ends: event,
      matureOn: '2024-04-20',
      rule,
    });
  });

  test('the rules lie five days apart', () => {
    expect(sure(panicleInitiationByRule('2024-01-01', 110)).apartDays).toBe(5);
  });

  test('too short a season and no date are refused', () => {
    expect(phaseDays(40, 'Yoshida')).toHaveProperty('fault');
    expect(phaseDates('2024-02-30', 110, 'Yoshida')).toEqual({ fault: '2024-02-30 is not in the calendar' });
  });
});

describe('days of the crop', () => {
  test('count from the day itself', () => {
    expect(daysAfter('2024-02-28', '2024-03-01', 'planting')).toBe(2);
    expect(daysAfter('2024-02-28', '2024-02-28', 'planting')).toBe(0);
    expect(dayPlus('2024-02-28', 2)).toBe('2024-03-01');
    expect(dayOfYear('2024-12-31')).toBe(366);
  });

  test('a date before sowing is said to be so', () => {
    expect(daysAfter('2024-03-01', '2024-02-01', 'sowing')).toEqual({
      fault: '2024-02-01 is before sowing, 2024-03-01',
    });
  });

  test.each(['10 March', '2024-3-1', '2024-13-01', ''])('"%s" is no date', (date) => {
    expect(daysAfter(date, '2024-03-01')).toHaveProperty('fault');
  });
});
