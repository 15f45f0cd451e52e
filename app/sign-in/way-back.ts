/** Where to go after signing in: a path of ours, never another site's address however it is written. */
export function wayBack(to: string | undefined): string {
  const plain = to !== undefined && /^\/(?![/\\])[\w\-./~%]*$/.test(to) && !to.startsWith("/api/");
  return plain ? to : "/";
}
