import type { ColumnPart } from './namesTable';

/** Heads of columns as clubs and shops write them, common practice; compared without case, dots and spaces. */
const words: Readonly<Record<Exclude<ColumnPart, 'nothing'>, readonly string[]>> = {
  name: [
    ...['name', 'names', 'fullname', 'firstname', 'lastname', 'surname', 'givenname', 'familyname', 'player'],
    ...['playername', 'person', 'member', 'participant', 'who', 'nametoprint', 'printname', 'nickname'],
    ...[
      'nombre',
      'apellido',
      'apellidos',
      'nom',
      'prénom',
      'prenom',
      'vorname',
      'nachname',
      'spieler',
      'naam',
    ],
    ...['voornaam', 'achternaam', 'nome', 'cognome', 'sobrenome', 'apelido', 'imię', 'nazwisko', 'namn'],
    ...['navn', 'имя', 'фамилия', 'ім’я', 'прізвище', 'όνομα', 'επώνυμο', 'שם', 'tên', 'họtên'],
  ],
  size: [
    ...['size', 'sizes', 'shirtsize', 'tshirtsize', 'teesize', 'garmentsize', 'talla', 'tallas', 'taille'],
    ...['größe', 'grösse', 'groesse', 'konfektionsgröße', 'maat', 'tamanho', 'taglia', 'rozmiar', 'storlek'],
    ...['størrelse', 'koko', 'размер', 'розмір', 'μέγεθος', 'מידה', 'cỡ', 'size/talla'],
  ],
  number: [
    ...['number', 'no', 'nr', 'num', '#', 'n°', 'nº', '№', 'shirtnumber', 'playernumber', 'jerseynumber'],
    ...['backnumber', 'numbertoprint', 'número', 'numero', 'dorsal', 'numéro', 'nummer', 'rückennummer'],
    ...['rugnummer', 'numer', 'номер', 'αριθμός', 'מספר', 'số'],
  ],
  pieces: [
    ...['quantity', 'qty', 'pieces', 'pcs', 'count', 'howmany', 'amount', 'cantidad', 'quantité', 'anzahl'],
    ...['menge', 'stück', 'aantal', 'quantidade', 'quantità', 'ilość', 'количество', 'ποσότητα', 'כמות'],
  ],
};

const parts = new Map(
  Object.entries(words).flatMap(([part, list]) => list.map((word) => [plainHead(word), part] as const)),
);

/** @returns what a column is headed as; null where the word is none that is known. */
export function partOfHead(head: string): Exclude<ColumnPart, 'nothing'> | null {
  const part = parts.get(plainHead(head));
  return part === 'name' || part === 'size' || part === 'number' || part === 'pieces' ? part : null;
}

function plainHead(text: string): string {
  return text
    .normalize('NFC')
    .toLowerCase()
    .replace(/\(.*?\)/g, '')
    .replace(/[\s._:*?-]+/g, '');
}
