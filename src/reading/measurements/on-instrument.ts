/** Figures whose instrument stands behind them. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import { type Read, read } from './reading.ts';
import { type Surroundings, type TopicFound, wordOf } from './surroundings.ts';
import { celsius } from './temperatures.ts';

/** `103 on the truck thermometer`, `reads 3 on the leaf colour chart`. */
export function onInstrument(around: Surroundings, number: NumberFound): Read[] | null {
  if (!/^(on|by|with|in)$/.test(wordOf(around, number.last + 1))) return null;
  const topic =
    topicAt(around, number.last + 2) ??
    (/^(the|a|our|my)$/.test(wordOf(around, number.last + 2)) ? topicAt(around, number.last + 3) : null);
  if (topic?.topic === 'spad') return read('spad', number.value, 'on-the-meter');
  if (topic?.topic === 'leaf-colour' && number.value >= 1 && number.value <= 6)
    return read('leaf_colour', number.value, 'on-the-chart');
  return onThermometer(around, number);
}

/** The thermometer may have words of its own before it. */
function onThermometer(around: Surroundings, number: NumberFound): Read[] | null {
  const behind = [1, 2, 3].map((step) => wordOf(around, number.last + step)).join(' ');
  if (/^in the (shade|sun)$/.test(behind) && number.value >= 20)
    return read('air_temperature', celsius(number.value, false), 'in-the-shade');
  if (!behind.startsWith('on ')) return null;
  for (let index = number.last + 2; index <= number.last + 5; index++)
    if (wordOf(around, index) === 'thermometer')
      return read('air_temperature', celsius(number.value, false), 'on-the-thermometer');
  return null;
}

export function topicAt(around: Surroundings, at: number): TopicFound | null {
  const topic = around.topics[around.topicFrom[at] ?? -1];
  return topic && topic.first === at ? topic : null;
}
