/** Headings of a file of temperatures: when, and how warm; or the day's least and greatest. */
import type { ColumnWords } from '../columns/words.ts';

export type TemperatureColumn = 'when' | 'temperature' | 'least' | 'greatest';

const words = (list: string): string[] => list.split('|');

export const TEMPERATURE_WORDS: readonly ColumnWords<TemperatureColumn>[] = [
  {
    column: 'when',
    own: ['date', 'when'],
    words: words(
      'datetime|date time|date and time|timestamp|time stamp|day|time|datum|datum zeit|datum uhrzeit|zeitpunkt|zeitstempel|tag|zeit|date heure|horodatage|jour|heure|fecha|fecha hora|fecha y hora|dia|hora|data|data ora|giorno|datum tijd|tijd',
    ),
  },
  {
    column: 'least',
    own: ['least', 'min'],
    words: words('minimum|lowest|low|tmin|min temp|temp min|night|kleinste|tiefst|mini|minima|minimo'),
  },
  {
    column: 'greatest',
    own: ['greatest', 'max'],
    words: words('maximum|highest|high|tmax|max temp|temp max|hochst|groesste|maxi|maxima|maximo'),
  },
  {
    column: 'temperature',
    own: ['temperature', 'temp'],
    words: words(
      'temperatur|temperatura|temperatuur|t|celsius|fahrenheit|degc|degf|value|reading|wert|messwert|valeur|valor|deg c|deg f|c|f',
    ),
  },
];
