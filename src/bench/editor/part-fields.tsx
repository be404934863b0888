import type { Choice } from '../../circuit/catalog/modifications/modification.ts';
import { tablesFor, taperChoice } from '../../circuit/editing/tray/controls.ts';
import type { Coil, Metal, Part, Pot, Switch } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { ChoiceFields } from './choice-fields.tsx';
import { ContactFields } from './contact-fields.tsx';
import { ContactPictures } from './contact-pictures.tsx';

interface PartFieldsProps {
  readonly part: Part;
  onPart(part: Part): void;
}

/** A choice about a part, what it is now, and the part as it would be. */
interface Question {
  readonly choice: Choice;
  readonly now: string;
  to(option: string): Part;
}

const choice = (
  id: string,
  title: string,
  ...options: readonly (readonly [id: string, title: string])[]
): Choice => ({
  id,
  title,
  options: options.map(([option, words]) => ({
    id: option,
    title: words,
  })) as unknown as Choice['options'],
});

const potQuestions = (part: Pot): readonly Question[] => [
  {
    choice: choice(
      'role',
      editorWords().whatItDoes,
      ['volume', 'volume'],
      ['tone', 'tone'],
      ['other', editorWords().somethingElse],
    ),
    now: part.role,
    to: (role) => ({ ...part, role: role as Pot['role'] }),
  },
  {
    choice: taperChoice,
    now: part.taper,
    to: (taper) => ({ ...part, taper: taper as Pot['taper'] }),
  },
  {
    choice: choice(
      'counts',
      editorWords().knobIsAtTen,
      ['right', editorWords().turnedRight],
      ['left', editorWords().turnedLeft],
    ),
    now: part.leftHanded ? 'left' : 'right',
    to: (counts) => counted(part, counts === 'left'),
  },
];

/** Which way its figures run; the lugs are counted as on any pot, and the taper stays what is printed. */
function counted({ leftHanded: _, ...pot }: Pot, leftHanded: boolean): Pot {
  return leftHanded ? { ...pot, leftHanded } : pot;
}

const coilQuestions = (part: Coil): readonly Question[] => [
  {
    choice: choice(
      'winding',
      editorWords().wound,
      ['1', editorWords().asUsual],
      ['-1', editorWords().theOtherWay],
    ),
    now: String(part.winding),
    to: (winding) => ({ ...part, winding: winding === '1' ? 1 : -1 }),
  },
  {
    choice: choice('magnet', editorWords().magnetAtTheStrings, ['1', 'north'], ['-1', 'south']),
    now: String(part.magnet),
    to: (magnet) => ({ ...part, magnet: magnet === '1' ? 1 : -1 }),
  },
];

const metalQuestions = (part: Metal): readonly Question[] =>
  part.role === 'strings'
    ? []
    : [
        {
          choice: choice(
            'role',
            editorWords().whatItIs,
            ['plate', editorWords().basePlate],
            ['cover', 'cover'],
            ['foil', editorWords().shieldOfFoil],
            ['paint', editorWords().conductivePaint],
            ['control-plate', editorWords().controlPlate],
          ),
          now: part.role,
          to: (role) => ({ ...part, role: role as Metal['role'] }),
        },
        {
          choice: choice(
            'outside',
            editorWords().withTheGuitarClosed,
            ['no', editorWords().outOfReach],
            ['yes', editorWords().inReach],
          ),
          now: part.outside ? 'yes' : 'no',
          to: (outside) => ({ ...part, outside: outside === 'yes' }),
        },
      ];

/** Tables are told apart by what they join; one that is none of the usual stays until another is chosen. */
function switchQuestions(part: Switch): readonly Question[] {
  const tables = tablesFor(part);
  const shape = ({ rows, positions }: Pick<Switch, 'rows' | 'positions'>) =>
    JSON.stringify([rows, positions.map(({ joins }) => joins)]);
  const now = tables.find((table) => shape(table) === shape(part));
  const own = now ? [] : [['own', editorWords().aTableOfItsOwn] as const];
  return [
    {
      choice: choice(
        'table',
        editorWords().contacts,
        ...own,
        ...tables.map(({ id, title }) => [id, called(title)] as const),
      ),
      now: now?.id ?? 'own',
      to: (id) => {
        const table = tables.find((one) => one.id === id);
        return table ? { ...part, rows: table.rows, positions: table.positions } : part;
      },
    },
    {
      choice: choice('frame', editorWords().metalFrameToGround, ['no', 'no'], ['yes', 'yes']),
      now: part.frame ? 'yes' : 'no',
      to: (frame) => ({ ...part, frame: frame === 'yes' }),
    },
  ];
}

function questionsFor(part: Part): readonly Question[] {
  switch (part.kind) {
    case 'pot':
      return potQuestions(part);
    case 'coil':
      return coilQuestions(part);
    case 'metal':
      return metalQuestions(part);
    case 'switch':
      return switchQuestions(part);
    case 'jack':
      return [
        {
          choice: choice(
            'ring',
            editorWords().lugs,
            ['no', editorWords().tipAndSleeve],
            ['yes', editorWords().tipRingAndSleeve],
          ),
          now: part.ring ? 'yes' : 'no',
          to: (ring) => ({ ...part, ring: ring === 'yes' }),
        },
      ];
    case 'capacitor':
    case 'resistor':
    case 'splice':
      return [];
  }
}

/** What a part is, beside its name and value. A switch also says what its positions are called. */
export function PartFields({ part, onPart }: PartFieldsProps) {
  return (
    <>
      {part.kind === 'switch' && <ContactPictures part={part} />}
      {questionsFor(part).map(({ choice: one, now, to }) => (
        <ChoiceFields
          key={one.id}
          choices={[one]}
          chosen={{ [one.id]: now }}
          onChosen={(chosen) => onPart(to(chosen[one.id] ?? now))}
        />
      ))}
      {part.kind === 'pot' && part.leftHanded && (
        <p class="soft part-note">{editorWords().leftHandedPotNote}</p>
      )}
      {part.kind === 'switch' &&
        part.positions.map((position, at) => (
          <label key={position.name} class="field-tall">
            <span>{editorWords().positionWhatIsCalled(at + 1)}</span>
            <input
              value={called(position.title)}
              maxLength={60}
              onChange={({ currentTarget }) => {
                const title = currentTarget.value.trim();
                if (title !== '') onPart(entitled(part, at, title));
                else currentTarget.value = called(position.title);
              }}
            />
          </label>
        ))}
      {part.kind === 'switch' && <ContactFields part={part} onPart={onPart} />}
    </>
  );
}

const entitled = (part: Switch, at: number, title: string): Switch => ({
  ...part,
  positions: part.positions.map((one, index) => (index === at ? { ...one, title } : one)),
});
