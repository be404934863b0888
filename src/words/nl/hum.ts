import type { humWords as English } from '../en/hum.ts';

export const hum: ReturnType<typeof English> = {
  measureTheHum: 'De brom meten',
  notNeeded:
    'Niet nodig, wel vaak een hulp: de telefoon zegt hoeveel zachter de brom in de ene stand is dan in een andere.',
  putItDown: 'Sluit de gitaar aan en leg de telefoon neer bij de luidspreker.',
  keepStill:
    'Een hand op de snaren, knoppen op 10 tenzij er iets anders staat. Verplaats gitaar en telefoon niet, en blijf van het volume van de versterker af.',
  caution:
    'Laag volume. De versterker wordt alleen bespeeld, nooit opengemaakt. Een lijningang krijgt het signaal van een hoofdtelefoon- of lijnuitgang, nooit dat van een luidspreker.',
  nothingKept:
    'De microfoon gaat pas open als je de knop aanraakt. Er wordt geen geluid opgenomen en niets verlaat de telefoon; alleen de cijfers die je overneemt worden bewaard.',
  mains: 'Netfrequentie van je land',
  findOut: 'zoek uit',
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  input: 'Ingang',
  openTheMicrophone: 'Microfoon openen',
  closeTheMicrophone: 'Microfoon sluiten',
  hum: 'Brom',
  humAt: (hertz) => `Brom, ${hertz}\u00a0Hz`,
  noHumHeard:
    'Boven het geluid van de kamer is geen brom te horen. Zet de versterker iets harder, of wees stiller.',
  tooLoud: 'Te luid voor de microfoon. Zet de versterker zachter en meet opnieuw.',
  uneven:
    'Deze telefoon maakt hard en zacht vanzelf gelijk, dus zijn cijfers zijn niet te vergelijken. Een lijningang kan wel werken.',
  measure: 'Meten',
  measureAgain: 'Opnieuw',
  measuring: 'Stilhouden …',
  notMeasured: 'niet gemeten',
  loudest: 'luidst',
  atMost: (softer) => `${softer}, verdwijnt in de kamer`,
  useTheFigures: 'Cijfers overnemen',
  back: 'Terug',
  takenOver: (count) =>
    count === 1 ? 'Brom vergeleken in twee standen' : `Brom vergeleken in ${count + 1} standen`,
  harmonics: 'De brom en zijn boventonen',
};
