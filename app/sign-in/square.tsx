import style from "./square.module.css";

/** A QR code to point a camera at. label: what it says, for who cannot see it. */
export function Square({ path, size, label }: Readonly<{ path: string; size: number; label: string }>) {
  return (
    <svg className={style.square} viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <path className={style.ground} d={`M0 0h${size}v${size}h-${size}z`} />
      <path d={path} shapeRendering="crispEdges" />
    </svg>
  );
}
