import type { NextConfig } from "next";
import createNextIntlPlugin from "next-intl/plugin";

const withWords = createNextIntlPlugin("./app/_words/request.ts");

const config: NextConfig = {
  poweredByHeader: false,
  serverExternalPackages: ["pg"],
};

export default withWords(config);
