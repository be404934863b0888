import { useEffect, useRef, useState } from 'preact/hooks';
import type { Warning } from '../../checks/warning.ts';
import type { LugRef } from '../../circuit/circuit.ts';
import { freeName } from '../../circuit/editing/tray/names.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { standOf } from '../drawings/whole/index.ts';
import { useOnce } from '../once.ts';
import { announce } from '../pieces/announce.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Board } from './board.tsx';
import { DeskStrip } from './desk-strip.tsx';
import { doingWords } from './doing-words.ts';
import { FinishPanel } from './finish-panel.tsx';
import type { Hand, Open } from './hand.ts';
import { LeadPanel } from './lead-panel.tsx';
import { leadWords, lugWords, partWords } from './lead-words.ts';
import { ListPanel } from './list-panel.tsx';
import { PartPanel } from './part-panel.tsx';
import type { SketchAct } from './sketch.ts';
import { TrayPanel } from './tray-panel.tsx';
import { useEditor } from './use-editor.ts';
import { useWarnings } from './use-warnings.ts';
import { WarningsPanel } from './warnings-panel.tsx';

interface DeskProps {
  readonly opened: WiringDraft;
  /** Readings that the wiring as drawn has no lugs for, in words. */
  lostIn(draft: WiringDraft): readonly string[];
  /** Makes or changes the job; rejects with a sentence. */
  use(draft: WiringDraft): Promise<void>;
}

const free: Hand = { is: 'free' };
const nothing: Open = { is: 'nothing' };

/** Where a wiring is drawn: the drawing, what is in hand, and what lies open beside it. */
export function Desk({ opened, lostIn, use }: DeskProps) {
  const editor = useEditor(opened);
  const { circuit, places } = editor.sketch;
  const findings = useWarnings(circuit);
  const [hand, setHand] = useState<Hand>(free);
  const [open, setOpen] = useState<Open>(nothing);
  const [shown, setShown] = useState<Warning | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);

  const doing = useRef<HTMLParagraphElement>(null);
  // What was pressed may be gone with its panel: the keys go on from the line below the drawing.
  useEffect(() => {
    const { activeElement, body } = document;
    if (activeElement === body) doing.current?.focus({ preventScroll: true });
  }, [open, hand.is]);

  const act = (one: SketchAct, said = ''): boolean => {
    const sentence = editor.act(one);
    setRefusal(sentence);
    announce(sentence ?? said);
    return sentence === null;
  };
  const show = (next: Open) => {
    setOpen(next);
    if (next.is !== 'warnings') setShown(null);
    if (next.is !== 'list') setHand(free);
    setRefusal(null);
  };
  const takeBack = (what: 'undo' | 'redo') => {
    editor[what]();
    setHand(free);
    setRefusal(null);
    announce(what === 'undo' ? editorWords().takenBack : editorWords().doneAgain);
  };

  const onLug = (lug: LugRef) => {
    setRefusal(null);
    setShown(null);
    if (hand.is === 'lead' && hand.from === lug) {
      setHand(free);
      return;
    }
    if (hand.is === 'lead') {
      const lead = freeName(circuit, 'lead1');
      const said = editorWords().joinedLugToLug2(
        lugWords(circuit, hand.from),
        lugWords(circuit, lug),
      );
      if (act({ do: 'join', lead, from: hand.from, to: lug }, said)) setHand(free);
      return;
    }
    if (hand.is === 'end') {
      const said = editorWords().solderedToLug(lugWords(circuit, lug));
      if (act({ do: 'solder', joint: hand.joint, lug }, said)) setHand(free);
      return;
    }
    if (open.is !== 'list') setOpen(nothing);
    setHand({ is: 'lead', from: lug });
    announce(editorWords().aLeadFromLugChooseTheLug(lugWords(circuit, lug)));
  };

  const used = useOnce(async () => {
    setFailure(null);
    try {
      await use(editor.draft);
    } catch (error) {
      setFailure(error instanceof Error ? error.message : editorWords().theJobCouldNotBeStored);
    }
  });

  const wide = open.is !== 'nothing';
  const count = findings.warnings.length + (findings.is === 'failed' ? 1 : 0);
  return (
    <Screen
      name="editor"
      title={editorWords().drawTheWiring}
      strip={
        <DeskStrip
          title={editor.draft.title || called(circuit.title)}
          unsaved={editor.unsaved}
          canUndo={editor.canUndo}
          canRedo={editor.canRedo}
          onTakeBack={takeBack}
        />
      }
      acts={
        hand.is === 'free' ? (
          <>
            <button type="button" class="plain" onClick={() => show({ is: 'tray' })}>
              {editorWords().add}
            </button>
            <button type="button" class="plain" onClick={() => show({ is: 'list' })}>
              {editorWords().list}
            </button>
            <button
              type="button"
              class={count > 0 ? 'plain doubts' : 'plain'}
              onClick={() => show({ is: 'warnings' })}
            >
              {count > 0 ? editorWords().countToSee(count) : editorWords().check}
            </button>
            <button type="button" class="main" onClick={() => show({ is: 'finish' })}>
              {editorWords().useIt}
            </button>
          </>
        ) : (
          <>
            <button type="button" class="plain" onClick={() => setHand(free)}>
              {editorWords().cancel}
            </button>
            {hand.is !== 'part' && (
              <button type="button" class="plain" onClick={() => setOpen({ is: 'list' })}>
                {editorWords().chooseInTheList}
              </button>
            )}
          </>
        )
      }
    >
      <div class={wide ? 'desk desk-open' : 'desk'}>
        <div class="board">
          <button type="button" class="past" onClick={() => doing.current?.focus()}>
            {editorWords().pastTheDrawing}
          </button>
          <Board
            sketch={editor.sketch}
            hand={hand}
            open={open}
            warnings={findings.warnings}
            shown={shown}
            onLug={onLug}
            onLead={(lead) => show({ is: 'lead', lead })}
            onPart={(part) => show({ is: 'part', part })}
            onSpot={(at) => {
              if (hand.is !== 'part') return;
              const place = places.get(standOf(circuit, hand.part));
              act({ do: 'place', part: hand.part, place: { turn: place?.turn ?? 0, ...at } });
              setHand(free);
            }}
          />
          <p ref={doing} tabIndex={-1} class={refusal ? 'doing refused' : 'doing'}>
            <span>
              {refusal ??
                doingWords(
                  hand,
                  circuit.parts.length,
                  (lug) => lugWords(circuit, lug),
                  (id) => partWords(circuit, id),
                )}
            </span>
          </p>
        </div>
        {open.is === 'tray' && (
          <TrayPanel
            circuit={circuit}
            onPiece={(piece) => {
              const [first] = piece.parts;
              if (
                act(
                  { do: 'add', ...piece },
                  editorWords().placedPickup(piece.pickup?.title ?? first?.title ?? ''),
                )
              )
                setOpen(nothing);
            }}
            onClose={() => show(nothing)}
          />
        )}
        {open.is === 'list' && (
          <ListPanel
            circuit={circuit}
            hand={hand}
            onLug={onLug}
            onLead={(lead) => show({ is: 'lead', lead })}
            onPart={(part) => show({ is: 'part', part })}
            onTidy={() => {
              if (act({ do: 'tidy' }, editorWords().tidied)) setOpen(nothing);
            }}
            onClose={() => show(nothing)}
          />
        )}
        {open.is === 'part' && (
          <PartPanel
            key={open.part}
            circuit={circuit}
            places={places}
            part={open.part}
            onAct={act}
            onMove={() => {
              setOpen(nothing);
              setHand({ is: 'part', part: open.part });
            }}
            onClose={() => show(nothing)}
          />
        )}
        {open.is === 'lead' && (
          <LeadPanel
            key={open.lead}
            circuit={circuit}
            lead={open.lead}
            onAct={act}
            onTake={(joint) => {
              setOpen(nothing);
              setHand({ is: 'end', joint });
              announce(
                editorWords().leadChooseAnotherLug(
                  leadWords(circuit, joint.slice(0, joint.indexOf('@'))),
                ),
              );
            }}
            onClose={() => show(nothing)}
          />
        )}
        {open.is === 'warnings' && (
          <WarningsPanel
            findings={findings}
            shown={shown}
            onShow={setShown}
            onClose={() => show(nothing)}
          />
        )}
        {open.is === 'finish' && (
          <FinishPanel
            circuit={circuit}
            draft={editor.draft}
            findings={findings}
            lost={lostIn(editor.draft)}
            failure={failure}
            onAct={act}
            onDescribe={editor.describe}
            onUse={used}
            onWarnings={() => show({ is: 'warnings' })}
            onClose={() => show(nothing)}
          />
        )}
      </div>
    </Screen>
  );
}
