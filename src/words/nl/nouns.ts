import { titles } from './titles.ts';

/** What tells two leads of one colour apart. */
export const marks = {
  striped: 'gestreept',
  dotted: 'gestippeld',
  knotted: 'met knoop',
  taped: 'met tape',
  thick: 'dik',
  thin: 'dun',
  short: 'kort',
  long: 'lang',
};
const MARKED = new RegExp(`^(${Object.keys(marks).join('|')}) (.+)$`);

/** "groen, gestreept" of "striped groen": the mark is stored in English before the person's own word. */
const kleur = (colour: string): string =>
  colour.replace(MARKED, (_, mark: keyof typeof marks, own: string) => `${own}, ${marks[mark]}`);

/** Titles made of others, as the wirings make them. What is in brackets is looked up for itself. */
const patterns: readonly (readonly [RegExp, (...parts: string[]) => string])[] = [
  [
    /^(neck|bridge|middle) pickup$/,
    (side) => (side === 'middle' ? 'het middelste element' : `het ${naam(side)}element`),
  ],
  [/^(neck|bridge|middle) volume$/, (side) => `het ${naam(side)}volume`],
  [/^(neck|bridge|middle) tone$/, (side) => `de ${naam(side)}toon`],
  [/^(neck|bridge|middle) tone capacitor$/, (side) => `de condensator van de ${naam(side)}toon`],
  [/^strings and (neck|bridge|middle)$/, () => 'de snaren en brug'],
  [/^position (\d+)$/, (number) => `stand ${number}`],
  [/^(.+)'s screw coil$/, (owner) => `de schroefspoel van ${de(owner)}`],
  [/^(.+)'s slug coil$/, (owner) => `de stiftspoel van ${de(owner)}`],
  [
    /^(low|high) half of the (.+)$/,
    (half, owner) => `de ${half === 'low' ? 'lage' : 'hoge'} helft van ${de(owner)}`,
  ],
  [/^series link of the (.+)$/, (owner) => `de serieverbinding van ${de(owner)}`],
  [/^base plate of the (.+)$/, (owner) => `de bodemplaat van ${de(owner)}`],
  [/^cover of the (.+)$/, (owner) => `de kap van ${de(owner)}`],
  [/^metal of the (.+)$/, (owner) => `het metaal van ${de(owner)}`],
  [/^base plate and cover of the (.+)$/, (owner) => `de bodemplaat en kap van ${de(owner)}`],
  [
    /^taped end of the middle lead of the (.+)$/,
    (owner) => `het afgeplakte einde van de middelste draad van ${de(owner)}`,
  ],
  [
    /^treble bleed capacitor of the (.+)$/,
    (owner) => `de treble-bleedcondensator van ${de(owner)}`,
  ],
  [/^treble bleed resistor of the (.+)$/, (owner) => `de treble-bleedweerstand van ${de(owner)}`],
  [
    /^joint of the treble bleed of the (.+)$/,
    (owner) => `de verbinding van de treble bleed van ${de(owner)}`,
  ],
  [
    /^joint before the bass cut of the (.+)$/,
    (owner) => `de verbinding voor de basafsnijding van ${de(owner)}`,
  ],
  [/^bass cut switch of the (.+)$/, (owner) => `de basschakelaar van ${de(owner)}`],
  [/^bass cut capacitor of the (.+)$/, (owner) => `de bascondensator van ${de(owner)}`],
  [/^bass capacitor of the (.+)$/, (owner) => `de bascondensator van ${de(owner)}`],
  [/^bass knob of the (.+)$/, (owner) => `de basknop van ${de(owner)}`],
  [/^add-in switch of the (.+)$/, (owner) => `de bijschakelaar van ${de(owner)}`],
  [/^blend knob of the (.+)$/, (owner) => `de mengknop van ${de(owner)}`],
  [/^split knob of the (.+)$/, (owner) => `de splitknop van ${de(owner)}`],
  [/^split resistor of the (.+)$/, (owner) => `de splitweerstand van ${de(owner)}`],
  [/^capacitor of the (.+)$/, (owner) => `de condensator van ${de(owner)}`],
  [/^bypass switch of the (.+)$/, (owner) => `de omleidschakelaar van ${de(owner)}`],
  [/^phase switch of the (.+)$/, (owner) => `de faseschakelaar van ${de(owner)}`],
  [
    /^series\/parallel switch of the (.+)$/,
    (owner) => `de serie/parallelschakelaar van ${de(owner)}`,
  ],
  [
    /^partial split switch of the (.+)$/,
    (owner) => `de schakelaar voor de gedeeltelijke split van ${de(owner)}`,
  ],
  [
    /^split switch of the (.+) and the (.+)$/,
    (one, other) => `de splitschakelaar van ${de(one)} en ${de(other)}`,
  ],
  [/^split switch of the (.+)$/, (owner) => `de splitschakelaar van ${de(owner)}`],
  [
    /^series switch of the (.+) with the (.+)$/,
    (one, other) => `de serieschakelaar van ${de(one)} met ${de(other)}`,
  ],
  [/^switch on the (.+)$/, (owner) => `de schakelaar op ${de(owner)}`],
  // Positions and options
  [/^(.+) added$/, (one) => `${naam(one)} erbij`],
  [/^(.+) straight to the jack$/, (one) => `${naam(one)} rechtstreeks naar de jack`],
  [/^mostly the (.+)$/, (one) => `vooral ${de(one)}`],
  [/^(.+) alone$/, (one) => `alleen ${de(one)}`],
  [/^push-pull on the (.+)$/, (owner) => `trekschakelaar op ${de(owner)}`],
  [/^push-push on the (.+)$/, (owner) => `drukschakelaar op ${de(owner)}`],
  [/^the (.+), moved$/, (one) => `${de(one)}, verplaatst`],
  [/^(\d+) (poles?)$/, (count) => `${count} ${count === '1' ? 'pool' : 'polen'}`],
  [/^(\d+) positions$/, (count) => `${count} standen`],
  [/^(\d+) more$/, (count) => `nog ${count}`],
  // What a wiring has been changed by
  [/^with (.+)$/, (change) => `met ${naam(change)}`],
  [/^another (.+) pot$/, (one) => `een andere potmeter voor ${de(one)}`],
  [/^a no-load (.+)$/, (one) => `${de(one)} zonder belasting`],
  [
    /^the (.+) on the other side of its volume$/,
    (one) => `${de(one)} aan de andere kant van zijn volume`,
  ],
  [/^a treble bleed on the (.+)$/, (owner) => `een treble bleed op ${de(owner)}`],
  [/^a bass cut of the (.+)$/, (owner) => `een basafsnijding van ${de(owner)}`],
  [/^a bass knob of the (.+)$/, (owner) => `een basknop van ${de(owner)}`],
  [/^an add-in switch for the (.+)$/, (owner) => `een bijschakelaar voor ${de(owner)}`],
  [/^a blend knob for the (.+)$/, (owner) => `een mengknop voor ${de(owner)}`],
  [/^a split knob for the (.+)$/, (owner) => `een splitknop voor ${de(owner)}`],
  [
    /^the (.+) straight to the jack by a switch$/,
    (one) => `${de(one)} met een schakelaar rechtstreeks naar de jack`,
  ],
  [/^a phase switch on the (.+)$/, (owner) => `een faseschakelaar op ${de(owner)}`],
  [/^series\/parallel of the (.+)$/, (owner) => `serie/parallel van ${de(owner)}`],
  [/^a partial split of the (.+)$/, (owner) => `een gedeeltelijke split van ${de(owner)}`],
  [
    /^a split of the (.+) and the (.+) on one switch$/,
    (one, other) => `een split van ${de(one)} en ${de(other)} op één schakelaar`,
  ],
  [/^a split of the (.+)$/, (owner) => `een split van ${de(owner)}`],
  [/^the (.+) with the (.+) in series$/, (one, other) => `${de(one)} met ${de(other)} in serie`],
  [
    /^a ground wire of its own for the metal of the (.+)$/,
    (owner) => `een eigen massadraad voor het metaal van ${de(owner)}`,
  ],
  // Why a change cannot be made
  [
    /^The cold lead of the (.+) also grounds the (.+): give that metal a ground wire of its own first, or it becomes hot\.$/,
    (owner, metal) =>
      `De koude draad van ${de(owner)} verbindt ook ${de(metal)} met massa: geef dat metaal eerst een eigen massadraad, anders komt er signaal op.`,
  ],
  [
    /^The coils of the (.+) are joined inside it: they can only be in series\.$/,
    (owner) => `De spoelen van ${de(owner)} zijn binnenin verbonden: ze kunnen alleen in serie.`,
  ],
  [
    /^The coils of the (.+) go to the (.+) already, so there is no series link to split at\.$/,
    (owner, part) =>
      `De spoelen van ${de(owner)} gaan al naar ${de(part)}, dus is er geen serieverbinding om te splitsen.`,
  ],
  [
    /^The coils of the (.+) go to the (.+) already: fit the (.+) before it\.$/,
    (owner, part) => `De spoelen van ${de(owner)} gaan al naar ${de(part)}: breng dit eerder aan.`,
  ],
  [
    /^The coils of the (.+) go to the (.+) already\.$/,
    (owner, part) => `De spoelen van ${de(owner)} gaan al naar ${de(part)}.`,
  ],
  [
    /^The (.+) is joined to its neighbour inside the pickup: its two ends cannot be exchanged\.$/,
    (one) =>
      `${groot(de(one))} is binnen het element met zijn buur verbonden: zijn twee einden kunnen niet verwisseld worden.`,
  ],
  [
    /^A pickup comes to the wiper of the (.+) already\.$/,
    (pot) => `Er komt al een element op de loper van ${de(pot)}.`,
  ],
  [
    /^No pickup comes to lug 3 of the (.+) alone\.$/,
    (pot) => `Er komt geen element alleen op lip 3 van ${de(pot)}.`,
  ],
  [
    /^The (.+) is across the (.+) already\.$/,
    (one, other) => `${groot(de(one))} zit al over ${de(other)}.`,
  ],
  [
    /^The (.+) is a no-load pot already\.$/,
    (pot) => `${groot(de(pot))} is al een potmeter zonder belasting.`,
  ],
  [
    /^The (.+) comes last before the jack already\.$/,
    (pot) => `${groot(de(pot))} komt al als laatste voor de jack.`,
  ],
  [/^The (.+) is there already\.$/, (one) => `${groot(de(one))} is er al.`],
  [
    /^The cold end of (.+) goes to a switch already\.$/,
    (one) => `Het koude einde van ${de(one)} gaat al naar een schakelaar.`,
  ],
  [
    /^No lead brings out where the coils of the (.+) meet: it cannot be split\.$/,
    (owner) =>
      `Geen draad komt naar buiten waar de spoelen van ${de(owner)} samenkomen: splitsen kan niet.`,
  ],
  [
    /^(.+): the other changes leave no place for it\.$/,
    (what) => `${naam(what)}: de andere veranderingen laten er geen plaats voor.`,
  ],
  [
    /^(.+): (.+) is taken already\.$/,
    (what, option) => `${naam(what)}: ${naam(option)} is al bezet.`,
  ],
  // The mat
  [/^joined pair (.+)$/, (colour) => `het verbonden paar${gekleurd(colour)}`],
  [/^(.+) lead$/, (colour) => `de draad${gekleurd(colour)}`],
  [/^(.+) wire$/, (colour) => `de blanke draad${gekleurd(colour)}`],
  [/^a pickup with (\d+) leads$/, (count) => `een element met ${count} draden`],
  [/^Pickup: (.+)$/, (colours) => `Element: ${colours.split(', ').map(kleur).join('; ')}`],
  [MARKED, (mark, colour) => kleur(`${mark} ${colour}`)],
  // Several
  [/^(.+) with the (.+)$/, (one, other) => `${naam(one)} met ${de(other)}`],
  [/^(.+) and the (.+)$/, (one, other) => `${naam(one)} en ${de(other)}`],
  [
    /^(neck|bridge|middle) and (neck|bridge|middle)$/,
    (one, other) => `${naam(one)} en ${naam(other)}`,
  ],
  [/^(.+): (.+)$/, (one, other) => `${naam(one)}: ${naam(other)}`],
  [/^the (.+)$/, (one) => de(one)],
  [/^(.+) (\d+)$/, (one, number) => `${found(one) ?? `de ${one}`} ${number}`],
];

/** The Dutch of a title that is data of the app, or undefined where it is somebody's own. */
export function found(title: string): string | undefined {
  const known = titles[title];
  if (known !== undefined) return known;
  for (const [pattern, say] of patterns) {
    const match = pattern.exec(title);
    if (match) return say(...match.slice(1));
  }
  if (!title.includes(', ')) return undefined;
  const pieces = title.split(', ');
  const said = pieces.map(found);
  return said.some((one) => one !== undefined)
    ? said.map((one, at) => one ?? pieces[at]).join(', ')
    : undefined;
}

/** With its article, inside a sentence: "de keuzeschakelaar". A name of the person's own that has a capital stands alone. */
export const de = (title: string): string =>
  found(title) ?? (/^\p{Ll}/u.test(title) ? `${article(title)} ${title}` : title);

/** The article of a name in Dutch that the person, or the bench for them, gave. */
const article = (name: string): string =>
  /^(?:\p{Ll}+e )?\p{Ll}*(?:element|volume|paar|metaal|frame|huis)\b/u.test(name) ? 'het' : 'de';

/** Without article: "keuzeschakelaar". */
export const naam = (title: string): string => (found(title) ?? title).replace(/^(de|het) /, '');

export const groot = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const klein = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** A lug of a jack. */
export const lip = (lug: string): string => (lug === 'sleeve' ? 'mantel' : lug);

/** An end of a coil. */
export const einde = (end: string): string => (end === 'start' ? 'begin' : 'einde');

/** A colour in the person's words, behind what has it. */
export const gekleurd = (colour: string): string => (colour === '' ? '' : ` (${kleur(colour)})`);
