import type { HuntResult } from './hunt.ts';

/** Plots of a campaign as SVG, drawn on paper white with dark ink so that they read on any page. */
const [WIDTH, HEIGHT, LEFT, BOTTOM] = [480, 320, 56, 44];
const INK = '#22303a';
const SOFT = '#8a969e';
const MARK = '#1f6f8b';

const x = (share: number) => LEFT + share * (WIDTH - LEFT - 16);
const y = (share: number) => HEIGHT - BOTTOM - share * (HEIGHT - BOTTOM - 20);

function frame(title: string, across: string, up: string, marks: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${title}" font-family="sans-serif" font-size="12" fill="${INK}">
<rect width="${WIDTH}" height="${HEIGHT}" fill="#ffffff"/>
<path d="M${x(0)} ${y(1)}V${y(0)}H${x(1)}" fill="none" stroke="${INK}"/>
${marks}
<text x="${(x(0) + x(1)) / 2}" y="${HEIGHT - 8}" text-anchor="middle">${across}</text>
<text transform="translate(14 ${(y(0) + y(1)) / 2}) rotate(-90)" text-anchor="middle">${up}</text>
</svg>
`;
}

const labelled = (at: number, text: string, side: 'x' | 'y') =>
  side === 'x'
    ? `<text x="${x(at)}" y="${y(0) + 16}" text-anchor="middle">${text}</text>`
    : `<text x="${x(0) - 6}" y="${y(at) + 4}" text-anchor="end">${text}</text>`;

/** Probability stated at the end against share right, in bins of a tenth; the area of a dot goes with the count in it. */
export function calibrationPlot(hunts: readonly HuntResult[]): string {
  const ours = hunts.filter((one) => one.order === 'ours' && one.kind.startsWith('single'));
  const dots = Array.from({ length: 10 }, (_, bin) =>
    ours.filter(({ probability }) => Math.min(9, Math.floor(probability * 10)) === bin),
  )
    .filter((inside) => inside.length > 0)
    .map((inside) => {
      const stated = inside.reduce((sum, one) => sum + one.probability, 0) / inside.length;
      const right = inside.filter((one) => one.right).length / inside.length;
      const radius = 3 + Math.sqrt(inside.length);
      return `<circle cx="${x(stated).toFixed(1)}" cy="${y(right).toFixed(1)}" r="${radius.toFixed(1)}" fill="${MARK}" fill-opacity="0.75"><title>${inside.length} hunts: ${Math.round(stated * 100)} % stated, ${Math.round(right * 100)} % right</title></circle>`;
    });
  const ticks = [0, 0.5, 1].flatMap((at) => [
    labelled(at, `${at * 100} %`, 'x'),
    labelled(at, `${at * 100} %`, 'y'),
  ]);
  return frame(
    'Stated probability against share right',
    `stated at the end (${ours.length} single faults)`,
    'right',
    [
      `<path d="M${x(0)} ${y(0)}L${x(1)} ${y(1)}" stroke="${SOFT}" stroke-dasharray="4 4"/>`,
      ...ticks,
      ...dots,
    ].join('\n'),
  );
}

/** Share of hunts that have ended after so many readings: ours, and the same belief fed in a fixed order. */
export function readingsPlot(hunts: readonly HuntResult[]): string {
  const most = 30;
  const curve = (order: HuntResult['order'], colour: string, dash: string) => {
    const own = hunts.filter((one) => one.order === order && one.kind === 'single-by-prior');
    if (own.length === 0) return '';
    const at = (count: number) =>
      own.filter(({ readings, verdict }) => readings <= count && verdict !== 'unfinished').length /
      own.length;
    const path = Array.from(
      { length: most + 1 },
      (_, count) =>
        `${count === 0 ? 'M' : 'L'}${x(count / most).toFixed(1)} ${y(at(count)).toFixed(1)}`,
    ).join('');
    return `<path d="${path}" fill="none" stroke="${colour}" stroke-width="2.5"${dash}/>`;
  };
  const ticks = [
    ...[0, 10, 20, 30].map((count) => labelled(count / most, `${count}`, 'x')),
    ...[0, 0.5, 1].map((at) => labelled(at, `${at * 100} %`, 'y')),
  ];
  return frame(
    'Readings until the verdict',
    'readings taken (solid: ours; dashed: fixed order from the jack inward)',
    'ended',
    [...ticks, curve('fixed', SOFT, ' stroke-dasharray="6 4"'), curve('ours', MARK, '')].join('\n'),
  );
}
