/** The columns we read, and the headings that keepers write for them: a table. */

export interface ColumnWords<C extends string = string> {
  readonly column: C;
  /** Headings of our own template. */
  readonly own: readonly string[];
  /** Other headings in plain words, the surest first; a match is a guess and is shown. */
  readonly words: readonly string[];
}

export const ANIMAL_COLUMNS = [
  'who',
  'kind',
  'genus',
  'size',
  'unit',
  'fed',
  'moulted',
  'count',
  'shelf',
  'label',
  'sex',
  'stage',
  'room',
  'notes',
] as const;
export type AnimalColumn = (typeof ANIMAL_COLUMNS)[number];

export const STOCK_COLUMNS = [
  'bin',
  'prey',
  'size',
  'unit',
  'count',
  'came',
  'role',
  'room',
  'label',
  'notes',
] as const;
export type StockColumn = (typeof STOCK_COLUMNS)[number];

const words = (list: string): string[] => list.split('|').map((word) => word.trim());

const SIZE = words(
  'leg span|legspan|dls|ls|length|body length|size mm|size cm|size in|size inches|svl|bl|measurement|measured|grosse|groesse|lange|laenge|taille|longueur|tamano|talla|longitud',
);
const UNIT = words('units|size unit|einheit|unite|unidad');
const COUNT = words(
  'number|qty|quantity|amount|heads|how many|total|pcs|pieces|anzahl|stuck|stueck|menge|nombre|quantite|effectif|cantidad|numero',
);
const ROOM = words('site|location room|raum|zimmer|piece|salle|habitacion|sala|cuarto');
const LABEL = words('tag|code|animal id|specimen id|ref|reference|no|nr|kennung|etikett|etiquette|etiqueta');
const NOTES = words('note|comment|comments|remark|remarks|bemerkung|notiz|notizen|remarque|remarques|notas');

export const ANIMAL_WORDS: readonly ColumnWords<AnimalColumn>[] = [
  {
    column: 'who',
    own: ['who', 'name'],
    words: words(
      'animal|pet name|pet|animal name|called|nickname|specimen|tier|rufname|nom|nombre|animal nombre',
    ),
  },
  {
    column: 'kind',
    own: ['kind'],
    words: words(
      'species|scientific name|latin name|latin|scientific|taxon|common name|type|art|spezies|espece|especie|nom scientifique|nombre cientifico',
    ),
  },
  { column: 'genus', own: ['genus'], words: words('gattung|genre|genero') },
  { column: 'size', own: ['size'], words: SIZE },
  { column: 'unit', own: ['unit'], words: UNIT },
  {
    column: 'fed',
    own: ['fed'],
    words: words(
      'last fed|last feeding|last meal|last ate|date fed|fed on|feeding date|fed date|feeding|ate|gefuttert|gefuettert|zuletzt gefuttert|letzte futterung|futterung|nourri|dernier repas|repas|alimentado|ultima comida|comida',
    ),
  },
  {
    column: 'moulted',
    own: ['moulted'],
    words: words(
      'molted|last moult|last molt|moult date|molt date|last moulted|last molted|moult|molt|last shed|shed|hautung|letzte hautung|haeutung|mue|derniere mue|muda|ultima muda',
    ),
  },
  { column: 'count', own: ['count'], words: COUNT },
  {
    column: 'shelf',
    own: ['shelf'],
    words: words(
      'rack|position|spot|place|location|enclosure|tank|regal|platz|standort|etagere|emplacement|estante|lugar',
    ),
  },
  { column: 'label', own: ['label', 'id'], words: LABEL },
  { column: 'sex', own: ['sex'], words: words('gender|m f|geschlecht|sexe|sexo') },
  {
    column: 'stage',
    own: ['stage'],
    words: words('life stage|instar|age class|age|stadium|alter|stade|estadio|etapa|fase'),
  },
  { column: 'room', own: ['room'], words: ROOM },
  { column: 'notes', own: ['notes'], words: NOTES },
];

export const STOCK_WORDS: readonly ColumnWords<StockColumn>[] = [
  {
    column: 'bin',
    own: ['bin'],
    words: words(
      'box|tub|container|colony|culture|cup|name|kiste|behalter|behaelter|dose|boite|bac|caja|recipiente',
    ),
  },
  {
    column: 'prey',
    own: ['prey', 'kind'],
    words: words(
      'species|feeder|feeders|insect|insects|prey species|feeder type|food|type|what|futtertier|futtertiere|futter|art|proie|espece|presa|especie|insecto',
    ),
  },
  { column: 'size', own: ['size'], words: [...SIZE, 'size class', 'stage', 'grade'] },
  { column: 'unit', own: ['unit'], words: UNIT },
  { column: 'count', own: ['count'], words: COUNT },
  {
    column: 'came',
    own: ['came'],
    words: words(
      'arrived|date arrived|received|delivered|delivery date|delivery|bought|purchased|date|geliefert|lieferung|ankunft|gekauft|datum|recu|arrive|arrivee|livre|date d arrivee|llegada|recibido|comprado|fecha',
    ),
  },
  {
    column: 'role',
    own: ['role'],
    words: words('kept as|use|purpose|bin or colony|breeding|zweck|usage|uso'),
  },
  { column: 'room', own: ['room'], words: ROOM },
  { column: 'label', own: ['label', 'id'], words: LABEL },
  { column: 'notes', own: ['notes'], words: NOTES },
];

/** A heading with one of these speaks of something else: "next feeding", "fed with". */
export const OTHER_MEANINGS: readonly string[] = words(
  'next|with|what|every|interval|by|days|frequency|schedule|due|until|response|cost|price|supplier|weight|wt|g|prochain|nachste|naechste|proxima|preis|prix|precio',
);
