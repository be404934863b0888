import { useMemo } from 'preact/hooks';
import type { Setting } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import type { Assessment } from '../../diagnosis/assessment.ts';
import type { Job } from '../../notebook/job.ts';
import type { Ask } from '../../readings/reading.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { GrowingDrawing, spotOf, useLayout, ZoomFrame } from '../drawings/whole/index.ts';
import { sketchFrom } from '../editor/sketch.ts';
import type { Say } from '../hunt-actor.ts';
import { Redraw } from '../pieces/redraw.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Suspects } from '../pieces/suspects.tsx';
import { hrefOf } from '../route.ts';
import { PlacePanel } from './place-panel.tsx';

/** What lies open on the drawing, and how the controls are thought to stand. */
export interface Looking {
  readonly site: SiteId | PartId | null;
  readonly setting: Setting;
}

interface WholeWiringProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly assessment: Assessment | null;
  readonly looking: Looking;
  /** The last act is not on the disk yet: nothing new is taken. */
  readonly storing: boolean;
  /** It could not be stored. */
  readonly unsaved: boolean;
  readonly say: Say;
  onLooking(looking: Looking): void;
  onTake(ask: Ask): void;
}

/** The intended wiring as it lies before the person; each place's dot is as large as its share of suspicion. To tap at the bench, or to print on one page. */
export function WholeWiring(props: WholeWiringProps) {
  const { strip, job, assessment, looking, storing, unsaved, say, onLooking, onTake } = props;
  const { circuit } = job;
  const places = useMemo(
    () => job.places && sketchFrom({ circuit, places: job.places }).places,
    [circuit, job.places],
  );
  const layout = useLayout(circuit, places);
  const suspicion = assessment?.suspicion ?? noSuspicion;
  const { site } = looking;
  const spot = site === null || !layout ? null : spotOf(layout, suspicion, site);
  const suspected = Object.values(suspicion).some((share) => share > 0.1);
  return (
    <Screen
      name="drawing"
      title={huntWords().theWiring}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => window.print()}>
            {huntWords().print}
          </button>
          <a class="main" href={hrefOf({ at: 'job', id: job.id, view: 'hunt' })}>
            {huntWords().backToTheHunt}
          </a>
        </>
      }
    >
      <p class="print-only">
        <strong>{job.title}: </strong>
        {huntWords().circuitEveryPartIsDrawnFrom(circuit.title)}
      </p>
      {unsaved && (
        <p role="alert" class="sentence">
          {huntWords().theLastThingYouEnteredIsNot}
        </p>
      )}
      <div class={site ? 'wiring wiring-open' : 'wiring'}>
        <div class="wiring-sheet">
          {layout ? (
            <ZoomFrame
              w={layout.box.w}
              h={layout.box.h}
              label={huntWords().theWiring}
              look={spot && { x: spot.x - layout.box.x, y: spot.y - layout.box.y }}
            >
              <GrowingDrawing
                circuit={circuit}
                places={places}
                suspicion={suspicion}
                picked={site}
                onSite={(next) => onLooking({ ...looking, site: next })}
              />
            </ZoomFrame>
          ) : (
            <p class="soft">{huntWords().workingItOut}</p>
          )}
        </div>
        {site ? (
          <PlacePanel
            key={site}
            job={job}
            site={site}
            share={suspicion[site] ?? 0}
            reports={assessment?.readings ?? []}
            setting={looking.setting}
            storing={storing}
            say={say}
            onSetting={(setting) => onLooking({ ...looking, setting })}
            onTake={onTake}
            onClose={() => onLooking({ ...looking, site: null })}
          />
        ) : (
          <div class="wiring-more">
            <p class="soft">
              {suspected ? huntWords().touchAJointTheLargerTheDot : huntWords().touchAJoint}
            </p>
            {assessment && assessment.suspects.length > 0 && (
              <>
                <h2>{huntWords().mostLikely}</h2>
                <Suspects suspects={assessment.suspects} most={6} />
              </>
            )}
            <Redraw job={job} />
          </div>
        )}
      </div>
    </Screen>
  );
}

const noSuspicion: Readonly<Record<string, number>> = {};
