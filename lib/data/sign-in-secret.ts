import "server-only";
import { createHash, createHmac, randomBytes, randomInt, timingSafeEqual } from "node:crypto";

const kept = globalThis as typeof globalThis & { dunnageSecret?: string };

/** What sessions are signed with: the launcher's, kept in DATA_DIR; without a launcher one that ends with the process. */
export function signInSecret(): string {
  const given = process.env.DUNNAGE_SECRET;
  if (given) return given;
  kept.dunnageSecret ??= randomBytes(32).toString("hex");
  return kept.dunnageSecret;
}

/** The cookie a browser keeps its session in. */
export const SESSION_COOKIE = "dunnage.session_token";

/** A session's token as it stands in the cookie: with its HMAC-SHA-256 in base64, as better-auth signs its own. */
export function signedToken(token: string): string {
  return `${token}.${createHmac("sha256", signInSecret()).update(token).digest("base64")}`;
}

/** The token of a cookie's value, or null when it was not signed by us. */
export function tokenOf(cookie: string | undefined): string | null {
  const token = cookie?.slice(0, cookie.lastIndexOf(".")) ?? "";
  if (cookie === undefined || token === "") return null;
  const [given, own] = [Buffer.from(cookie), Buffer.from(signedToken(token))];
  return given.length === own.length && timingSafeEqual(given, own) ? token : null;
}

/** A new token nobody can guess: 256 bits. */
export function newToken(): string {
  return randomBytes(32).toString("base64url");
}

const LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/** A code to be typed: twelve of 32 letters and figures (60 bits), none of which reads like another. */
export function newCode(): string {
  const letters = Array.from({ length: 12 }, () => LETTERS[randomInt(LETTERS.length)] ?? "0").join("");
  return letters.replaceAll(/(.{4})(?=.)/g, "$1-");
}

/** What is kept of a code: the SHA-256 of its letters, however it was typed. */
export function codeHash(typed: string): string {
  const letters = typed.toUpperCase().replaceAll(/[^0-9A-Z]/g, "");
  const meant = letters.replaceAll("O", "0").replaceAll(/[IL]/g, "1").replaceAll("U", "V");
  return createHash("sha256").update(meant).digest("hex");
}

/** A name as it is compared: letter case, accents written in two ways and outer spaces make no other person. */
export function plainName(name: string): string {
  return name.normalize("NFC").trim().toLowerCase();
}

/** What better-auth takes for the address of a person: made of the name, sent nowhere (RFC 2606 keeps .invalid unused). */
export function signInAddress(name: string): string {
  return `${createHash("sha256").update(plainName(name)).digest("hex").slice(0, 32)}@people.invalid`;
}
