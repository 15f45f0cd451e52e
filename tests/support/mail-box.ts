import type { AddressInfo } from "node:net";
import { SMTPServer } from "smtp-server";

/** A mail server of this test: what it was given, whole; refuse: it takes no letter. */
export type MailBox = Readonly<{
  url: string;
  letters: string[];
  refuse: (how: boolean) => void;
  close: () => Promise<void>;
}>;

/** Opens one on a free port of this computer. */
export async function mailBox(): Promise<MailBox> {
  const letters: string[] = [];
  let refusing = false;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onData(stream, _session, taken) {
      const parts: Buffer[] = [];
      stream.on("data", (part: Buffer) => parts.push(part));
      stream.on("end", () => {
        if (refusing)
          return taken(Object.assign(new Error("the secret word is swordfish"), { responseCode: 552 }));
        letters.push(Buffer.concat(parts).toString("utf8"));
        return taken(null);
      });
    },
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.server.address() as AddressInfo;
  return {
    url: `smtp://127.0.0.1:${port}`,
    letters,
    refuse: (how) => {
      refusing = how;
    },
    close: () => new Promise((resolve) => server.close(resolve)),
  };
}
