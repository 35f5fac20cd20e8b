/** Coax cut open lengthwise: the two currents inside, and the third on the outside of the shield, free or stopped by a choke. */
import { at, Drawing, px } from './figures';

interface CoaxRoadsProps {
  /** Current on the outside past this piece, as part of the wire's own; sets how thick its arrow is. */
  readonly outsideShare: number;
  readonly choke: string | null;
  readonly wire: string;
  readonly radio: string;
  readonly label: string;
}

const arrow = (x: number, y: number, length: number, thick: number): string => {
  const half = thick / 2;
  const head = Math.min(Math.max(thick * 1.6, 12), Math.abs(length) * 0.6);
  const sign = Math.sign(length);
  const neck = x + length - sign * head;
  const wing = Math.max(half + 5, thick * 1.1);
  return `M${at(x, y - half)}H${px(neck)}V${px(y - wing)}L${at(x + length, y)}L${at(neck, y + wing)}V${px(y + half)}H${px(x)}Z`;
};

const thickOf = (share: number): number => Math.max(2, Math.min(22, 34 * share));

const Ring = ({ x, y, number }: { readonly x: number; readonly y: number; readonly number: number }) => (
  <>
    <circle class="o" cx={x} cy={y} r={12.5} />
    <text class="k" x={x} y={y + 5.5} text-anchor="middle">
      {number}
    </text>
  </>
);

export function CoaxRoads({ outsideShare, choke, wire, radio, label }: CoaxRoadsProps) {
  const thick = thickOf(outsideShare);
  const outside = [33, 191] as const;
  return (
    <Drawing width={300} height={240} label={label}>
      <rect class="tg" x={20} y={60} width={260} height={11} />
      <rect class="tg" x={20} y={153} width={260} height={11} />
      <rect class="f" x={0} y={107} width={300} height={10} />
      <path d={arrow(64, 97, 72, 4)} fill="var(--ink)" />
      <path d={arrow(240, 82, -72, 4)} fill="var(--ink)" />
      <path d={arrow(240, 142, -72, 4)} fill="var(--ink)" />
      {outside.map((y) =>
        choke === null ? (
          <path class="mk" d={arrow(32, y, 244, thick)} />
        ) : (
          <>
            <path class="mk" d={arrow(32, y, 74, 15)} />
            <path d={`M113 ${y - 18}v36`} stroke="var(--mark)" stroke-width="6" />
            <rect x={126} y={y - 17} width={66} height={36} fill="var(--ink)" />
            <path class="mk" d={arrow(204, y, 72, thick)} />
          </>
        ),
      )}
      {choke !== null && (
        <text class="inv" x={159} y={40} text-anchor="middle">
          {choke}
        </text>
      )}
      <Ring x={44} y={112} number={1} />
      <Ring x={262} y={88} number={2} />
      <Ring x={14} y={33} number={3} />
      <text class="k" x={0} y={236}>
        {wire}
      </text>
      <text class="k" x={300} y={236} text-anchor="end">
        {radio}
      </text>
    </Drawing>
  );
}

/** A transformer between wire and coax, or a choke round coax: two parts, two jobs. */
export function PartAtWork({
  kind,
  name,
  left,
  right,
  label,
}: {
  readonly kind: 'transformer' | 'choke';
  readonly name: string;
  readonly left: string;
  readonly right: string;
  readonly label: string;
}) {
  return (
    <Drawing width={300} height={84} label={label}>
      {kind === 'transformer' ? <path class="w" d="M6 48H112" /> : <path class="c" d="M6 48H112" />}
      <path class="c" d="M188 48H294" />
      <rect class="tg" x={112} y={22} width={76} height={52} />
      <text class="tt" x={150} y={54} text-anchor="middle">
        {name}
      </text>
      {kind === 'choke' && <path class="mkl" d="M6 32H86M86 32l-10 -7M86 32l-10 7M97 18V46" />}
      <text x={6} y={18}>
        {left}
      </text>
      <text x={294} y={18} text-anchor="end">
        {right}
      </text>
    </Drawing>
  );
}
