import type { Ask } from '../../readings/reading.ts';
import { ProbeLetter } from './marks.tsx';
import { MeterFace } from './meter-face.tsx';
import { COPPER, INK, PAPER, SOFT } from './theme.ts';

const W = 320;
const H = 132;

/** What a kind of reading is, in one picture: what the hands do, and what shows then. `words` tells it to those who do not see. */
export function KindDrawing({ kind, words }: { kind: Ask['kind']; words: string }) {
  return (
    <svg
      role="img"
      aria-label={words}
      viewBox={`0 0 ${W} ${H}`}
      width="100%"
      font-family="inherit"
      class="kind-drawing"
    >
      <title>{words}</title>
      <g
        fill="none"
        stroke={INK}
        stroke-width={2.25}
        stroke-linecap="round"
        stroke-linejoin="round"
      >
        {pictures[kind]()}
      </g>
    </svg>
  );
}

const pictures: Record<Ask['kind'], () => preact.JSX.Element> = {
  ohms: () => (
    <>
      <Meter show="7.42 k" />
      <Coil />
    </>
  ),
  beep: () => (
    <>
      <Meter show="0.3 Ω" />
      <Waves x={104} y={30} />
      <path d="M196 92H292" stroke={SOFT} stroke-width={9} />
      <Probe x={206} y={86} colour="red" />
      <Probe x={282} y={86} colour="black" />
    </>
  ),
  turn: () => (
    <>
      <circle cx={62} cy={66} r={36} fill={PAPER} />
      <path d="M62 66L40 90" stroke-width={4} />
      <path d="M26 104A52 52 0 1 1 98 104" stroke={COPPER} stroke-width={3} />
      <path d="M104 92L97 105L84 100" stroke={COPPER} stroke-width={3} />
      <Chart x={136} tick d="M142 84C160 62 180 40 206 34" />
      <Chart x={232} d="M238 84L258 62M262 92V96M268 52L302 30" />
    </>
  ),
  flex: () => (
    <>
      <path d="M20 66C50 30 70 102 112 66" stroke-width={5} />
      <path d="M58 22q8 -8 16 0t16 0M50 112q8 -8 16 0t16 0" stroke={COPPER} stroke-width={3} />
      <Chart x={136} tick d="M142 62H206" />
      <Chart x={232} d="M238 62H262M268 34V92M274 62H302" />
    </>
  ),
  tap: () => (
    <>
      <rect x={28} y={74} width={132} height={36} rx={18} fill={PAPER} />
      {[0, 1, 2, 3, 4, 5].map((n) => (
        <circle key={n} cx={50 + n * 18} cy={92} r={5} stroke={SOFT} />
      ))}
      <g transform="rotate(-38 96 84)">
        <rect x={96} y={78} width={52} height={11} fill={PAPER} />
        <rect x={148} y={74} width={36} height={19} rx={8} fill={INK} />
      </g>
      <path d="M84 66V22M74 32L84 22L94 32" stroke={COPPER} stroke-width={3} />
      <path d="M206 104A54 54 0 0 1 306 104" />
      <path d="M256 108L292 74" stroke={COPPER} stroke-width={4} />
      <Signs />
    </>
  ),
  farads: () => (
    <>
      <Meter show="22.1 n" />
      <rect x={216} y={30} width={58} height={34} rx={14} fill={PAPER} />
      <path d="M228 64V112M262 64V88" stroke={SOFT} />
      <path d="M214 114H306" stroke={SOFT} stroke-width={4} />
      <path d="M278 106V94M272 99L278 93L284 99" stroke={COPPER} stroke-width={3} />
      <Probe x={228} y={102} colour="red" />
      <Probe x={262} y={86} colour="black" />
    </>
  ),
  listen: () => (
    <>
      <rect x={28} y={34} width={26} height={64} rx={8} fill={PAPER} />
      <rect x={54} y={54} width={16} height={24} fill={PAPER} />
      <rect x={70} y={50} width={50} height={32} rx={8} fill={PAPER} />
      <path d="M120 66C170 66 160 100 210 96" stroke-width={4} />
      <path d="M222 52h22l22 -22v72l-22 -22h-22z" fill={PAPER} />
      <Waves x={276} y={66} />
    </>
  ),
  touch: () => (
    <>
      <rect x={24} y={28} width={112} height={46} rx={8} fill={PAPER} />
      <path
        d="M74 58a8 8 0 0 1 16 0v30c4 -4 14 -3 14 5c6 -4 14 0 14 8v22H74l-16 -24c-4 -7 4 -12 9 -7l7 6z"
        fill={PAPER}
      />
      <path d="M64 46a20 20 0 0 1 8 -8M92 38a20 20 0 0 1 9 8" stroke={COPPER} stroke-width={3} />
      <path d="M160 66q7 -58 14 0t14 0t14 0t14 0" stroke={SOFT} stroke-width={2.5} />
      <path d="M224 66h18M236 58l8 8l-8 8" stroke={COPPER} stroke-width={3} />
      <path d="M256 66q6 -12 12 0t12 0t12 0t12 0" stroke-width={2.5} />
    </>
  ),
  hum: () => (
    <>
      <rect x={30} y={26} width={50} height={84} rx={8} fill={PAPER} />
      <path d="M47 100h16" />
      <Waves x={92} y={66} />
      <path d="M150 110H298" stroke={SOFT} />
      <path d="M176 110V34M194 110V58M212 110V46" stroke={COPPER} stroke-width={9} />
      <path d="M248 110V86M266 110V96M284 110V92" stroke={COPPER} stroke-width={9} />
    </>
  ),
  look: () => (
    <>
      <Joint x={12} d="M10 84C22 84 26 50 34 50C42 50 46 84 58 84" mark="tick" />
      <Joint
        x={90}
        d="M6 84C2 66 16 74 18 58C22 46 30 60 36 52C46 44 46 66 56 62C66 60 62 84 60 84"
        mark="cross"
      />
      <Joint x={168} lifted d="M12 84C18 76 26 74 34 76C42 74 50 76 56 84" mark="cross" />
      <Joint x={246} wide d="M4 84C10 52 26 48 34 52C42 56 52 54 66 66L76 84" mark="cross" />
    </>
  ),
  pole: () => (
    <>
      <rect x={40} y={86} width={132} height={32} rx={16} fill={PAPER} />
      {[0, 1, 2, 3, 4, 5].map((n) => (
        <circle key={n} cx={62 + n * 18} cy={102} r={5} stroke={SOFT} />
      ))}
      <circle cx={106} cy={46} r={34} fill={PAPER} />
      <path d="M106 20L116 46H96z" fill={COPPER} stroke={COPPER} />
      <path d="M106 72L116 46H96z" fill={PAPER} stroke={COPPER} />
      <path d="M206 62h30M226 54l10 8l-10 8" stroke={COPPER} stroke-width={3} />
      <rect x={256} y={26} width={40} height={80} rx={6} fill={PAPER} />
      <path d="M256 66h40" />
      <g fill={INK} stroke="none" font-size={22} font-weight={700} text-anchor="middle">
        <text x={276} y={54}>
          S
        </text>
        <text x={276} y={95}>
          N
        </text>
      </g>
    </>
  ),
};

const Meter = ({ show }: { show: string }) => (
  <g stroke="none">
    <MeterFace show={show} within={{ x: 10, y: 14, width: 160, height: 104 }} />
  </g>
);

const Coil = () => (
  <>
    <rect x={200} y={34} width={96} height={34} rx={17} fill={PAPER} />
    <path d="M212 68V92M284 68V92" stroke={SOFT} />
    <Probe x={212} y={92} colour="red" />
    <Probe x={284} y={92} colour="black" />
  </>
);

const Probe = ({ x, y, colour }: { x: number; y: number; colour: 'red' | 'black' }) => (
  <>
    <path d={`M${x} ${y}v16`} />
    <g stroke="none">
      <ProbeLetter at={{ x, y: y + 26 }} colour={colour} radius={12} />
    </g>
  </>
);

const Waves = ({ x, y }: { x: number; y: number }) => (
  <path
    d={`M${x} ${y - 8}a12 12 0 0 1 0 16M${x + 10} ${y - 15}a22 22 0 0 1 0 30M${x + 20} ${y - 22}a32 32 0 0 1 0 44`}
    stroke={COPPER}
    stroke-width={3}
  />
);

const TICK = 'l6 7l12 -15';
const CROSS = 'l14 14m0 -14l-14 14';

const Chart = ({ x, d, tick = false }: { x: number; d: string; tick?: boolean }) => (
  <>
    <path d={`M${x} 22V100H${x + 78}`} stroke={SOFT} />
    <path d={d} stroke-width={3.5} />
    <path d={tick ? `M${x + 30} 116${TICK}` : `M${x + 32} 110${CROSS}`} stroke-width={3} />
  </>
);

const Signs = () => (
  <g fill={INK} stroke="none" font-size={22} font-weight={700} text-anchor="middle">
    <text x={204} y={126}>
      −
    </text>
    <text x={256} y={42}>
      0
    </text>
    <text x={308} y={126}>
      +
    </text>
  </g>
);

interface JointProps {
  readonly x: number;
  readonly d: string;
  readonly mark: 'tick' | 'cross';
  /** The wire stands beside its solder. */
  readonly lifted?: boolean;
  /** The next lug stands close by. */
  readonly wide?: boolean;
}

const Joint = ({ x, d, mark, lifted = false, wide = false }: JointProps) => (
  <g transform={`translate(${x} 0)`}>
    <path d={lifted ? 'M34 12C34 30 50 36 52 62' : 'M34 12V56'} stroke={SOFT} stroke-width={4} />
    <path d={d} fill={PAPER} />
    <path d={wide ? 'M2 86H40M56 86H76' : 'M2 86H66'} stroke={SOFT} stroke-width={5} />
    <path d={mark === 'tick' ? `M25 110${TICK}` : `M27 104${CROSS}`} stroke-width={3} />
  </g>
);
