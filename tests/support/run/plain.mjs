const ESCAPE = String.fromCharCode(27);
const COLOUR = new RegExp(`${ESCAPE}\\[[0-9;]*m`, "g");

/** Text without the codes that colour it in a terminal. */
export const plain = (text) => text.replaceAll(COLOUR, "");
