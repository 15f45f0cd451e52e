import type { NextConfig } from "next";
import createNextIntlPlugin from "next-intl/plugin";

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  typedRoutes: false,
  turbopack: { root: import.meta.dirname },
  serverExternalPackages: ["pdfkit", "pg", "@prisma/client", "@prisma/adapter-pg"],
  // `npm run check` looks at the types, of the tests too: a slip in a test must not keep the program from starting.
  typescript: { ignoreBuildErrors: true },
};

export default createNextIntlPlugin("./app/_words/request.ts")(config);
