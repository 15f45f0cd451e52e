import { type ComponentType, lazy } from "react";

const Nothing = () => null;

/**
 * A part that comes after the form. The worker has put it by, so it comes without a server too; where it cannot come, the form
 * stands without it.
 */
export function later<P extends object>(load: () => Promise<ComponentType<P>>) {
  return lazy(
    async (): Promise<{ default: ComponentType<P> }> => ({
      default: await load().catch(() => Nothing),
    }),
  );
}
