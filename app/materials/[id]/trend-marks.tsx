/** The marks of a trend, the same in the chart, in the still drawing and in the key. */

type At = Readonly<{ x: number | string; y: number | string }>;
type Coloured = At & Readonly<{ colour: string }>;

/** A shelf price: an open circle. */
export function ShelfMark({ x, y, colour }: Coloured) {
  return <circle cx={x} cy={y} r="3.5" fill="var(--sheet)" stroke={colour} strokeWidth="1.5" />;
}

/** A special, a clearance, a break, a quote, a used one: a filled square. */
export function SpecialMark({ x, y, colour }: Coloured) {
  return <path transform={`translate(${x} ${y})`} d="M-4.5-4.5h9v9h-9z" fill={colour} />;
}

/** A receipt: a cross. */
export function PaidMark({ x, y, colour }: Coloured) {
  return (
    <path
      transform={`translate(${x} ${y})`}
      d="M-4-4l8 8M-4 4l8-8"
      fill="none"
      stroke={colour}
      strokeWidth="2"
    />
  );
}

/** A lot of one's own: a board on two dunnage sticks, in ink, with its letter above. */
export function LotMark({ x, y, letters }: At & Readonly<{ letters: string }>) {
  return (
    <g transform={`translate(${x} ${y})`} fill="var(--ink)">
      <path
        d="M-9-4h18v4h-18zM-6 1.5h3.5v3.5h-3.5zM2.5 1.5h3.5v3.5h-3.5z"
        stroke="var(--sheet)"
        strokeWidth="0.75"
      />
      <text y="-7" textAnchor="middle" fontSize="13" fontWeight="700">
        {letters}
      </text>
    </g>
  );
}
