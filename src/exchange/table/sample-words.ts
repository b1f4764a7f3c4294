/** Headings of the sample's name, the most telling first; within one group they are equal. */
const NAMES: readonly (readonly string[])[] = [
  [
    'sample name',
    'name of sample',
    'specimen name',
    'probenname',
    'probenbezeichnung',
    "nom de l'échantillon",
    'nombre de la muestra',
    'nome del campione',
  ],
  ['name', 'sample', 'specimen', 'probe', 'échantillon', 'muestra', 'campione', 'nom', 'nombre', 'nome', 'bezeichnung'],
  ['panel name', 'panel', 'drawdown', 'draw down', 'swatch', 'film', 'colour name', 'color name', 'farbname', 'aufzug'],
  [
    'sample id',
    'sample no',
    'sample number',
    'sample code',
    'specimen id',
    'id',
    'probe nr',
    'probennummer',
    'panel no',
    'panel id',
    'code',
    'label',
  ],
  ['description', 'beschreibung', 'batch', 'batch no', 'charge', 'lot', 'material'],
];
const REPLICATES = new Set(
  'replicate,replicates,replicate number,replicate no,rep,rep no,rep number,repeat,repeat no,reading,reading no,reading number,measurement no,measurement number,messung,messung nr,wiederholung,répétition,mesure,repetición,spot,spot no,scan,scan no'.split(
    ',',
  ),
);
/** Headings of columns that never name a sample. */
const OTHERS = new Set(
  'operator,user,date,time,datetime,timestamp,measured,created,remark,remarks,comment,comments,note,notes,bemerkung,kommentar,commentaire,type,status,pass fail,customer,lab,location,shift,software,version,unit,units,bediener,datum,uhrzeit'.split(
    ',',
  ),
);
/** Headings of a column that says what kind of values a row holds. */
const KINDS = new Set(
  'type,mode,kind,data type,datatype,data,measurement type,measurement mode,quantity,value type,values,unit,units,art,messart'.split(
    ',',
  ),
);

/** Lower case, with underscores, hyphens, points, colons and number signs as spaces: one spelling for comparing headings. */
export function normaliseHeading(text: string): string {
  return text
    .toLowerCase()
    .replace(/#/g, ' no ')
    .replace(/[\s_\-.:]+/g, ' ')
    .trim();
}

/** How telling a normalised heading is as that of the samples' names, 0 the most; -1 for none. */
export function nameRank(heading: string): number {
  const spaced = heading.replace(/^(sample|probe|specimen|panel)(name|id|no|number|code)$/, '$1 $2');
  return NAMES.findIndex((group) => group.includes(spaced));
}

export const isReplicateWord = (heading: string): boolean => REPLICATES.has(heading);
export const isKindWord = (heading: string): boolean => KINDS.has(heading);
export const isOtherWord = (heading: string): boolean => OTHERS.has(heading);
