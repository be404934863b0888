import { type ComponentChildren, render } from 'preact';
import { ControlsStrip, MeterFace, ProbeDrawing } from '../../src/bench/drawings/index.ts';
import { PlaceDrawing } from '../../src/bench/drawings/place-drawing.tsx';
import { WholeDrawing, wholeLayout } from '../../src/bench/drawings/whole/index.ts';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { samples, wirings } from './samples.ts';

const query = new URLSearchParams(location.search);
const width = Number(query.get('width') ?? 390);
const group = query.get('group');
const only = query.get('only');
const lie = { turned: query.get('turned') === 'yes', leftHanded: false };
document.documentElement.classList.toggle('dark', query.get('theme') === 'dark');

const Frame = ({ name, children }: { name: string; children: ComponentChildren }) => (
  <figure style={{ width: `${width}px` }}>
    <figcaption>{name.slice(0, 60)}</figcaption>
    {children}
  </figure>
);

function controls() {
  return wirings.flatMap((circuit) => {
    const rest = restingSetting(circuit);
    const firstPot = circuit.parts.find((part) => part.kind === 'pot');
    const moved = {
      ...rest,
      plug: 'in' as const,
      knobs: { ...rest.knobs, [firstPot?.id ?? '']: 0 },
      positions: Object.fromEntries(
        circuit.parts.flatMap((part) =>
          part.kind === 'switch' ? [[part.id, part.positions[1]?.name ?? '']] : [],
        ),
      ),
    };
    return [
      <Frame key={circuit.id} name={circuit.title}>
        <ControlsStrip circuit={circuit} setting={rest} previous={null} />
      </Frame>,
      <Frame key={`${circuit.id} moved`} name={`${circuit.title}, moved`}>
        <ControlsStrip circuit={circuit} setting={moved} previous={rest} />
      </Frame>,
    ];
  });
}

const maps = () =>
  wirings
    .filter(({ id }) => !only || id === only)
    .map((circuit, i) => {
      const lead = circuit.leads[i]!;
      const suspicion = {
        [`${lead.id}@to`]: 0.55,
        [`${lead.id}@from`]: 0.12,
        [lead.id]: 0.05,
        [`${circuit.parts[0]!.id}:winding`]: 0.2,
        [`${circuit.leads[4]!.id}@to`]: 0.04,
      };
      return (
        <Frame key={circuit.id} name={circuit.title}>
          <WholeDrawing
            circuit={circuit}
            suspicion={suspicion}
            onSite={(site) => console.info(site)}
          />
        </Frame>
      );
    });

const wholes = () =>
  [
    ...startingWirings.map(({ build }) => build()),
    ...wirings,
    // Further circuits as JSON, for a look at what no catalogue holds.
    ...((window as { furtherWirings?: Circuit[] }).furtherWirings ?? []),
  ]
    .filter(({ id }, i) => !only || id === only || only === String(i))
    .map((circuit, i) => (
      <Frame
        key={`${circuit.id} ${i}`}
        name={`${circuit.title}: ${wholeLayout(circuit).box.w} x ${wholeLayout(circuit).box.h}`}
      >
        <WholeDrawing circuit={circuit} suspicion={{}} onSite={(site) => console.info(site)} />
      </Frame>
    ));

const places = () =>
  [
    ['neckSlug:winding', 'neckScrew:winding'],
    ['neckHot@to', 'selector:A-C'],
    ['neckHot'],
    ['jackHot@to'],
    ['neckVolume:wiper'],
    ['neckLink.joint', 'bridgeLink'],
    ['neckCap:body', 'strings'],
    ['neckSlugInner@to', 'neckScrewInner@to'],
  ].map((sites) => (
    <Frame key={sites.join()} name={sites.join(', ')}>
      <PlaceDrawing circuit={wirings[0]!} sites={sites} />
    </Frame>
  ));

const meters = () =>
  ['OL', '1', '', '---', '7.42 k', '0.3 Ω', '-1.234 mV'].map((show) => (
    <Frame key={show} name={show || 'blank'}>
      <MeterFace show={show} />
    </Frame>
  ));

const asks = () =>
  samples
    .filter((sample) => sample.group === group)
    .map(({ name, circuit, ask }) => (
      <Frame key={name} name={name}>
        <ProbeDrawing circuit={circuit} ask={ask} lie={lie} />
      </Frame>
    ));

render(
  group === 'controls'
    ? controls()
    : group === 'looks'
      ? places()
      : group === 'maps'
        ? maps()
        : group === 'whole'
          ? wholes()
          : group === 'meters'
            ? meters()
            : asks(),
  document.getElementById('gallery')!,
);
