import { expect, it } from 'vitest';
import { findAll, shown } from './markup.ts';
import { MeterFace } from './meter-face.tsx';

const face = (show: string) => {
  const nodes = shown(<MeterFace show={show} />);
  return {
    label: nodes[0]!.props['aria-label'],
    text: findAll(nodes, ({ tag }) => tag === 'text')
      .map(({ text }) => text)
      .join('|'),
  };
};

it.each([
  ['OL', 'OL', 'The meter shows OL.'],
  ['1', '1', 'The meter shows 1.'],
  ['---', '---', 'The meter shows ---.'],
  ['7.42 k', '7.42|k', 'The meter shows 7.42 k.'],
  ['', '', "The meter's display is blank."],
])('shows %j', (show, text, label) => {
  expect(face(show)).toEqual({ text, label });
});
