import type { NextConfig } from "next";
import createNextIntlPlugin from "next-intl/plugin";

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  typedRoutes: false,
  // A form may send a file of rates or index values: app/settings/files says how large.
  experimental: { serverActions: { bodySizeLimit: "8mb" } },
  turbopack: { root: import.meta.dirname },
  serverExternalPackages: [
    "better-auth",
    "@better-auth/passkey",
    "pdfkit",
    "pg",
    "@prisma/client",
    "@prisma/adapter-pg",
  ],
  // The content security policy differs with every answer: proxy.ts. Referrers are not dropped whole: then a form sent
  // without JavaScript would name no origin, and be refused for it.
  headers: async () => [
    {
      source: "/:path*",
      headers: [
        { key: "X-Content-Type-Options", value: "nosniff" },
        { key: "X-Frame-Options", value: "DENY" },
        { key: "Referrer-Policy", value: "same-origin" },
        { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
        { key: "Cross-Origin-Resource-Policy", value: "same-origin" },
        { key: "Permissions-Policy", value: "camera=(self), geolocation=(), microphone=()" },
      ],
    },
  ],
  // `npm run check` looks at the types, of the tests too: a slip in a test must not keep the program from starting.
  typescript: { ignoreBuildErrors: true },
};

export default createNextIntlPlugin("./app/_words/request.ts")(config);
