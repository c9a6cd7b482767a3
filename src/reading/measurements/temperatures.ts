import { type ReadFigure, read } from './reading.ts';
import { nearestTopic, speaksOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

/** Fahrenheit where it is said, and where no air on earth is that hot in Celsius. */
export const readTemperature: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'temperature') return [];
  if (
    nearestTopic(around, number.first, number.last, new Set<Topic>(['water', 'part-length']), 'stretch') &&
    !speaksOf(around, number.first, 'temperature', 'clause')
  )
    return [];
  return read('air_temperature', celsius(number.value, shape.unit.name === 'degree F'), 'degrees');
};

export const celsius = (value: number, fahrenheit: boolean): number =>
  fahrenheit || value > 55 ? Number((((value - 32) * 5) / 9).toFixed(2)) : value;
