import "server-only";
import { passkey } from "@better-auth/passkey";
import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { v7 } from "uuid";
import { PASSWORD_LIMIT } from "./attempts.ts";
import type { PrismaClient } from "./generated/client.ts";
import { houseClient } from "./house-client.ts";
import { SESSION_SECONDS } from "./sessions.ts";
import { signInSecret } from "./sign-in-secret.ts";

/** The header the client's address stands in, put there by us alone. */
export const CLIENT_HEADER = "x-dunnage-client";

// A passkey belongs to a name, so each address the house is known by has its own instance; there are only a few.
function make(client: PrismaClient, origin: string) {
  return betterAuth({
    appName: "Dunnage",
    baseURL: origin,
    basePath: "/api/auth",
    secret: signInSecret(),
    trustedOrigins: [origin],
    telemetry: { enabled: false },
    logger: { disabled: true }, // it would name who tried, and our own answers say what is wrong
    database: prismaAdapter(client, { provider: "postgresql" }),
    user: {
      modelName: "person",
      fields: { email: "signInAddress", emailVerified: "addressVerified", image: "picture" },
    },
    session: {
      modelName: "personSession",
      fields: { userId: "personId", ipAddress: "clientAddress", userAgent: "device" },
      expiresIn: SESSION_SECONDS,
      disableSessionRefresh: true,
    },
    account: { modelName: "personCredential", fields: { userId: "personId", password: "passwordHash" } },
    verification: { modelName: "signInChallenge" },
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12 },
    rateLimit: {
      enabled: true,
      storage: "database",
      modelName: "signInAttempt",
      window: 60,
      max: 100,
      customRules: { "/sign-in/email": { window: PASSWORD_LIMIT.seconds, max: PASSWORD_LIMIT.most } },
    },
    advanced: {
      cookiePrefix: "dunnage",
      useSecureCookies: false, // one cookie name everywhere; the attribute itself is set on TLS
      defaultCookieAttributes: { secure: origin.startsWith("https://"), sameSite: "lax", httpOnly: true },
      ipAddress: { ipAddressHeaders: [CLIENT_HEADER] },
      database: { generateId: () => v7() },
    },
    plugins: [
      passkey({
        rpID: new URL(origin).hostname,
        rpName: "Dunnage",
        origin,
        schema: { passkey: { modelName: "personPasskey", fields: { userId: "personId" } } },
      }),
    ],
  });
}

type HouseAuth = ReturnType<typeof make>;
const made = new Map<string, Promise<HouseAuth>>();

/** The sign-in of one address of the house. Ask only for addresses the gate has let through. */
export function houseAuth(origin: string): Promise<HouseAuth> {
  const known = made.get(origin);
  if (known !== undefined) return known;
  const auth = houseClient().then((client) => make(client, origin));
  auth.catch(() => made.delete(origin));
  made.set(origin, auth);
  return auth;
}
