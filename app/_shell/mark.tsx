/** The mark: a board lying on two dunnage sticks, in ink. Always beside the name, so it is decoration to a screen reader. */
export function Mark() {
  return (
    <svg viewBox="0 0 32 18" width="32" height="18" fill="currentColor" aria-hidden="true">
      <path d="M1 1h30v7H1z" />
      <path d="M7 11h6v6H7zM19 11h6v6h-6z" />
    </svg>
  );
}
