/** The cautions, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = [
  'Eine Übungshilfe für die Simulation. Nicht zur Navigation und nicht für echte Flüge.',
  'Flughandbuch, Flugverkehrskontrolle, örtliche Regeln und ein Fluglehrer mit Lizenz gehen immer vor.',
  'Lapstrip sagt „innerhalb der angegebenen Grenzen“ und nennt sie. Ob ein Start oder eine Landung gelingen kann, weiß es nicht.',
  'Seine Plätze, Flugzeuge und Verfahren sind erfunden; eigene mit Sorgfalt eingeben und prüfen.',
  'Die Werte werden aus dem errechnet, was eingegeben wurde. Erst oben auf Wind, Platz und Zeit schauen, dann den Werten glauben.',
];
